package dev.urnwright.quantity;

/**
 * How strong a beverage is: the mass of dissolved solids over the mass of the beverage (TDS).
 * Written in percent, computed with as a fraction.
 */
public final class Strength implements Comparable<Strength> {
  private final double fraction;

  private Strength(double fraction) {
    this.fraction = Checks.within(fraction, 0, 1, "a strength", "(as a fraction)");
  }

  /**
   * A strength in percent: 1.35 for 1.35 %.
   *
   * @param percent from 0 to 100
   * @throws IllegalArgumentException if {@code percent} is outside that range or NaN
   */
  public static Strength ofPercent(double percent) {
    return new Strength(percent / 100);
  }

  /**
   * A strength as a fraction: 0.0135 for 1.35 %.
   *
   * @param fraction from 0 to 1
   * @throws IllegalArgumentException if {@code fraction} is outside that range or NaN
   */
  public static Strength ofFraction(double fraction) {
    return new Strength(fraction);
  }

  /** This value in percent. */
  public double percent() {
    return fraction * 100;
  }

  /** This value as a fraction. */
  public double fraction() {
    return fraction;
  }

  @Override
  public int compareTo(Strength other) {
    return Double.compare(fraction, other.fraction);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Strength that && Double.compare(that.fraction, fraction) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(fraction);
  }

  @Override
  public String toString() {
    return percent() + " %";
  }
}
