package dev.urnwright.quantity;

/**
 * From one measure to another of the same dimension, both included.
 *
 * @param low the lesser
 * @param high the greater, or the same
 */
public record MeasureRange(Measure low, Measure high) {
  /**
   * Reads {@code 150 g to 480 g}, {@code 150–480 g} or {@code up to 480 g}, which starts at
   * nothing.
   *
   * @throws UnreadableException if it isn't two measures, the lesser first
   */
  public static MeasureRange parse(String text, Wanted wanted) {
    String plain = Plain.quantity(text, expected(wanted));
    if (plain.startsWith("up to ")) {
      Measure high = Measure.parse(plain.substring("up to ".length()), wanted);
      return new MeasureRange(high.nothing(), high);
    }
    Span span =
        Span.of(plain)
            .orElseThrow(
                () ->
                    new UnreadableException(
                        "'" + plain + "' is not a range", expected(wanted) + upTo(plain, wanted)));
    Measure high = Measure.parse(span.to(), wanted);
    Measure low = Measure.parse(withUnit(span.from(), high, wanted), wanted);
    if (low.dimension() != high.dimension() || low.compareTo(high) > 0) {
      throw new UnreadableException(
          "'" + plain + "' does not go from less to more", expected(wanted));
    }
    return new MeasureRange(low, high);
  }

  /** Somebody who writes a single measure most likely means the greatest. */
  private static String upTo(String plain, Wanted wanted) {
    try {
      return " or up to " + Measure.parse(plain, wanted);
    } catch (UnreadableException notOneEither) {
      return "";
    }
  }

  /** What to say of a text that isn't a range. */
  public static String expected(Wanted wanted) {
    return "expected a range such as " + wanted.example();
  }

  /** A regular expression that every text which is such a range matches; see {@link Spelling}. */
  public static String pattern(Wanted wanted) {
    return Spelling.range(wanted.dimensions());
  }

  private static String withUnit(String from, Measure high, Wanted wanted) {
    Numeral numeral = Numeral.at(from, 0, expected(wanted));
    return numeral.end() == from.length() ? from + " " + high.unit().symbol() : from;
  }
}
