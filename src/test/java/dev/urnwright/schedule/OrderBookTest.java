package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.OrderBook.Run;
import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Runs of orders, against going through them gram by gram. */
class OrderBookTest {
  private static final int SEEDS = 200;

  /** A run, and the order of each of its grams. */
  private record Grams(List<Order> orders, Run run, List<Order> each) {
    static Grams of(int seed) {
      SplittableRandom random = new SplittableRandom(seed);
      List<Order> orders = new ArrayList<>();
      for (int i = random.nextInt(1, 5); i > 0; i--) {
        int due = random.nextInt(10, 30);
        orders.add(new Order("F" + i, random.nextInt(1, 9), due - random.nextInt(1, 16), due));
      }
      List<Order> due = RunAudit.inDueOrder(orders);
      List<Order> each = new ArrayList<>();
      due.forEach(order -> each.addAll(Collections.nCopies((int) order.grams(), order)));
      return new Grams(due, new Run(due), each);
    }

    int latest(int from) {
      return each.get(Math.min(from, each.size() - 1)).latestReady();
    }

    int earliest(int from, int to) {
      return each.subList(from, to).stream().mapToInt(Order::earliestReady).max().orElseThrow();
    }

    boolean isFresh(int from, int to) {
      return earliest(from, to) <= latest(from);
    }
  }

  @Test
  void aBatchIsAsEarlyAndAsLateAsEachOfItsGrams() {
    for (int seed = 1; seed <= SEEDS; seed++) {
      Grams grams = Grams.of(seed);
      Run run = grams.run();
      assertEquals(grams.each().size(), run.grams());
      assertEquals(grams.latest(grams.each().size() - 1), run.latestReady());
      for (int from = 0; from < grams.each().size(); from++) {
        assertEquals(grams.latest(from), run.latestReady(from), "seed " + seed);
        assertEquals(grams.each().get(from), run.orderAt(from), "seed " + seed);
        assertEquals(
            grams.each().indexOf(grams.each().get(from)), run.startOfOrder(from), "seed " + seed);
        int all = grams.each().size();
        assertEquals(grams.earliest(from, all), run.earliestReady(from, all + 9), "seed " + seed);
        int end = from;
        while (end < grams.each().size() && grams.each().get(end) == grams.each().get(from)) {
          end++;
        }
        assertEquals(end, run.endOfOrder(from), "seed " + seed);
        for (int to = from + 1; to <= grams.each().size(); to++) {
          assertEquals(grams.earliest(from, to), run.earliestReady(from, to), "seed " + seed);
        }
      }
    }
  }

