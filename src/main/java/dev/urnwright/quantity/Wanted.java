package dev.urnwright.quantity;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What a text is expected to measure.
 *
 * @param dimensions one or more that will do
 * @param example a text that would be right
 */
public record Wanted(List<Dimension> dimensions, String example) {
  /** Copies the list. */
  public Wanted {
    dimensions = List.copyOf(dimensions);
  }

  /** One dimension, with the example that the user will find most like their own case. */
  public static Wanted of(Dimension dimension, String example) {
    return new Wanted(List.of(dimension), example);
  }

  /** One dimension, with its own example. */
  public static Wanted of(Dimension dimension) {
    return of(dimension, dimension.example());
  }

  /** A regular expression that every text which measures it matches; see {@link Spelling}. */
  public String pattern() {
    return Spelling.measure(dimensions);
  }

  /** In words, {@code expected a mass such as 18 g}. */
  public String expected() {
    return expected(example);
  }

  /** In words, with another example. */
  String expected(String otherExample) {
    return "expected " + words() + " such as " + otherExample;
  }

  /** In words, with the units that are known. */
  String expectedUnits() {
    return "expected "
        + words()
        + " in "
        + dimensions.stream().map(Dimension::unitSymbols).collect(Collectors.joining(", "))
        + ", such as "
        + example;
  }

  private String words() {
    return dimensions.stream().map(Dimension::words).collect(Collectors.joining(" or "));
  }
}
