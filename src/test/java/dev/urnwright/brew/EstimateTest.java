package dev.urnwright.brew;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.urnwright.quantity.Strength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EstimateTest {
  /**
   * Tables of the normal distribution, from memory: Φ(1) = 0.8413, Φ(2) = 0.9772, Φ(3) = 0.9987.
   */
  @ParameterizedTest
  @CsvSource({
    "1.30, 0.05, 1.20, 1.40, 0.9545", // two to either side: 2 · 0.9772 − 1
    "1.40, 0.05, 1.15, 1.45, 0.8413", // one above, five below
    "1.45, 0.05, 1.15, 1.45, 0.5000", // on the edge
    "1.50, 0.05, 1.15, 1.45, 0.1587", // one outside: 1 − 0.8413
    "1.30, 0.00, 1.15, 1.45, 1.0000",
    "1.45, 0.00, 1.15, 1.45, 1.0000",
    "1.15, 0.00, 1.15, 1.45, 1.0000",
    "1.46, 0.00, 1.15, 1.45, 0.0000",
    "1.14, 0.00, 1.15, 1.45, 0.0000",
  })
  void theChanceToLieInAWindow(
      double strength, double uncertainty, double from, double to, double chance) {
    assertEquals(
        chance,
        new Estimate(Strength.ofPercent(strength), uncertainty / 100)
            .chanceBetween(Strength.ofPercent(from), Strength.ofPercent(to)),
        0.00006);
  }

  @Test
  void theIntervalIsTwiceTheUncertaintyEitherWayAndNeverBelowNothing() {
    Estimate cup = new Estimate(Strength.ofPercent(1.30), 0.0004);
    assertEquals(1.22, cup.low().percent(), 1e-9);
    assertEquals(1.38, cup.high().percent(), 1e-9);
    assertEquals(0.08, cup.plusMinus().percent(), 1e-9);
    assertEquals(0, new Estimate(Strength.ofPercent(1), 0.02).low().percent());
  }

  @Test
  void refusesAnUncertaintyThatIsNone() {
    Strength strength = Strength.ofPercent(1.3);
    assertThrows(IllegalArgumentException.class, () -> new Estimate(strength, -1e-9));
    assertThrows(IllegalArgumentException.class, () -> new Estimate(strength, Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> new Estimate(strength, Double.POSITIVE_INFINITY));
  }
}
