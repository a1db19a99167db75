package dev.urnwright.wording;

import dev.urnwright.quantity.Figure;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Something said to people, without the words: which sentence it is, and what goes into it.
 *
 * @param key of the words in every language's file, such as {@code note.density}
 * @param values what goes into them, by the names that stand in the words
 */
public record Saying(String key, Map<String, Object> values) {
  private static final String VERBATIM = "verbatim";

  /** Copies the values, in their order. */
  public Saying {
    values = new LinkedHashMap<>(values);
  }

  /** What the words of that key say. */
  public static Saying of(String key) {
    return new Saying(key, Map.of());
  }

  /** The user's own words, the same in every language. */
  public static Saying verbatim(String text) {
    return of(VERBATIM).with("text", text);
  }

  /** With a number and its unit. */
  public Saying with(String name, Figure figure) {
    return and(name, figure);
  }

  /** With the user's own words: a name, mostly. */
  public Saying with(String name, String text) {
    return and(name, text);
  }

  /** With a count, whose {@code one} tells the singular. */
  public Saying with(String name, long count) {
    return and(name, count);
  }

  /** With a time of the day. */
  public Saying with(String name, LocalTime time) {
    return and(name, time);
  }

  /** With another saying. */
  public Saying with(String name, Saying part) {
    return and(name, part);
  }

  /** With a choice between two wordings. */
  public Saying with(String name, boolean choice) {
    return and(name, choice);
  }

  /**
   * With several, one after the other.
   *
   * @param parts texts, figures or sayings
   */
  public Saying with(String name, List<?> parts) {
    return and(name, List.copyOf(parts));
  }

  private Saying and(String name, Object value) {
    Map<String, Object> more = new LinkedHashMap<>(values);
    more.put(name, value);
    return new Saying(key, more);
  }

  /** A copy: what was said stays. */
  @Override
  public Map<String, Object> values() {
    return new LinkedHashMap<>(values);
  }

  /** In English. */
  @Override
  public String toString() {
    return Words.ENGLISH.text(this);
  }
}
