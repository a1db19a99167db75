package dev.urnwright.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.quantity.Length;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Volume;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BasketTest {
  private static final double DENSITY = 0.40;

  /** Binary rounding only. */
  private static final double EXACT = 1e-9;

  private static Basket basket(Basket.Shape shape, double diameter) {
    return new Basket(shape, Length.ofMillimetres(diameter), Optional.empty());
  }

  @ParameterizedTest(name = "{0} g in {1} mm: {2} mm ({3})")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          419 | 180 | 41.16 | 419/0.40 = 1047.5 ml over π·9²  = 254.469 cm²
          500 | 252.3 | 25.00 | 500/0.40 = 1250 ml over π·12.615² = 499.945 cm²
          1000 | 200 | 79.58 | 1000/0.40 = 2500 ml over π·10² = 314.159 cm²
          """)
  void aFlatBedIsVolumeOverArea(double dose, double diameter, double depth, String arithmetic) {
    Length found = basket(Basket.Shape.FLAT, diameter).depthOf(Mass.ofGrams(dose), DENSITY);
    assertEquals(depth, found.millimetres(), 0.005, arithmetic);
  }

  @Test
  void aConeFillsFromItsTip() {
    // 20 g are 50 ml; π·h³/9 = 50 000 mm³, so h = ∛(9 · 50 000 / π) = ∛143 239 = 52.32 mm
    Length depth = basket(Basket.Shape.CONE, 90).depthOf(Mass.ofGrams(20), DENSITY);
    assertEquals(52.32, depth.millimetres(), 0.005);
  }

  @Test
  void publishedPairsOfWeightAndMeasureLieAroundTheUsualDensity() {
    // Armed Forces Recipe Service, card C-005-01: 1 7/8 lb are 2 1/4 qt. In a basket of 300 mm that
    // volume stands 2129.3 ml / 706.86 cm² = 30.12 mm deep; at 0.40 g/ml the weight stands
    // 850.49/0.40 = 2126.2 ml / 706.86 cm² = 30.08 mm deep.
    Mass dose = Mass.ofOunces(30);
    double measured = Volume.ofFluidOunces(72).millilitres() / (Math.PI * 15 * 15) * 10;
    Length depth = basket(Basket.Shape.FLAT, 300).depthOf(dose, DENSITY);
    assertEquals(30.12, measured, 0.005);
    assertEquals(30.08, depth.millimetres(), 0.005);
  }

  @ParameterizedTest
  @EnumSource(Basket.Shape.class)
  void theDoseForADepthLiesSoDeep(Basket.Shape shape) {
    Basket basket = basket(shape, 150);
    Mass dose = basket.doseFor(Length.ofMillimetres(37), DENSITY);
    assertEquals(37, basket.depthOf(dose, DENSITY).millimetres(), EXACT);
  }

  @Test
  void doublingAreaAndDoseKeepsTheDepth() {
    double depth = basket(Basket.Shape.FLAT, 120).depthOf(Mass.ofGrams(150), DENSITY).millimetres();
    double doubled =
        basket(Basket.Shape.FLAT, 120 * Math.sqrt(2))
            .depthOf(Mass.ofGrams(300), DENSITY)
            .millimetres();
    assertEquals(depth, doubled, EXACT);
  }

  @Test
  void lengthsTwiceAsGreatTakeEightTimesTheDose() {
    for (Basket.Shape shape : Basket.Shape.values()) {
      double depth = basket(shape, 90).depthOf(Mass.ofGrams(20), DENSITY).millimetres();
      double doubled = basket(shape, 180).depthOf(Mass.ofGrams(160), DENSITY).millimetres();
      assertEquals(2 * depth, doubled, EXACT, shape.toString());
    }
  }

  /** Golden Cup standard, 2015: 1 to 4 min fine, 4 to 6 min drip, 6 to 8 min coarse. */
  @ParameterizedTest
  @CsvSource({"50,none", "60,FINE", "190,FINE", "241,DRIP", "361,COARSE", "480,COARSE", "481,none"})
  void aContactTimeHasItsGrind(int seconds, String grind) {
    assertEquals(grind, Grind.suiting(Duration.ofSeconds(seconds)).map(Grind::name).orElse("none"));
  }
}
