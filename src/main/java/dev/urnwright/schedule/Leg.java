package dev.urnwright.schedule;

import java.util.List;
import java.util.Optional;

/**
 * One run of orders whose batches the search places, from the last one back to the first.
 *
 * <p>How far it has come stands in a few numbers of the search's state; a leg reads and never
 * writes them.
 */
sealed interface Leg permits SizedLeg, FullLeg, FixedLeg {
  /** Index of the coffee. */
  int coffee();

  /** How many numbers it keeps in a state. */
  int numbers();

  /** Whether all its orders are served. */
  boolean isDone(long[] progress, int offset);

  /** What the next batch back may be; never empty while the leg isn't done. */
  List<Choice> choices(long[] progress, int offset);

  /** The gram-minutes that no way of placing what is left exceeds, nothing ready after a minute. */
  double bound(long[] progress, int offset, int last);

  /** What is brewed, in the order in which it is due, for a bound by prices. */
  List<Piece> pieces();

  /** How many pieces are left, the first ones; of the last of them perhaps a part. */
  double piecesLeft(long[] progress, int offset);

  /**
   * A measure of the grams of all batches still to come: each brings a whole multiple of it.
   *
   * @return 0 when there is none
   */
  default double measure(long[] progress, int offset) {
    return 0;
  }

  /** Whether orders that can't be served are let go. */
  default boolean letsGo() {
    return false;
  }

  /** Whether it also lets go of an order that could be served. */
  default boolean letsGoFreely() {
    return false;
  }

  /**
   * How to go on without the next order back.
   *
   * @return empty when every order must be served
   */
  default Optional<Released> release(long[] progress, int offset) {
    return Optional.empty();
  }

  /**
   * An order that is let go.
   *
   * @param order the last of those that are left
   * @param by how far that moves the leg's number
   */
  record Released(Order order, long by) {}

  /** No batch that is left is ready after this minute. */
  int due(long[] progress, int offset);

  /**
   * One batch and what it serves.
   *
   * @param kinds that may brew it
   * @param doseSteps its dose
   * @param number which of the leg's numbers it moves
   * @param by how far
   * @param grams drawn from it, at most its beverage
   * @param earliestReady from the orders it serves
   * @param latestReady from the first of them
   */
  record Choice(
      int[] kinds,
      long doseSteps,
      int number,
      long by,
      double grams,
      int earliestReady,
      int latestReady) {}
}
