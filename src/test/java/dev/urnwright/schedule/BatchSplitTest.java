package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Brewer;
import dev.urnwright.plan.Events;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Volume;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a dose is shared among batches. */
class BatchSplitTest {
  private static final Mass STEP = Mass.ofGrams(1);

  @Test
  void twoOfSixRatherThanTenAndTwo() {
    assertEquals(List.of(6000L, 6000L), doses(split(12_000, range("Urn", 500, 10_000))));
  }

  @ParameterizedTest(name = "{0} g on a brewer of {1} to {2} g: {3}")
  @CsvSource({
    "480, 150, 480, 480", // just one
    "481, 150, 480, 241 240", // one gram more takes two
    "1000, 150, 480, 334 333 333",
    "150, 150, 480, 150", // the least dose itself
    "961, 300, 480, 321 320 320",
    "5, 0, 480, 5", // no least dose
  })
  void fewestThenAsEqualAsTheScaleAllows(long dose, long least, long most, String expected) {
    Optional<BatchSplit> split = split(dose, range("Brewer", least, most));
    assertEquals(expected, words(split));
    assertTrue(split.get().surplus().isZero());
  }

  @Test
  void leastDosesForceASurplus() {
    // 520 g: one batch of at most 500 is not enough, two of at least 300 are 600
    BatchSplit split = split(520, range("Brewer", 300, 500)).orElseThrow();
    assertEquals(List.of(300L, 300L), doses(Optional.of(split)));
    assertEquals(80, split.surplus().grams(), 1e-9);
  }

  @Test
  void aLittleTooMuchIsBetterThanManyMoreBatches() {
    // 700 g: one or two of 480 to 500 g with up to two of 10 g never make 700; seventy of 10 g
    // would
    BatchSplit split = split(700, range("Large", 480, 500), range("Tiny", 1, 10)).orElseThrow();
    assertEquals(List.of(480L, 480L), doses(Optional.of(split)));
    assertEquals(260, split.surplus().grams(), 1e-9);
  }

  @Test
  void aBrewerTooLargeForAllOfItStaysCold() {
    BatchSplit split = split(30, range("Large", 480, 500), range("Tiny", 1, 10)).orElseThrow();
    assertEquals(List.of(10L, 10L, 10L), doses(Optional.of(split)));
    assertEquals("Tiny", split.batches().get(0).brewers().get(0).name());
  }

  @Test
  void lessThanEveryLeastDoseCannotBeBrewed() {
    assertFalse(split(149, range("Brewer", 150, 480)).isPresent());
    assertFalse(split(5, range("Broken", 6, 3)).isPresent());
  }

  /**
   * Against an exhaustive search: every falling sequence of doses that some brewer takes. Fewest
   * batches first, looked for up to twice the fewest conceivable; then the smallest difference
   * between the largest and the smallest.
   */
  @Test
  void isTheBestOfAllWays() {
    SplittableRandom random = new SplittableRandom(17);
    int exact = 0;
    int surplus = 0;
    for (int trial = 0; trial < 3000; trial++) {
      List<DoseRange> ranges = new ArrayList<>();
      for (int kind = random.nextInt(1, 4); kind > 0; kind--) {
        long most = random.nextInt(1, 14);
        ranges.add(range("Kind " + kind, random.nextLong(0, most + 1), most));
      }
      long steps = random.nextInt(1, 42);
      Optional<BatchSplit> split = BatchSplit.of(Mass.ofGrams(steps), ranges, STEP);
      String instance = steps + " on " + ranges;
      List<DoseRange> usable = ranges.stream().filter(r -> r.least() <= steps).toList();
      assertEquals(!usable.isEmpty(), split.isPresent(), instance);
      if (usable.isEmpty()) {
        continue;
      }
      assertEveryDoseIsTaken(split.get(), instance);
      Exhaustive best = Exhaustive.of(steps, usable);
      List<Long> doses = doses(split);
      assertEquals(best.count, doses.size(), instance);
      assertEquals(best.total, doses.stream().mapToLong(d -> d).sum(), instance);
      assertEquals(best.total - steps, split.get().surplus().grams(), 1e-9, instance);
      assertEquals(best.spread, doses.get(0) - doses.get(doses.size() - 1), instance);
      if (best.total == steps) {
        exact++;
      } else {
        surplus++;
      }
    }
    assertTrue(exact > 1000 && surplus > 30, exact + " exact and " + surplus + " with a surplus");
  }

  @Test
  void manyKindsTakeNoTime() {
    // Twelve narrow kinds that hardly fit, sixty batches: searched without trying every way.
    List<DoseRange> ranges = new ArrayList<>();
    for (int kind = 0; kind < 12; kind++) {
      ranges.add(range("Kind " + kind, 100 + 37L * kind, 103 + 37L * kind));
    }
    BatchSplit split = BatchSplit.of(Mass.ofGrams(30_500), ranges, STEP).orElseThrow();
    assertEquals(30_500, doses(Optional.of(split)).stream().mapToLong(d -> d).sum());
    assertEveryDoseIsTaken(split, "twelve kinds");
  }

