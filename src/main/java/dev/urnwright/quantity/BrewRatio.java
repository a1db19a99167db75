package dev.urnwright.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Brew water over dose, grams per gram, written 1:R. What was added after brewing does not count;
 * the ratio of beverage to dose is another thing and never goes by this name.
 */
public final class BrewRatio implements Comparable<BrewRatio> {
  private static final Pattern WRITTEN = Pattern.compile("(?:1 ?: ?)?([^:]+?)( g/g)?");
  private static final double LEAST_WRITTEN = 2;
  private static final double GREATEST_WRITTEN = 50;

  private final double waterPerDose;

  private BrewRatio(double waterPerDose) {
    this.waterPerDose =
        Checks.within(
            waterPerDose, 0.1, 10_000, "a brew ratio", "grams of water per gram of coffee");
  }

  /**
   * The ratio of so many grams of brew water for each gram of coffee.
   *
   * @param gramsPerGram from 0.1 to 10 000; past 1:50 only a trace of coffee
   * @throws IllegalArgumentException if {@code gramsPerGram} is outside that range or NaN
   */
  public static BrewRatio ofGramsPerGram(double gramsPerGram) {
    return new BrewRatio(gramsPerGram);
  }

  /** The ratio of a brew water to a dose. */
  public static BrewRatio of(Mass brewWater, Mass dose) {
    return new BrewRatio(brewWater.grams() / dose.grams());
  }

  /**
   * Reads {@code 13}, {@code 13.5} or {@code 1:13}.
   *
   * @throws UnreadableException if it isn't a ratio that a brew can have, from 1:2 to 1:50
   */
  public static BrewRatio parse(String text) {
    String expected = "expected a ratio of water to coffee such as 13 or 1:13";
    String plain = Plain.quantity(text, expected);
    Matcher ratio = WRITTEN.matcher(plain);
    if (!ratio.matches()) {
      throw new UnreadableException("'" + plain + "' is not a brew ratio", expected);
    }
    double gramsPerGram = Measure.number(ratio.group(1), expected).doubleValue();
    if (!(gramsPerGram >= LEAST_WRITTEN && gramsPerGram <= GREATEST_WRITTEN)) {
      throw new UnreadableException(
          "'" + plain + "' is not a ratio that coffee is brewed at", "expected from 1:2 to 1:50");
    }
    return new BrewRatio(gramsPerGram);
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
