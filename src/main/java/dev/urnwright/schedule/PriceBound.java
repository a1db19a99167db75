package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A bound on the gram-minutes of ready times, by prices for brewers and power.
 *
 * <p>Let every batch pay for the brewer and the power it takes, and let what has been left unused
 * be paid back at the same prices. Whatever a schedule does, at no minute does it use more than
 * there is, so with prices that are not negative this only adds to its value. And then nothing
 * holds the batches together any more: each can be ready when that is best for it alone, and each
 * minute's power can go to the load that is worth most. What comes out so is no less than what any
 * schedule reaches.
 *
 * <p>This is the Lagrangian relaxation of capacity in a time-indexed model, see M. L. Fisher, "The
 * Lagrangian Relaxation Method for Solving Integer Programming Problems", Management Science 27
 * (1981); cited from memory.
 */
final class PriceBound {
  private final RunProblem problem;
  private final Prices prices;
  private final List<PricedPieces> legs = new ArrayList<>();
  private final List<CircuitWorth> circuits = new ArrayList<>();
  private final int[] firstUnit;

  PriceBound(RunProblem problem, List<Leg> legs, Prices prices) {
    this.problem = problem;
    this.prices = prices;
    Bargain bargain = new Bargain(problem, prices);
    legs.forEach(leg -> this.legs.add(new PricedPieces(leg.pieces(), bargain)));
    CircuitLoads.of(problem).forEach(l -> circuits.add(new CircuitWorth(problem, l, prices)));
    this.firstUnit = new int[problem.kinds().size()];
    for (int kind = 1; kind < firstUnit.length; kind++) {
      firstUnit[kind] = firstUnit[kind - 1] + problem.kinds().get(kind - 1).units();
    }
  }

  /** The most that any schedule reaches. */
  double ofAll() {
    int[] free = new int[problem.kinds().stream().mapToInt(Kind::units).sum()];
    Arrays.fill(free, BackwardSearch.FREE);
    double bound = ofCapacity(free, prices.to());
    for (PricedPieces leg : legs) {
      bound += leg.best(leg.count(), prices.to());
    }
    return bound;
  }

  /** The most that a leg's first pieces add, nothing ready after a minute. */
  double ofLeg(int leg, double pieces, int last) {
    return legs.get(leg).best(pieces, last);
  }

  /**
   * What brewers and power that are left are worth.
   *
   * @param free for each unit, the minute until which it can be used
   * @param last no further batch is ready after this minute
   */
  double ofCapacity(int[] free, int last) {
    double worth = 0;
    for (int kind = 0; kind < firstUnit.length; kind++) {
      Kind brewer = problem.kinds().get(kind);
      for (int unit = 0; unit < brewer.units(); unit++) {
        worth +=
            prices.unitsBefore(kind, free[firstUnit[kind] + unit] + brewer.turnaroundMinutes());
      }
    }
    for (CircuitWorth circuit : circuits) {
      worth += circuit.left(free, firstUnit, last);
    }
    return worth;
  }
}
