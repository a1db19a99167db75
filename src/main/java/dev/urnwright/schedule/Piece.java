package dev.urnwright.schedule;

import java.util.Arrays;

/**
 * A part of a leg's orders that is brewed at one moment, as a bound sees it: one batch, or, where
 * batches of several sizes may come in any order, one order that takes its share of a batch.
 *
 * @param grams that wait from the moment they are ready
 * @param kinds that may brew it
 * @param batches that it takes on each of these kinds, at the least: 1, or a share of one
 * @param earliestReady minute
 * @param latestReady minute
 */
record Piece(double grams, int[] kinds, double[] batches, int earliestReady, int latestReady) {
  /** The piece that is one whole batch. */
  static Piece of(Leg.Choice choice) {
    double[] batches = new double[choice.kinds().length];
    Arrays.fill(batches, 1);
    return new Piece(
        choice.grams(), choice.kinds(), batches, choice.earliestReady(), choice.latestReady());
  }
}