  @Test
  void basketWaterAndVesselEachLimitABatch() {
    // R = 13, 10.9 g of beverage a gram, 5 g steps
    Mass step = Mass.ofGrams(5);
    BrewRatio ratio = BrewRatio.ofGramsPerGram(13);
    Brewer basket = Events.brewer("Basket", 1, 0, 480, 20);
    Brewer water = brewer(5200, Optional.empty());
    // a step more of water may arrive in the vessel: (4365 − 5) / 10.9 = 400
    Brewer vessel = brewer(20_000, Optional.of(Mass.ofGrams(4365)));
    assertEquals(96, DoseRange.of(basket, ratio, 10.9, Optional.empty(), step).greatest());
    assertEquals(80, DoseRange.of(water, ratio, 10.9, Optional.empty(), step).greatest()); // 400 g
    assertEquals(
        80, DoseRange.of(vessel, ratio, 10.9, Optional.of(Mass.ofGrams(4365)), step).greatest());
    assertEquals(
        79, DoseRange.of(vessel, ratio, 10.9, Optional.of(Mass.ofGrams(4364)), step).greatest());
    assertEquals(
        0, DoseRange.of(vessel, ratio, 10.9, Optional.of(Mass.ofGrams(3)), step).greatest());
  }

  @Test
  void theLeastDoseIsRoundedUp() {
    Brewer brewer = Events.brewer("Brewer", 1, 151, 480, 20);
    DoseRange range =
        DoseRange.of(brewer, BrewRatio.ofGramsPerGram(13), 10.9, Optional.empty(), Mass.ofGrams(5));
    assertEquals(31, range.least()); // 155 g
  }

  private static Brewer brewer(double waterGrams, Optional<Mass> vessel) {
    return new Brewer(
        "Brewer",
        1,
        Mass.ZERO,
        Mass.ofGrams(10_000),
        Mass.ofGrams(waterGrams),
        vessel.map(mass -> Volume.ofLitres(mass.grams() / 1000)),
        Optional.empty(),
        new Brewer.Supply(Optional.empty(), Optional.empty()),
        Events.SOMEWHERE);
  }

  private static DoseRange range(String name, long least, long most) {
    return new DoseRange(
        Events.brewer(name, 1, Math.min(least, most), Math.max(least, most), 1000), least, most);
  }

  private static Optional<BatchSplit> split(long dose, DoseRange... ranges) {
    return BatchSplit.of(Mass.ofGrams(dose), List.of(ranges), STEP);
  }

  private static List<Long> doses(Optional<BatchSplit> split) {
    return split.orElseThrow().batches().stream()
        .map(share -> Math.round(share.dose().grams()))
        .toList();
  }

  private static String words(Optional<BatchSplit> split) {
    return String.join(" ", doses(split).stream().map(String::valueOf).toList());
  }

  private static void assertEveryDoseIsTaken(BatchSplit split, String instance) {
    for (BatchSplit.Share share : split.batches()) {
      assertFalse(share.brewers().isEmpty(), instance);
      for (Brewer brewer : share.brewers()) {
        assertTrue(
            share.dose().compareTo(brewer.leastDose()) >= 0
                && share.dose().compareTo(brewer.greatestDose()) <= 0,
            instance);
      }
    }
    assertEquals(
        split.batches().stream()
            .sorted(Comparator.comparing(BatchSplit.Share::dose).reversed())
            .toList(),
        split.batches(),
        instance);
  }

  /** All falling sequences of so many doses; slow, plain, and written without the code's ideas. */
  private static final class Exhaustive {
    private final Set<Long> allowed = new HashSet<>();
    private final long largest;
    private long count;
    private long total;
    private long spread = Long.MAX_VALUE;

    private Exhaustive(List<DoseRange> ranges) {
      for (DoseRange range : ranges) {
        for (long dose = Math.max(1, range.least()); dose <= range.greatest(); dose++) {
          allowed.add(dose);
        }
      }
      largest = allowed.stream().mapToLong(d -> d).max().orElseThrow();
    }

    static Exhaustive of(long steps, List<DoseRange> ranges) {
      Exhaustive search = new Exhaustive(ranges);
      long fewest = (long) Math.ceil((double) steps / search.largest);
      for (search.count = fewest; search.count <= 2 * fewest; search.count++) {
        search.total = steps;
        search.extend(steps, search.count, search.largest, 0);
        if (search.spread < Long.MAX_VALUE) {
          return search;
        }
      }
      search.count = fewest;
      while (search.spread == Long.MAX_VALUE) {
        search.total++;
        search.extend(search.total, search.count, search.largest, 0);
      }
      return search;
    }

    private void extend(long left, long batches, long most, long first) {
      if (batches == 0) {
        if (left == 0) {
          spread = Math.min(spread, first - most);
        }
        return;
      }
      for (long dose = Math.min(most, left); dose >= 1 && dose * batches >= left; dose--) {
        if (allowed.contains(dose)) {
          extend(left - dose, batches - 1, dose, first == 0 ? dose : first);
        }
      }
    }
  }
}
