package dev.urnwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole steps of a scale, whole marks of a jug, and quantities that can't be. */
class RoundingTest {
  @ParameterizedTest(name = "{0} g in steps of {1} g: up {2}, down {3}, nearest {4}")
  @CsvSource({
    "12.1, 5, 15, 10, 10",
    "12.5, 5, 15, 10, 15",
    "15, 5, 15, 15, 15",
    "0, 5, 0, 0, 0",
    "3, 50, 50, 0, 0",
    "0.3, 0.1, 0.3, 0.3, 0.3",
    "0.7, 0.1, 0.7, 0.7, 0.7",
    "28.349523125, 2.8349523125, 28.349523125, 28.349523125, 28.349523125",
  })
  void stepsAreWhole(double grams, double step, double up, double down, double nearest) {
    Mass mass = Mass.ofGrams(grams);
    assertEquals(up, mass.roundUpTo(Mass.ofGrams(step)).grams(), 1e-12);
    assertEquals(down, mass.roundDownTo(Mass.ofGrams(step)).grams(), 1e-12);
    assertEquals(nearest, mass.roundTo(Mass.ofGrams(step)).grams(), 1e-12);
  }

  /** A step of 0.1 is no binary number: counting up to it must not add or lose one. */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.1, 0.5, 2.8349523125, 5, 50})
  void aNumberOfStepsStaysThatNumber(double step) {
    Mass one = Mass.ofGrams(step);
    double sum = 0;
    for (int n = 1; n <= 5000; n++) {
      sum += step;
      assertEquals(n, Math.round(Mass.ofGrams(sum).roundUpTo(one).steps(one)));
      assertEquals(n, Math.round(Mass.ofGrams(n * step).roundDownTo(one).steps(one)));
    }
  }

  @Test
  void upIsNeverLessAndDownNeverMore() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 10_000; i++) {
      Mass step = Mass.ofGrams(random.nextDouble(0.1, 50));
      Mass mass = Mass.ofGrams(random.nextDouble(0, 20_000));
      double up = mass.roundUpTo(step).grams();
      double down = mass.roundDownTo(step).grams();
      double slack = step.grams() * 1.1e-9; // what the rounding forgives, see Mass
      assertTrue(up >= mass.grams() - slack && up < mass.grams() + step.grams());
      assertTrue(down <= mass.grams() + slack && down > mass.grams() - step.grams());
      double nearest = mass.roundTo(step).grams();
      assertTrue(Math.abs(nearest - mass.grams()) <= step.grams() / 2 + slack);
    }
  }

  @Test
  void aJugIsReadToTheNearestMark() {
    Volume mark = Volume.ofMillilitres(10);
    assertEquals(240, Volume.ofMillilitres(244.9).roundTo(mark).millilitres(), 1e-9);
    assertEquals(250, Volume.ofMillilitres(245).roundTo(mark).millilitres(), 1e-9);
    assertEquals(0, Volume.ofMillilitres(4).roundTo(mark).millilitres(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void anImpossibleMassOrVolumeIsRefused(double value) {
    assertThrows(IllegalArgumentException.class, () -> Mass.ofGrams(value));
    assertThrows(IllegalArgumentException.class, () -> Volume.ofLitres(value));
  }

  @Test
  void thereIsNoStepOfNothing() {
    Mass mass = Mass.ofGrams(5);
    assertThrows(IllegalArgumentException.class, () -> mass.roundUpTo(Mass.ZERO));
    Volume volume = Volume.ofLitres(1);
    assertThrows(IllegalArgumentException.class, () -> volume.roundTo(Volume.ofLitres(0)));
  }

  @Test
  void moreCannotBeTakenThanThereIs() {
    Mass five = Mass.ofGrams(5);
    assertThrows(IllegalArgumentException.class, () -> five.minus(Mass.ofGrams(5.1)));
  }

  @Test
  void percentAndFractionAreTheSameThing() {
    assertEquals(0.0135, Strength.ofPercent(1.35).fraction(), 1e-15);
    assertEquals(1.35, Strength.ofFraction(0.0135).percent(), 1e-13);
    assertEquals(0.1885, Extraction.ofPercent(18.85).fraction(), 1e-15);
    assertEquals(85, Share.ofFraction(0.85).percent(), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> Strength.ofPercent(100.1));
    assertThrows(IllegalArgumentException.class, () -> Extraction.ofFraction(18.85));
    assertThrows(IllegalArgumentException.class, () -> Share.ofPercent(-1));
  }
}
