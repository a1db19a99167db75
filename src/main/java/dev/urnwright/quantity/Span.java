package dev.urnwright.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Two texts with {@code to} or a dash between them.
 *
 * @param from what stands before
 * @param to what stands after
 */
public record Span(String from, String to) {
  private static final Pattern BETWEEN = Pattern.compile("(.+?)(?: to |\\s*[-–—]\\s*)(.+)");

  /** Both sides of a text, when there is something between them that divides it. */
  public static Optional<Span> of(String text) {
    Matcher span = BETWEEN.matcher(Plain.text(text));
    return span.matches()
        ? Optional.of(new Span(span.group(1).strip(), span.group(2).strip()))
        : Optional.empty();
  }
}
