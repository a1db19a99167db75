package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.DispenserTimes.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DispenserTimesTest {
  @Test
  void oneThatIsFreeAgainIsUsedAgain() {
    DispenserTimes times =
        DispenserTimes.of(List.of(new Use(60, 90, 0), new Use(0, 60, 0), new Use(30, 70, 0)), 3);
    assertEquals(2, times.most());
    assertEquals(List.of(0, 0, 1), times.units());
  }

  @Test
  void anotherCoffeeGoesIntoTheSameOneOnlyWhenNoneIsLeft() {
    List<Use> uses = List.of(new Use(0, 10, 0), new Use(20, 30, 1), new Use(40, 50, 0));
    assertEquals(List.of(0, 1, 0), DispenserTimes.of(uses, 2).units());
    assertEquals(List.of(0, 0, 0), DispenserTimes.of(uses, 1).units());
  }

  /** None twice at once; more than there are only when so many are wanted in one minute. */
  @Test
  void noneIsWantedTwiceAndNoneTooMany() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 500; i++) {
      List<Use> uses = new ArrayList<>();
      for (int n = random.nextInt(1, 20); n > 0; n--) {
        int from = random.nextInt(100);
        uses.add(new Use(from, from + random.nextInt(1, 40), random.nextInt(3)));
      }
      int there = random.nextInt(1, 12);
      DispenserTimes times = DispenserTimes.of(uses, there);
      int busiest = 0;
      for (int minute = 0; minute < 140; minute++) {
        int now = minute;
        List<Integer> inUse = new ArrayList<>();
        for (int u = 0; u < uses.size(); u++) {
          if (uses.get(u).from() <= now && now < uses.get(u).until()) {
            inUse.add(times.units().get(u));
          }
        }
        assertEquals(inUse.size(), inUse.stream().distinct().count(), uses::toString);
        busiest = Math.max(busiest, inUse.size());
      }
      assertTrue(times.most() >= busiest, uses::toString);
      assertTrue(times.most() <= Math.max(busiest, there), uses::toString);
      assertTrue(times.units().stream().allMatch(unit -> unit >= 0 && unit < times.most()));
    }
  }
}
