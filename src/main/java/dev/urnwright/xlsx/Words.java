package dev.urnwright.xlsx;

import dev.urnwright.event.Coffee;
import java.util.Locale;
import java.util.regex.Pattern;

/** Makes the user's words safe for a cell, a sheet's foot or a name. */
final class Words {
  private static final int LONGEST_CELL = 32_000;
  private static final int LONGEST_FOOT = 80;
  private static final Pattern CONTROLS = Pattern.compile(" *[\\p{Cntrl}\\uFFFE\\uFFFF]+ *");
  private static final Pattern LONE_SURROGATES =
      Pattern.compile(
          "[\\uD800-\\uDBFF](?![\\uDC00-\\uDFFF])|(?<![\\uD800-\\uDBFF])[\\uDC00-\\uDFFF]");

  /** Spreadsheets read {@code _x0041_} as the character 41 (hexadecimal). */
  private static final Pattern ESCAPES = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private Words() {}

  /** The text for a cell: no control characters, nothing that reads as an escape. */
  static String cell(String text) {
    String plain = plain(text);
    return ESCAPES
        .matcher(plain.length() <= LONGEST_CELL ? plain : plain.substring(0, LONGEST_CELL) + "…")
        .replaceAll("_x005F_");
  }

  /** The text for a page's head or foot, where an ampersand would begin a code. */
  static String foot(String text) {
    String plain = plain(text);
    return (plain.length() <= LONGEST_FOOT ? plain : plain.substring(0, LONGEST_FOOT) + "…")
        .replace("&", "&&");
  }

  /** A part of a defined name: letters, digits and underscores. */
  static String name(String text) {
    return plain(text).replaceAll("[^\\p{L}\\p{Nd}]+", "_");
  }

  /** What sheets call a coffee: a decaf is never without the word. */
  static String coffee(Coffee coffee) {
    boolean unsaid = coffee.decaf() && !coffee.name().toLowerCase(Locale.ROOT).contains("decaf");
    return unsaid ? coffee.name() + " (decaf)" : coffee.name();
  }

  private static String plain(String text) {
    return LONE_SURROGATES
        .matcher(CONTROLS.matcher(text).replaceAll(" "))
        .replaceAll("\uFFFD")
        .strip();
  }
}
