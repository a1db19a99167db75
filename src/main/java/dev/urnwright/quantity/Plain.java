package dev.urnwright.quantity;

import java.util.regex.Pattern;

/** A short text as it is read and quoted. */
final class Plain {
  private static final int LONGEST = 60;
  private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}]+");

  /** What needs no change: the usual case, for which this saves time. */
  private static final Pattern PLAIN = Pattern.compile("[!-~°](?: ?[!-~°])*+");

  private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{C}&&[^\\p{Co}]]");

  private Plain() {}

  /**
   * The text with every run of spaces, no-break ones too, made one space and none at the ends, and
   * a question mark for each character that can't be printed.
   */
  static String text(String text) {
    if (PLAIN.matcher(text).matches()) {
      return text;
    }
    String line = SPACES.matcher(text).replaceAll(" ").strip();
    return UNPRINTABLE.matcher(line).replaceAll("?");
  }

  /**
   * The same, refused when no quantity is that long.
   *
   * @throws UnreadableException if it has more than 60 characters, or none
   */
  static String quantity(String text, String expected) {
    String plain = text(text);
    if (plain.isEmpty()) {
      throw new UnreadableException("nothing is written here", expected);
    }
    if (plain.length() > LONGEST) {
      throw new UnreadableException(
          "'" + plain.substring(0, plain.offsetByCodePoints(0, 20)) + "…' is too long", expected);
    }
    return plain;
  }
}
