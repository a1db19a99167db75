package dev.urnwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A unit that people may write. Metric, and US customary with the exact factors of NIST Handbook
 * 44, Appendix C: 1 lb = 453.59237 g in 16 oz, 1 gal = 3.785411784 l in 4 qt, 8 pt or 128 fl oz.
 *
 * <p>A value in the dimension's base unit is {@code (value - zero) · factor}.
 */
public enum Unit {
  /** Gram. */
  GRAM("g", Dimension.MASS, "1", "gram", "grams", "gramme", "grammes"),
  /** Avoirdupois ounce. */
  OUNCE("oz", Dimension.MASS, "28.349523125", "ounce", "ounces"),
  /** Avoirdupois pound. */
  POUND("lb", Dimension.MASS, "453.59237", "lbs", "pound", "pounds"),
  /** Kilogram. */
  KILOGRAM("kg", Dimension.MASS, "1000", "kilo", "kilos", "kilogram", "kilograms", "kilogrammes"),

  /** Millilitre. */
  MILLILITRE(
      "ml", Dimension.VOLUME, "0.001", "millilitre", "millilitres", "milliliter", "milliliters"),
  /** Centilitre. */
  CENTILITRE(
      "cl", Dimension.VOLUME, "0.01", "centilitre", "centilitres", "centiliter", "centiliters"),
  /** US fluid ounce. */
  FLUID_OUNCE(
      "fl oz",
      Dimension.VOLUME,
      "0.0295735295625",
      "floz",
      "fluid oz",
      "fluid ounce",
      "fluid ounces"),
  /** Decilitre. */
  DECILITRE("dl", Dimension.VOLUME, "0.1", "decilitre", "decilitres", "deciliter", "deciliters"),
  /** US liquid pint. */
  PINT("pt", Dimension.VOLUME, "0.473176473", "pts", "pint", "pints"),
  /** US liquid quart. */
  QUART("qt", Dimension.VOLUME, "0.946352946", "qts", "quart", "quarts"),
  /** Litre. */
  LITRE("l", Dimension.VOLUME, "1", "ltr", "litre", "litres", "liter", "liters"),
  /** US gallon of 231 cubic inches. */
  GALLON("gal", Dimension.VOLUME, "3.785411784", "gals", "gallon", "gallons"),

  /** Degree Celsius. */
  CELSIUS("°C", Dimension.TEMPERATURE, "1", "c", "celsius", "°celsius"),
  /** Degree Fahrenheit. */
  FAHRENHEIT("°F", Dimension.TEMPERATURE, FiveNinths.TEXT, "f", "fahrenheit", "°fahrenheit"),

  /** Second. */
  SECOND("s", Dimension.DURATION, "1", "sec", "secs", "second", "seconds"),
  /** Minute. */
  MINUTE("min", Dimension.DURATION, "60", "mins", "minute", "minutes"),
  /** Hour. */
  HOUR("h", Dimension.DURATION, "3600", "hr", "hrs", "hour", "hours"),

  /** Percent. */
  PERCENT("%", Dimension.PERCENTAGE, "1", "pct", "percent", "per cent"),

  /** Watt. */
  WATT("W", Dimension.POWER, "1", "watt", "watts"),
  /** Kilowatt. */
  KILOWATT("kW", Dimension.POWER, "1000", "kilowatt", "kilowatts"),
  /** Volt. */
  VOLT("V", Dimension.VOLTAGE, "1", "volt", "volts"),
  /** Ampere. */
  AMPERE("A", Dimension.CURRENT, "1", "amp", "amps", "ampere", "amperes"),

  /** Grams per gram, the same number in ounces per ounce. */
  GRAM_PER_GRAM("g/g", Dimension.MASS_PER_MASS, "1", "oz/oz", "gram/gram", "grams/gram"),

  /** Degrees Celsius lost in an hour: a difference. */
  CELSIUS_PER_HOUR(
      "°C per hour",
      Dimension.COOLING,
      "1",
      "°c/h",
      "°c/hour",
      "°c/hr",
      "c/h",
      "c/hour",
      "k/h",
      "k/hour"),
  /** Degrees Fahrenheit lost in an hour: a difference, without the 32 of the scale's zero. */
  FAHRENHEIT_PER_HOUR(
      "°F per hour",
      Dimension.COOLING,
      FiveNinths.TEXT,
      "°f/h",
      "°f/hour",
      "°f/hr",
      "f/h",
      "f/hour"),

