package dev.urnwright.sheet;

import dev.urnwright.quantity.Figure;
import java.util.stream.Stream;

/** How wide the figures of a table are, as a class of the style sheet. */
final class Widths {
  /** Pounds with ounces, or more than 99 kg to the gram. */
  private static final int WIDE = 9;

  private Widths() {}

  /** {@code wide} when a figure is, {@code narrow} when none is. */
  static String of(Stream<Figure> figures) {
    return figures.anyMatch(figure -> figure.toString().length() > WIDE) ? "wide" : "narrow";
  }
}
