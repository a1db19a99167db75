package dev.urnwright.input;

import dev.urnwright.quantity.UnreadableException;
import java.util.List;
import java.util.regex.Pattern;

/** Kinds of values that are words: names, and choices among a few. */
final class Words {
  private static final int LONGEST_NAME = 120;
  private static final int LONGEST_SHOWN = 40;
  private static final Pattern SPACES = Pattern.compile("\\s+");

  /** Control characters, line ends, and marks that turn the direction of writing. */
  private static final Pattern UNPRINTABLE =
      Pattern.compile(
          "[\\p{Cc}\\p{Zl}\\p{Zp}\\p{Cs}\\x{202A}-\\x{202E}\\x{2066}-\\x{2069}\\x{FEFF}\\x{FFF9}-\\x{FFFF}]");

  private Words() {}

  /** A name for people: one line of 1 to 120 characters. */
  static Scalar<String> name(String example) {
    String expected = "expected a name such as " + example;
    return new Scalar<>(expected, text -> parseName(text, expected));
  }

  static String parseName(String text, String expected) {
    String name = text.strip();
    if (name.isEmpty()) {
      throw new UnreadableException("this name is blank", expected);
    }
    if (UNPRINTABLE.matcher(name).find()) {
      throw new UnreadableException(
          "this name has a character that can't be printed", expected + ", on one line");
    }
    int length = name.codePointCount(0, name.length());
    if (length > LONGEST_NAME) {
      throw new UnreadableException(
          "this name has " + length + " characters", "expected " + LONGEST_NAME + " at most");
    }
    return name;
  }

  /** One of a few words, whatever the case of its letters. */
  static <T> Scalar<T> choice(List<String> names, List<T> values) {
    return choice("expected " + String.join(" or ", names), names, values);
  }

  static Scalar<Boolean> yesOrNo() {
    return choice(List.of("yes", "no", "true", "false"), List.of(true, false, true, false));
  }

  /** The same, told in other words. */
  static <T> Scalar<T> choice(String expected, List<String> names, List<T> values) {
    return new Scalar<>(
        Shape.Value.choice(names, expected),
        text -> {
          for (int i = 0; i < values.size(); i++) {
            if (names.get(i).equalsIgnoreCase(text.strip())) {
              return values.get(i);
            }
          }
          throw new UnreadableException(quoted(text) + " is not known", expected);
        });
  }

  /** A text in quotation marks, as {@link #plain} writes it. */
  static String quoted(String text) {
    return "'" + plain(text) + "'";
  }

  /** A text as problems show it: on one line, shortened, without what can't be printed. */
  static String plain(String text) {
    String line = SPACES.matcher(text).replaceAll(" ").strip();
    String shown = UNPRINTABLE.matcher(line).replaceAll("?");
    return shown.codePointCount(0, shown.length()) <= LONGEST_SHOWN
        ? shown
        : shown.substring(0, shown.offsetByCodePoints(0, LONGEST_SHOWN)) + "…";
  }
}
