package dev.urnwright.quantity;

/**
 * A mass, 0 or more, kept in grams.
 *
 * <p>A double is enough: a kilogram is held to a tenth of a picogram, and what is printed is
 * rounded to what a scale shows. Computed masses are compared with a tolerance, not with {@code
 * equals}.
 */
public final class Mass implements Comparable<Mass> {
  /** No mass at all. */
  public static final Mass ZERO = new Mass(0);

  private static final double GRAMS_PER_OUNCE = 28.349523125; // exact, avoirdupois (NIST SP 811)

  /** Absorbs the noise of decimal steps in binary: 3 × 0.1 is still three steps of 0.1. */
  private static final double STEP_SLACK = 1e-9;

  private final double grams;

  private Mass(double grams) {
    this.grams = Checks.notNegative(grams, "a mass", "grams");
  }

  /**
   * A mass of so many grams.
   *
   * @param grams 0 or more
   * @throws IllegalArgumentException if {@code grams} is negative, NaN or infinite
   */
  public static Mass ofGrams(double grams) {
    return new Mass(grams);
  }

  /**
   * A mass of so many avoirdupois ounces of 28.349523125 g.
   *
   * @param ounces 0 or more
   * @throws IllegalArgumentException if {@code ounces} is negative, NaN or infinite
   */
  public static Mass ofOunces(double ounces) {
    return new Mass(ounces * GRAMS_PER_OUNCE);
  }

  /** This mass in grams. */
  public double grams() {
    return grams;
  }

  /** This mass in kilograms. */
  public double kilograms() {
    return grams / 1000;
  }

  /** This mass in avoirdupois ounces. */
  public double ounces() {
    return grams / GRAMS_PER_OUNCE;
  }

  /** The sum of both masses. */
  public Mass plus(Mass other) {
    return new Mass(grams + other.grams);
  }

  /**
   * What is left of this mass without the other.
   *
   * @throws IllegalArgumentException if the other is the larger
   */
  public Mass minus(Mass other) {
    return new Mass(grams - other.grams);
  }

  /**
   * This mass so many times over.
   *
   * @param factor 0 or more
   * @throws IllegalArgumentException if {@code factor} is negative, NaN or infinite
   */
  public Mass times(double factor) {
    return new Mass(grams * factor);
  }

  /** Whether there is nothing of it. */
  public boolean isZero() {
    return grams == 0;
  }

  /** The larger of both. */
  public Mass max(Mass other) {
    return other.grams > grams ? other : this;
  }

  /** The smaller of both. */
  public Mass min(Mass other) {
    return other.grams < grams ? other : this;
  }

  /** The next whole number of steps at or above this mass. */
  public Mass roundUpTo(Mass step) {
    return new Mass(Math.ceil(steps(step) - STEP_SLACK) * step.grams);
  }

  /** The last whole number of steps at or below this mass. */
  public Mass roundDownTo(Mass step) {
    return new Mass(Math.floor(steps(step) + STEP_SLACK) * step.grams);
  }

  /** The nearest whole number of steps; a half goes up. */
  public Mass roundTo(Mass step) {
    return new Mass(Math.floor(steps(step) + 0.5 + STEP_SLACK) * step.grams);
  }

  /**
   * How many steps this mass is.
   *
   * @throws IllegalArgumentException if the step is zero
   */
  public double steps(Mass step) {
    if (step.grams <= 0) {
      throw new IllegalArgumentException("a scale step must be above 0 g: " + step.grams);
    }
    return grams / step.grams;
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(grams, other.grams);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Mass mass && Double.compare(mass.grams, grams) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(grams);
  }

  @Override
  public String toString() {
    return grams + " g";
  }
}
