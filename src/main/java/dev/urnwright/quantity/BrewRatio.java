package dev.urnwright.quantity;

/**
 * Brew water over dose, grams per gram, written 1:R. What was added after brewing does not count;
 * the ratio of beverage to dose is another thing and never goes by this name.
 */
public final class BrewRatio implements Comparable<BrewRatio> {
  private final double waterPerDose;

  private BrewRatio(double waterPerDose) {
    this.waterPerDose =
        Checks.within(waterPerDose, 0.1, 1000, "a brew ratio", "grams of water per gram of coffee");
  }

  /**
   * The ratio of so many grams of brew water for each gram of coffee.
   *
   * @param gramsPerGram from 0.1 to 1000
   * @throws IllegalArgumentException if {@code gramsPerGram} is outside that range or NaN
   */
  public static BrewRatio ofGramsPerGram(double gramsPerGram) {
    return new BrewRatio(gramsPerGram);
  }

  /** The ratio of a brew water to a dose. */
  public static BrewRatio of(Mass brewWater, Mass dose) {
    return new BrewRatio(brewWater.grams() / dose.grams());
  }

  /** Grams of brew water for each gram of coffee. */
  public double gramsPerGram() {
    return waterPerDose;
  }

  /** The brew water that goes with a dose. */
  public Mass waterFor(Mass dose) {
    return dose.times(waterPerDose);
  }

  @Override
  public int compareTo(BrewRatio other) {
    return Double.compare(waterPerDose, other.waterPerDose);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BrewRatio that && Double.compare(that.waterPerDose, waterPerDose) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(waterPerDose);
  }

  @Override
  public String toString() {
    return "1:" + waterPerDose;
  }
}
