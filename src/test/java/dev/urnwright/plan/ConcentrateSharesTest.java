package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.quantity.Mass;
import dev.urnwright.schedule.DoseRange;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Which batches each fill is drawn from. A step of dose gives 10 g of concentrate; a brewer takes
 * 100 steps, so 1000 g at most. Below 5 % of a fill is a trifle.
 */
class ConcentrateSharesTest {
  @Test
  void oneBatchAfterTheOther() {
    // 600 + 300 leave 100 of the first; the third fill takes them and 300 of the second
    assertShares(
        List.of(1000.0, 700.0),
        List.of(600.0, 300.0, 400.0, 400.0),
        List.of(Map.of(0, 600.0), Map.of(0, 300.0), Map.of(0, 100.0, 1, 300.0), Map.of(1, 400.0)));
    // a fill of three batches
    assertShares(
        List.of(500.0, 400.0, 600.0),
        List.of(300.0, 1000.0, 200.0),
        List.of(Map.of(0, 300.0), Map.of(0, 200.0, 1, 400.0, 2, 400.0), Map.of(2, 200.0)));
  }

  @Test
  void whatEndsWithABatchLeavesNothingForTheNext() {
    assertShares(
        List.of(500.0, 500.0), List.of(500.0, 500.0), List.of(Map.of(0, 500.0), Map.of(1, 500.0)));
  }

  /** 20 g beyond the first batch are 4 % of 500: the first one is brewed that much larger. */
  @Test
  void aTrifleIsBrewedOnTopOfTheBatchThatGivesTheRest() {
    assertShares(
        List.of(480.0, 520.0), List.of(500.0, 500.0), List.of(Map.of(0, 500.0), Map.of(1, 500.0)));
    // 5 % are still one
    assertShares(
        List.of(475.0, 525.0), List.of(500.0, 500.0), List.of(Map.of(0, 500.0), Map.of(1, 500.0)));
    // two fills of the first; 820 + 180 are all that its brewer takes
    assertShares(
        List.of(995.0, 505.0),
        List.of(820.0, 180.0, 500.0),
        List.of(Map.of(0, 820.0), Map.of(0, 180.0), Map.of(1, 500.0)));
  }

  /** 6 % is no trifle, and neither is what the brewer of the first batch has no room for. */
  @Test
  void whatIsNoTrifleComesFromBoth() {
    assertShares(
        List.of(470.0, 530.0),
        List.of(500.0, 500.0),
        List.of(Map.of(0, 470.0, 1, 30.0), Map.of(1, 500.0)));
    // 820 and 181 are more than the first one's brewer takes, though 6 g are a trifle
    assertShares(
        List.of(995.0, 505.0),
        List.of(820.0, 181.0, 499.0),
        List.of(Map.of(0, 820.0), Map.of(0, 175.0, 1, 6.0), Map.of(1, 499.0)));
  }

  /** 20 g left of the first are 4 % of the fill: all of it comes from the second. */
  @Test
  void aTrifleThatIsLeftIsTakenFromTheNext() {
    assertShares(
        List.of(520.0, 480.0), List.of(500.0, 500.0), List.of(Map.of(0, 500.0), Map.of(1, 500.0)));
    // 5 % are still one
    assertShares(
        List.of(525.0, 475.0), List.of(500.0, 500.0), List.of(Map.of(0, 500.0), Map.of(1, 500.0)));
    // unless the next one's brewer has no room for it: 985 and 20 are more than 1000
    assertShares(
        List.of(520.0, 985.0),
        List.of(500.0, 1005.0),
        List.of(Map.of(0, 500.0), Map.of(0, 20.0, 1, 985.0)));
    // 980 and 20 are not
    assertShares(
        List.of(520.0, 980.0),
        List.of(500.0, 1000.0),
        List.of(Map.of(0, 500.0), Map.of(1, 1000.0)));
  }

  /** 20 g more of the second fill, or of the first: the third batch is as it was planned. */
  @Test
  void aTrifleGoesNoFurtherThanTheNextBatch() {
    List<Map<Integer, Double>> each = List.of(Map.of(0, 500.0), Map.of(1, 500.0), Map.of(2, 500.0));
    assertShares(List.of(520.0, 480.0, 500.0), List.of(500.0, 500.0, 500.0), each);
    assertShares(List.of(480.0, 520.0, 500.0), List.of(500.0, 500.0, 500.0), each);
  }

  /** The last batch gives what is missing, come what may: its dose is rounded up later. */
  @Test
  void theLastBatchGivesTheRest() {
    assertShares(
        List.of(500.0, 480.0),
        List.of(500.0, 400.0, 100.0),
        List.of(Map.of(0, 500.0), Map.of(1, 400.0), Map.of(1, 100.0)));
    assertShares(List.of(300.0), List.of(500.0), List.of(Map.of(0, 500.0)));
  }

  private static void assertShares(
      List<Double> drawn, List<Double> fills, List<Map<Integer, Double>> expected) {
    CoffeeOrders orders =
        new CoffeeOrders(
            List.of(), 10, List.of(new DoseRange(Events.brewer("Tall", 1, 0, 100, 9), 1, 100)));
    List<TimedBatch> batches = new ArrayList<>();
    for (double grams : drawn) {
      batches.add(new TimedBatch(0, 0, 0, Math.round(grams / 10), 0, 10, grams));
    }
    List<Map<Integer, Double>> shares = new ConcentrateShares(orders, batches).of(fills);
    assertEquals(expected.size(), shares.size());
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i).keySet(), shares.get(i).keySet(), shares.toString());
      for (var share : expected.get(i).entrySet()) {
        assertEquals(share.getValue(), shares.get(i).get(share.getKey()), 1e-9, shares.toString());
      }
      Mass whole = Mass.ofGrams(shares.get(i).values().stream().mapToDouble(d -> d).sum());
      assertEquals(fills.get(i), whole.grams(), 1e-9);
    }
  }
}
