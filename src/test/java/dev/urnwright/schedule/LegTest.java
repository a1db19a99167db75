package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.FullLeg.Leeway;
import dev.urnwright.schedule.Leg.Choice;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.Sizing.SizeClass;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Batches of one run, by hand: 40 g due at 20, 30 g at 25 and 30 g at 30, brewed from 9, 12 and 15
 * on; 10 g for each step of dose.
 */
class LegTest {
  private static final OrderBook.Run RUN =
      new OrderBook.Run(
          List.of(
              new Order("a", 40, 9, 20), new Order("b", 30, 12, 25), new Order("c", 30, 15, 30)));

  /** Batches of 4, 3 and 3 steps: one for each order. */
  private static final Leg EQUAL = sized(sizes(List.of(0, 2), 3, 3, 4));

  /** Of kind 0 two of 2 steps, of kind 1 one of 6. */
  private static final Leg MIXED = sized(sizes(List.of(0), 2, 2), sizes(List.of(1), 6));

  private static final Leg FIXED =
      new FixedLeg(3, RUN, List.of(35.0, 65.0), ranges(2, 4, 1, 7, 0, 0), 10);

  private static final Leg FULL = full(RUN, Leeway.NONE, 1, 4, 3, 6, 0, 0);

  private static Leg sized(SizeClass... classes) {
    return new SizedLeg(3, RUN, new Sizing(List.of(classes)), 10);
  }

  private static Leg full(OrderBook.Run run, Leeway leeway, long... steps) {
    return FullLeg.of(3, run, new CoffeeOrders(run.orders(), 10, ranges(steps)), leeway);
  }

  private static SizeClass sizes(List<Integer> kinds, long... doses) {
    return new SizeClass(doses, kinds.stream().mapToInt(kind -> kind).toArray());
  }

  /** Least and greatest of one kind after the other; 0 and 0 for one that can't brew it. */
  private static List<DoseRange> ranges(long... steps) {
    return IntStream.range(0, steps.length / 2)
        .mapToObj(
            kind ->
                new DoseRange(
                    RunInstances.range(1, 1).brewer(), steps[2 * kind], steps[2 * kind + 1]))
        .toList();
  }

  @Test
  void theLastBatchComesFirst() {
    assertEquals(3, EQUAL.coffee());
    assertEquals(1, EQUAL.numbers());
    assertChoice("[0, 2] 3 0 1 30.0 15 30", EQUAL, 0);
    assertChoice("[0, 2] 3 0 1 30.0 12 25", EQUAL, 1);
    assertChoice("[0, 2] 4 0 1 40.0 9 20", EQUAL, 2);
    assertTrue(!EQUAL.isDone(new long[] {2}, 0) && EQUAL.isDone(new long[] {3}, 0));
  }

  /** Kind 0's second batch may come last, after 80 g, or kind 1's, after 40 g. */
  @Test
  void ofMixedSizesAnyMayComeLast() {
    assertEquals(3, MIXED.coffee());
    assertEquals(2, MIXED.numbers());
    assertChoice("[0] 2 0 1 20.0 15 30 [1] 6 1 1 60.0 15 25", MIXED, 0, 0);
    // once that of kind 1 is placed, the two of kind 0 brew the first 40 g
    assertChoice("[0] 2 0 1 20.0 9 20", MIXED, 0, 1);
    assertChoice("[0] 2 0 1 20.0 9 20", MIXED, 1, 1);
    assertTrue(!MIXED.isDone(new long[] {2, 0}, 0) && MIXED.isDone(new long[] {2, 1}, 0));
  }

  /** A least dose of 6 steps, twice: the second batch is 40 g drawn and 20 g too many. */
  @Test
  void theLastBatchMayBeDrawnInPart() {
    assertChoice("[1] 6 0 1 40.0 15 25", sized(sizes(List.of(1), 6, 6)), 0);
    // three of them: the last isn't needed, and may be ready at any time until the run is over
    assertChoice(
        "[1] 6 0 1 0.0 " + Integer.MIN_VALUE + " 30", sized(sizes(List.of(1), 6, 6, 6)), 0);
    assertChoice(
        "[1] 5 0 1 0.0 " + Integer.MIN_VALUE + " 30", sized(sizes(List.of(1), 5, 5, 5)), 0);
  }

  /** 35 g are 4 steps, which both kinds take; 65 g are 7, for kind 1 alone. */
  @Test
  void fixedBatchesAreForWhoTakesThem() {
    assertEquals(3, FIXED.coffee());
    assertEquals(1, FIXED.numbers());
    assertChoice("[1] 7 0 1 65.0 15 20", FIXED, 0);
    assertChoice("[0, 1] 4 0 1 35.0 9 20", FIXED, 1);
    assertTrue(!FIXED.isDone(new long[] {1}, 0) && FIXED.isDone(new long[] {2}, 0));
    // 100 g are just 10 steps; where 12 are the least of the lesser kind, that is the dose
    assertChoice(
        "[1] 12 0 1 100.0 15 20",
        new FixedLeg(3, RUN, List.of(100.0), ranges(15, 20, 12, 14, 0, 9), 10),
        0);
    assertChoice(
        "[0, 2] 10 0 1 100.0 15 20",
        new FixedLeg(3, RUN, List.of(100.0), ranges(10, 20, 5, 9, 1, 10, 12, 11), 10),
        0);
  }