  /** Millimetre. */
  MILLIMETRE("mm", Dimension.LENGTH, "1", "millimetre", "millimetres", "millimeter", "millimeters"),
  /** Centimetre. */
  CENTIMETRE(
      "cm", Dimension.LENGTH, "10", "centimetre", "centimetres", "centimeter", "centimeters"),
  /** Inch. */
  INCH("in", Dimension.LENGTH, "25.4", "inch", "inches"),

  /** Millilitres in a minute. */
  MILLILITRE_PER_MINUTE("ml/min", Dimension.FLOW, "0.001", "ml/minute"),
  /** US fluid ounces in a minute. */
  FLUID_OUNCE_PER_MINUTE("fl oz/min", Dimension.FLOW, "0.0295735295625", "floz/min"),
  /** Millilitres in a second. */
  MILLILITRE_PER_SECOND("ml/s", Dimension.FLOW, "0.06", "ml/sec", "ml/second"),
  /** Litres in a minute. */
  LITRE_PER_MINUTE("l/min", Dimension.FLOW, "1", "l/minute", "litres/minute", "liters/minute"),
  /** US gallons in a minute. */
  GALLON_PER_MINUTE("gal/min", Dimension.FLOW, "3.785411784", "gal/minute", "gpm"),

  /** Grams in a millilitre. */
  GRAM_PER_MILLILITRE("g/ml", Dimension.BULK_DENSITY, "1", "g/cc", "grams/ml"),

  /** Cups, of whatever size, in a minute. */
  CUP_PER_MINUTE(
      "cups per minute", Dimension.POUR, "1", "cup/minute", "cups/min", "cup/min", "cups/minute");

  private static final BigDecimal FREEZING_FAHRENHEIT = BigDecimal.valueOf(32);
  private static final Map<String, Unit> BY_SPELLING = bySpelling();

  private final String symbol;
  private final Dimension dimension;
  private final BigDecimal factor;
  private final List<String> spellings;

  Unit(String symbol, Dimension dimension, String factor, String... spellings) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.factor = new BigDecimal(factor);
    this.spellings = List.of(spellings);
  }

  /** As we write it. */
  public String symbol() {
    return symbol;
  }

  /** What it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** Other accepted spellings, in lower case; dots and the case of letters don't matter. */
  public List<String> spellings() {
    return spellings;
  }

  /** A value in this unit, in the base unit of its dimension. */
  BigDecimal toBase(BigDecimal value) {
    return value.subtract(zero()).multiply(factor, MathContext.DECIMAL128);
  }

  /** A value in the base unit of its dimension, in this unit. */
  BigDecimal fromBase(BigDecimal value) {
    return value.divide(factor, MathContext.DECIMAL128).add(zero());
  }

  /** The unit of that spelling: dots, spaces and the case of letters don't matter. */
  static Optional<Unit> ofSpelling(String text) {
    Unit plain = BY_SPELLING.get(text);
    return Optional.ofNullable(plain == null ? BY_SPELLING.get(normal(text)) : plain);
  }

  /** A spelling in lower case, without dots, with one way to write a degree and a "per". */
  static String normal(String text) {
    return text.toLowerCase(Locale.ROOT)
        .replace(".", "")
        .replace('º', '°')
        .replace("℃", "°c")
        .replace("℉", "°f")
        .replaceAll("\\bdeg(rees?)?\\b ?", "°")
        .replaceAll("° ", "°")
        .replaceAll(" ?(/|\\bper\\b(?! cent)) ?", "/")
        .strip();
  }

  private BigDecimal zero() {
    return this == FAHRENHEIT ? FREEZING_FAHRENHEIT : BigDecimal.ZERO;
  }

  private static Map<String, Unit> bySpelling() {
    Map<String, Unit> units = new HashMap<>();
    for (Unit unit : values()) {
      units.put(unit.symbol, unit);
      units.put(normal(unit.symbol), unit);
      unit.spellings.forEach(spelling -> units.put(normal(spelling), unit));
    }
    return Map.copyOf(units);
  }

  /** Kelvins in a degree Fahrenheit, to the precision of the arithmetic. */
  private static final class FiveNinths {
    static final String TEXT = "0.5555555555555555555555555555555556";
  }
}
