package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.Kind;

/**
 * What a minute of a brewer is worth at each moment of the day, in grams: so many gram-minutes of
 * waiting could be spared for one minute more of it. Prices of a bound, none of them negative, and
 * of power none but where {@link CircuitLoads} are; any such prices give a valid one, good prices a
 * close one.
 *
 * <p>A batch pays for its brewer from its start until the brewer is ready again, and for its power
 * while it brews.
 */
final class Prices {
  /** Prices are whole multiples of this, so that sums of whole grams times prices are exact. */
  private static final double STEP = 1.0 / 1024;

  private final RunProblem problem;
  private final int from;
  private final int to;
  private final double[][] power;
  private final double[][] unitsUpTo; // [kind][minute]: of all minutes before it
  private final double[][] batch; // [kind][minute]: what one pays that is ready then

  /**
   * Prices.
   *
   * @param from the first minute that has one
   * @param unit for each kind and minute from there on
   * @param power for each kind and minute from there on; 0 for a kind that no circuit limits
   */
  Prices(RunProblem problem, int from, double[][] unit, double[][] power) {
    this.problem = problem;
    this.from = from;
    this.to = from + unit[0].length;
    this.power = new double[power.length][];
    this.unitsUpTo = new double[unit.length][];
    this.batch = new double[unit.length][];
    for (int kind = 0; kind < unit.length; kind++) {
      this.power[kind] = inSteps(power[kind]);
      unitsUpTo[kind] = summed(inSteps(unit[kind]));
      batch[kind] = ofBatches(kind, summed(this.power[kind]));
    }
  }

  private static double[] inSteps(double[] prices) {
    double[] rounded = new double[prices.length];
    for (int i = 0; i < rounded.length; i++) {
      rounded[i] = Math.rint(prices[i] / STEP) * STEP;
    }
    return rounded;
  }

  private static double[] summed(double[] prices) {
    double[] sums = new double[prices.length + 1];
    for (int i = 0; i < prices.length; i++) {
      sums[i + 1] = sums[i] + prices[i];
    }
    return sums;
  }

  int from() {
    return from;
  }

  /** The minute after the last that has a price. */
  int to() {
    return to;
  }

  /** The price of a kind's power in a minute. */
  double power(int kind, int minute) {
    return power[kind][minute - from];
  }

  private double[] ofBatches(int kind, double[] powerUpTo) {
    Kind brewer = problem.kinds().get(kind);
    double[] all = new double[powerUpTo.length];
    for (int ready = from; ready <= to; ready++) {
      int start = ready - brewer.brewMinutes();
      all[ready - from] =
          unitsBefore(kind, ready + brewer.turnaroundMinutes())
              - unitsBefore(kind, start)
              + powerUpTo[at(ready)]
              - powerUpTo[at(start)];
    }
    return all;
  }

  /** What a batch pays that is ready at a minute, one from the first to the last that is priced. */
  double ofBatch(int kind, int ready) {
    return batch[kind][ready - from];
  }

  /** What one brewer of a kind is worth in all minutes before this one. */
  double unitsBefore(int kind, int minute) {
    return unitsUpTo[kind][at(minute)];
  }

  private int at(int minute) {
    return Math.max(0, Math.min(minute, to) - from);
  }
}
