package dev.urnwright.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.GuestGroup.Arrivals;
import dev.urnwright.quantity.Share;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Cups and pouring by another road: guest by guest, and cup by cup along the window. */
class DemandRederivedTest {
  private final SplittableRandom random = new SplittableRandom(47);

  /** One guest after the other: each one moves the cups so far by none, ⌊c⌋ or one more. */
  @Test
  void theCupsGuestByGuest() {
    for (int trial = 0; trial < 60; trial++) {
      int guests = random.nextInt(1, 60);
      double p = trial % 7 == 0 ? 1 : random.nextDouble(0.05, 1);
      int whole = random.nextInt(0, 4);
      double part = trial % 5 == 0 && whole > 0 ? 0 : random.nextDouble(0.05, 0.95);
      double[] chance = {1};
      for (int guest = 0; guest < guests; guest++) {
        double[] next = new double[chance.length + whole + 1];
        for (int cups = 0; cups < chance.length; cups++) {
          next[cups] += chance[cups] * (1 - p);
          next[cups + whole] += chance[cups] * p * (1 - part);
          next[cups + whole + 1] += chance[cups] * p * part;
        }
        chance = next;
      }
      CupsDrunk drunk = new CupsDrunk(guests, p, whole + part);
      double sum = 0;
      double mean = 0;
      for (int cups = 0; cups < chance.length; cups++) {
        sum += chance[cups];
        mean += cups * chance[cups];
        assertEquals(sum, drunk.atMost(cups), 1e-9, guests + ", " + p + ", " + whole + "+" + part);
      }
      assertEquals(mean, drunk.mean(), 1e-9 * guests);
      // the smallest number that reaches a level, counted from nothing
      for (double level : new double[] {0.1, 0.5, 0.9, 0.99}) {
        int enough = 0;
        double reached = chance[0];
        while (reached < level - 1e-9) {
          enough++;
          reached += chance[enough];
        }
        assertEquals(enough, drunk.enoughWith(level));
      }
    }
  }

  /** Rates summed over the window's parts: even ones, falling to half, rising to double, listed. */
  @Test
  void whatIsPouredIsTheSumOfItsRates() {
    rates(Arrivals.EVEN, s -> 1);
    rates(Arrivals.EARLY, s -> (4 - 2 * s) / 3); // 4/3 at first, 2/3 at last
    rates(Arrivals.LATE, s -> (2 + 2 * s) / 3);
    rates(
        Arrivals.listed(List.of(percent(10), percent(0), percent(50), percent(40))),
        s -> s < 0.25 ? 0.4 : s < 0.5 ? 0 : s < 0.75 ? 2 : 1.6);
  }

  private static void rates(Arrivals arrivals, DoubleUnaryOperator rate) {
    PourCurve curve = PourCurve.of(600, 720, arrivals);
    int slices = 12_000;
    double poured = 0;
    for (int i = 0; i < slices; i++) {
      poured += rate.applyAsDouble((i + 0.5) / slices) / slices;
      double minute = 600 + 120.0 * (i + 1) / slices;
      assertEquals(poured, curve.pouredBy(minute), 1e-9, arrivals + " at " + minute);
    }
    assertEquals(1, poured, 1e-9);
  }

  /** Earlier or later, in a window twice as long: the same parts by the same part of it. */
  @Test
  void onlyThePartOfTheWindowCounts() {
    for (Arrivals arrivals :
        List.of(
            Arrivals.EVEN,
            Arrivals.EARLY,
            Arrivals.LATE,
            Arrivals.listed(List.of(percent(30), percent(70))))) {
      PourCurve one = PourCurve.of(0, 1, arrivals);
      PourCurve other = PourCurve.of(540, 690, arrivals);
      for (double s = 0; s <= 1; s += 0.01) {
        assertEquals(one.pouredBy(s), other.pouredBy(540 + 150 * s), 1e-9);
        assertEquals(540 + 150 * one.minuteOf(s), other.minuteOf(s), 1e-6);
      }
    }
    // early and late are each other's mirror
    PourCurve early = PourCurve.of(0, 1, Arrivals.EARLY);
    PourCurve late = PourCurve.of(0, 1, Arrivals.LATE);
    for (double s = 0.05; s < 1; s += 0.05) {
      assertEquals(1 - late.pouredBy(1 - s), early.pouredBy(s), 1e-12);
      assertEquals(1 - late.minuteOf(1 - s), early.minuteOf(s), 1e-12);
      assertTrue(early.pouredBy(s) > s && late.pouredBy(s) < s);
    }
  }

  private static Share percent(double percent) {
    return Share.ofPercent(percent);
  }
}
