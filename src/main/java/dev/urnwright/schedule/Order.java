package dev.urnwright.schedule;

import java.util.Comparator;

/**
 * Concentrate for one dispenser, as the clock sees it.
 *
 * @param id of the fill
 * @param grams of concentrate, above 0
 * @param earliestReady a batch ready before this minute would be too old at the last pour
 * @param latestReady a batch ready after this minute would keep the first guest waiting
 */
public record Order(String id, double grams, int earliestReady, int latestReady) {
  /** The order in which concentrate is drawn: first what is due first. */
  public static final Comparator<Order> DUE =
      Comparator.comparingInt(Order::latestReady).thenComparingInt(Order::earliestReady);
}
