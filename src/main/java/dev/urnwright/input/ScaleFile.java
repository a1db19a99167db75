package dev.urnwright.input;

import dev.urnwright.problem.Checked;
import dev.urnwright.scale.ScaleRequest;
import dev.urnwright.scale.Scaled;
import java.util.Optional;

/**
 * A file for {@code scale} that was read.
 *
 * @param request what it comes to
 * @param typed the words that the user typed
 */
public record ScaleFile(ScaleRequest request, Typed.Mapping typed) {
  /**
   * The event of the day's menu, brewed as scaled.
   *
   * @return empty when the file has no menu
   */
  public Optional<Checked<EventFile>> day(Scaled scaled) {
    return typed
        .at(MenuBinder.MENU.name())
        .map(menu -> new EventReader().read(new MenuEvent(scaled, typed, menu).typed()));
  }
}
