package dev.urnwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;

/**
 * Writes quantities for people, in one unit system, rounded to what can be read on the scale, jug
 * or refractometer at hand. Nothing is rounded anywhere else but where a plan decides what to
 * weigh.
 *
 * <p>Digits before the decimal mark are grouped from 10 000 on; which marks, the style says.
 *
 * @param system the units to print
 * @param scaleStep what the scale can tell apart, above 0; sets the decimals of a mass
 * @param style how numbers are written
 */
public record Display(UnitSystem system, Mass scaleStep, NumberStyle style) {
  static final String NO_BREAK_SPACE = "\u00a0";

  private static final int SECONDS_PER_MINUTE = 60;
  private static final double KILOGRAMS_FROM_GRAMS = 10_000;
  private static final double POUNDS_FROM_OUNCES = 48;
  private static final double OUNCES_PER_POUND = 16;
  private static final double GALLONS_FROM_FLUID_OUNCES = 64;

  /** Refuses a step of nothing. */
  public Display {
    if (scaleStep.isZero()) {
      throw new IllegalArgumentException("a scale step must be above 0 g");
    }
  }

  /** Writes numbers in the English style. */
  public Display(UnitSystem system, Mass scaleStep) {
    this(system, scaleStep, NumberStyle.ENGLISH);
  }

  /** The same in another style. */
  public Display in(NumberStyle other) {
    return new Display(system, scaleStep, other);
  }

  private Figure figure(String number, String unit) {
    return new Figure(style.of(number), unit);
  }

  /**
   * A mass as the scale shows it: grams, from 10 kg kilograms; or ounces, from 3 lb with pounds.
   */
  public Figure mass(Mass mass) {
    if (system == UnitSystem.METRIC) {
      return mass.grams() < KILOGRAMS_FROM_GRAMS
          ? figure(decimal(mass.grams(), gramDecimals()), "g")
          : figure(decimal(mass.kilograms(), Math.min(3, decimalsOf(scaleStep.kilograms()))), "kg");
    }
    int decimals = Math.min(2, Math.max(1, decimalsOf(rounded(scaleStep.ounces(), 4))));
    double ounces = rounded(mass.ounces(), decimals);
    if (ounces < POUNDS_FROM_OUNCES) {
      return figure(decimal(ounces, decimals), "oz");
    }
    double pounds = Math.floor(ounces / OUNCES_PER_POUND);
    return figure(
        decimal(pounds, 0)
            + NO_BREAK_SPACE
            + "lb"
            + NO_BREAK_SPACE
            + decimal(ounces - pounds * OUNCES_PER_POUND, decimals),
        "oz");
  }

  /**
   * A scale that counts in ounces steps in odd fractions of a gram; no scale shows more than two.
   */
  private int gramDecimals() {
    return Math.min(2, decimalsOf(scaleStep.grams()));
  }

  /**
   * The smallest difference that {@link #mass} shows for masses of that size. Parts that are to add
   * up to a printed total are rounded to the total's.
   */
  public Mass finest(Mass mass) {
    if (system == UnitSystem.US) {
      return Mass.ofOunces(
          Math.pow(10, -Math.min(2, Math.max(1, decimalsOf(rounded(scaleStep.ounces(), 4))))));
    }
    return mass.grams() < KILOGRAMS_FROM_GRAMS
        ? Mass.ofGrams(Math.pow(10, -gramDecimals()))
        : Mass.ofGrams(1000 * Math.pow(10, -Math.min(3, decimalsOf(scaleStep.kilograms()))));
  }

  /** A volume: millilitres, from one litre litres; or fluid ounces, from 64 of them gallons. */
  public Figure volume(Volume volume) {
    if (system == UnitSystem.METRIC) {
      return rounded(volume.millilitres(), 0) < 1000
          ? figure(decimal(volume.millilitres(), 0), "ml")
          : figure(decimal(volume.litres(), 2), "l");
    }
    return rounded(volume.fluidOunces(), 1) < GALLONS_FROM_FLUID_OUNCES
        ? figure(decimal(volume.fluidOunces(), 1), "fl" + NO_BREAK_SPACE + "oz")
        : figure(decimal(volume.gallons(), 2), "gal");
  }

  /** A volume as {@link #volume} writes it, rounded up: for a least that is to hold as printed. */
  public Figure volumeUp(Volume volume) {
    Volume mark =
        system == UnitSystem.METRIC
            ? Volume.ofMillilitres(volume.millilitres() < 999 ? 1 : 10)
            : Volume.ofFluidOunces(volume.fluidOunces() < 63.9 ? 0.1 : 1.28);
    double marks = Math.ceil(volume.litres() / mark.litres() - 1e-9);
    return volume(mark.times(marks));
  }

  /** A temperature to the whole degree. */
  public Figure temperature(Temperature temperature) {
    return system == UnitSystem.METRIC
        ? figure(decimal(temperature.celsius(), 0), "°C")
        : figure(decimal(temperature.fahrenheit(), 0), "°F");
  }

