package dev.urnwright.schedule;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where a backward search has come to: what is placed, and when brewers are free for what is not.
 * Only {@link BackwardSearch} changes one, before it joins a layer.
 */
final class SearchState {

  final long[] progress; // of all legs
  int last; // no further batch is ready after this minute
  final int[]
      free; // for each unit, the minute until which it can still be used; falling in each kind
  double value;
  int firstStart = BackwardSearch.FREE;
  double bound;
  double most; // that can still come of it, no more than its bound
  @Nullable Placement placements; // the earliest, with those after it
  @Nullable LeftOut leftOut; // the earliest order that was let go, with those after it

  SearchState(long[] progress, int[] free) {
    this.progress = progress;
    this.free = free;
  }

  /** The batch placed last; only the beginning of a search has none. */
  Placement placed() {
    return requireNonNull(placements, "a batch was placed");
  }

  /** The same with an order let go, of which each gram counts so many minutes less. */
  SearchState without(Order order, double minutes) {
    SearchState child = new SearchState(progress.clone(), free.clone());
    child.last = last;
    child.value = value - order.grams() * minutes;
    child.firstStart = firstStart;
    child.placements = placements;
    child.leftOut = new LeftOut(leftOut, order);
    return child;
  }

  /**
   * Orders that no batch serves.
   *
   * @param later let go before it; null for the last one of the day
   */
  record LeftOut(@Nullable LeftOut later, Order order) {
    /** All of them, the earliest first. */
    static List<Order> orders(@Nullable LeftOut first) {
      List<Order> orders = new ArrayList<>();
      for (LeftOut each = first; each != null; each = each.later) {
        orders.add(each.order);
      }
      return orders;
    }
  }

  /** How far all legs have come, as a key. */
  record Progress(long[] numbers) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Progress progress && Arrays.equals(progress.numbers, numbers);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(numbers);
    }
  }

  Progress key() {
    return new Progress(progress);
  }

  /**
   * Joins states that have come as far, unless one is as good in every way; removes those it
   * outdoes.
   */
  void joins(List<SearchState> states) {
    for (SearchState state : states) {
      if (state.outdoes(this)) {
        return;
      }
    }
    states.removeIf(this::outdoes);
    states.add(this);
  }

  private boolean outdoes(SearchState other) {
    if (last < other.last
        || value < other.value - BackwardSearch.SAME
        || (value <= other.value + BackwardSearch.SAME && firstStart < other.firstStart)) {
      return false;
    }
    for (int unit = 0; unit < free.length; unit++) {
      if (free[unit] < other.free[unit]) {
        return false;
      }
    }
    return true;
  }
}
