package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.Kind;
import java.util.Arrays;
import java.util.List;

/**
 * Looks for prices with a low bound: a minute that more batches want than there are brewers or
 * power for becomes dearer, one that is not wanted cheaper.
 *
 * <p>The bound, with its edges rounded off over a width that is halved from stage to stage, is gone
 * down by accelerated steps that start afresh where they lead up: Yu. Nesterov (2005), see {@link
 * SmoothBound}; A. Beck, M. Teboulle, "A fast iterative shrinkage-thresholding algorithm", SIAM
 * Journal on Imaging Sciences 2 (2009); both cited from memory. The bound of whatever prices that
 * leads to is valid.
 */
final class Pricing {
  private static final int STAGES = 10;

  /** The first width, of what a batch that waits a minute loses. */
  private static final double WIDEST = 0.2;

  /** A curvature to begin with; steps that are too long for it are halved. */
  private static final double FLATTEST = 1e-3;

  private static final double STEEPEST = 1e9;

  /** The first steps of a stage are checked, and then each so many. */
  private static final int CAREFUL = 5;

  private static final double NOISE = 1e-12;

  private final RunProblem problem;
  private final List<Leg> legs;
  private final List<Piece> pieces;
  private final int minutes;
  private final SmoothBound smooth;
  private double[] prices;
  private double[] next;
  private final double[] ahead; // where the slope is looked at
  private final double[] slope;
  private final double[] slopeThere;
  private double curvature = FLATTEST;

  private Pricing(RunProblem problem, List<Leg> legs) {
    this.problem = problem;
    this.legs = legs;
    this.pieces = legs.stream().flatMap(leg -> leg.pieces().stream()).toList();
    int latest = pieces.stream().mapToInt(Piece::latestReady).max().orElseThrow();
    int turnaround = problem.kinds().stream().mapToInt(Kind::turnaroundMinutes).max().orElse(0);
    this.minutes = Math.max(1, latest + turnaround - problem.earliestStart());
    this.smooth = new SmoothBound(problem, pieces, CircuitLoads.of(problem), minutes);
    this.prices = new double[smooth.size()];
    this.next = new double[smooth.size()];
    this.ahead = new double[smooth.size()];
    this.slope = new double[smooth.size()];
    this.slopeThere = new double[smooth.size()];
  }

  /**
   * A bound by good prices.
   *
   * @param reached gram-minutes of ready times of a schedule that is known
   * @param rounds steps at the most
   */
  static PriceBound of(RunProblem problem, List<Leg> legs, double reached, int rounds) {
    return new Pricing(problem, legs).descend(reached, rounds);
  }

  private PriceBound descend(double reached, int rounds) {
    double width =
        Math.max(1, WIDEST * pieces.stream().mapToDouble(Piece::grams).average().orElse(1));
    PriceBound best = bound();
    for (int stage = 0; stage < STAGES && best.ofAll() > reached; stage++) {
      stage(width, rounds / STAGES);
      PriceBound here = bound();
      best = here.ofAll() < best.ofAll() ? here : best;
      width /= 2;
      curvature *= 2;
    }
    return best;
  }

  private void stage(double width, int rounds) {
    System.arraycopy(prices, 0, ahead, 0, prices.length);
    double momentum = 1;
    double before = Double.POSITIVE_INFINITY;
    for (int round = 0; round < rounds; round++) {
      double value = step(width, round < CAREFUL || round % CAREFUL == 0);
      boolean up = value > before;
      double more = up ? 1 : (1 + Math.sqrt(1 + 4 * momentum * momentum)) / 2;
      double on = up ? 0 : (momentum - 1) / more;
      for (int i = 0; i < ahead.length; i++) {
        ahead[i] = Math.max(0, next[i] + on * (next[i] - prices[i]));
      }
      double[] last = prices;
      prices = next;
      next = last;
      momentum = more;
      before = value;
    }
  }

  /**
   * Steps down from what is looked at; the value there.
   *
   * @param checked whether the step is made no longer than the curvature allows
   */
  private double step(double width, boolean checked) {
    double value = smooth.at(ahead, width, slope);
    double expected = move(value);
    while (checked
        && smooth.at(next, width, slopeThere) > expected + NOISE * Math.abs(value)
        && curvature < STEEPEST) {
      curvature *= 2;
      expected = move(value);
    }
    curvature *= checked ? 0.9 : 1;
    return value;
  }

  private double move(double value) {
    double expected = value;
    for (int i = 0; i < next.length; i++) {
      next[i] = Math.max(0, ahead[i] - slope[i] / curvature);
      double away = next[i] - ahead[i];
      expected += away * (slope[i] + curvature / 2 * away);
    }
    return expected;
  }

  private PriceBound bound() {
    return new PriceBound(
        problem, legs, new Prices(problem, problem.earliestStart(), rows(0), rows(1)));
  }

  private double[][] rows(int half) {
    int kinds = problem.kinds().size();
    double[][] rows = new double[kinds][];
    for (int kind = 0; kind < kinds; kind++) {
      int start = (half * kinds + kind) * minutes;
      rows[kind] = Arrays.copyOfRange(prices, start, start + minutes);
    }
    return rows;
  }
}
