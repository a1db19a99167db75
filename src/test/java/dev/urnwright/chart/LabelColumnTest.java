package dev.urnwright.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LabelColumnTest {
  @Test
  void labelsThatHideNothingStayWhereTheyAre() {
    double[] wanted = {10, 30, 80};
    assertArrayEquals(wanted, LabelColumn.spread(wanted, 10, 0, 100), 1e-12);
  }

  @Test
  void twoAtOnePlaceMoveApartByHalfAGapEach() {
    assertArrayEquals(
        new double[] {45, 55}, LabelColumn.spread(new double[] {50, 50}, 10, 0, 100), 1e-12);
  }

  @Test
  void aNeighbourIsPushedAlong() {
    // All three a gap apart, and least squares makes the shifts add up to nothing:
    // (43 1/3 − 50) + (53 1/3 − 50) + (63 1/3 − 60) = 0.
    assertArrayEquals(
        new double[] {130 / 3.0, 160 / 3.0, 190 / 3.0},
        LabelColumn.spread(new double[] {50, 50, 60}, 10, 0, 100),
        1e-9);
  }

  @Test
  void aColumnStaysOnTheChart() {
    assertArrayEquals(
        new double[] {80, 90, 100},
        LabelColumn.spread(new double[] {99, 99, 99}, 10, 0, 100),
        1e-12);
    assertArrayEquals(
        new double[] {0, 10}, LabelColumn.spread(new double[] {1, 2}, 10, 0, 100), 1e-12);
  }

  @Test
  void moreThanFitStandCloserTogether() {
    double[] places = LabelColumn.spread(new double[21], 10, 0, 100);
    assertEquals(0, places[0], 1e-9);
    assertEquals(100, places[20], 1e-9);
    assertEquals(5, places[1] - places[0], 1e-9);
  }

  @Test
  void noTwoAreEverCloserThanTheGap() {
    Random random = new Random(7);
    for (int trial = 0; trial < 200; trial++) {
      double[] wanted = random.doubles(1 + random.nextInt(40), 0, 400).sorted().toArray();
      double[] places = LabelColumn.spread(wanted, 10, 0, 400);
      for (int at = 1; at < places.length; at++) {
        assertTrue(places[at] - places[at - 1] >= 10 - 1e-9, Arrays.toString(places));
      }
      assertTrue(places[0] >= -1e-9 && places[places.length - 1] <= 400 + 1e-9);
    }
  }
}
