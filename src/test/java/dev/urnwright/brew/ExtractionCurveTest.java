package dev.urnwright.brew;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.ExtractionCurve.Knot;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** How extraction follows the ratio: the curve through measured points. */
class ExtractionCurveTest {
  /** Two libraries' binary rounding; the values are near 0.2. */
  private static final double ROUNDING = 1e-13;

  /** Slopes divide by distances down to 0.001. */
  private static final double SLOPE_ROUNDING = 1e-10;

  @ParameterizedTest(name = "{0}: 1:{3}")
  @CsvFileSource(resources = "pchip-scipy.csv", delimiter = '|', numLinesToSkip = 5)
  void isTheCurveOfAGeneralLibrary(
      String name, String ratios, String extractions, double ratio, double expected, Double slope) {
    ExtractionCurve curve = curve(numbers(ratios), numbers(extractions));
    assertEquals(expected, curve.at(ratio(ratio)).fraction(), ROUNDING, name);
    if (slope != null) {
      Knot knot =
          curve.knots().stream().filter(k -> k.ratio().equals(ratio(ratio))).findFirst().get();
      assertEquals(slope, knot.slope(), SLOPE_ROUNDING, name);
    }
  }

  @Test
  void onePointIsTheSameEverywhere() {
    ExtractionCurve curve = ExtractionCurve.constant(ratio(16), Extraction.ofPercent(19.4));
    assertEquals(0.194, curve.at(ratio(5)).fraction(), ROUNDING);
    assertEquals(0.194, curve.at(ratio(40)).fraction(), ROUNDING);
  }

  @Test
  void outsideTheMeasuredRangeItIsFlat() {
    ExtractionCurve curve = curve(new double[] {12, 14, 17}, new double[] {.18, .19, .2});
    assertEquals(0.18, curve.at(ratio(3)).fraction(), ROUNDING);
    assertEquals(0.2, curve.at(ratio(30)).fraction(), ROUNDING);
    assertFalse(curve.covers(ratio(11.99)));
    assertTrue(curve.covers(ratio(12)));
    assertTrue(curve.covers(ratio(17)));
    assertFalse(curve.covers(ratio(17.01)));
  }

  @Test
  void betweenTwoPointsItNeverOvershoots() {
    SplittableRandom random = new SplittableRandom(5);
    for (int trial = 0; trial < 300; trial++) {
      double[] x = new double[random.nextInt(2, 9)];
      double[] y = new double[x.length];
      for (int i = 0; i < x.length; i++) {
        x[i] = (i == 0 ? 4 : x[i - 1]) + random.nextDouble(0.05, 6);
        y[i] = random.nextInt(4) == 0 && i > 0 ? y[i - 1] : random.nextDouble(0.1, 0.3);
      }
      ExtractionCurve curve = curve(x, y);
      for (int i = 1; i < x.length; i++) {
        double previous = y[i - 1];
        for (int s = 1; s <= 20; s++) {
          double at = curve.at(ratio(x[i - 1] + (x[i] - x[i - 1]) * s / 20)).fraction();
          double rise = Math.signum(y[i] - y[i - 1]);
          assertTrue((at - previous) * rise >= -ROUNDING, "monotone between two points");
          if (rise == 0) {
            assertEquals(y[i], at, ROUNDING, "flat between two equal points");
          }
          previous = at;
        }
      }
    }
  }

  @Test
  void theOrderOfThePointsIsNoMatter() {
    ExtractionCurve rising = curve(new double[] {12, 14, 17}, new double[] {.18, .19, .2});
    ExtractionCurve falling = curve(new double[] {17, 12, 14}, new double[] {.2, .18, .19});
    assertEquals(rising.knots(), falling.knots());
  }

  @Test
  void noneOrTwoOfTheSameRatioAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> ExtractionCurve.through(List.of()));
    double[] twice = {12, 12};
    assertThrows(IllegalArgumentException.class, () -> curve(twice, new double[] {.18, .19}));
  }

  private static ExtractionCurve curve(double[] ratios, double[] extractions) {
    List<Knot> points = new ArrayList<>();
    for (int i = 0; i < ratios.length; i++) {
      points.add(new Knot(ratio(ratios[i]), Extraction.ofFraction(extractions[i]), 0));
    }
    return ExtractionCurve.through(points);
  }

  private static BrewRatio ratio(double gramsPerGram) {
    return BrewRatio.ofGramsPerGram(gramsPerGram);
  }

  private static double[] numbers(String text) {
    return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }
}