  /** 40 g from 60 g on (kind 0), or 60 g from 40 g on (kind 1); then 60 g or 40 g are left. */
  @Test
  void fullBatchesAreAsLargeAsTheirBrewersTake() {
    assertEquals(3, FULL.coffee());
    assertEquals(1, FULL.numbers());
    assertChoice("[0] 4 0 40000000 40.0 15 25 [1] 6 0 60000000 60.0 15 25", FULL, 0);
    assertChoice("[0] 4 0 40000000 40.0 12 20 [1] 6 0 60000000 60.0 12 20", FULL, 40_000_000);
    // 15 g are left: 2 steps, but kind 1 brews 3 at the least
    assertChoice("[0] 2 0 15000000 15.0 9 20 [1] 3 0 15000000 15.0 9 20", FULL, 85_000_000);
    assertTrue(
        !FULL.isDone(new long[] {99_000_000}, 0) && FULL.isDone(new long[] {100_000_000}, 0));
  }

  /** 4 steps would reach back into the second order; they may also serve the third alone. */
  @Test
  void aFullBatchMayLeaveAnOrderToTheOneBefore() {
    Leg leg = full(RUN, Leeway.STOP_SHORT, 1, 4);
    assertChoice("[0] 4 0 40000000 40.0 15 25 [0] 3 0 30000000 30.0 15 30", leg, 0);
    // from 30 g on it is the second order alone, as it would be anyway with 3 steps
    assertChoice("[0] 3 0 30000000 30.0 12 25", full(RUN, Leeway.STOP_SHORT, 1, 3), 30_000_000);
    // within one order there is nothing to leave
    assertChoice("[0] 2 0 20000000 20.0 9 20", full(RUN, Leeway.STOP_SHORT, 1, 2), 80_000_000);
  }

  /**
   * Micrograms are cut between two batches, and rounded up for the first, so that all is served.
   */
  @Test
  void noDropIsLeftBetweenFullBatches() {
    OrderBook.Run run = new OrderBook.Run(List.of(new Order("a", 20.0000005, 9, 20)));
    // 1 step of 12.3456789 g, then 7.6543216 g in part
    Leg leg =
        FullLeg.of(3, run, new CoffeeOrders(run.orders(), 12.3456789, ranges(1, 1)), Leeway.NONE);
    assertEquals(12_345_678, leg.choices(new long[] {0}, 0).get(0).by());
    assertEquals(7_654_323, leg.choices(new long[] {12_345_678}, 0).get(0).by());
    assertTrue(leg.isDone(new long[] {20_000_001}, 0));
  }

  /** An order due as early as the next isn't left: that makes the batch no later. */
  @Test
  void aFullBatchStopsShortOnlyWhereThatMakesItLater() {
    OrderBook.Run run =
        new OrderBook.Run(List.of(new Order("a", 20, 9, 20), new Order("b", 20, 9, 20)));
    assertChoice("[0] 3 0 30000000 30.0 9 20", full(run, Leeway.STOP_SHORT, 1, 3), 0);
  }

  private static void assertChoice(String wanted, Leg leg, long... progress) {
    String is = "";
    for (Choice c : leg.choices(progress, 0)) {
      is +=
          Arrays.toString(c.kinds())
              + " "
              + c.doseSteps()
              + " "
              + c.number()
              + " "
              + c.by()
              + " "
              + c.grams()
              + " "
              + c.earliestReady()
              + " "
              + c.latestReady()
              + " ";
    }
    assertEquals(wanted, is.strip());
  }

  /** Each batch at its own latest minute; of mixed sizes, and of full ones, each gram at its. */
  @Test
  void nothingLeftIsReadyAfterItIsDue() {
    assertEquals(40 * 20 + 30 * 25 + 30 * 30, EQUAL.bound(new long[] {0}, 0, 99));
    assertEquals(40 * 20 + 30 * 22, EQUAL.bound(new long[] {1}, 0, 22));
    assertEquals(0, EQUAL.bound(new long[] {3}, 0, 22));
    assertEquals(40 * 20 + 30 * 25 + 30 * 30, MIXED.bound(new long[] {0, 0}, 0, 99));
    assertEquals(40 * 20 + 30 * 22 + 10 * 22, MIXED.bound(new long[] {1, 0}, 0, 22));
    assertEquals(35 * 20 + 65 * 20, FIXED.bound(new long[] {0}, 0, 99));
    assertEquals(35 * 19, FIXED.bound(new long[] {1}, 0, 19));
    assertEquals(0, FIXED.bound(new long[] {2}, 0, 19));
    assertEquals(40 * 20 + 20 * 25, FULL.bound(new long[] {40_000_000}, 0, 99));
  }

