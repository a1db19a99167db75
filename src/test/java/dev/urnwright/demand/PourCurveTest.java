package dev.urnwright.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.GuestGroup.Arrivals;
import dev.urnwright.quantity.Share;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PourCurveTest {
  private static final Arrivals LISTED =
      Arrivals.listed(List.of(percent(50), percent(0), percent(20), percent(30)));

  static Stream<Arrivals> shapes() {
    return Stream.of(Arrivals.EVEN, Arrivals.EARLY, Arrivals.LATE, LISTED);
  }

  @Test
  void halfWay() {
    assertEquals(0.5, PourCurve.of(60, 120, Arrivals.EVEN).pouredBy(90), 1e-12);
    // The rate falls from 4/3 to 2/3, on average 7/6 in the first half: 7/12.
    assertEquals(7 / 12.0, PourCurve.of(60, 120, Arrivals.EARLY).pouredBy(90), 1e-12);
    assertEquals(5 / 12.0, PourCurve.of(60, 120, Arrivals.LATE).pouredBy(90), 1e-12);
  }

  @Test
  void listedSharesAreEvenWithinTheirPart() {
    PourCurve curve = PourCurve.of(60, 120, LISTED);
    assertEquals(0.25, curve.pouredBy(67.5), 1e-12);
    assertEquals(0.5, curve.pouredBy(75), 1e-12);
    assertEquals(0.5, curve.pouredBy(90), 1e-12);
    assertEquals(0.6, curve.pouredBy(97.5), 1e-12);
    assertEquals(112.5, curve.minuteOf(0.85), 1e-9);
    assertEquals(75, curve.minuteOf(0.5), 1e-9);
  }

  @Test
  void theGreatestRate() {
    assertEquals(1 / 60.0, PourCurve.of(60, 120, Arrivals.EVEN).greatestRate(), 1e-12);
    // twice as many at the busy end as at the other, one on average: 4/3
    assertEquals(4 / 180.0, PourCurve.of(60, 120, Arrivals.EARLY).greatestRate(), 1e-12);
    assertEquals(4 / 180.0, PourCurve.of(60, 120, Arrivals.LATE).greatestRate(), 1e-12);
    assertEquals(0.5 / 15, PourCurve.of(60, 120, LISTED).greatestRate(), 1e-12);
    assertTrue(Double.isInfinite(PourCurve.of(60, 60, Arrivals.EVEN).greatestRate()));
  }

  @Test
  void theLongestWait() {
    PourCurve even = PourCurve.of(60, 80, Arrivals.EVEN);
    assertEquals(0, even.longestWait(1 / 20.0), 1e-9);
    assertEquals(
        10, even.longestWait(1 / 30.0), 1e-9); // the last one: served 30 min after the first
    // served at the mean rate, the queue is longest half way: 7/12 have come and 6/12 are served,
    // 1/12 of the hour
    assertEquals(5, PourCurve.of(60, 120, Arrivals.EARLY).longestWait(1 / 60.0), 1e-9);
    assertEquals(5, PourCurve.of(60, 120, Arrivals.LATE).longestWait(1 / 60.0), 1e-9);
    // half come in 15 min, and 30 min go by until they are served
    assertEquals(15, PourCurve.of(60, 120, LISTED).longestWait(1 / 60.0), 1e-9);
    assertEquals(40, PourCurve.of(60, 60, Arrivals.EVEN).longestWait(1 / 40.0), 1e-9);
  }

  /** One part of four and then three of four, written as 10 % and 30 %; none at first. */
  @Test
  void listedSharesCountAgainstTheirSum() {
    PourCurve curve = PourCurve.of(60, 120, Arrivals.listed(List.of(percent(10), percent(30))));
    assertEquals(0.25, curve.pouredBy(90), 1e-12);
    assertEquals(0.625, curve.pouredBy(105), 1e-12);
    assertEquals(105, curve.minuteOf(0.625), 1e-9);
    PourCurve late = PourCurve.of(60, 120, Arrivals.listed(List.of(percent(0), percent(30))));
    assertEquals(60, late.minuteOf(0), 1e-9);
    assertEquals(0, late.pouredBy(90), 1e-12);
    assertEquals(105, late.minuteOf(0.5), 1e-9);
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void growsFromNoneToAll(Arrivals arrivals) {
    PourCurve curve = PourCurve.of(60, 120, arrivals);
    assertEquals(0, curve.pouredBy(59.9));
    assertEquals(0, curve.pouredBy(60), 1e-12);
    assertEquals(1, curve.pouredBy(120));
    double before = 0;
    for (double minute = 60; minute <= 120; minute += 0.25) {
      double now = curve.pouredBy(minute);
      assertTrue(now >= before, arrivals + " at " + minute);
      before = now;
    }
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void theMinuteOfAShareHasThatSharePoured(Arrivals arrivals) {
    PourCurve curve = PourCurve.of(60, 120, arrivals);
    for (int i = 0; i <= 1000; i++) {
      double share = i / 1000.0;
      assertEquals(share, curve.pouredBy(curve.minuteOf(share)), 1e-9, arrivals + " " + share);
    }
  }

  @Test
  void allAtOnceWithoutAWindow() {
    PourCurve curve = PourCurve.of(90, 90, Arrivals.EVEN);
    assertEquals(0, curve.pouredBy(89.9));
    assertEquals(1, curve.pouredBy(90));
    assertEquals(90, curve.minuteOf(0.5));
  }

  @Test
  void refusesWhatIsNoWindowAndNoShare() {
    assertThrows(IllegalArgumentException.class, () -> PourCurve.of(90, 89, Arrivals.EVEN));
    PourCurve curve = PourCurve.of(60, 120, Arrivals.EVEN);
    assertThrows(IllegalArgumentException.class, () -> curve.minuteOf(1.01));
    assertThrows(IllegalArgumentException.class, () -> curve.minuteOf(Double.NaN));
    assertThrows(
        IllegalArgumentException.class,
        () -> PourCurve.of(60, 120, Arrivals.listed(List.of(percent(0)))));
  }

  private static Share percent(double percent) {
    return Share.ofPercent(percent);
  }
}
