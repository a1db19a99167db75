package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.Kind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the power that a circuit has left is worth at given prices. */
final class CircuitWorth {
  private final RunProblem problem;
  private final CircuitLoads loads;
  private final Prices prices;
  private final Map<Integer, double[]> beside = new HashMap<>(); // for the number of a load

  CircuitWorth(RunProblem problem, CircuitLoads loads, Prices prices) {
    this.problem = problem;
    this.loads = loads;
    this.prices = prices;
  }

  /**
   * The worth of what is left beside the brewers that run. Looking back from the last minute, each
   * runs until its start; between two starts the same load stays.
   *
   * @param free for each unit, the minute until which it can still be used
   * @param firstUnit of each kind
   * @param last no further batch is ready after this minute
   */
  double left(int[] free, int[] firstUnit, int last) {
    int[] kinds = loads.kinds();
    int[] running = new int[kinds.length];
    int[] starts = new int[kinds.length]; // the latest start among a kind's running brewers
    for (int i = 0; i < kinds.length; i++) {
      Kind kind = problem.kinds().get(kinds[i]);
      for (int unit = 0; unit < kind.units(); unit++) {
        if (free[firstUnit[kinds[i]] + unit] + kind.turnaroundMinutes() < last) {
          running[i]++;
        }
      }
      starts[i] = latestStart(i, running[i], free, firstUnit);
    }
    double worth = 0;
    int until = last;
    while (true) {
      int next = 0;
      for (int i = 1; i < kinds.length; i++) {
        next = starts[i] > starts[next] ? i : next;
      }
      double[] row = row(running);
      worth += row[at(until)];
      if (running[next] == 0) {
        return worth;
      }
      until = starts[next];
      worth -= row[at(until)];
      running[next]--;
      starts[next] = latestStart(next, running[next], free, firstUnit);
    }
  }

  /** The latest start among so many of a kind's brewers, those that started first. */
  private int latestStart(int i, int running, int[] free, int[] firstUnit) {
    int kind = loads.kinds()[i];
    Kind brewer = problem.kinds().get(kind);
    return running == 0
        ? Integer.MIN_VALUE
        : free[firstUnit[kind] + brewer.units() - running] + brewer.turnaroundMinutes();
  }

  private int at(int minute) {
    return Math.max(0, Math.min(minute, prices.to()) - prices.from());
  }

  private double[] row(int[] running) {
    return beside.computeIfAbsent(loads.number(running), number -> upTo(running));
  }

  /** For each minute, the best loads beside the running one in all minutes before it. */
  private double[] upTo(int[] running) {
    List<int[]> possible = loads.beside(running, problem.kinds());
    double[] sums = new double[prices.to() - prices.from() + 1];
    for (int i = 1; i < sums.length; i++) {
      sums[i] = sums[i - 1] + best(possible, prices.from() + i - 1);
    }
    return sums;
  }

  /** The worth of the load that is worth most in a minute; at the least of none. */
  private double best(List<int[]> possible, int minute) {
    double best = 0;
    if (isPriced(minute)) {
      for (int[] load : possible) {
        best = Math.max(best, worth(load, minute));
      }
    }
    return best;
  }

  private boolean isPriced(int minute) {
    for (int kind : loads.kinds()) {
      if (prices.power(kind, minute) > 0) {
        return true;
      }
    }
    return false;
  }

  private double worth(int[] load, int minute) {
    double worth = 0;
    for (int i = 0; i < load.length; i++) {
      worth += load[i] * prices.power(loads.kinds()[i], minute);
    }
    return worth;
  }
}
