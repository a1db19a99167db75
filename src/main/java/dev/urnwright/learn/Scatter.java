package dev.urnwright.learn;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * How much single values scatter: what is usual, pooled with what was seen. The usual counts like
 * {@value #USUAL_DEGREES} degrees of freedom, so two alike entries don't make a certainty.
 *
 * <p>{@code s² = (ν₀·s₀² + Σd²) / (ν₀ + ν)}, the scaled inverse chi-squared update; A. Gelman and
 * others, <i>Bayesian Data Analysis</i>, 3rd edition 2013, section 2.6 (from memory).
 *
 * @param variance of single values, above 0
 * @param degrees of freedom, above 0
 */
record Scatter(double variance, double degrees) {
  private static final double USUAL_DEGREES = 4;
  private static final double CONFIDENCE = 0.95;

  /**
   * The usual and the seen together.
   *
   * @param usual standard deviation, above 0
   * @param squares sum of the squares of what was seen to deviate, 0 or more
   * @param degrees its degrees of freedom, 0 or more
   */
  static Scatter pooled(double usual, double squares, int degrees) {
    double all = USUAL_DEGREES + degrees;
    return new Scatter((USUAL_DEGREES * usual * usual + squares) / all, all);
  }

  /** So many standard errors to either side hold 95 %, by Student's distribution. */
  double reach() {
    return new TDistribution(null, degrees).inverseCumulativeProbability((1 + CONFIDENCE) / 2);
  }
}
