package dev.urnwright.brew;

import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How extraction follows the brew ratio, from measured points.
 *
 * <p>One point: a constant. Two or more: the monotone piecewise cubic of Fritsch and Butland, flat
 * outside the measured range. Between rising points the curve rises and nowhere overshoots, which a
 * common spline would.
 *
 * <p>Slopes: F. N. Fritsch and J. Butland, <i>A method for constructing local monotone piecewise
 * cubic interpolants</i>, SIAM J. Sci. Stat. Comput. 5 (1984) 300–304, with the three-point end
 * slopes of the SLATEC routine PCHIM.
 */
public final class ExtractionCurve {
  private final List<Knot> knots;

  private ExtractionCurve(List<Knot> knots) {
    this.knots = knots;
  }

  /**
   * One measured point with the curve's slope there.
   *
   * @param ratio brew water over dose
   * @param extraction measured at that ratio
   * @param slope of the extraction, as a fraction, for each gram per gram of ratio
   */
  public record Knot(BrewRatio ratio, Extraction extraction, double slope) {
    private double x() {
      return ratio.gramsPerGram();
    }

    private double y() {
      return extraction.fraction();
    }
  }

  /** The same extraction at every ratio. */
  public static ExtractionCurve constant(BrewRatio measuredAt, Extraction extraction) {
    return new ExtractionCurve(List.of(new Knot(measuredAt, extraction, 0)));
  }

  /**
   * A curve through measured points; the slopes of the given knots are ignored.
   *
   * @param points one or more, of distinct ratios, in any order
   * @throws IllegalArgumentException if there is none, or two have the same ratio
   */
  public static ExtractionCurve through(List<Knot> points) {
    List<Knot> sorted = points.stream().sorted(Comparator.comparing(Knot::ratio)).toList();
    if (sorted.isEmpty()) {
      throw new IllegalArgumentException("a curve needs one point or more");
    }
    for (int i = 1; i < sorted.size(); i++) {
      if (sorted.get(i).x() <= sorted.get(i - 1).x()) {
        throw new IllegalArgumentException(
            "two points have the ratio 1:" + sorted.get(i).x() + ", and only one can hold");
      }
    }
    return new ExtractionCurve(withSlopes(sorted));
  }

  /** The measured points, in rising order of their ratios. */
  public List<Knot> knots() {
    return knots;
  }

  /** Whether the ratio lies between measured points. Only a curve of several points has a range. */
  public boolean covers(BrewRatio ratio) {
    return ratio.compareTo(knots.get(0).ratio()) >= 0
        && ratio.compareTo(knots.get(knots.size() - 1).ratio()) <= 0;
  }

  /** The extraction at a ratio; outside the measured range that of the nearest point. */
  public Extraction at(BrewRatio ratio) {
    return Extraction.ofFraction(at(ratio.gramsPerGram()));
  }

  double at(double x) {
    int last = knots.size() - 1;
    if (x <= knots.get(0).x()) {
      return knots.get(0).y();
    }
    if (x >= knots.get(last).x()) {
      return knots.get(last).y();
    }
    int i = 0;
    while (x > knots.get(i + 1).x()) {
      i++;
    }
    return hermite(knots.get(i), knots.get(i + 1), x);
  }

  /** The cubic that has both ends' values and slopes. */
  private static double hermite(Knot from, Knot to, double x) {
    double h = to.x() - from.x();
    double s = (x - from.x()) / h;
    double t = 1 - s;
    return from.y() * t * t * (1 + 2 * s)
        + to.y() * s * s * (1 + 2 * t)
        + h * s * t * (from.slope() * t - to.slope() * s);
  }

  private static List<Knot> withSlopes(List<Knot> points) {
    int n = points.size();
    double[] h = new double[Math.max(n - 1, 0)];
    double[] chord = new double[h.length];
    for (int i = 0; i < h.length; i++) {
      h[i] = points.get(i + 1).x() - points.get(i).x();
      chord[i] = (points.get(i + 1).y() - points.get(i).y()) / h[i];
    }
    return IntStream.range(0, n)
        .mapToObj(
            i -> new Knot(points.get(i).ratio(), points.get(i).extraction(), slope(i, n, h, chord)))
        .toList();
  }

  private static double slope(int i, int n, double[] h, double[] chord) {
    if (n == 1) {
      return 0;
    }
    if (n == 2) {
      return chord[0];
    }
    if (i == 0) {
      return endSlope(h[0], h[1], chord[0], chord[1]);
    }
    if (i == n - 1) {
      return endSlope(h[n - 2], h[n - 3], chord[n - 2], chord[n - 3]);
    }
    if (chord[i - 1] * chord[i] <= 0) {
      return 0; // a peak, a dip or a plateau: flat, or the curve would overshoot it
    }
    double before = 2 * h[i] + h[i - 1];
    double after = h[i] + 2 * h[i - 1];
    return (before + after) / (before / chord[i - 1] + after / chord[i]);
  }

  /** The slope of the parabola through the three end points, bent back where it isn't monotone. */
  private static double endSlope(double h0, double h1, double chord0, double chord1) {
    double slope = ((2 * h0 + h1) * chord0 - h0 * chord1) / (h0 + h1);
    if (slope * chord0 <= 0) {
      return 0;
    }
    if (chord0 * chord1 < 0 && Math.abs(slope) > 3 * Math.abs(chord0)) {
      return 3 * chord0;
    }
    return slope;
  }
}
