package dev.urnwright.schedule;

import java.util.Comparator;
import java.util.List;

/**
 * Batches on a clock.
 *
 * @param batches in the order in which they are ready
 * @param waitGramMinutes how long beverage waits between being ready and being due, in all
 * @param proof how good that is
 */
public record RunSolution(List<TimedBatch> batches, double waitGramMinutes, Proof proof) {
  /** Sorts and copies the list. */
  public RunSolution {
    batches =
        batches.stream()
            .sorted(
                Comparator.comparingInt(TimedBatch::ready)
                    .thenComparingInt(TimedBatch::start)
                    .thenComparingInt(TimedBatch::kind)
                    .thenComparingInt(TimedBatch::unit))
            .toList();
  }

  /**
   * One batch on one brewer.
   *
   * @param coffee index in the problem
   * @param kind index in the problem
   * @param unit counted from 0 within the kind
   * @param doseSteps dose in scale steps
   * @param start minute
   * @param ready minute, {@code start} and the kind's brewing time
   * @param drawnGrams of its beverage; the rest is more than anyone ordered
   */
  public record TimedBatch(
      int coffee, int kind, int unit, long doseSteps, int start, int ready, double drawnGrams) {
    /** The same with another dose. */
    public TimedBatch withDose(long steps) {
      return new TimedBatch(coffee, kind, unit, steps, start, ready, drawnGrams);
    }
  }

  /**
   * What is known of the optimum.
   *
   * @param fewestBatches whether no schedule has fewer batches
   * @param leastWait whether none with batches of these sizes, in this order of sizes, waits less
   * @param waitBound a wait that none of them goes below, gram minutes
   */
  public record Proof(boolean fewestBatches, boolean leastWait, double waitBound) {}
}
