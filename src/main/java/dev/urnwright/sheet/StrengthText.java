package dev.urnwright.sheet;

import dev.urnwright.quantity.Display;
import dev.urnwright.round.Drop;

/** A strength by its name and in percent; once where it has no name. */
final class StrengthText {
  private StrengthText() {}

  static String of(Drop.Content content, Display display) {
    String percent = display.strength(content.strength()).toString();
    return content.strengthName().equals(percent)
        ? percent
        : content.strengthName() + " " + percent;
  }
}
