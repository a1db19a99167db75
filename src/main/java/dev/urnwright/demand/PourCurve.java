package dev.urnwright.demand;

import dev.urnwright.event.GuestGroup.Arrivals;
import dev.urnwright.event.GuestGroup.Arrivals.Shape;

/**
 * When a group's cups are poured: the share of them poured by each minute, from none at the start
 * of its window to all at the end.
 *
 * <p>With {@code s} the part of the window that has passed, from 0 to 1, guests who come evenly
 * have drunk {@code s}, early ones {@code s(4 − s)/3}, late ones {@code s(s + 2)/3}: twice as many
 * at the busy end as at the other, and a steady change between. Explicit shares are even within
 * each of their intervals.
 */
public final class PourCurve {
  private final double start;
  private final double length;
  private final double[] cumulative; // at the ends of equal intervals; empty for a formula
  private final Shape shape;

  private PourCurve(double start, double end, Shape shape, double[] cumulative) {
    if (!(end >= start)) {
      throw new IllegalArgumentException("a window ends after it starts: " + start + ", " + end);
    }
    this.start = start;
    this.length = end - start;
    this.shape = shape;
    this.cumulative = cumulative;
  }

  /**
   * When a group's cups are poured.
   *
   * @param start minute of the first cup
   * @param end minute of the last one, not before {@code start}
   * @param arrivals how the guests spread; listed shares must add up to more than nothing
   */
  public static PourCurve of(double start, double end, Arrivals arrivals) {
    double[] cumulative = new double[arrivals.shares().size()];
    double sum = 0;
    for (int i = 0; i < cumulative.length; i++) {
      sum += arrivals.shares().get(i).fraction();
      cumulative[i] = sum;
    }
    if (cumulative.length > 0 && !(sum > 0)) {
      throw new IllegalArgumentException("nobody comes in any part of the window: " + arrivals);
    }
    for (int i = 0; i < cumulative.length; i++) {
      cumulative[i] /= sum; // the last is 1, exactly
    }
    return new PourCurve(start, end, arrivals.shape(), cumulative);
  }

  /** The share of the cups poured by a minute, from 0 to 1. */
  public double pouredBy(double minute) {
    if (minute < start) {
      return 0;
    }
    if (minute >= start + length) {
      return 1;
    }
    double s = (minute - start) / length;
    return switch (shape) {
      case EVEN -> s;
      case EARLY -> s * (4 - s) / 3;
      case LATE -> s * (s + 2) / 3;
      case LISTED -> listedBy(s);
    };
  }

  /**
   * The minute by which a share of the cups has been poured.
   *
   * @param share from 0 to 1
   */
  public double minuteOf(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share lies between 0 and 1: " + share);
    }
    double s =
        switch (shape) {
          case EVEN -> share;
          case EARLY -> 2 - Math.sqrt(4 - 3 * share);
          case LATE -> Math.sqrt(1 + 3 * share) - 1;
          case LISTED -> listedAt(share);
        };
    return start + s * length;
  }

  /** The greatest share of the cups poured in a minute; infinite when all are poured at once. */
  public double greatestRate() {
    double timesEven =
        switch (shape) {
          case EVEN -> 1;
          case EARLY, LATE -> 4.0 / 3;
          case LISTED -> greatestListed() * cumulative.length;
        };
    return timesEven / length;
  }

  /**
   * The longest that a guest waits when cups can be poured no faster than at a rate. A guest who
   * comes at {@code t} waits until all who came before are served: {@code max over r ≤ t of (P(t) −
   * P(r))/rate − (t − r)}, with {@code P} the share that has come.
   *
   * @param rate share of the cups in a minute, above 0
   * @return minutes
   */
  public double longestWait(double rate) {
    int parts = 240;
    double least = Double.POSITIVE_INFINITY;
    double longest = 0;
    for (int part = 0; part <= parts; part++) {
      double after = length * part / parts;
      double served = (part == 0 ? 0 : pouredBy(start + after)) / rate - after;
      least = Math.min(least, served);
      longest = Math.max(longest, served - least);
    }
    return longest;
  }

  private double greatestListed() {
    double greatest = 0;
    for (int i = 0; i < cumulative.length; i++) {
      greatest = Math.max(greatest, cumulative[i] - (i == 0 ? 0 : cumulative[i - 1]));
    }
    return greatest;
  }

  private double listedBy(double s) {
    double at = s * cumulative.length;
    int i = (int) at;
    double before = i == 0 ? 0 : cumulative[i - 1];
    return before + (at - i) * (cumulative[i] - before);
  }

  private double listedAt(double share) {
    int i = 0;
    while (cumulative[i] < share) {
      i++;
    }
    double before = i == 0 ? 0 : cumulative[i - 1];
    double within = cumulative[i] > before ? (share - before) / (cumulative[i] - before) : 0;
    return (i + within) / cumulative.length;
  }
}
