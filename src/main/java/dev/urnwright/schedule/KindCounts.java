package dev.urnwright.schedule;

import java.util.ArrayList;
import java.util.List;

/** The ways to give so many batches to several kinds of brewer so that their doses can add up. */
final class KindCounts {
  /** Beyond this many ways a further one is no better in practice. */
  private static final int ENOUGH = 100_000;

  private final List<DoseRange> ranges;
  private final long steps;
  private final List<long[]> found = new ArrayList<>();

  private KindCounts(long steps, List<DoseRange> ranges) {
    this.steps = steps;
    this.ranges = ranges;
  }

  static List<long[]> all(long batches, int kinds, long steps, List<DoseRange> ranges) {
    KindCounts search = new KindCounts(steps, ranges);
    search.extend(new long[kinds], 0, batches, 0, 0);
    return search.found;
  }

  private void extend(long[] counts, int kind, long left, long least, long greatest) {
    if (found.size() >= ENOUGH || least > steps) {
      return;
    }
    DoseRange range = ranges.get(kind);
    if (kind == counts.length - 1) {
      if (least + left * range.least() <= steps && greatest + left * range.greatest() >= steps) {
        counts[kind] = left;
        found.add(counts.clone());
      }
      return;
    }
    for (long n = 0; n <= left; n++) {
      counts[kind] = n;
      extend(
          counts, kind + 1, left - n, least + n * range.least(), greatest + n * range.greatest());
    }
  }
}
