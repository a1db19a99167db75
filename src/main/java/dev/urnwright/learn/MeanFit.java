package dev.urnwright.learn;

import java.util.Arrays;

/**
 * A mean, shrunk to what was believed while entries are few: the normal prior and the normal
 * likelihood make
 *
 * <pre>m = (m₀/τ² + Σx/s²) / (1/τ² + n/s²)        u² = 1 / (1/τ² + n/s²)</pre>
 *
 * with τ the standard deviation of the prior and s² the {@link Scatter} of single entries; the
 * interval is Student's, {@code m ± t·u}. A. Gelman and others, <i>Bayesian Data Analysis</i>, 3rd
 * edition 2013, section 2.5 (from memory), with s² estimated.
 *
 * @param value m
 * @param reach half of the interval at 95 %
 */
record MeanFit(double value, double reach) {
  /**
   * The mean of some values.
   *
   * @param before m₀
   * @param trust τ, above 0
   * @param usualScatter standard deviation of single values where nothing is known, above 0
   */
  static MeanFit of(double before, double trust, double usualScatter, double[] values) {
    double mean = Arrays.stream(values).average().orElse(before);
    double squares = Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum();
    Scatter scatter = Scatter.pooled(usualScatter, squares, Math.max(0, values.length - 1));
    double ofBefore = 1 / (trust * trust);
    double ofEntries = values.length / scatter.variance();
    double all = ofBefore + ofEntries;
    return new MeanFit(
        (ofBefore * before + ofEntries * mean) / all, scatter.reach() / Math.sqrt(all));
  }
}
