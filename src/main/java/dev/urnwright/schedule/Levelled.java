package dev.urnwright.schedule;

import dev.urnwright.event.Brewer;
import dev.urnwright.quantity.Mass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.LongStream;

/**
 * The most equal doses for given numbers of batches of each kind: every batch at the same level,
 * but for the kinds whose range doesn't reach it.
 *
 * @param counts batches of each range
 * @param ranges the kinds
 * @param total of all doses, in steps
 * @param level the lowest at which the doses are enough, in steps
 * @param lowered how many of the doses at the level are one step less, to come out at the total
 */
record Levelled(long[] counts, List<DoseRange> ranges, long total, long level, long lowered) {
  static Levelled of(long total, long[] counts, List<DoseRange> ranges) {
    long low = 0;
    long high = ranges.stream().mapToLong(DoseRange::greatest).max().orElseThrow();
    while (low < high) {
      long level = (low + high) / 2;
      if (sum(level, counts, ranges) >= total) {
        high = level;
      } else {
        low = level + 1;
      }
    }
    return new Levelled(counts, ranges, total, low, sum(low, counts, ranges) - total);
  }

  /** The difference between the largest and the smallest dose. */
  long spread() {
    long greatest = 0; // were all at the level lowered, it would be lower
    long least = Long.MAX_VALUE;
    for (int kind = 0; kind < counts.length; kind++) {
      if (counts[kind] > 0) {
        long dose = at(level, ranges.get(kind));
        greatest = Math.max(greatest, dose);
        least = Math.min(least, loweredOf(kind, lowered) > 0 ? dose - 1 : dose);
      }
    }
    return greatest - least;
  }

  /** The batches, larger doses first. */
  List<BatchSplit.Share> shares(Mass step) {
    List<BatchSplit.Share> shares = new ArrayList<>();
    for (int kind = 0; kind < counts.length; kind++) {
      List<Brewer> brewer = List.of(ranges.get(kind).brewer());
      for (long dose : doses(kind)) {
        shares.add(new BatchSplit.Share(step.times(dose), brewer));
      }
    }
    shares.sort(Comparator.comparing(BatchSplit.Share::dose).reversed());
    return shares;
  }

  /** The doses of one kind, the least first. */
  long[] doses(int wanted) {
    long toLower = lowered;
    for (int kind = 0; kind < wanted; kind++) {
      toLower -= loweredOf(kind, toLower);
    }
    long here = loweredOf(wanted, toLower);
    long dose = at(level, ranges.get(wanted));
    return LongStream.range(0, counts[wanted]).map(i -> i < here ? dose - 1 : dose).toArray();
  }

  private long loweredOf(int kind, long toLower) {
    DoseRange range = ranges.get(kind);
    boolean atLevel = at(level, range) == level && level > range.least();
    return atLevel ? Math.min(counts[kind], toLower) : 0;
  }

  private static long sum(long level, long[] counts, List<DoseRange> ranges) {
    long sum = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      sum += counts[kind] * at(level, ranges.get(kind));
    }
    return sum;
  }

  private static long at(long level, DoseRange range) {
    return Math.max(range.least(), Math.min(range.greatest(), level));
  }
}
