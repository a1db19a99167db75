package dev.urnwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The density of water, which turns cups and jugs into grams. */
class WaterTest {
  /** The table prints three decimals. */
  private static final double AS_PRINTED = 0.0005 + 1e-9;

  /**
   * IAPWS-95 is the scientific formulation; the industrial one that we use follows it within its
   * own stated tolerance for density, 0.002 % in liquid water (0.02 kg/m³).
   */
  private static final double BETWEEN_FORMULATIONS = 0.02;

  @ParameterizedTest(name = "{0} °C: {1} g/l ({3})")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
           4 | 999.975 | 999.975 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          10 | 999.702 | 999.703 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          15 | 999.101 | 999.103 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          20 | 998.206 | 998.207 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          25 | 997.048 | 997.048 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          40 | 992.224 | 992.216 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          60 | 983.211 | 983.196 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          65 | 980.566 | 980.551 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          80 | 971.803 | 971.790 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          85 | 968.622 | 968.611 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          90 | 965.319 | 965.310 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          93 | 963.279 | 963.271 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          95 | 961.895 | 961.888 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          96 | 961.196 | 961.189 | IAPWS-IF97 and IAPWS-95, 0.101325 MPa
          """)
  void isThatOfTheIndustrialFormulation(
      double celsius, double if97, double iapws95, String source) {
    double density = Water.densityAt(Temperature.ofCelsius(celsius));
    assertEquals(if97, density, AS_PRINTED, source);
    assertEquals(iapws95, density, BETWEEN_FORMULATIONS, source);
  }

  /** Half of the last printed digit more than the two formulations differ from each other. */
  @ParameterizedTest(name = "{0} °C: {1} g/l ({3})")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
           4    | 999.9720 | 0.005 | independent table, quoted
          15    | 999.1026 | 0.005 | independent table, quoted
          20    | 998.2071 | 0.005 | independent table, quoted
          25    | 997.0479 | 0.005 | independent table, quoted
          60    | 983.2    | 0.07  | independent table, quoted, one decimal
          80    | 971.8    | 0.07  | independent table, quoted, one decimal
          99.97 | 958.4    | 0.07  | independent table, quoted, one decimal (at 100 °C)
          """)
  void agreesWithAnIndependentTable(
      double celsius, double printed, double tolerance, String source) {
    assertEquals(printed, Water.densityAt(Temperature.ofCelsius(celsius)), tolerance, source);
  }

  @Test
  void oneLitreAt93DegreesIs963Grams() {
    // Coffee Brewing Control Chart, Specialty Coffee Association, March 2019: "1 L = 963 g at 93
    // °C"
    Mass litre = Volume.ofLitres(1).massOfWaterAt(Temperature.ofCelsius(93));
    assertEquals(963, Math.round(litre.grams()));
  }

  @Test
  void growsBetweenTheTapAndTheBrewer() {
    // 998.206 / 963.279 = 1.0363 (IAPWS-IF97 table, 20 and 93 °C), printed to four decimals
    Mass water = Volume.ofLitres(1).massOfWaterAt(Temperature.ofCelsius(20));
    assertEquals(1.0363, Volume.ofWater(water, Temperature.ofCelsius(93)).litres(), 0.00005);
  }

  @Test
  void aVolumeComesBackFromItsMass() {
    for (double celsius = 0; celsius <= 99; celsius += 3) {
      Temperature warm = Temperature.ofCelsius(celsius);
      assertEquals(
          2.2, Volume.ofWater(Volume.ofLitres(2.2).massOfWaterAt(warm), warm).litres(), 1e-12);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 99.98, 120})
  void isNotGivenWhereWaterIsNotLiquid(double celsius) {
    assertThrows(
        IllegalArgumentException.class, () -> Water.densityAt(Temperature.ofCelsius(celsius)));
  }
}
