package dev.urnwright.quantity;

/** The refusals that the quantities share: not a number, infinite, or of an impossible sign. */
final class Checks {
  private Checks() {}

  /**
   * Returns the value when it is finite and not negative; a negative zero becomes zero.
   *
   * @throws IllegalArgumentException if the value is NaN, infinite or negative
   */
  static double notNegative(double value, String what, String unit) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          what + " must be a finite number of " + unit + ", 0 or more: " + value);
    }
    return value + 0.0;
  }

  /**
   * Returns the value when it is finite and lies in the closed range.
   *
   * @throws IllegalArgumentException if the value is NaN or outside the range
   */
  static double within(double value, double least, double greatest, String what, String unit) {
    if (!(value >= least && value <= greatest)) {
      throw new IllegalArgumentException(
          what + " must be from " + least + " to " + greatest + " " + unit + ": " + value);
    }
    return value + 0.0;
  }
}
