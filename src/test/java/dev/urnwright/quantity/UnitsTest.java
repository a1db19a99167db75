package dev.urnwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Customary units against metric ones. The factors are exact by definition. */
class UnitsTest {
  /** Binary rounding only. */
  private static final double EXACT = 1e-12;

  @Test
  void anOunceAndAPoundAreExact() {
    // NIST Special Publication 811 (values from memory, arithmetic exact)
    assertEquals(28.349523125, Mass.ofOunces(1).grams(), EXACT);
    assertEquals(453.59237, Mass.ofOunces(16).grams(), 453 * EXACT);
    assertEquals(16, Mass.ofGrams(453.59237).ounces(), 16 * EXACT);
  }

  @ParameterizedTest(name = "{0} fl oz is {1} ml ({2})")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1   | 29.5735295625 | NIST Handbook 44, Appendix C, from memory: a fluid ounce
          5   | 147.8676478125 | A-A-50497, Commercial Item Description 1990: a machine's cup, 12 cups in 60 fl oz
          8   | 236.5882365   | NIST Handbook 44, Appendix C, from memory: a cup
          32  | 946.352946    | NIST Handbook 44, Appendix C, from memory: a quart
          128 | 3785.411784   | NIST Handbook 44, Appendix C, from memory: a gallon of 231 cubic inches
          """)
  void fluidOuncesAreExact(double fluidOunces, double millilitres, String source) {
    Volume volume = Volume.ofFluidOunces(fluidOunces);
    assertEquals(millilitres, volume.millilitres(), millilitres * EXACT, source);
    assertEquals(fluidOunces, Volume.ofMillilitres(millilitres).fluidOunces(), 128 * EXACT, source);
    assertEquals(fluidOunces / 128, volume.gallons(), EXACT, source);
  }

  @Test
  void aGallonIs231CubicInches() {
    // 231 in³ × (2.54 cm)³ = 231 × 16.387064 ml
    assertEquals(231 * 16.387064, Volume.ofFluidOunces(128).millilitres(), 1e-9);
  }

  @ParameterizedTest(name = "{0} oz in 64 fl oz: {1} g, {2} g/l ({3})")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          3.25 | 92.1  | 48.7 | SCAA, Golden Cup Award, 2012 and 2014 (printed 92 g per 1.9 l)
          4.25 | 120.5 | 63.7 | SCAA, Golden Cup Award, 2012 and 2014 (printed 120 g per 1.9 l)
          """)
  void doseRatesConvert(double ounces, double grams, double gramsPerLitre, String source) {
    Mass dose = Mass.ofOunces(ounces);
    assertEquals(grams, dose.grams(), 0.05, source);
    assertEquals(gramsPerLitre, dose.grams() / Volume.ofFluidOunces(64).litres(), 0.05, source);
  }

  @ParameterizedTest(name = "{0} °F is {1} °C ({2})")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          32    | 0    | by definition
          212   | 100  | by definition
          -459.67 | -273.15 | by definition: absolute zero
          160   | 71.1 | Brown and Diller, Burns 34, 2008: usual serving, 160 to 185 °F
          185   | 85   | Brown and Diller, Burns 34, 2008
          140   | 60   | Brown and Diller, Burns 34, 2008: preferred, 140 °F
          """)
  void fahrenheitConverts(double fahrenheit, double celsius, String source) {
    // published to a tenth of a degree
    assertEquals(celsius, Temperature.ofFahrenheit(fahrenheit).celsius(), 0.05, source);
    assertEquals(fahrenheit, Temperature.ofFahrenheit(fahrenheit).fahrenheit(), 1e-10, source);
  }

  @Test
  void goldenCupRangeOfWaterConverts() {
    // SCAA Standard, Golden Cup, 23 December 2015: 200 ± 5 °F, printed 93 ± 3 °C
    assertEquals(93, Temperature.ofFahrenheit(200).celsius(), 0.5);
    assertEquals(90, Temperature.ofFahrenheit(195).celsius(), 0.6);
    assertEquals(96, Temperature.ofFahrenheit(205).celsius(), 0.6);
  }
}