  /** It may begin with any gram or, where it mustn't, with the first of a later order. */
  @Test
  void aBatchServesAsMuchAsIsFresh() {
    int shorter = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      Grams grams = Grams.of(seed);
      for (int to = 1; to <= grams.each().size(); to++) {
        for (int from = 0; from < to; from++) {
          int start = from;
          while (!grams.isFresh(start, to)) {
            start++;
          }
          assertEquals(start, grams.run().freshFrom(from, to), "seed " + seed);
          shorter += start > from ? 1 : 0;
        }
      }
    }
    assertTrue(shorter > SEEDS, "too few that would be too old: " + shorter);
  }

  /** By all ways to cut the run into batches, from its first gram on. */
  @Test
  void noFewerBatchesAreFresh() {
    int more = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      Grams grams = Grams.of(seed);
      int all = grams.each().size();
      for (int largest = 1; largest <= all; largest++) {
        int[] fewest = new int[all + 1]; // to serve so many grams
        Arrays.fill(fewest, 1, all + 1, all + 1);
        for (int to = 1; to <= all; to++) {
          for (int from = Math.max(0, to - largest); from < to; from++) {
            if (grams.isFresh(from, to)) {
              fewest[to] = Math.min(fewest[to], fewest[from] + 1);
            }
          }
        }
        assertEquals(fewest[all], grams.run().freshBatches(largest), "seed " + seed);
        more += fewest[all] > (all + largest - 1) / largest ? 1 : 0;
      }
    }
    assertTrue(more > SEEDS, "too few that holds make more: " + more);
  }

  @Test
  void noGramIsReadyAfterItIsDue() {
    for (int seed = 1; seed <= SEEDS; seed++) {
      Grams grams = Grams.of(seed);
      for (int last = 8; last < 32; last++) {
        double sum = 0;
        for (int first = 0; first <= grams.each().size(); first++) {
          assertEquals(sum, grams.run().bound(first, last), 1e-9, "seed " + seed);
          sum += first < grams.each().size() ? Math.min(last, grams.latest(first)) : 0;
        }
        assertEquals(sum, grams.run().bound(grams.each().size() + 5, last), 1e-9);
      }
    }
  }

  @Test
  void anOrderCountsByItsShare() {
    Run run = new Run(List.of(order(10, 0, 20), order(40, 0, 30), order(5, 0, 40)));
    assertEquals(0, run.piecesBefore(0), 1e-12);
    assertEquals(0.3, run.piecesBefore(3), 1e-12);
    assertEquals(1, run.piecesBefore(10), 1e-12);
    assertEquals(1 + 15 / 40.0, run.piecesBefore(25), 1e-12);
    assertEquals(2, run.piecesBefore(50), 1e-12);
    assertEquals(2.8, run.piecesBefore(54), 1e-12);
    assertEquals(3, run.piecesBefore(55), 1e-12);
    assertEquals(3, run.piecesBefore(56), 1e-12);
  }

  @Test
  void anOrderTakesItsShareOfABatchOfEachKind() {
    Run run = new Run(List.of(order(10, 3, 20), order(40, 7, 30)));
    List<Piece> pieces = run.pieces(new int[] {0, 2}, new double[] {20, 50});
    assertEquals(2, pieces.size());
    Piece second = pieces.get(1);
    assertEquals(40, second.grams());
    assertArrayEquals(new int[] {0, 2}, second.kinds());
    assertArrayEquals(new double[] {2, 0.8}, second.batches());
    assertEquals(7, second.earliestReady());
    assertEquals(30, second.latestReady());
    assertArrayEquals(new double[] {0.5, 0.2}, pieces.get(0).batches());
  }

  /** Brewing again and again, as soon as may be, until the run's last minute. */
  @Test
  void aKindHasRoomForWhatItBrewsOneAfterTheOther() {
    SplittableRandom random = new SplittableRandom(1);
    for (int n = 0; n < 300; n++) {
      Kind kind = new Kind(random.nextInt(1, 4), random.nextInt(1, 9), random.nextInt(4), 0, -1);
      int latest = random.nextInt(5, 40);
      int earliest = random.nextInt(-10, latest + 1);
      int start = random.nextInt(-5, 40);
      int batches = 0;
      int ready = Math.max(earliest, start + kind.brewMinutes());
      while (ready <= latest) {
        batches += kind.units();
        ready += kind.turnaroundMinutes() + kind.brewMinutes();
      }
      Run run = new Run(List.of(order(1, earliest, latest - 3), order(1, earliest + 9, latest)));
      assertEquals(batches, run.room(kind, start), kind + " from " + start);
    }
  }

  /** What may only be ready when another is due already is another run; a minute less is not. */
  @Test
  void ordersThatNoBatchCanShareAreCutApart() {
    Order last = order(10, 31, 45);
    Order first = order(20, 10, 20);
    Order second = order(30, 20, 30);
    List<Run> runs = OrderBook.of(List.of(last, second, first)).runs();
    assertEquals(
        List.of(List.of(first, second), List.of(last)), runs.stream().map(Run::orders).toList());
    assertEquals(List.of(), OrderBook.of(List.of()).runs());
  }

  private static Order order(double grams, int earliest, int latest) {
    return new Order("F", grams, earliest, latest);
  }
}
