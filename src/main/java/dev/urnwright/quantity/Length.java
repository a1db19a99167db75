package dev.urnwright.quantity;

/** A length, 0 or more, kept in millimetres. */
public final class Length implements Comparable<Length> {
  private static final double MILLIMETRES_PER_INCH = 25.4; // exact (NIST SP 811)

  private final double millimetres;

  private Length(double millimetres) {
    this.millimetres = Checks.notNegative(millimetres, "a length", "millimetres");
  }

  /**
   * A length of so many millimetres.
   *
   * @param millimetres 0 or more
   * @throws IllegalArgumentException if {@code millimetres} is negative, NaN or infinite
   */
  public static Length ofMillimetres(double millimetres) {
    return new Length(millimetres);
  }

  /** This length in millimetres. */
  public double millimetres() {
    return millimetres;
  }

  /** This length in inches of 25.4 mm. */
  public double inches() {
    return millimetres / MILLIMETRES_PER_INCH;
  }

  /**
   * This length so many times over.
   *
   * @param factor 0 or more
   * @throws IllegalArgumentException if {@code factor} is negative, NaN or infinite
   */
  public Length times(double factor) {
    return new Length(millimetres * factor);
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(millimetres, other.millimetres);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Length length && Double.compare(length.millimetres, millimetres) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(millimetres);
  }

  @Override
  public String toString() {
    return millimetres + " mm";
  }
}
