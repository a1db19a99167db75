package dev.urnwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A dispenser that is diluted already, put right. */
class DilutionTest {
  private static final int TRIALS = 3000;

  @Test
  void tooStrongTakesWater() {
    // x = M(T − t)/t = 2000 × (1.40 − 1.25) / 1.25 = 240 g
    Dilution dilution = of(2000, 1.40, 1.25, 1.8, Optional.empty());
    assertEquals(240, dilution.water().grams(), 1e-9);
    assertEquals(0, dilution.drawOff().grams(), 0);
    assertEquals(0, dilution.concentrate().grams(), 0);
    assertEquals(1.25, dilution.strength().percent(), 1e-12);
  }

  @Test
  void tooWeakTakesConcentrate() {
    // x = M(t − T)/(Tc − t) = 2000 × (1.25 − 1.15) / (1.75 − 1.25) = 400 g
    assertEquals(400, of(2000, 1.15, 1.25, 1.75, Optional.empty()).concentrate().grams(), 1e-9);
  }

  @Test
  void aFullDispenserGetsSomeDrawnOffFirst() {
    // kept = F·t/T = 2100 × 1.25/1.40 = 1875 g, so 125 g off; then 1875 × 0.15/1.25 = 225 g of
    // water
    Dilution water = of(2000, 1.40, 1.25, 1.8, Optional.of(2100.0));
    assertEquals(125, water.drawOff().grams(), 1e-9);
    assertEquals(225, water.water().grams(), 1e-9);
    // kept = F(Tc − t)/(Tc − T) = 2100 × 0.5/0.6 = 1750 g, so 250 g off; then 1750 × 0.1/0.5 = 350
    // g
    Dilution concentrate = of(2000, 1.15, 1.25, 1.75, Optional.of(2100.0));
    assertEquals(250, concentrate.drawOff().grams(), 1e-9);
    assertEquals(350, concentrate.concentrate().grams(), 1e-9);
  }

  @Test
  void noConcentrateHelpsThatIsTooWeakItself() {
    assertTrue(
        Dilution.of(grams(2000), percent(1.15), percent(1.25), percent(1.25), Optional.empty())
            .isEmpty());
  }

  @Test
  void whatIsRightIsLeftAlone() {
    Dilution dilution = of(2000, 1.2504, 1.25, 1.8, Optional.empty());
    assertEquals(0, dilution.water().grams() + dilution.concentrate().grams(), 0);
  }

  /** Solids in and out, the vessel's brim, and nothing more to do afterwards. */
  @Test
  void conservesSolidsFitsAndSettlesAtOnce() {
    Random random = new Random(11);
    for (int i = 0; i < TRIALS; i++) {
      double m = 200 + random.nextInt(9000);
      double is = 0.8 + random.nextDouble();
      double wanted = 0.9 + random.nextDouble();
      double concentrate = wanted + 0.05 + random.nextDouble();
      double full = m * (1 + random.nextDouble() * 0.3);
      Dilution dilution = of(m, is, wanted, concentrate, Optional.of(full));
      double kept = m - dilution.drawOff().grams();
      double all = kept + dilution.water().grams() + dilution.concentrate().grams();
      double solids = kept * is + dilution.concentrate().grams() * concentrate;
      assertTrue(dilution.drawOff().grams() >= 0 && all <= full * (1 + 1e-12));
      assertEquals(solids, all * dilution.strength().percent(), 1e-8 * solids);
      Dilution again =
          of(all, dilution.strength().percent(), wanted, concentrate, Optional.of(full));
      assertEquals(
          0,
          again.water().grams() + again.concentrate().grams() + again.drawOff().grams(),
          1e-9,
          () -> again.toString());
    }
  }

  @Test
  void theStrongerItReadsTheMoreWaterItTakes() {
    double before = -1;
    for (double reading = 1.30; reading < 2; reading += 0.01) {
      double water = of(2000, reading, 1.25, 2.5, Optional.empty()).water().grams();
      assertTrue(water > before);
      before = water;
    }
  }

  @Test
  void isRoundedToTheScaleAndStillFits() {
    Mass step = grams(5);
    Dilution exact = of(2003, 1.41, 1.25, 1.8, Optional.of(2100.0));
    Dilution rounded =
        exact.rounded(grams(2003), percent(1.41), percent(1.8), Optional.of(grams(2100)), step);
    assertEquals(0, rounded.drawOff().grams() % 5, 1e-9);
    assertEquals(0, rounded.water().grams() % 5, 1e-9);
    double all = 2003 - rounded.drawOff().grams() + rounded.water().grams();
    assertTrue(all <= 2100, "above the brim: " + all);
    assertEquals(
        1.41 * (2003 - rounded.drawOff().grams()) / all, rounded.strength().percent(), 1e-9);
  }

  private static Dilution of(
      double holds, double is, double wanted, double concentrate, Optional<Double> full) {
    return Dilution.of(
            grams(holds),
            percent(is),
            percent(wanted),
            percent(concentrate),
            full.map(Mass::ofGrams))
        .orElseThrow();
  }

  private static Mass grams(double grams) {
    return Mass.ofGrams(grams);
  }

  private static Strength percent(double percent) {
    return Strength.ofPercent(percent);
  }
}
