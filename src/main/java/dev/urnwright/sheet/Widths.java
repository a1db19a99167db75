package dev.urnwright.sheet;

import dev.urnwright.quantity.Figure;
import java.util.stream.Stream;

/** How wide the figures of a table are, as a class of the style sheet. */
final class Widths {
  /** Pounds with ounces, or more than 99 kg to the gram. */
  private static final int WIDE = 9;

  /** Tens of pounds with ounces. */
  private static final int TOO_WIDE_FOR_A_TILE = 12;

  private Widths() {}

  /** {@code wide} when a figure is, {@code narrow} when none is. */
  static String of(Stream<Figure> figures) {
    return of(figures, WIDE);
  }

  /** The same for the large type of a tile. */
  static String ofTiles(Stream<Figure> figures) {
    return of(figures, TOO_WIDE_FOR_A_TILE);
  }

  private static String of(Stream<Figure> figures, int letters) {
    return figures.anyMatch(figure -> figure.toString().length() > letters) ? "wide" : "narrow";
  }
}
