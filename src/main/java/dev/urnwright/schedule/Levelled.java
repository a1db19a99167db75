package dev.urnwright.schedule;

import dev.urnwright.quantity.Mass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The most equal doses for given numbers of batches of each kind: every batch at the same level,
 * but for the kinds whose range doesn't reach it.
 */
record Levelled(List<Entry> entries) {
  /** One batch. */
  private record Entry(DoseRange range, long dose) {}

  static Levelled of(long steps, long[] counts, List<DoseRange> ranges) {
    long low = 0;
    long high = ranges.stream().mapToLong(DoseRange::greatest).max().orElseThrow();
    while (low < high) { // the lowest level at which the doses are enough
      long level = (low + high) / 2;
      if (total(level, counts, ranges) >= steps) {
        high = level;
      } else {
        low = level + 1;
      }
    }
    long tooMuch = total(low, counts, ranges) - steps;
    List<Entry> entries = new ArrayList<>();
    for (int kind = 0; kind < counts.length; kind++) {
      DoseRange range = ranges.get(kind);
      for (long i = 0; i < counts[kind]; i++) {
        long dose = at(low, range);
        if (tooMuch > 0 && dose == low && dose > range.least()) {
          dose--;
          tooMuch--;
        }
        entries.add(new Entry(range, dose));
      }
    }
    return new Levelled(entries);
  }

  long spread() {
    long greatest = entries.stream().mapToLong(Entry::dose).max().orElseThrow();
    long least = entries.stream().mapToLong(Entry::dose).min().orElseThrow();
    return greatest - least;
  }

  List<BatchSplit.Share> shares(Mass step) {
    return entries.stream()
        .sorted(Comparator.comparingLong(Entry::dose).reversed())
        .map(e -> new BatchSplit.Share(step.times(e.dose()), List.of(e.range().brewer())))
        .toList();
  }

  /** The doses of one kind, the least first. */
  long[] doses(DoseRange range) {
    return entries.stream()
        .filter(entry -> entry.range() == range)
        .mapToLong(Entry::dose)
        .sorted()
        .toArray();
  }

  private static long total(long level, long[] counts, List<DoseRange> ranges) {
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
