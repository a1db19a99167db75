package dev.urnwright.schedule;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Searching that may still be done. It is counted, not timed, so that the same problem gets the
 * same answer on every machine: a batch put on the clock by way of trial counts once for each
 * number that tells where such a search has come to.
 */
public final class Effort {
  /** What one search is to cost at the most: some tenths of a second. */
  private static final long ONE_SEARCH = 3_000_000;

  private long left;

  private Effort(long left) {
    this.left = left;
  }

  /** So much, above 0. */
  public static Effort of(long amount) {
    if (amount <= 0) {
      throw new IllegalArgumentException("an effort above 0, not " + amount);
    }
    return new Effort(amount);
  }

  static Effort unlimited() {
    return new Effort(Long.MAX_VALUE);
  }

  /** Whether nothing is left: what was not found until now is not known to be impossible. */
  public boolean isSpent() {
    return left <= 0;
  }

  /** Takes something off, down to nothing. */
  public void spend(long amount) {
    left = Math.max(0, left - amount);
  }

  /**
   * How many states a search can keep at that cost.
   *
   * @param most that are of use
   * @return 1 or more
   */
  static int width(RunProblem problem, List<Leg> legs, int most) {
    double batches =
        legs.stream()
            .flatMap(leg -> leg.pieces().stream())
            .mapToDouble(piece -> 1 + DoubleStream.of(piece.batches()).min().orElse(0))
            .sum();
    long units = problem.kinds().stream().mapToLong(RunProblem.Kind::units).sum();
    long choices = (long) problem.coffees().size() * problem.kinds().size();
    double each = Math.max(1, batches * choices * (units + 2L * legs.size()));
    return (int) Math.max(1, Math.min(most, ONE_SEARCH / each));
  }
}
