package dev.urnwright.quantity;

/**
 * How much of the dose was dissolved: the mass of dissolved solids over the mass of dry ground
 * coffee (solubles yield). A percentage of another kind than {@link Strength}, hence another type.
 */
public final class Extraction implements Comparable<Extraction> {
  private final double fraction;

  private Extraction(double fraction) {
    this.fraction = Checks.within(fraction, 0, 1, "an extraction", "(as a fraction)");
  }

  /**
   * An extraction in percent: 1.35 for 1.35 %.
   *
   * @param percent from 0 to 100
   * @throws IllegalArgumentException if {@code percent} is outside that range or NaN
   */
  public static Extraction ofPercent(double percent) {
    return new Extraction(percent / 100);
  }

  /**
   * An extraction as a fraction: 0.0135 for 1.35 %.
   *
   * @param fraction from 0 to 1
   * @throws IllegalArgumentException if {@code fraction} is outside that range or NaN
   */
  public static Extraction ofFraction(double fraction) {
    return new Extraction(fraction);
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
  public int compareTo(Extraction other) {
    return Double.compare(fraction, other.fraction);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Extraction that && Double.compare(that.fraction, fraction) == 0;
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
