package dev.urnwright.quantity;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Regular expressions for quantities as people write them, the same in Java and in ECMAScript, for
 * those who check a text without reading it. Whatever can be read matches; what matches may still
 * be out of range.
 */
public final class Spelling {
  private static final String SPACE = "[\\s\\u00a0\\u2007\\u2009\\u202f]*";
  private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
  private static final String DEGREE = "(?:[°º]|[dD][eE][gG](?:[rR][eE][eE][sS]?)?\\.?)" + SPACE;

  /** Digits with the marks between them. */
  private static final String DIGITS =
      "[\\d."
          + VULGAR
          + ",](?:[\\d.,'’/⁄"
          + VULGAR
          + "\\s\\u00a0\\u2007\\u2009\\u202f-]*[\\d.,"
          + VULGAR
          + "])?";

  private static final String NUMBER = "[-−+]?" + SPACE + DIGITS;

  private Spelling() {}

  /** A number alone. */
  public static String number() {
    return whole(NUMBER);
  }

  /** A brew ratio, with or without its one. */
  public static String ratio() {
    return whole(ratioItself());
  }

  /** Two brew ratios. */
  public static String ratios() {
    return whole(ratioItself() + between() + ratioItself());
  }

  /** An amount of money. */
  public static String money() {
    return whole(NUMBER + SPACE + "[A-Za-z]{3}");
  }

  /** One measure of any of these dimensions. */
  static String measure(List<Dimension> dimensions) {
    return whole(measureItself(dimensions));
  }

  /** Two of them, or one and the words "up to". */
  static String range(List<Dimension> dimensions) {
    String measure = measureItself(dimensions);
    return whole(
        "(?:up to" + SPACE + "|(?:" + measure + "|" + NUMBER + ")" + between() + ")" + measure);
  }

  private static String measureItself(List<Dimension> dimensions) {
    String units =
        dimensions.stream()
            .flatMap(dimension -> dimension.units().stream())
            .map(Spelling::unit)
            .collect(Collectors.joining("|", "(?:", ")"));
    String part = NUMBER + SPACE + units;
    return part + "(?:" + SPACE + part + ")*";
  }

  private static String ratioItself() {
    return "(?:1" + SPACE + ":" + SPACE + ")?" + NUMBER + "(?:" + SPACE + "g/g)?";
  }

  private static String between() {
    return SPACE + "(?:to|[-–—])" + SPACE;
  }

  private static String unit(Unit unit) {
    return Stream.concat(Stream.of(unit.symbol()), unit.spellings().stream())
        .map(Unit::normal)
        .distinct()
        .map(Spelling::anyCase)
        .collect(Collectors.joining("|"));
  }

  /** A spelling in any case of its letters, with or without dots. */
  private static String anyCase(String spelling) {
    StringBuilder pattern = new StringBuilder();
    spelling.chars().forEach(c -> pattern.append(anyCase((char) c)));
    String any = pattern.toString();
    return any.startsWith(DEGREE)
        ? any + "|" + any.replace(DEGREE + "[cC]", "℃").replace(DEGREE + "[fF]", "℉")
        : any;
  }

  private static String anyCase(char c) {
    if (Character.isLetter(c)) {
      return "[" + c + Character.toUpperCase(c) + "]\\.?";
    }
    return switch (c) {
      case '°' -> DEGREE;
      case '/' -> SPACE + "(?:/|[pP][eE][rR])" + SPACE;
      case ' ' -> SPACE;
      default -> c + "\\.?";
    };
  }

  private static String whole(String pattern) {
    return "^" + SPACE + "(?:" + pattern + ")" + SPACE + "$";
  }
}
