package dev.urnwright.learn;

import java.util.Arrays;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * A straight line through points, shrunk to none at all while they are few: least squares where
 * what is believed before takes part as two observations more, a height of 0 ± τ and a slope of 0 ±
 * κ.
 *
 * <p>With the points' x centred on their mean and each row divided by its standard deviation, this
 * is the normal-normal posterior of height and slope. A. Gelman and others, <i>Bayesian Data
 * Analysis</i>, 3rd edition 2013, section 14.8 (from memory).
 */
final class LineFit {
  /** Points nearer to each other than this in x say nothing of a slope. */
  private static final double SAME = 1e-6;

  private final double centre;
  private final double least;
  private final double greatest;
  private final RealVector line;
  private final RealMatrix covariance;
  private final double studentReach;

  /**
   * What the points may do.
   *
   * @param height τ, standard deviation of the prior for the height
   * @param slope κ, the same for the slope
   * @param scatter usual standard deviation of single points
   */
  record Trust(double height, double slope, double scatter) {}

  /**
   * Fits.
   *
   * @param x of one or more points
   * @param y of the same
   */
  LineFit(Trust trust, double[] x, double[] y) {
    this.centre = Arrays.stream(x).average().orElseThrow();
    this.least = Arrays.stream(x).min().orElseThrow();
    this.greatest = Arrays.stream(x).max().orElseThrow();
    Scatter scatter = scatter(trust.scatter(), x, y);
    double each = Math.sqrt(scatter.variance());
    double[][] rows = new double[x.length + 2][];
    double[] sides = new double[x.length + 2];
    for (int i = 0; i < x.length; i++) {
      rows[i] = new double[] {1 / each, (x[i] - centre) / each};
      sides[i] = y[i] / each;
    }
    rows[x.length] = new double[] {1 / trust.height(), 0};
    rows[x.length + 1] = new double[] {0, 1 / trust.slope()};
    OLSMultipleLinearRegression squares = new OLSMultipleLinearRegression();
    squares.setNoIntercept(true);
    squares.newSampleData(sides, rows);
    this.line = MatrixUtils.createRealVector(squares.estimateRegressionParameters());
    this.covariance = MatrixUtils.createRealMatrix(squares.estimateRegressionParametersVariance());
    this.studentReach = scatter.reach();
  }

  /** About the plain least-squares line, or about the mean where all points have one x. */
  private Scatter scatter(double usual, double[] x, double[] y) {
    SimpleRegression plain = new SimpleRegression();
    for (int i = 0; i < x.length; i++) {
      plain.addData(x[i], y[i]);
    }
    return x.length > 1 && greatest - least > SAME
        ? Scatter.pooled(usual, Math.max(0, plain.getSumSquaredErrors()), x.length - 2)
        : Scatter.pooled(
            usual, x.length > 1 ? plain.getTotalSumSquares() : 0, Math.max(0, x.length - 1));
  }

  /** The least x of the points. */
  double least() {
    return least;
  }

  /** The greatest. */
  double greatest() {
    return greatest;
  }

  /** The line's height; outside the points' range that at its nearer end. */
  double at(double x) {
    return line.dotProduct(row(x));
  }

  /** Half of the interval at 95 % there. */
  double reachAt(double x) {
    RealVector row = row(x);
    return studentReach * Math.sqrt(covariance.operate(row).dotProduct(row));
  }

  private RealVector row(double x) {
    return MatrixUtils.createRealVector(
        new double[] {1, Math.min(greatest, Math.max(least, x)) - centre});
  }
}
