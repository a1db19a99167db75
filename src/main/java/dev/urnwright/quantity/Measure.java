package dev.urnwright.quantity;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, as people write them: {@code 1.5 gal}, {@code 1,5 l}, {@code ½ lb},
 * {@code 12 fl oz}, {@code 200 °F}, {@code 1 h 30 min}, {@code 6 °C per hour}.
 *
 * <p>The decimal mark is a point or a comma; a comma before exactly three digits is refused, for it
 * may stand for either. The number is kept exact and converted once, by the factors of {@link
 * Unit}. Only temperatures may be below zero.
 */
public final class Measure implements Comparable<Measure> {
  private static final Pattern UNIT = Pattern.compile("[^\\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]+");
  private static final Pattern REFUSED =
      Pattern.compile("(cups?|mugs?|scoops?|tbsps?|tsps?|(table|tea)spoons?|spoons?)");
  private static final Pattern IMPERIAL = Pattern.compile("(imp(erial)?|uk)\\b.*");
  private static final Map<Unit, Unit> SISTERS =
      Map.of(
          Unit.GRAM, Unit.MILLILITRE,
          Unit.KILOGRAM, Unit.LITRE,
          Unit.OUNCE, Unit.FLUID_OUNCE,
          Unit.MILLILITRE, Unit.GRAM,
          Unit.LITRE, Unit.KILOGRAM,
          Unit.FLUID_OUNCE, Unit.OUNCE);

  private final BigDecimal value;
  private final Unit unit;

  private Measure(BigDecimal value, Unit unit) {
    this.value = value;
    this.unit = unit;
  }

  /**
   * Reads a number with a unit, or several that add up, such as {@code 1 lb 4 oz}.
   *
   * @throws UnreadableException if it can't be read, has no unit, is below zero without being a
   *     temperature, or isn't of a wanted dimension
   */
  public static Measure parse(String text, Wanted wanted) {
    String plain = Plain.quantity(text, wanted.expected());
    Part first = partAt(plain, 0, wanted);
    Measure sum = first.measure;
    Unit last = sum.unit;
    int end = first.end;
    while (end < plain.length()) {
      Part next = partAt(plain, end, wanted);
      Unit unit = next.measure.unit;
      if (unit.dimension() != last.dimension() || unit.compareTo(last) >= 0) {
        throw new UnreadableException(
            "'" + plain + "' does not add up to one measure", wanted.expected());
      }
      sum = sum.plus(next.measure.checked(plain, wanted));
      last = unit;
      end = next.end;
    }
    return sum.checked(plain, wanted);
  }

  private static Part partAt(String text, int start, Wanted wanted) {
    Numeral numeral = Numeral.at(text, start, wanted.expected());
    Matcher unit = UNIT.matcher(text).region(numeral.end(), text.length());
    String spelling = unit.lookingAt() ? unit.group().strip() : "";
    if (spelling.isEmpty()) {
      throw new UnreadableException(text + " has no unit", wanted.expected());
    }
    Optional<Unit> known = Unit.ofSpelling(spelling);
    return new Part(
        new Measure(numeral.value(), known.orElseThrow(() -> unknown(text, spelling, wanted))),
        unit.end());
  }

  private static UnreadableException unknown(String text, String spelling, Wanted wanted) {
    String normal = Unit.normal(spelling);
    if (REFUSED.matcher(normal).matches()) {
      return new UnreadableException(
          text + ": cups and spoons come in many sizes", wanted.expectedUnits());
    }
    if (IMPERIAL.matcher(normal).matches()) {
      return new UnreadableException(
          text + ": imperial units are not known, and differ from US ones", wanted.expectedUnits());
    }
    return new UnreadableException(
        "'" + spelling + "' in '" + text + "' is not a known unit", wanted.expectedUnits());
  }

  private Measure checked(String text, Wanted wanted) {
    if (!wanted.dimensions().contains(unit.dimension())) {
      throw new UnreadableException(
          text + " is " + unit.dimension().words(), wanted.expected(example(wanted)));
    }
    if (value.signum() < 0 && unit.dimension() != Dimension.TEMPERATURE) {
      throw new UnreadableException(text + " is below zero", wanted.expected());
    }
    return this;
  }

  /** The same number in the sister unit, when that is what was meant. */
  private String example(Wanted wanted) {
    Unit sister = SISTERS.getOrDefault(unit, unit);
    return wanted.dimensions().contains(sister.dimension()) && value.signum() > 0
        ? new Measure(value, sister).toString()
        : wanted.example();
  }

  private Measure plus(Measure smaller) {
    return new Measure(value.add(unit.fromBase(smaller.base())), unit);
  }

  /** None of it, in the same unit. */
  Measure nothing() {
    return new Measure(BigDecimal.ZERO, unit);
  }

  Unit unit() {
    return unit;
  }

  /**
   * A plain number without a unit, as for counts: {@code 1.5}, {@code 1 1/2}.
   *
   * @param expected what to say of a text that can't be read
   * @throws UnreadableException if it isn't a number, or has something after it
   */
  public static BigDecimal number(String text, String expected) {
    String plain = Plain.quantity(text, expected);
    Numeral numeral = Numeral.at(plain, 0, expected);
    if (numeral.end() < plain.length()) {
      throw new UnreadableException("'" + plain + "' is more than a number", expected);
    }
    return numeral.value();
  }

  private BigDecimal base() {
    return unit.toBase(value);
  }

  /** What it measures. */
  public Dimension dimension() {
    return unit.dimension();
  }

  /**
   * The number in a unit.
   *
   * @throws IllegalArgumentException if that unit measures something else
   */
  public double in(Unit wanted) {
    if (wanted.dimension() != unit.dimension()) {
      throw new IllegalArgumentException(this + " can't be told in " + wanted.symbol());
    }
    return wanted == unit ? value.doubleValue() : wanted.fromBase(base()).doubleValue();
  }

  /**
   * This mass.
   *
   * @throws IllegalArgumentException if it isn't one
   */
  public Mass mass() {
    return Mass.ofGrams(in(Unit.GRAM));
  }

  /**
   * This volume.
   *
   * @throws IllegalArgumentException if it isn't one
   */
  public Volume volume() {
    return Volume.ofLitres(in(Unit.LITRE));
  }

  /**
   * This temperature.
   *
   * @throws IllegalArgumentException if it isn't one, or is outside of what {@link Temperature}
   *     takes
   */
  public Temperature temperature() {
    return Temperature.ofCelsius(in(Unit.CELSIUS));
  }

  /**
   * This time, to the millisecond.
   *
   * @throws IllegalArgumentException if it isn't one
   */
  public Duration duration() {
    return Duration.ofMillis(Math.round(in(Unit.SECOND) * 1000));
  }

  /**
   * This length.
   *
   * @throws IllegalArgumentException if it isn't one
   */
  public Length length() {
    return Length.ofMillimetres(in(Unit.MILLIMETRE));
  }

  /**
   * By size.
   *
   * @throws IllegalArgumentException if the other measures something else
   */
  @Override
  public int compareTo(Measure other) {
    if (other.unit.dimension() != unit.dimension()) {
      throw new IllegalArgumentException(this + " can't be compared with " + other);
    }
    return base().compareTo(other.base());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Measure that
        && that.unit.dimension() == unit.dimension()
        && compareTo(that) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(base().doubleValue());
  }

  /** As we write it, {@code 1.5 gal}. */
  @Override
  public String toString() {
    return value.toPlainString() + " " + unit.symbol();
  }

  private record Part(Measure measure, int end) {}
}
