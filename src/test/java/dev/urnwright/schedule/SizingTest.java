package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.quantity.Mass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Doses of a run's batches: equal, least or levelled; by hand and against trying all doses. */
class SizingTest {
  private static final List<DoseRange> RANGES = List.of(range(2, 3), range(3, 8), range(1, 9));

  private static DoseRange range(long least, long greatest) {
    return new DoseRange(RunInstances.range(1, 1).brewer(), least, greatest);
  }

  private static String text(Optional<Sizing> sizing) {
    String text = "";
    for (Sizing.SizeClass sizes : sizing.map(Sizing::classes).orElse(List.of())) {
      text += Arrays.toString(sizes.doses()) + Arrays.toString(sizes.kinds()) + " ";
    }
    return text.strip();
  }

  /** The last is brewed first, so the step that is left over goes to those brewed last. */
  @Test
  void equalBatchesAreForWhoTakesAllOfThem() {
    assertEquals("[2, 2, 3][0, 2]", text(Sizing.even(7, 3, RANGES)));
    assertEquals("[2, 3, 3][0, 2]", text(Sizing.even(8, 3, RANGES)));
    assertEquals("[3, 3, 3][0, 1, 2]", text(Sizing.even(9, 3, RANGES)));
    assertEquals("[3, 4][1, 2]", text(Sizing.even(7, 2, RANGES)));
    assertEquals("[8, 9][2]", text(Sizing.even(17, 2, RANGES)));
    assertEquals("", text(Sizing.even(19, 2, RANGES)));
    // one who takes just this, but can't brew at all
    assertEquals("", text(Sizing.even(0, 2, List.of(range(0, 0)))));
    assertEquals(2, Sizing.even(7, 2, RANGES).orElseThrow().count());
  }

  /** 10 steps are two times the 5 that both take at the most: any of them may brew them. */
  @Test
  void equalBatchesAreForAllThatTakeThem() {
    BatchSplit split =
        BatchSplit.of(Mass.ofGrams(10), List.of(range(2, 5), range(1, 5)), Mass.ofGrams(1))
            .orElseThrow();
    assertEquals(List.of(2, 2), split.batches().stream().map(b -> b.brewers().size()).toList());
  }

  /** Four batches for 10 steps: the kind of least dose 3 takes 12, the kinds of 1 and 2 less. */
  @Test
  void leastDosesAreThoseOfTheKindThatWastesLeast() {
    assertEquals("[3, 3, 3, 3][1]", text(Sizing.least(10, 4, RANGES)));
    assertEquals("[2, 2, 2, 2][0]", text(Sizing.least(8, 4, RANGES)));
    assertEquals("[2, 2, 2, 2][0]", text(Sizing.least(7, 4, RANGES)));
    assertEquals("[1, 1, 1, 1][2]", text(Sizing.least(4, 4, RANGES)));
    assertEquals("", text(Sizing.least(13, 4, RANGES)));
    // a least dose that is more than it takes is none
    assertEquals("", text(Sizing.least(10, 4, List.of(range(5, 4)))));
  }

  /** Of the first two, at 3 the most, and one of the second: 10 = 3 + 3 + 4. */
  @Test
  void levelledDosesAreAsEqualAsTheirKindsAllow() {
    assertEquals("[3, 3][0] [4][1]", text(levelled(10, 2, 1, 0)));
    // the level is 3, and one of them is a step less
    assertEquals("[2, 3][0] [3][1]", text(levelled(8, 2, 1, 0)));
    assertEquals("[2, 2][0] [3][2]", text(levelled(7, 2, 0, 1)));
    assertEquals("[3, 3][0] [8][1]", text(levelled(14, 2, 1, 0)));
    assertEquals("", text(levelled(15, 2, 1, 0)));
    // 2 + 2 + 3 are the least they brew, though 4 are wanted
    assertEquals("[2, 2][0] [3][1]", text(levelled(4, 2, 1, 0)));
  }

  private static Optional<Sizing> levelled(long steps, long... counts) {
    return Sizing.levelled(steps, counts, RANGES);
  }

  @Test
  void noDosesAreMoreEqualThanLevelledOnes() {
    int wide = 0;
    for (int seed = 1; seed <= 300; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<DoseRange> ranges = new ArrayList<>();
      int kinds = random.nextInt(1, 4);
      long[] counts = new long[kinds];
      for (int kind = 0; kind < kinds; kind++) {
        long least = random.nextLong(1, 6);
        ranges.add(range(least, least + random.nextLong(5)));
        counts[kind] = random.nextLong(kind == 0 ? 1 : 0, 3);
      }
      long least = KindCounts.leastOf(counts, ranges);
      long total = least;
      for (int kind = 0; kind < kinds; kind++) {
        total +=
            counts[kind]
                * random.nextLong(ranges.get(kind).greatest() - ranges.get(kind).least() + 1);
      }
      Levelled levelled = Levelled.of(total, counts, ranges);
      List<Long> all = new ArrayList<>();
      for (int kind = 0; kind < kinds; kind++) {
        long[] doses = levelled.doses(kind);
        assertEquals(counts[kind], doses.length);
        DoseRange range = ranges.get(kind);
        assertTrue(LongStream.of(doses).allMatch(range::takes), "seed " + seed);
        long[] rising = doses.clone();
        Arrays.sort(rising);
        assertEquals(Arrays.toString(rising), Arrays.toString(doses));
        LongStream.of(doses).forEach(all::add);
      }
      all.sort((a, b) -> Long.compare(b, a));
      assertEquals(total, all.stream().mapToLong(dose -> dose).sum(), "seed " + seed);
      long spread = all.get(0) - all.get(all.size() - 1);
      assertEquals(spread, levelled.spread(), "seed " + seed);
      assertEquals(leastSpread(total, counts, ranges), spread, "seed " + seed);
      assertEquals(
          all,
          levelled.shares(Mass.ofGrams(1)).stream()
              .map(s -> Math.round(s.dose().grams()))
              .toList());
      wide += spread > 1 ? 1 : 0;
    }
    assertTrue(wide > 50, "too few that can't be equal: " + wide);
  }

  /** The least difference: tries every least dose with every greatest one. */
  private static long leastSpread(long total, long[] counts, List<DoseRange> ranges) {
    long best = Long.MAX_VALUE;
    for (long low = 1; low < 12; low++) {
      for (long high = low; high < 12; high++) {
        long from = 0;
        long to = 0;
        for (int kind = 0; kind < counts.length; kind++) {
          long least = Math.max(low, ranges.get(kind).least());
          long greatest = Math.min(high, ranges.get(kind).greatest());
          boolean isNone = counts[kind] > 0 && least > greatest;
          from += isNone ? 10_000 : counts[kind] * least;
          to += counts[kind] * greatest;
        }
        best = from <= total && total <= to ? Math.min(best, high - low) : best;
      }
    }
    return best;
  }
}
