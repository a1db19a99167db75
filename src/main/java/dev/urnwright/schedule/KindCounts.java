package dev.urnwright.schedule;

import java.util.ArrayList;
import java.util.List;

/** The ways to give so many batches to several kinds of brewer so that their doses can add up. */
final class KindCounts {
  /** Beyond so many tries a further way is no better in practice. */
  private static final int ENOUGH = 100_000;

  private final List<DoseRange> ranges;
  private final long from;
  private final long to;
  private final long[] smallest;
  private final long[] largest;
  private final List<long[]> found = new ArrayList<>();
  private int tries;

  private KindCounts(List<DoseRange> ranges, long from, long to) {
    this.ranges = ranges;
    this.from = from;
    this.to = to;
    this.smallest = new long[ranges.size()];
    this.largest = new long[ranges.size()];
    for (int kind = ranges.size() - 1; kind >= 0; kind--) {
      boolean last = kind == ranges.size() - 1;
      DoseRange range = ranges.get(kind);
      smallest[kind] = last ? range.least() : Math.min(range.least(), smallest[kind + 1]);
      largest[kind] = last ? range.greatest() : Math.max(range.greatest(), largest[kind + 1]);
    }
  }

  /**
   * All ways in which some total between {@code from} and {@code to} steps can be brewed.
   *
   * @return for each way the number of batches of each range, adding up to {@code batches}
   */
  static List<long[]> all(long batches, List<DoseRange> ranges, long from, long to) {
    KindCounts search = new KindCounts(ranges, from, to);
    search.extend(new long[ranges.size()], 0, batches, 0, 0);
    return search.found;
  }

  /** What these numbers of batches brew at the least. */
  static long leastOf(long[] counts, List<DoseRange> ranges) {
    long sum = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      sum += counts[kind] * ranges.get(kind).least();
    }
    return sum;
  }

  private void extend(long[] counts, int kind, long left, long least, long greatest) {
    if (++tries > ENOUGH || !canAddUp(kind, left, least, greatest)) {
      return;
    }
    DoseRange range = ranges.get(kind);
    if (kind == counts.length - 1) {
      counts[kind] = left;
      found.add(counts.clone());
      return;
    }
    for (long n = 0; n <= left; n++) {
      counts[kind] = n;
      extend(
          counts, kind + 1, left - n, least + n * range.least(), greatest + n * range.greatest());
    }
  }

  /**
   * Whether the batches left, all of the kinds left that suit best, could bring the total about.
   */
  private boolean canAddUp(int kind, long left, long least, long greatest) {
    return least + left * smallest[kind] <= to && greatest + left * largest[kind] >= from;
  }
}
