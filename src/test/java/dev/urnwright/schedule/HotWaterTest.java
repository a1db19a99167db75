package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.HotWater.Draw;
import dev.urnwright.schedule.HotWater.Supply;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class HotWaterTest {
  private static final HotWater TOWER = new HotWater(10, 0.5);

  @Test
  void isSwitchedOnSoThatAllOfItIsHotAtTheFirstDraw() {
    // Before the second draw 6 l are needed; before the first 6 − 10 · 0.5 + 6 = 7 l of the 10 l.
    // 10 l at 0.5 l/min take 20 min: on at 80.
    Supply supply = TOWER.supply(List.of(new Draw(110, 6), new Draw(100, 6)));
    assertTrue(supply.keepsAhead());
    assertEquals(100, supply.firstDraw());
    assertEquals(80, supply.switchOn());
  }

  @Test
  void saysHowMuchIsMissingAndWhen() {
    // 8 l at minute 104; four minutes before, 8 − 4 · 0.5 + 8 = 14 l: 4 l more than it holds.
    Supply supply = TOWER.supply(List.of(new Draw(100, 8), new Draw(104, 8)));
    assertFalse(supply.keepsAhead());
    assertEquals(4, supply.shortLitres(), 1e-9);
    assertEquals(100, supply.shortAt());
  }

  /** A tank watched forward in time, full and hot at the first draw. */
  @Test
  void keepsAheadExactlyWhenATankNeverRunsOut() {
    SplittableRandom random = new SplittableRandom(5);
    int ahead = 0;
    for (int i = 0; i < 2000; i++) {
      List<Draw> draws = new ArrayList<>();
      for (int n = random.nextInt(1, 9); n > 0; n--) {
        draws.add(new Draw(random.nextInt(40), random.nextInt(0, 24) / 4.0));
      }
      double stock = 10;
      double least = 10;
      int before = 0;
      List<Draw> inTime = draws.stream().sorted(Comparator.comparingInt(Draw::minute)).toList();
      for (Draw draw : inTime) {
        stock = Math.min(10, stock + (draw.minute() - before) * 0.5) - draw.litres();
        before = draw.minute();
        least = Math.min(least, stock);
      }
      assertEquals(least >= 0, TOWER.supply(draws).keepsAhead(), draws::toString);
      ahead += least >= 0 ? 1 : 0;
    }
    assertTrue(ahead > 300 && ahead < 1700, "a fair mix of both: " + ahead);
  }
}
