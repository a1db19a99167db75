package dev.urnwright.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The exact distribution of the cups that a group drinks. */
class CupsDrunkTest {
  /** By hand: the level is met exactly, and one cup more would be one too many. */
  @ParameterizedTest(name = "{0} guests, p {1}, {2} cups each, level {3}: {4} cups")
  @CsvSource({
    // one guest, half the time none: P(none) = 1/2
    "1, 0.5, 1, 0.5, 0",
    // P(at most 1 of 3) = 1/8 + 3/8
    "3, 0.5, 1, 0.5, 1",
    // P(at most 1 of 2) = 1 − 1/4
    "2, 0.5, 1, 0.75, 1",
    // P(at most 1 of 2) = 1 − 0.8² = 0.36
    "2, 0.8, 1, 0.36, 1",
    // two cups each: P(at most one drinker of 2) = 1 − 0.3² = 0.91
    "2, 0.3, 2, 0.91, 2",
    // one or two cups: P(1) = 1/2
    "1, 1, 1.5, 0.5, 1",
    // two guests of one or two cups: P(at most 3) = 1 − 1/4
    "2, 1, 1.5, 0.75, 3",
    // P(at most 5 of 11) = 1/2 by symmetry
    "11, 0.5, 1, 0.5, 5",
    "101, 0.5, 1, 0.5, 50",
    // P(none) = 1 − 1.05e-9 is less than the level, however little that is
    "1, 0.00000000105, 1, 0.999999999, 1",
  })
  void aLevelMetExactlyIsMet(int guests, double p, double each, double level, int cups) {
    assertEquals(cups, new CupsDrunk(guests, p, each).enoughWith(level));
  }

  @Test
  void certainGuestsDrinkWhatTheyDrink() {
    for (int guests : new int[] {1, 7, 400, 1_000_000}) {
      assertEquals(2 * guests, new CupsDrunk(guests, 1, 2).enoughWith(0.9999));
      assertEquals(2 * guests, new CupsDrunk(guests, 1, 2).enoughWith(0.0001));
      assertEquals(0, new CupsDrunk(guests, 0, 2).enoughWith(0.9999));
    }
  }

  @Test
  void noLevelNeedsMoreThanEveryoneCanDrink() {
    assertEquals(3 * 20, new CupsDrunk(20, 0.9, 2.5).enoughWith(Math.nextDown(1.0)));
    assertEquals(1, new CupsDrunk(20, 0.9, 2.5).atMost(60), 0);
    assertEquals(0, new CupsDrunk(20, 0.9, 2.5).atMost(-1), 0);
  }

  /** Fewer than no cups are never enough, not even for someone who is likely to drink none. */
  @Test
  void noCupsAreTheFewest() {
    assertEquals(0, new CupsDrunk(1, 0.5, 1.5).atMost(-1));
    assertEquals(0.5, new CupsDrunk(1, 0.5, 1.5).atMost(0), 1e-12);
  }

  /** A million guests drink no more than their mean half of the time; a cup is 1/1000 of σ. */
  @Test
  void aCrowdIsNormal() {
    // mean 750 000; σ² = 10⁶·(0.5·(2.25 + 0.25) − 0.25·2.25) = 687 500, σ = 829; Φ(1) = 0.8413
    CupsDrunk crowd = new CupsDrunk(1_000_000, 0.5, 1.5);
    assertEquals(0.5, crowd.atMost(750_000), 1e-3);
    assertEquals(0.8413, crowd.atMost(750_829), 1e-3);
    assertEquals(0.1587, crowd.atMost(749_171), 1e-3);
  }

  @Test
  void aHigherLevelNeverNeedsFewer() {
    for (double each : new double[] {0.4, 1, 1.3, 2, 2.75}) {
      CupsDrunk drunk = new CupsDrunk(120, 0.63, each);
      int before = 0;
      for (double level = 0.001; level < 1; level += 0.013) {
        int cups = drunk.enoughWith(level);
        assertTrue(cups >= before);
        before = cups;
      }
    }
  }

  /** Summed from scratch: the chance of each number of drinkers times that of their extra cups. */
  @Test
  void isTheSumOverDrinkersAndTheirExtraCups() {
    int guests = 6;
    double p = 0.7;
    double extra = 0.4; // 1.4 cups each
    double[] chance = new double[2 * guests + 1];
    for (int drinkers = 0; drinkers <= guests; drinkers++) {
      for (int more = 0; more <= drinkers; more++) {
        chance[drinkers + more] +=
            choose(guests, drinkers)
                * Math.pow(p, drinkers)
                * Math.pow(1 - p, guests - drinkers)
                * choose(drinkers, more)
                * Math.pow(extra, more)
                * Math.pow(1 - extra, drinkers - more);
      }
    }
    CupsDrunk drunk = new CupsDrunk(guests, p, 1.4);
    double sum = 0;
    for (int cups = 0; cups < chance.length; cups++) {
      sum += chance[cups];
      assertEquals(sum, drunk.atMost(cups), 1e-12);
    }
  }

  private static double choose(int n, int k) {
    return k == 0 ? 1 : choose(n - 1, k - 1) * n / k;
  }
}