  @Test
  void nothingLeftIsDueAfterItsLastGram() {
    assertEquals(30, EQUAL.due(new long[] {0}, 0));
    assertEquals(25, EQUAL.due(new long[] {1}, 0));
    assertEquals(20, EQUAL.due(new long[] {2}, 0));
    assertEquals(30, MIXED.due(new long[] {0, 0}, 0));
    assertEquals(30, MIXED.due(new long[] {1, 0}, 0));
    assertEquals(20, MIXED.due(new long[] {0, 1}, 0));
    assertEquals(20, FIXED.due(new long[] {0}, 0));
    assertEquals(30, FULL.due(new long[] {0}, 0));
    assertEquals(25, FULL.due(new long[] {30_000_000}, 0));
    assertEquals(20, FULL.due(new long[] {60_000_000}, 0));
    // batches that brew more than the run: its last order is the last
    assertEquals(30, sized(sizes(List.of(1), 9, 9)).due(new long[] {0}, 0));
  }

  /** A batch is a piece; where sizes are mixed an order is one, with its share of the largest. */
  @Test
  void piecesAreBatchesOrOrders() {
    List<Piece> equal = EQUAL.pieces();
    assertEquals(List.of(20, 25, 30), equal.stream().map(Piece::latestReady).toList());
    assertEquals(List.of(40.0, 30.0, 30.0), equal.stream().map(Piece::grams).toList());
    assertArrayEquals(new double[] {1, 1}, equal.get(0).batches());
    assertEquals(9, equal.get(0).earliestReady());
    List<Piece> fixed = FIXED.pieces();
    assertEquals(List.of(35.0, 65.0), fixed.stream().map(Piece::grams).toList());
    List<Piece> mixed = MIXED.pieces();
    assertEquals(List.of(40.0, 30.0, 30.0), mixed.stream().map(Piece::grams).toList());
    assertArrayEquals(new int[] {0, 1}, mixed.get(0).kinds());
    assertArrayEquals(new double[] {40 / 20.0, 40 / 60.0}, mixed.get(0).batches());
    List<Piece> full = FULL.pieces();
    assertArrayEquals(new int[] {0, 1}, full.get(1).kinds());
    assertArrayEquals(new double[] {30 / 40.0, 30 / 60.0}, full.get(1).batches());
  }

  @Test
  void piecesAreLeftFromTheFirstOn() {
    assertEquals(3, EQUAL.piecesLeft(new long[] {0}, 0));
    assertEquals(1, EQUAL.piecesLeft(new long[] {2}, 0));
    assertEquals(2, FIXED.piecesLeft(new long[] {0}, 0));
    assertEquals(1, FIXED.piecesLeft(new long[] {1}, 0));
    assertEquals(3, MIXED.piecesLeft(new long[] {0, 0}, 0));
    assertEquals(2 + 10 / 30.0, MIXED.piecesLeft(new long[] {1, 0}, 0), 1e-12);
    assertEquals(1, MIXED.piecesLeft(new long[] {0, 1}, 0), 1e-12);
    assertEquals(1 + 20 / 30.0, FULL.piecesLeft(new long[] {40_000_000}, 0), 1e-12);
  }

  /** 40, 30 and 30 g are tens; the first two 40 and 30, the first alone is 40. */
  @Test
  void theMeasureOfWhatIsLeftIsTheirGreatest() {
    assertEquals(10, EQUAL.measure(new long[] {0}, 0));
    assertEquals(10, EQUAL.measure(new long[] {1}, 0));
    assertEquals(40, EQUAL.measure(new long[] {2}, 0));
    Leg halves = sized(sizes(List.of(0), 4, 6));
    assertEquals(20, halves.measure(new long[] {0}, 0));
    assertEquals(60, halves.measure(new long[] {1}, 0));
    assertEquals(0, MIXED.measure(new long[] {0, 0}, 0));
    assertEquals(0, FULL.measure(new long[] {0}, 0));
    // the last is drawn in part, so it has none; what is before it has
    Leg part = sized(sizes(List.of(1), 6, 6));
    assertEquals(0, part.measure(new long[] {0}, 0));
    assertEquals(60, part.measure(new long[] {1}, 0));
  }

  /** The numbers of a leg stand anywhere among those of all. */
  @Test
  void numbersStandAtTheirOffset() {
    long[] progress = {9, 9, 1, 1};
    assertEquals(20, MIXED.due(progress, 2));
    assertEquals(1, MIXED.choices(progress, 2).size());
    assertEquals(25, EQUAL.due(progress, 3));
  }
}
