package dev.urnwright.input;

import dev.urnwright.quantity.UnreadableException;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days of the week: {@code mon-fri}, {@code mon wed fri}, {@code daily}. */
final class Weekdays {
  private static final String EXPECTED = "expected days such as mon-fri, or mon wed fri, or daily";
  private static final int LONGEST = 80;
  private static final int LEAST_LETTERS = 2;
  private static final Pattern RANGE =
      Pattern.compile("(\\p{L}+)\\s*(?:-|–|—|\\bto\\b)\\s*(\\p{L}+)");
  private static final Set<DayOfWeek> DAILY = EnumSet.allOf(DayOfWeek.class);

  private Weekdays() {}

  static Kind<Set<DayOfWeek>> days() {
    return new Scalar<>(EXPECTED, Weekdays::parse);
  }

  private static Set<DayOfWeek> parse(String text) {
    if (text.length() > LONGEST) {
      throw new UnreadableException(Words.quoted(text) + " is too long", EXPECTED);
    }
    String words = text.strip().toLowerCase(Locale.ROOT);
    if (words.equals("daily")) {
      return DAILY;
    }
    EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    StringBuilder rest = new StringBuilder();
    Matcher range = RANGE.matcher(words);
    while (range.find()) {
      DayOfWeek last = day(range.group(2), text);
      DayOfWeek next = day(range.group(1), text);
      days.add(next);
      while (next != last) {
        next = next.plus(1);
        days.add(next);
      }
      range.appendReplacement(rest, " ");
    }
    range.appendTail(rest);
    for (String word : rest.toString().strip().split("[\\s,;/+]+")) {
      if (!word.isEmpty()) {
        days.add(day(word, text));
      }
    }
    return days;
  }

  private static DayOfWeek day(String word, String text) {
    Optional<DayOfWeek> found = Optional.empty();
    for (DayOfWeek day : DayOfWeek.values()) {
      String name = day.getDisplayName(TextStyle.FULL, Locale.ENGLISH).toLowerCase(Locale.ROOT);
      if (word.length() >= LEAST_LETTERS && name.startsWith(word)) {
        found = Optional.of(day);
      }
    }
    return found.orElseThrow(
        () ->
            new UnreadableException(
                Words.quoted(word) + " in " + Words.quoted(text) + " is no day of the week",
                EXPECTED));
  }
}
