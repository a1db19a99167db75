package dev.urnwright.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * All brews of one ratio on the control chart: {@code T = E / (R(1 − v) − a)}, a straight line
 * through the origin.
 *
 * @param ratio R, grams of brew water for each gram of coffee
 * @param slope strength for each percent of extraction
 */
public record RatioLine(int ratio, double slope) {
  private static final int MOST_LINES = 24;

  /** How much liquid leaves the grounds for each gram of dose at a ratio. */
  static RatioLine of(int ratio, double absorption, double steamLoss) {
    return new RatioLine(ratio, 1 / (ratio * (1 - steamLoss) - absorption));
  }

  /**
   * The whole-number ratios that cross a chart; every second, fifth or tenth where all would be too
   * many to read.
   *
   * @param absorption a, grams of liquid kept by each gram of coffee
   * @param steamLoss v, the part of the brew water lost as vapour, below 1
   */
  static List<RatioLine> across(
      Axis extraction, Axis strength, double absorption, double steamLoss) {
    double least = extraction.least() / strength.greatest() + absorption;
    double greatest = extraction.greatest() / Math.max(strength.least(), 0.1) + absorption;
    int first = (int) Math.floor(least / (1 - steamLoss)) + 1;
    int last = (int) Math.ceil(greatest / (1 - steamLoss)) - 1;
    int step = 1;
    for (int wider : new int[] {1, 2, 5, 10, 20}) {
      step = wider;
      if ((last - first) / wider < MOST_LINES) {
        break;
      }
    }
    List<RatioLine> lines = new ArrayList<>();
    for (int ratio = (first + step - 1) / step * step; ratio <= last; ratio += step) {
      lines.add(of(ratio, absorption, steamLoss));
    }
    return lines;
  }

  /**
   * Strength in percent at an extraction in percent.
   *
   * @param extraction 0 or more
   */
  public double strengthAt(double extraction) {
    return slope * extraction;
  }

  /** Extraction in percent at a strength in percent. */
  public double extractionAt(double strength) {
    return strength / slope;
  }
}
