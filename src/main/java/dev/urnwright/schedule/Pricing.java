package dev.urnwright.schedule;

import static java.util.Objects.requireNonNull;

import dev.urnwright.schedule.Bargain.Place;
import dev.urnwright.schedule.RunProblem.Kind;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Looks for prices with a low bound: a minute that more batches want than there are brewers or
 * power for becomes dearer, one that is not wanted cheaper.
 *
 * <p>Steps along a subgradient, as long as M. Held, P. Wolfe and H. P. Crowder advise in
 * "Validation of subgradient optimization", Mathematical Programming 6 (1974), with part of the
 * last direction kept; both cited from memory. The bound is valid wherever this stops.
 */
final class Pricing {
  private static final Steps SHORT = new Steps(400, 8, 0.6, true);

  /**
   * How to go down.
   *
   * @param rounds at the most
   * @param patience rounds without a lower bound after which steps are halved
   * @param kept part of the last direction that is kept
   * @param upright whether a direction that a price can't take is forgotten; the first steps are
   *     better so, the last ones worse
   */
  private record Steps(int rounds, int patience, double kept, boolean upright) {
    static Steps of(int rounds) {
      return rounds <= SHORT.rounds()
          ? SHORT
          : new Steps(rounds, Math.max(40, rounds / 50), 0.9, false);
    }
  }

  private final Steps steps;
  private final RunProblem problem;
  private final List<Piece> pieces;
  private final List<CircuitLoads> loads;
  private final int from;
  private final int minutes;
  private final double[][] unit;
  private final double[][] power;
  private final double[][] unitWay;
  private final double[][] powerWay;
  private @Nullable Prices best; // those of the lowest bound so far
  private double bound = Double.POSITIVE_INFINITY;

  private Pricing(RunProblem problem, List<Leg> legs, Steps steps) {
    this.steps = steps;
    this.problem = problem;
    this.pieces = legs.stream().flatMap(leg -> leg.pieces().stream()).toList();
    this.loads = CircuitLoads.of(problem);
    this.from = problem.earliestStart();
    int latest = pieces.stream().mapToInt(Piece::latestReady).max().orElseThrow();
    int turnaround = problem.kinds().stream().mapToInt(Kind::turnaroundMinutes).max().orElse(0);
    this.minutes = Math.max(1, latest + turnaround - from);
    this.unit = new double[problem.kinds().size()][minutes];
    this.power = new double[problem.kinds().size()][minutes];
    this.unitWay = new double[problem.kinds().size()][minutes];
    this.powerWay = new double[problem.kinds().size()][minutes];
  }

  /**
   * A bound by good prices.
   *
   * @param reached gram-minutes of ready times of a schedule that is known
   * @param rounds steps at the most; a short search takes 400 of another kind
   */
  static PriceBound of(RunProblem problem, List<Leg> legs, double reached, int rounds) {
    Pricing pricing = new Pricing(problem, legs, Steps.of(rounds));
    pricing.descend(reached);
    return new PriceBound(problem, legs, requireNonNull(pricing.best, "a first step was taken"));
  }

  private void descend(double reached) {
    double length = 1;
    int since = 0;
    for (int round = 0; round < steps.rounds() && bound > reached; round++) {
      Prices prices = new Prices(problem, from, unit, power);
      double value = relaxed(prices);
      if (value < bound - 1e-6) {
        bound = value;
        best = prices;
        since = 0;
      } else if (++since == steps.patience()) {
        length /= 2;
        since = 0;
      }
      double square = square(unitWay) + square(powerWay);
      if (square == 0) {
        return;
      }
      double step = length * Math.max(0, value - reached) / square;
      move(unit, unitWay, step);
      move(power, powerWay, step);
    }
  }

  /** The bound at some prices; its subgradient is worked into the ways. */
  private double relaxed(Prices prices) {
    scale(unitWay);
    scale(powerWay);
    double value = 0;
    Bargain bargain = new Bargain(problem, prices);
    for (Piece piece : pieces) {
      Place place = bargain.best(piece);
      double batches = piece.batches()[place.at()];
      int k = piece.kinds()[place.at()];
      Kind kind = problem.kinds().get(k);
      int start = place.ready() - kind.brewMinutes();
      add(unitWay[k], start, place.ready() + kind.turnaroundMinutes(), batches);
      add(powerWay[k], start, place.ready(), batches);
      value += place.gain();
    }
    for (int k = 0; k < unit.length; k++) {
      int units = problem.kinds().get(k).units();
      value += units * prices.unitsBefore(k, prices.to());
      add(unitWay[k], from, from + minutes, -units);
    }
    boolean[] limited = new boolean[unit.length];
    for (CircuitLoads circuit : loads) {
      CircuitWorth worth = new CircuitWorth(problem, circuit, prices);
      for (int minute = from; minute < from + minutes; minute++) {
        int[] load = worth.best(minute);
        for (int i = 0; i < load.length; i++) {
          int k = circuit.kinds()[i];
          value += load[i] * prices.power(k, minute);
          powerWay[k][minute - from] -= load[i] * (1 - steps.kept());
          limited[k] = true;
        }
      }
    }
    for (int k = 0; k < limited.length; k++) {
      if (!limited[k]) {
        Arrays.fill(powerWay[k], 0);
      }
    }
    return value;
  }

  private void scale(double[][] way) {
    for (double[] each : way) {
      for (int i = 0; i < each.length; i++) {
        each[i] *= steps.kept();
      }
    }
  }

  private void add(double[] way, int start, int end, double amount) {
    for (int i = Math.max(0, start - from); i < Math.min(end - from, minutes); i++) {
      way[i] += amount * (1 - steps.kept());
    }
  }

  private static double square(double[][] way) {
    double sum = 0;
    for (double[] each : way) {
      for (double x : each) {
        sum += x * x;
      }
    }
    return sum;
  }

  private void move(double[][] prices, double[][] way, double step) {
    for (int k = 0; k < prices.length; k++) {
      for (int i = 0; i < prices[k].length; i++) {
        prices[k][i] = Math.max(0, prices[k][i] + step * way[k][i]);
        if (steps.upright() && prices[k][i] == 0 && way[k][i] < 0) {
          way[k][i] = 0;
        }
      }
    }
  }
}
