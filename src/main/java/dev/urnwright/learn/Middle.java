package dev.urnwright.learn;

import java.util.Arrays;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The middle of some values, and how far from it is too far. {@code 0.6745·|x − median| / MAD >
 * 3.5}, MAD the median of the absolute deviations; B. Iglewicz and D. Hoaglin, <i>How to Detect and
 * Handle Outliers</i>, ASQC 1993 (from memory).
 *
 * @param median the middle
 * @param far distances greater than this are odd; infinite for fewer than five values
 */
record Middle(double median, double far) {
  private static final int FEWEST = 5;
  private static final double TOO_FAR = 3.5 / 0.6745;

  /**
   * The middle of some values.
   *
   * @param floor least MAD, so that nearly the same values don't make the next one odd
   */
  static Middle of(double floor, double[] values) {
    double median = new Median().evaluate(values);
    double[] away = Arrays.stream(values).map(value -> Math.abs(value - median)).toArray();
    return new Middle(
        median,
        values.length < FEWEST
            ? Double.POSITIVE_INFINITY
            : TOO_FAR * Math.max(floor, new Median().evaluate(away)));
  }

  boolean isOdd(double value) {
    return Math.abs(value - median) > far;
  }
}
