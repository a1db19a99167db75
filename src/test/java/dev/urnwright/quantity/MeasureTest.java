package dev.urnwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MeasureTest {
  private static final Wanted ANY = new Wanted(List.of(Dimension.values()), "18 g");

  /** Products of exact factors are themselves exact; only the last step rounds, to a double. */
  private static final double LAST_DIGIT = 1e-15;

  /** Exact by definition: NIST Handbook 44, Appendix C (United States customary units). */
  @ParameterizedTest
  @CsvSource({
    "1 lb,     GRAM,   453.59237",
    "1 oz,     GRAM,   28.349523125",
    "1 gal,    LITRE,  3.785411784",
    "1 qt,     LITRE,  0.946352946",
    "1 pt,     LITRE,  0.473176473",
    "1 fl oz,  LITRE,  0.0295735295625",
    "1 gal,    QUART,  4",
    "1 gal,    FLUID_OUNCE, 128",
    "1 lb,     OUNCE,  16",
    "32 °F,    CELSIUS, 0",
    "212 °F,   CELSIUS, 100",
    "-40 °F,   CELSIUS, -40",
    "200 °F,   CELSIUS, 93.33333333333333", // (200 − 32)·5/9 = 840/9
    "9 °F per hour, CELSIUS_PER_HOUR, 5",
  })
  void convertsByExactFactors(String text, Unit unit, double expected) {
    assertEquals(expected, Measure.parse(text, ANY).in(unit), Math.abs(expected) * LAST_DIGIT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "18 g            | GRAM        | 18",
        "18g             | GRAM        | 18",
        "1.5 kg          | GRAM        | 1500",
        "1,5 l           | LITRE       | 1.5",
        "0,500 kg        | GRAM        | 500",
        "350 mL          | MILLILITRE  | 350",
        "350 ML          | MILLILITRE  | 350",
        "½ lb            | OUNCE       | 8",
        "1½ lb           | OUNCE       | 24",
        "1 1/2 lb        | OUNCE       | 24",
        "1-1/2 lb        | OUNCE       | 24",
        "3/4 oz          | OUNCE       | 0.75",
        "1 ⅞ lb          | OUNCE       | 30",
        "12 fl oz        | FLUID_OUNCE | 12",
        "12 fl. oz.      | FLUID_OUNCE | 12",
        "12 fluid ounces | FLUID_OUNCE | 12",
        "2 lbs           | POUND       | 2",
        "1 lb 4 oz       | OUNCE       | 20",
        "10 000 g        | KILOGRAM    | 10",
        "10 000 g        | KILOGRAM    | 10",
        "10'000 g        | KILOGRAM    | 10",
        ".5 l            | LITRE       | 0.5",
        "33 cl           | LITRE       | 0.33",
        "5 dl            | LITRE       | 0.5",
        "200 F           | FAHRENHEIT  | 200",
        "93 C            | CELSIUS     | 93",
        "93 ℃            | CELSIUS     | 93",
        "93 degrees C    | CELSIUS     | 93",
        "93 deg C        | CELSIUS     | 93",
        "93 ºC           | CELSIUS     | 93",
        "2.1 g/g         | GRAM_PER_GRAM | 2.1",
        "2.1 oz/oz       | GRAM_PER_GRAM | 2.1",
        "2.1 g per g     | GRAM_PER_GRAM | 2.1",
        "11 min          | SECOND      | 660",
        "1 h 30 min      | MINUTE      | 90",
        "1h30min         | MINUTE      | 90",
        "1 1/2 hours     | MINUTE      | 90",
        "1.40 %          | PERCENT     | 1.4",
        "85%             | PERCENT     | 85",
        "85 percent      | PERCENT     | 85",
        "85 per cent     | PERCENT     | 85",
        "3.1 kW          | WATT        | 3100",
        "230 V           | VOLT        | 230",
        "32 A            | AMPERE      | 32",
        "6 °C per hour   | CELSIUS_PER_HOUR | 6",
        "6 °C/h          | CELSIUS_PER_HOUR | 6",
        "18 °F per hour  | CELSIUS_PER_HOUR | 10",
      })
  void readsWhatPeopleWrite(String text, Unit unit, double expected) {
    assertEquals(expected, Measure.parse(text, ANY).in(unit), Math.abs(expected) * LAST_DIGIT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "MASS | 1,500 g | '1,500 g' can be read in two ways; write 1500 g or 1.5 g",
        "MASS | 12,250 lb | '12,250 lb' can be read in two ways; write 12250 lb or 12.25 lb",
        "MASS | 1,500.5 g | '1,500.5 g' is not written as one number; expected a mass such as 18 g",
        "MASS | 1.2.3 g | '1.2.3 g' is not written as one number; expected a mass such as 18 g",
        "MASS | 18 | 18 has no unit; expected a mass such as 18 g",
        "MASS | g | 'g' does not start with a number; expected a mass such as 18 g",
        "MASS | NaN g | 'NaN g' does not start with a number; expected a mass such as 18 g",
        "MASS | Infinity g | 'Infinity g' does not start with a number; expected a mass such as 18 g",
        "MASS | 1e400 g | '1e400 g' has an exponent; expected a mass such as 18 g",
        "MASS | -18 g | -18 g is below zero; expected a mass such as 18 g",
        "MASS | −18 g | −18 g is below zero; expected a mass such as 18 g",
        "MASS | 1 kg -2 g | 'kg -' in '1 kg -2 g' is not a known unit; expected a mass in g, oz, lb, kg, such as 18 g",
        "MASS | 1/0 g | '1/0 g' divides by zero; expected a mass such as 18 g",
        "MASS | 18 stone | 'stone' in '18 stone' is not a known unit; expected a mass in g, oz, lb, kg, such as 18 g",
        "MASS | 18 ml | 18 ml is a volume; expected a mass such as 18 g",
        "MASS | 4 oz 1 lb | '4 oz 1 lb' does not add up to one measure; expected a mass such as 18 g",
        "MASS | 1 lb 2 ml | '1 lb 2 ml' does not add up to one measure; expected a mass such as 18 g",
        "MASS | 1 lb 4 | 1 lb 4 has no unit; expected a mass such as 18 g",
        "VOLUME | 240 g | 240 g is a mass; expected a volume such as 240 ml",
        "VOLUME | 12 oz | 12 oz is a mass; expected a volume such as 12 fl oz",
        "VOLUME | 2 cups | 2 cups: cups and spoons come in many sizes; expected a volume in ml, cl, fl oz, dl, pt, qt, l, gal, such as 240 ml",
        "VOLUME | 1 imp gal | 1 imp gal: imperial units are not known, and differ from US ones; expected a volume in ml, cl, fl oz, dl, pt, qt, l, gal, such as 240 ml",
        "TEMPERATURE | 6 °C per hour | 6 °C per hour is a cooling; expected a temperature such as 92 °C",
        "COOLING | 6 °C | 6 °C is a temperature; expected a cooling such as 6 °C per hour",
        "DURATION | 11 m | 'm' in '11 m' is not a known unit; expected a time in s, min, h, such as 11 min",
      })
  void refusesWithWordsThatHelp(Dimension dimension, String text, String expected) {
    UnreadableException refused =
        assertThrows(UnreadableException.class, () -> Measure.parse(text, Wanted.of(dimension)));
    assertEquals(expected, refused.getMessage());
  }

  /** What we write, we read: for every unit, any number. */
  @ParameterizedTest
  @EnumSource(Unit.class)
  void readsWhatItWrites(Unit unit) {
    Random random = new Random(17);
    for (int i = 0; i < 200; i++) {
      BigDecimal number = BigDecimal.valueOf(random.nextInt(1_000_000), random.nextInt(5));
      Measure measure = Measure.parse(number.toPlainString() + " " + unit.symbol(), ANY);
      assertEquals(measure, Measure.parse(measure.toString(), ANY));
      assertEquals(number.doubleValue(), measure.in(unit));
    }
  }

  /** Into any unit of the same dimension and back: the same number, to the last digit. */
  @ParameterizedTest
  @EnumSource(Unit.class)
  void convertsThereAndBack(Unit unit) {
    Random random = new Random(18);
    for (Unit other :
        Arrays.stream(Unit.values()).filter(u -> u.dimension() == unit.dimension()).toList()) {
      for (int i = 0; i < 50; i++) {
        double number = random.nextInt(1_000_000) / 64.0; // exact in binary and in decimals
        Measure there =
            Measure.parse(BigDecimal.valueOf(number).toPlainString() + unit.symbol(), ANY);
        BigDecimal inOther = BigDecimal.valueOf(there.in(other));
        Measure back = Measure.parse(inOther.toPlainString() + " " + other.symbol(), ANY);
        // Two roundings to a double, and 32 °F of zero point.
        assertEquals(number, back.in(unit), (number + 64) * 4e-16);
      }
    }
  }

  /** The sheets' own words for a mass or a volume, in both unit systems, are read again. */
  @Test
  void readsWhatTheSheetsPrint() {
    Random random = new Random(19);
    for (UnitSystem system : UnitSystem.values()) {
      Display display = new Display(system, Mass.ofGrams(1));
      for (int i = 0; i < 500; i++) {
        double size = Math.exp(random.nextDouble() * 11); // 1 g to 60 kg
        Mass mass = Mass.ofGrams(size);
        String printed = display.mass(mass).toString();
        Mass read = Measure.parse(printed, Wanted.of(Dimension.MASS)).mass();
        assertEquals(size, read.grams(), 1.5, printed); // half of a printed tenth of an ounce
        Volume volume = Volume.ofMillilitres(size);
        String poured = display.volume(volume).toString();
        Volume reread = Measure.parse(poured, Wanted.of(Dimension.VOLUME)).volume();
        assertEquals(size, reread.millilitres(), 19, poured); // half of 0.01 gal
      }
    }
  }

  @Test
  void knowsItsTypes() {
    assertEquals(Mass.ofGrams(500), Measure.parse("500 g", ANY).mass());
    assertEquals(Volume.ofLitres(1.5), Measure.parse("1.5 l", ANY).volume());
    assertEquals(Temperature.ofCelsius(92), Measure.parse("92 °C", ANY).temperature());
    assertEquals(Duration.ofMinutes(90), Measure.parse("1 h 30 min", ANY).duration());
    assertThrows(IllegalArgumentException.class, () -> Measure.parse("92 °C", ANY).in(Unit.GRAM));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "150 g to 480 g | 150 | 480",
        "150 to 480 g   | 150 | 480",
        "150 g - 480 g  | 150 | 480",
        "150–480 g      | 150 | 480",
        "0.5 kg to 1 kg | 500 | 1000",
        "up to 480 g    | 0   | 480",
        "480 g to 480 g | 480 | 480",
      })
  void readsRanges(String text, double low, double high) {
    MeasureRange range = MeasureRange.parse(text, Wanted.of(Dimension.MASS));
    assertEquals(low, range.low().in(Unit.GRAM));
    assertEquals(high, range.high().in(Unit.GRAM));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "480 g          | '480 g' is not a range; expected a range such as 18 g or up to 480 g",
        "480 g to 150 g | '480 g to 150 g' does not go from less to more; expected a range such as 18 g",
        "150 ml to 480 g | 150 ml is a volume; expected a mass such as 150 g",
        "a to b         | 'b' does not start with a number; expected a mass such as 18 g",
      })
  void refusesRanges(String text, String expected) {
    UnreadableException refused =
        assertThrows(
            UnreadableException.class, () -> MeasureRange.parse(text, Wanted.of(Dimension.MASS)));
    assertEquals(expected, refused.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"13, 13", "1:13, 13", "1 : 13.5, 13.5", "13 g/g, 13", "'1:13,5', 13.5"})
  void readsRatios(String text, double expected) {
    assertEquals(expected, BrewRatio.parse(text).gramsPerGram());
  }

  @ParameterizedTest
  @CsvSource({"13:1", "1:", "thirteen", "1", "60", "-13", "13 g"})
  void refusesRatios(String text) {
    assertThrows(UnreadableException.class, () -> BrewRatio.parse(text));
  }

  @ParameterizedTest
  @CsvSource({
    "26.50 EUR, 26.50 EUR",
    "'26,50 eur', 26.50 EUR",
    "31 CHF, 31 CHF",
    "1200 JPY, 1200 JPY"
  })
  void readsMoney(String text, String expected) {
    assertEquals(expected, Money.parse(text).toString());
  }

  @ParameterizedTest
  @CsvSource({"26.50", "€26.50", "26.50 QQQ", "-1 EUR", "1e3 EUR", "'1,500 EUR'", "1.00001 EUR"})
  void refusesMoney(String text) {
    assertThrows(UnreadableException.class, () -> Money.parse(text));
  }
}
