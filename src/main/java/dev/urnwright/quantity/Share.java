package dev.urnwright.quantity;

/** A part of a whole: of guests, of drinkers, of brew water. From none (0 %) to all (100 %). */
public final class Share implements Comparable<Share> {
  private final double fraction;

  private Share(double fraction) {
    this.fraction = Checks.within(fraction, 0, 1, "a share", "(as a fraction)");
  }

  /**
   * A share in percent: 1.35 for 1.35 %.
   *
   * @param percent from 0 to 100
   * @throws IllegalArgumentException if {@code percent} is outside that range or NaN
   */
  public static Share ofPercent(double percent) {
    return new Share(percent / 100);
  }

  /**
   * A share as a fraction: 0.0135 for 1.35 %.
   *
   * @param fraction from 0 to 1
   * @throws IllegalArgumentException if {@code fraction} is outside that range or NaN
   */
  public static Share ofFraction(double fraction) {
    return new Share(fraction);
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
  public int compareTo(Share other) {
    return Double.compare(fraction, other.fraction);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Share that && Double.compare(that.fraction, fraction) == 0;
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
