package dev.urnwright.input;

import dev.urnwright.event.CaffeineContent;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Dimension;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Length;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Measure;
import dev.urnwright.quantity.MeasureRange;
import dev.urnwright.quantity.Power;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Span;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Unit;
import dev.urnwright.quantity.UnreadableException;
import dev.urnwright.quantity.Volume;
import dev.urnwright.quantity.Wanted;
import java.time.Duration;
import java.util.List;
import java.util.function.Function;

/** Kinds of values that are numbers with units, each within sane limits. */
final class Amounts {
  private static final Temperature COLDEST = Temperature.ofCelsius(0);
  private static final Temperature HOTTEST = Temperature.ofCelsius(99);

  private Amounts() {}

  static Scalar<Mass> mass(String example, String least, String greatest) {
    return measured(Wanted.of(Dimension.MASS, example), least, greatest, Measure::mass);
  }

  static Scalar<Volume> volume(String example, String least, String greatest) {
    return measured(Wanted.of(Dimension.VOLUME, example), least, greatest, Measure::volume);
  }

  /** A mass, or a volume that is weighed later on; the limits are masses. */
  static Scalar<Measure> water(String example, String least, String greatest) {
    Wanted wanted = new Wanted(List.of(Dimension.MASS, Dimension.VOLUME), example);
    double low = Measure.parse(least, wanted).in(Unit.KILOGRAM);
    double high = Measure.parse(greatest, wanted).in(Unit.KILOGRAM);
    return new Scalar<>(
        Shape.Value.of(wanted.pattern(), wanted.expected()),
        text -> {
          Measure measure = Measure.parse(text, wanted);
          boolean mass = measure.dimension() == Dimension.MASS;
          double size = mass ? measure.in(Unit.KILOGRAM) : measure.in(Unit.LITRE);
          if (size < low || size > high) {
            throw outside(text, "a water", least, greatest);
          }
          return measure;
        });
  }

  /** A temperature of liquid water. */
  static Scalar<Temperature> temperature(String example) {
    Wanted wanted = Wanted.of(Dimension.TEMPERATURE, example);
    return new Scalar<>(
        Shape.Value.of(wanted.pattern(), wanted.expected()),
        text -> {
          Measure measure = Measure.parse(text, wanted);
          double celsius = measure.in(Unit.CELSIUS);
          if (celsius < COLDEST.celsius() || celsius > HOTTEST.celsius()) {
            throw outside(text, "liquid water", "0 °C (32 °F)", "99 °C (210 °F)");
          }
          return measure.temperature();
        });
  }

  /** A temperature within limits of its own. */
  static Scalar<Temperature> temperature(String example, String least, String greatest) {
    return measured(
        Wanted.of(Dimension.TEMPERATURE, example), least, greatest, Measure::temperature);
  }

  static Scalar<Duration> duration(String example, String least, String greatest) {
    return measured(Wanted.of(Dimension.DURATION, example), least, greatest, Measure::duration);
  }

  static Scalar<Strength> strength(String example) {
    return Slip.asked(
        percentage(example, "0.1 %", "10 %", Strength::ofPercent),
        strength -> strength.percent() >= 0.8 && strength.percent() <= 3);
  }

  static Scalar<Extraction> extraction(String example) {
    return Slip.asked(
        percentage(example, "5 %", "35 %", Extraction::ofPercent),
        extraction -> extraction.percent() >= 14 && extraction.percent() <= 26);
  }

  static Scalar<Share> share(String example, String least, String greatest) {
    return percentage(example, least, greatest, Share::ofPercent);
  }

  static <T> Scalar<T> percentage(
      String example, String least, String greatest, Function<Double, T> convert) {
    return measured(
        Wanted.of(Dimension.PERCENTAGE, example),
        least,
        greatest,
        measure -> convert.apply(measure.in(Unit.PERCENT)));
  }

  static Scalar<Absorption> absorption() {
    return absorption("2.1 g/g", "0.5 g/g", "6 g/g");
  }

  static Scalar<Absorption> absorption(String example, String least, String greatest) {
    return measured(
        Wanted.of(Dimension.MASS_PER_MASS, example),
        least,
        greatest,
        measure -> Absorption.ofGramsPerGram(measure.in(Unit.GRAM_PER_GRAM)));
  }

  static Scalar<Length> length(String example, String least, String greatest) {
    return measured(Wanted.of(Dimension.LENGTH, example), least, greatest, Measure::length);
  }