  /** A strength to the hundredth of a percent that a refractometer shows. */
  public Figure strength(Strength strength) {
    return figure(decimal(strength.percent(), 2), "%");
  }

  /** An extraction to the tenth of a percent; an honest one is never surer than half a percent. */
  public Figure extraction(Extraction extraction) {
    return figure(decimal(extraction.percent(), 1), "%");
  }

  /** An absorption to the hundredth of a gram per gram. */
  public Figure absorption(Absorption absorption) {
    return figure(decimal(absorption.gramsPerGram(), 2), "g/g");
  }

  /** A share in percent, with at most one decimal, and that only when there is one. */
  public Figure share(Share share) {
    double percent = rounded(share.percent(), 1);
    return figure(decimal(percent, percent == Math.rint(percent) ? 0 : 1), "%");
  }

  /** Money to the smallest coin of its currency, and the currency's three letters. */
  public Figure money(Money money) {
    return figure(grouped(money.rounded().amount()), money.currency().getCurrencyCode());
  }

  /** An amount of something bought: whole pieces as a bare number, else a mass or a volume. */
  public String amount(Amount amount) {
    return switch (amount.kind()) {
      case PIECES -> style.of(decimal(amount.whole().value(), 0));
      case MASS -> mass(amount.mass()).toString();
      case VOLUME -> volume(amount.volume()).toString();
    };
  }

  /** From one strength to another, with one unit for both. */
  public Figure strengths(Strength low, Strength high) {
    return figure(decimal(low.percent(), 2) + "–" + decimal(high.percent(), 2), "%");
  }

  /**
   * A chance or a part in whole percent, never rounded to none or to all.
   *
   * @param fraction from 0 to 1
   */
  public String chance(double fraction) {
    if (fraction > 0 && fraction < 0.005) {
      return "below" + NO_BREAK_SPACE + "1" + NO_BREAK_SPACE + "%";
    }
    if (fraction >= 0.995 && fraction < 1) {
      return "over" + NO_BREAK_SPACE + "99" + NO_BREAK_SPACE + "%";
    }
    return figure(decimal(100 * fraction, 0), "%").toString();
  }

  /** A standard uncertainty in a unit, with two digits that count (JCGM 100:2008, 7.2.6). */
  public Figure uncertainty(double value, Unit unit) {
    boolean ounces = unit == Unit.GRAM && system == UnitSystem.US;
    BigDecimal digits =
        BigDecimal.valueOf(ounces ? Mass.ofGrams(value).ounces() : value)
            .round(new MathContext(2, RoundingMode.HALF_UP))
            .stripTrailingZeros();
    return figure(digits.toPlainString(), ounces ? Unit.OUNCE.symbol() : unit.symbol());
  }

  /** A length: whole millimetres, or inches to the tenth. */
  public Figure length(Length length) {
    return system == UnitSystem.METRIC
        ? figure(decimal(length.millimetres(), 0), "mm")
        : figure(decimal(length.inches(), 1), "in");
  }

  /** A time in minutes and seconds, {@code 5 min 20 s}; no seconds where there are none. */
  public Figure duration(Duration duration) {
    long seconds = Math.round(duration.toMillis() / 1000.0);
    long minutes = seconds / SECONDS_PER_MINUTE;
    long rest = seconds % SECONDS_PER_MINUTE;
    if (minutes == 0) {
      return figure(String.valueOf(rest), "s");
    }
    return rest == 0
        ? figure(String.valueOf(minutes), "min")
        : figure(minutes + NO_BREAK_SPACE + "min" + NO_BREAK_SPACE + rest, "s");
  }

  /** A mean of cups for each of some people, such as {@code 1.52}. */
  public Figure cupsEach(double cups) {
    return figure(decimal(cups, 2), "");
  }

  /** A brew ratio as the trade writes it, {@code 1:13.0}. */
  public String ratio(BrewRatio ratio) {
    return perGram(ratio.gramsPerGram());
  }

  /** Grams of whatever was named for each gram of coffee, written as {@code 1:19.4}. */
  public String perGram(double gramsPerGram) {
    return style.of("1:" + decimal(gramsPerGram, 1));
  }

  /** A number with so many decimals, a half rounded away from zero. */
  static String decimal(double value, int decimals) {
    return grouped(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
  }

  private static String grouped(BigDecimal number) {
    String plain = number.toPlainString();
    int point = plain.indexOf('.');
    String whole = point < 0 ? plain : plain.substring(0, point);
    String rest = point < 0 ? "" : plain.substring(point);
    return whole.length() <= 4 ? plain : grouped(whole) + rest;
  }

  private static String grouped(String whole) {
    StringBuilder text = new StringBuilder(whole);
    for (int at = whole.length() - 3; at > 0; at -= 3) {
      text.insert(at, NO_BREAK_SPACE);
    }
    return text.toString();
  }

  private static double rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
  }

  private static int decimalsOf(double step) {
    return Math.max(
        0, BigDecimal.valueOf(step).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros().scale());
  }
}
