package dev.urnwright.learn;

import static dev.urnwright.learn.Journals.DISPLAY;
import static dev.urnwright.learn.Journals.USUAL;
import static dev.urnwright.learn.Journals.brew;
import static dev.urnwright.learn.Journals.thrice;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.journal.BrewEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Simulated journals of brewers whose truth is known lie inside the interval as often as stated.
 */
class CoverageTest {
  private static final int JOURNALS = 4000;

  /** √(0.95 × 0.05 / 4000) = 0.34 points; four of them, so that a right rate hardly ever fails. */
  private static final double NOISE = 0.014;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 4, 10, 40})
  void truthsThatAreAsLikelyAsBelieved(int batches) {
    SplittableRandom random = new SplittableRandom(20270605L + batches);
    int kept = 0;
    int extracted = 0;
    for (int i = 0; i < JOURNALS; i++) {
      double absorption = 2.1 + 0.25 * random.nextGaussian();
      double scatter = 0.1 * spread(random);
      double height = 0.015 * random.nextGaussian();
      double slope = 0.003 * random.nextGaussian();
      double points = 0.005 * spread(random);
      List<BrewEntry> journal = new ArrayList<>();
      for (int b = 0; b < batches; b++) {
        double ratio = 14 + 4 * random.nextDouble();
        double own = Math.max(0, absorption + scatter * random.nextGaussian());
        double extraction =
            Math.max(0.05, 0.20 + height + slope * (ratio - 16) + points * random.nextGaussian());
        double beverage = Math.max(1, ratio - own) * 100;
        journal.add(
            brew(100, ratio * 100, Optional.of(beverage), thrice(1e4 * extraction / beverage)));
      }
      Fit fit = new BrewFitter(DISPLAY).fit(USUAL, journal);
      var learned = fit.absorption().orElseThrow();
      if (learned.low().gramsPerGram() <= absorption
          && absorption <= learned.high().gramsPerGram()) {
        kept++;
      }
      Fit.Point point =
          fit.extraction().stream().filter(Fit.Point::brewed).findFirst().orElseThrow();
      double truth = 0.20 + height + slope * (point.ratio().gramsPerGram() - 16);
      if (point.extraction().low().fraction() <= truth
          && truth <= point.extraction().high().fraction()) {
        extracted++;
      }
    }
    near95("absorption", (double) kept / JOURNALS);
    near95("extraction", (double) extracted / JOURNALS);
  }

  private static void near95(String what, double rate) {
    assertTrue(rate > 0.95 - NOISE && rate < 0.95 + 3 * NOISE, what + ": " + rate);
  }

  /** Scatter about the usual: √(4 / χ²) with 4 degrees of freedom. */
  private static double spread(SplittableRandom random) {
    double squares = 0;
    for (int i = 0; i < 4; i++) {
      double each = random.nextGaussian();
      squares += each * each;
    }
    return Math.sqrt(4 / squares);
  }
}
