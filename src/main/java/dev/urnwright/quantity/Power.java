package dev.urnwright.quantity;

/** An electrical power, kept in watts. */
public final class Power implements Comparable<Power> {
  private final double watts;

  private Power(double watts) {
    this.watts = Checks.within(watts, 0, 1e9, "a power", "watts");
  }

  /**
   * A power of so many watts.
   *
   * @param watts from 0 to 1e9
   * @throws IllegalArgumentException if {@code watts} is outside that range or NaN
   */
  public static Power ofWatts(double watts) {
    return new Power(watts);
  }

  /** This power in watts. */
  public double watts() {
    return watts;
  }

  @Override
  public int compareTo(Power other) {
    return Double.compare(watts, other.watts);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Power that && Double.compare(that.watts, watts) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(watts);
  }

  @Override
  public String toString() {
    return watts + " W";
  }
}
