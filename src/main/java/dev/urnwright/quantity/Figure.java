package dev.urnwright.quantity;

/**
 * A printed number and its unit, kept apart so that a sheet can print the number big.
 *
 * @param number the digits, already rounded
 * @param unit the unit, never empty
 */
public record Figure(String number, String unit) {
  /** Number and unit with a no-break space between them. */
  @Override
  public String toString() {
    return number + Display.NO_BREAK_SPACE + unit;
  }
}
