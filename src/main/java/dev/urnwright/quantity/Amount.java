package dev.urnwright.quantity;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * So much of something that is bought: pieces, a mass or a volume, 0 or more.
 *
 * <p>Cups are counted, sugar is weighed and milk is measured; a shopping list has them all, and
 * only amounts of one kind add or fit into each other's packs.
 */
public final class Amount {
  private static final String EXPECTED =
      "expected a number of pieces, a mass or a volume, such as 50, 1 kg or 2 l";
  private static final Wanted MEASURED =
      new Wanted(List.of(Dimension.MASS, Dimension.VOLUME), "1 kg or 2 l");
  private static final Pattern BARE = Pattern.compile("[^\\p{L}°%]*");

  /** Binary noise must not call for another pack: 0.1 + 0.2 fit into 0.3. */
  private static final double NOISE = 1e-9;

  private final Kind kind;
  private final double value;

  private Amount(Kind kind, double value) {
    this.kind = kind;
    this.value = Checks.notNegative(value, "an amount", kind.unit());
  }

  /** What an amount is told in. */
  public enum Kind {
    /** Counted. */
    PIECES("pieces"),
    /** Weighed. */
    MASS("g"),
    /** Measured. */
    VOLUME("ml");

    private final String unit;

    Kind(String unit) {
      this.unit = unit;
    }

    /** The unit of {@link Amount#value}: pieces, g or ml. */
    public String unit() {
      return unit;
    }

    /** In words, {@code pieces}, {@code mass} or {@code volume}. */
    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** So many pieces, 0 or more; parts of a piece count towards the next. */
  public static Amount ofPieces(double pieces) {
    return new Amount(Kind.PIECES, pieces);
  }

  /** A mass of it. */
  public static Amount of(Mass mass) {
    return new Amount(Kind.MASS, mass.grams());
  }

  /** A volume of it. */
  public static Amount of(Volume volume) {
    return new Amount(Kind.VOLUME, volume.millilitres());
  }

  /** None of it. */
  public static Amount nothing(Kind kind) {
    return new Amount(kind, 0);
  }

  /**
   * Reads an amount: {@code 50}, {@code 1 kg}, {@code 2 l}.
   *
   * @throws UnreadableException if it is neither a number nor a mass nor a volume
   */
  public static Amount parse(String text) {
    String plain = Plain.quantity(text, EXPECTED);
    if (BARE.matcher(plain).matches()) {
      double pieces = Measure.number(plain, EXPECTED).doubleValue();
      if (pieces < 0) {
        throw new UnreadableException(plain + " is below zero", EXPECTED);
      }
      return ofPieces(pieces);
    }
    Measure measure = Measure.parse(plain, MEASURED);
    return measure.dimension() == Dimension.MASS ? of(measure.mass()) : of(measure.volume());
  }

  /** What it is told in. */
  public Kind kind() {
    return kind;
  }

  /** The number of pieces, grams or millilitres. */
  public double value() {
    return value;
  }

  /** Whether it is none. */
  public boolean isNothing() {
    return value == 0;
  }

  /**
   * This mass.
   *
   * @throws IllegalArgumentException if it isn't one
   */
  public Mass mass() {
    return Mass.ofGrams(of(Kind.MASS));
  }

  /**
   * This volume.
   *
   * @throws IllegalArgumentException if it isn't one
   */
  public Volume volume() {
    return Volume.ofMillilitres(of(Kind.VOLUME));
  }

  private double of(Kind wanted) {
    if (kind != wanted) {
      throw new IllegalArgumentException(this + " is not told in " + wanted.unit());
    }
    return value;
  }

  /** This amount so many times over, 0 or more. */
  public Amount times(double factor) {
    return new Amount(kind, value * factor);
  }

  /** Whole pieces: the next whole number of them. A mass or a volume stays as it is. */
  public Amount whole() {
    return kind == Kind.PIECES ? ofPieces(up(value)) : this;
  }

  /**
   * What is still missing when there is so much already; none when there is enough.
   *
   * @throws IllegalArgumentException if the other is of another kind
   */
  public Amount beyond(Amount there) {
    return new Amount(kind, Math.max(0, value - there.of(kind)));
  }

  /**
   * The fewest whole packs that hold it.
   *
   * @param size of one, more than none
   * @throws IllegalArgumentException if the pack is empty or of another kind
   */
  public long packsOf(Amount size) {
    if (size.of(kind) == 0) {
      throw new IllegalArgumentException("a pack holds more than 0 " + kind.unit());
    }
    return (long) up(value / size.value);
  }

  private static double up(double number) {
    return Math.ceil(number * (1 - NOISE) - NOISE);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Amount that
        && that.kind == kind
        && Double.compare(that.value, value) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * kind.hashCode() + Double.hashCode(value);
  }

  @Override
  public String toString() {
    return value + " " + kind.unit();
  }
}
