package dev.urnwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers of sheets are read back by the number formats of Java, whose data are CLDR's. */
class NumberStyleTest {
  private static final int ROUNDS = 400;

  @ParameterizedTest
  @ValueSource(strings = {"es", "fr", "de", "es-US", "fr-CA", "de-CH"})
  void whatIsPrintedReadsAsTheSameNumberInEveryLanguage(String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    Random random = new Random(7);
    for (int round = 0; round < ROUNDS; round++) {
      for (UnitSystem system : UnitSystem.values()) {
        Display english = new Display(system, Mass.ofGrams(random.nextBoolean() ? 1 : 0.1));
        Display local = english.in(NumberStyle.of(locale));
        Mass mass = Mass.ofGrams(Math.pow(10, 8 * random.nextDouble()));
        Volume volume = Volume.ofLitres(Math.pow(10, 5 * random.nextDouble() - 2));
        Temperature warm = Temperature.ofCelsius(120 * random.nextDouble() - 20);
        Strength strength = Strength.ofPercent(3 * random.nextDouble());
        same(english.mass(mass), local.mass(mass), locale);
        same(english.volume(volume), local.volume(volume), locale);
        same(english.temperature(warm), local.temperature(warm), locale);
        same(english.strength(strength), local.strength(strength), locale);
      }
    }
  }

  /** Pounds stand before ounces; the rest is one number. */
  private static void same(Figure english, Figure local, Locale locale) {
    String[] one = english.number().split("\u00a0lb\u00a0");
    String[] other = local.number().split("\u00a0lb\u00a0");
    assertEquals(one.length, other.length, local.toString());
    for (int part = 0; part < one.length; part++) {
      BigDecimal printed = new BigDecimal(one[part].replace("\u00a0", ""));
      assertEquals(0, printed.compareTo(read(other[part], locale)), local + " for " + english);
    }
    assertEquals(english.unit(), local.unit());
  }

  private static BigDecimal read(String text, Locale locale) {
    DecimalFormat format = (DecimalFormat) NumberFormat.getInstance(locale);
    format.setParseBigDecimal(true);
    ParsePosition at = new ParsePosition(0);
    BigDecimal number = (BigDecimal) format.parse(text, at);
    assertEquals(text.length(), at.getIndex(), "all of " + text + " is a number in " + locale);
    return number;
  }
}
