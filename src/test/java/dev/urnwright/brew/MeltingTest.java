package dev.urnwright.brew;

import static dev.urnwright.brew.Brews.grams;
import static dev.urnwright.brew.Brews.percent;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ice at 0 °C that melts into the cup, and concentrate blended with it. */
class MeltingTest {
  private static final double L = 333.55; // J/g, melting heat
  private static final double C = 4.186; // J/(g·K), specific heat

  /** Energy balance by hand: {@code ice (L + c·θf) = liquid · c (θ0 − θf)}. */
  @ParameterizedTest(name = "{0} to {1} °C: {2} % ice")
  @CsvSource({
    // 1 g of liquid gives 4.186 × 20 = 83.72 J; 1 g of ice takes 333.55 + 20.93 = 354.48 J;
    // so 0.23618 g of ice to the gram, 0.23618 / 1.23618 = 19.105 % of the cup
    "25, 5, 19.105",
    // 4.186 × 70 = 293.02; 333.55 + 83.72 = 417.27; 0.70223; 41.254 %
    "90, 20, 41.254",
    // 4.186 × 60 = 251.16; 333.55; 0.75299; 42.954 %: as cold as ice
    "60, 0, 42.954",
    "12, 12, 0",
  })
  void iceShareIsThatOfTheEnergyBalance(double poured, double served, double percent) {
    assertEquals(percent, Melting.iceShare(celsius(poured), celsius(served)).percent(), 0.001);
  }

  @Test
  void heatIsConserved() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 500; i++) {
      double poured = random.nextDouble(1, 99);
      double served = random.nextDouble(0, poured);
      double ice = Melting.iceShare(celsius(poured), celsius(served)).fraction();
      double taken = ice * (L + C * served);
      double given = (1 - ice) * C * (poured - served);
      assertEquals(given, taken, 1e-9);
      Temperature back = Melting.pouringTemperature(Share.ofFraction(ice), celsius(served));
      assertEquals(poured, back.celsius(), 1e-9);
    }
  }

  @Test
  void iceOnlyCools() {
    var warmer =
        assertThrows(
            IllegalArgumentException.class, () -> Melting.iceShare(celsius(20), celsius(21)));
    assertTrue(warmer.getMessage().startsWith("ice cools"), warmer.getMessage());
    assertThrows(IllegalArgumentException.class, () -> Melting.iceShare(celsius(20), celsius(-1)));
  }

  @Test
  void iceIsPartOfTheBypass() {
    // 300 g at 1.3 % from 2 %: 195 g of concentrate, 105 g of water; 20 % of it, 60 g, is ice
    Blend blend = Blend.of(grams(300), percent(1.3), percent(2), Share.ofPercent(20));
    assertEquals(195, blend.concentrate().grams(), 1e-9);
    assertEquals(45, blend.bypass().grams(), 1e-9);
    assertEquals(60, blend.ice().grams(), 1e-9);
    assertEquals(300, blend.finished().grams(), 1e-9);
    assertEquals(1.3, blend.strength().percent(), 1e-9);
    // in the dispenser: 195 × 2 % / 240 = 1.625 %
    assertEquals(240, blend.liquid().grams(), 1e-9);
    assertEquals(1.625, blend.liquidStrength().percent(), 1e-9);
  }

  @Test
  void iceThatOutweighsTheBypassIsRefused() {
    // 1.3 / 2 = 65 % concentrate: 35 % of water at most
    assertTrue(Blend.reaches(percent(2), percent(1.3), Share.ofPercent(34.9)));
    assertTrue(Blend.reaches(percent(2), percent(1.3), Share.ofPercent(35)));
    assertFalse(Blend.reaches(percent(2), percent(1.3), Share.ofPercent(35.1)));
    Mass finished = grams(300);
    assertThrows(
        IllegalArgumentException.class,
        () -> Blend.of(finished, percent(1.3), percent(2), Share.ofPercent(35.1)));
  }

  @Test
  void theStrengthOfTheConcentrateIsServedUndiluted() {
    Strength concentrate = percent(1.7);
    Blend blend = Blend.of(grams(300), percent(1.7), concentrate, Share.ofPercent(0));
    assertEquals(300, blend.concentrate().grams(), 1e-9);
    assertEquals(0, blend.bypass().grams(), 1e-9);
  }

  @Test
  void nothingHasNoStrength() {
    Blend nothing = new Blend(Mass.ZERO, Mass.ZERO, Mass.ZERO, percent(2));
    assertEquals(0, nothing.strength().fraction(), 0);
    assertEquals(0, nothing.liquidStrength().fraction(), 0);
  }

  private static Temperature celsius(double celsius) {
    return Temperature.ofCelsius(celsius);
  }
}
