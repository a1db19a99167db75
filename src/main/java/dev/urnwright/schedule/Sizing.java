package dev.urnwright.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The doses of a run's batches, in classes: equal batches are one class that several kinds of
 * brewer may take; where kinds must brew different doses each has a class of its own.
 *
 * @param classes of batches
 */
record Sizing(List<SizeClass> classes) {
  /**
   * Batches for certain kinds.
   *
   * @param doses in steps of the scale, the last brewed first
   * @param kinds indices of the kinds that may brew them
   */
  record SizeClass(long[] doses, int[] kinds) {
    /** The dose when so many of the class's last batches have been placed. */
    long dose(int placed) {
      return doses[placed];
    }

    int count() {
      return doses.length;
    }
  }

  int count() {
    return classes.stream().mapToInt(SizeClass::count).sum();
  }

  /**
   * Equal batches, as far as the scale allows.
   *
   * @param ranges one for each kind
   * @return empty when no kind takes such a dose
   */
  static Optional<Sizing> even(long steps, int count, List<DoseRange> ranges) {
    long[] doses = new long[count];
    for (int i = 0; i < count; i++) {
      doses[i] = steps / count + (i >= count - steps % count ? 1 : 0);
    }
    int[] kinds =
        IntStream.range(0, ranges.size())
            .filter(k -> ranges.get(k).usable())
            .filter(k -> ranges.get(k).takes(doses[0]) && ranges.get(k).takes(doses[count - 1]))
            .toArray();
    return kinds.length == 0
        ? Optional.empty()
        : Optional.of(new Sizing(List.of(new SizeClass(doses, kinds))));
  }

  /**
   * As equal as so many batches of each kind can be.
   *
   * @param counts of batches, one for each kind
   */
  static Optional<Sizing> levelled(long steps, long[] counts, List<DoseRange> ranges) {
    long greatest = 0;
    for (int k = 0; k < counts.length; k++) {
      greatest += counts[k] * ranges.get(k).greatest();
    }
    if (steps > greatest) {
      return Optional.empty();
    }
    Levelled levelled = Levelled.of(steps, counts, ranges);
    List<SizeClass> classes = new ArrayList<>();
    for (int k = 0; k < counts.length; k++) {
      if (counts[k] > 0) {
        classes.add(new SizeClass(levelled.doses(k), new int[] {k}));
      }
    }
    return Optional.of(new Sizing(classes));
  }

  /** The least doses, where even they are more than is needed: the kind that wastes least. */
  static Optional<Sizing> least(long steps, int count, List<DoseRange> ranges) {
    return IntStream.range(0, ranges.size())
        .filter(k -> ranges.get(k).usable() && ranges.get(k).least() * count >= steps)
        .boxed()
        .min(Comparator.comparingLong(k -> ranges.get(k).least()))
        .map(
            k -> {
              long[] doses = new long[count];
              Arrays.fill(doses, ranges.get(k).least());
              return new Sizing(List.of(new SizeClass(doses, new int[] {k})));
            });
  }
}
