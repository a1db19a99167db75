package dev.urnwright.text;

import dev.urnwright.event.Learned;
import dev.urnwright.learn.Fit;
import dev.urnwright.learn.JournalFits.Brewed;
import dev.urnwright.learn.Oddity;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.UnitSystem;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Writes what a journal teaches. */
public final class FitText {
  private static final Display DISPLAY = new Display(UnitSystem.METRIC, Mass.ofGrams(1));

  private final Palette palette;

  /** Text with that emphasis. */
  public FitText(Palette palette) {
    this.palette = palette;
  }

  /** Writes all in lines of at most {@link PlanText#COLUMNS}. */
  public void write(Map<Brewed, Fit> fits, PrintWriter out) {
    Screen screen = new Screen(out, palette, PlanText.COLUMNS);
    fits.forEach((brewed, fit) -> write(brewed, fit, screen));
  }

  private static void write(Brewed brewed, Fit fit, Screen screen) {
    screen.heading(
        ScreenText.clean(brewed.coffee())
            + brewed.brewer().map(brewer -> " on " + ScreenText.clean(brewer)).orElse("")
            + ", "
            + PlanText.counted(fit.batches(), "batch", "batches"));
    Table table = new Table(List.of("", "learned", "95 % interval", "usual", "batches"));
    fit.absorption()
        .ifPresent(kept -> table.row(row("kept by the grounds", kept, DISPLAY::absorption), ""));
    fit.extraction().stream()
        .filter(Fit.Point::brewed)
        .forEach(
            point ->
                table.row(
                    row(
                        "extraction at " + DISPLAY.ratio(point.ratio()),
                        point.extraction(),
                        DISPLAY::extraction),
                    ""));
    if (fit.teaches()) {
      table.print(screen);
    }
    for (Oddity odd : fit.odd()) {
      screen.remark(
          ScreenText.clean(odd.name())
              + ": "
              + odd.reason()
              + (odd.counted() ? "" : "; it was left out"));
    }
  }

  private static <T> List<String> row(String what, Learned<T> learned, Function<T, ?> shown) {
    return List.of(
        what,
        shown.apply(learned.value()).toString(),
        shown.apply(learned.low()) + " to " + shown.apply(learned.high()),
        shown.apply(learned.before()).toString(),
        String.valueOf(learned.entries()));
  }
}
