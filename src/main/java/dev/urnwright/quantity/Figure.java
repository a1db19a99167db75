package dev.urnwright.quantity;

/**
 * A printed number and its unit, kept apart so that a sheet can print the number big.
 *
 * @param number the digits, already rounded
 * @param unit the unit; empty for a ratio or a bare number
 */
public record Figure(String number, String unit) {
  /** A number that has no unit. */
  public static Figure bare(String number) {
    return new Figure(number, "");
  }

  /** The same as a language writes it; this one must be in the English style. */
  public Figure in(NumberStyle style) {
    return new Figure(style.of(number), unit);
  }

  /** Number and unit with a no-break space between them. */
  @Override
  public String toString() {
    return unit.isEmpty() ? number : number + Display.NO_BREAK_SPACE + unit;
  }
}