  /** A volume in a minute. */
  static Scalar<Volume> flow() {
    return measured(
        Wanted.of(Dimension.FLOW),
        "10 ml/min",
        "100 l/min",
        measure -> Volume.ofLitres(measure.in(Unit.LITRE_PER_MINUTE)));
  }

  /** Cups in a minute. */
  static Scalar<Double> pour() {
    return measured(
        Wanted.of(Dimension.POUR),
        "0.1 cups per minute",
        "1000 cups per minute",
        measure -> measure.in(Unit.CUP_PER_MINUTE));
  }

  /** Grams of dry coffee in a millilitre. */
  static Scalar<Double> bulkDensity() {
    return measured(
        Wanted.of(Dimension.BULK_DENSITY),
        "0.2 g/ml",
        "0.7 g/ml",
        measure -> measure.in(Unit.GRAM_PER_MILLILITRE));
  }

  static Scalar<Power> power() {
    return measured(
        Wanted.of(Dimension.POWER),
        "50 W",
        "100 kW",
        measure -> Power.ofWatts(measure.in(Unit.WATT)));
  }

  static Scalar<Double> volts() {
    return measured(
        Wanted.of(Dimension.VOLTAGE), "12 V", "1000 V", measure -> measure.in(Unit.VOLT));
  }

  static Scalar<Double> amperes() {
    return measured(
        Wanted.of(Dimension.CURRENT), "1 A", "1000 A", measure -> measure.in(Unit.AMPERE));
  }

  /** Kelvins in an hour. */
  static Scalar<Double> cooling() {
    return measured(
        Wanted.of(Dimension.COOLING),
        "0 °C per hour",
        "60 °C per hour",
        measure -> measure.in(Unit.CELSIUS_PER_HOUR));
  }

  /** Two measures within limits, the lesser first. */
  static Scalar<MeasureRange> range(
      Dimension dimension, String example, String least, String greatest) {
    Wanted wanted = Wanted.of(dimension, example);
    Measure low = Measure.parse(least, wanted);
    Measure high = Measure.parse(greatest, wanted);
    return new Scalar<>(
        Shape.Value.of(MeasureRange.pattern(wanted), MeasureRange.expected(wanted)),
        text -> {
          MeasureRange range = MeasureRange.parse(text, wanted);
          within(text, dimension.words(), range.low(), low, high);
          within(text, dimension.words(), range.high(), low, high);
          return range;
        });
  }

  /** Caffeine in ground coffee: one percentage, or a range of two. */
  static Scalar<CaffeineContent> caffeine() {
    Scalar<Share> one = share("1.2 %", "0 %", "5 %");
    Scalar<MeasureRange> range = range(Dimension.PERCENTAGE, "1.0 % to 1.4 %", "0 %", "5 %");
    return new Scalar<>(
        Shape.Value.of(
            one.shape().pattern().orElseThrow() + "|" + range.shape().pattern().orElseThrow(),
            "expected a percentage such as 1.2 %, or 1.0 % to 1.4 %"),
        text -> {
          if (Span.of(text).isEmpty()) {
            Share share = one.parse().apply(text);
            return new CaffeineContent(share, share);
          }
          MeasureRange both = range.parse().apply(text);
          return new CaffeineContent(
              Share.ofPercent(both.low().in(Unit.PERCENT)),
              Share.ofPercent(both.high().in(Unit.PERCENT)));
        });
  }

  private static <T> Scalar<T> measured(
      Wanted wanted, String least, String greatest, Function<Measure, T> convert) {
    Measure low = Measure.parse(least, wanted);
    Measure high = Measure.parse(greatest, wanted);
    String words = wanted.dimensions().get(0).words();
    return new Scalar<>(
        Shape.Value.of(wanted.pattern(), wanted.expected()),
        text -> {
          Measure measure = Measure.parse(text, wanted);
          within(text, words, measure, low, high);
          return convert.apply(measure);
        });
  }

  static <T extends Comparable<T>> void within(
      String text, String words, T value, T least, T greatest) {
    if (value.compareTo(least) < 0 || value.compareTo(greatest) > 0) {
      throw outside(text, words, least.toString(), greatest.toString());
    }
  }

  private static UnreadableException outside(
      String text, String words, String least, String greatest) {
    return new UnreadableException(
        Words.plain(text) + " is out of range",
        "expected " + words + " from " + least + " to " + greatest);
  }
}
