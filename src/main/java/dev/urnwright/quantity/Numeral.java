package dev.urnwright.quantity;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it, at the beginning of a text: {@code 1.5}, {@code 1,5}, {@code ½},
 * {@code 1 1/2}, {@code 10 000}.
 *
 * @param value the number; below zero when it has a minus sign
 * @param end where the text goes on
 */
record Numeral(BigDecimal value, int end) {
  private static final Map<String, String> FRACTIONS =
      Map.ofEntries(
          Map.entry("½", "1/2"),
          Map.entry("⅓", "1/3"),
          Map.entry("⅔", "2/3"),
          Map.entry("¼", "1/4"),
          Map.entry("¾", "3/4"),
          Map.entry("⅕", "1/5"),
          Map.entry("⅖", "2/5"),
          Map.entry("⅗", "3/5"),
          Map.entry("⅘", "4/5"),
          Map.entry("⅙", "1/6"),
          Map.entry("⅚", "5/6"),
          Map.entry("⅛", "1/8"),
          Map.entry("⅜", "3/8"),
          Map.entry("⅝", "5/8"),
          Map.entry("⅞", "7/8"));

  private static final String VULGAR = "[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]";
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<sign>[-−+]?) ?(?:"
              + ("(?:(?<whole>\\d+)[ -])?(?<over>\\d+) ?[/⁄] ?(?<under>\\d+)(?!\\d)"
                  + "|(?<beside>\\d*) ?(?<vulgar>"
                  + VULGAR
                  + ")"
                  + "|(?<grouped>\\d{1,3}(?:[ '’]\\d{3})+(?:[.,]\\d+)?)(?![\\d.,])"
                  + "|(?<plain>[\\d.,]+))"));
  private static final Pattern DECIMAL = Pattern.compile("\\d+|\\d*[.,]\\d+");
  private static final Pattern AMBIGUOUS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
  private static final Pattern EXPONENT = Pattern.compile("[eE][-+]?\\d");

  /**
   * Reads the number that stands at a place of a text.
   *
   * @param text with single spaces
   * @param expected what to say of a text that can't be read
   * @throws UnreadableException if none stands there, or one that can be read in two ways
   */
  static Numeral at(String text, int start, String expected) {
    Matcher number = NUMBER.matcher(text).region(start, text.length());
    if (!number.lookingAt()) {
      throw new UnreadableException("'" + text + "' does not start with a number", expected);
    }
    if (EXPONENT.matcher(text).region(number.end(), text.length()).lookingAt()) {
      throw new UnreadableException("'" + text + "' has an exponent", expected);
    }
    BigDecimal size = size(number, text, expected);
    boolean minus = number.group("sign").equals("-") || number.group("sign").equals("−");
    return new Numeral(minus ? size.negate() : size, number.end());
  }

  private static BigDecimal size(Matcher number, String text, String expected) {
    if (number.group("over") != null) {
      return whole(number.group("whole"))
          .add(fraction(number.group("over"), number.group("under"), text, expected));
    }
    if (number.group("vulgar") != null) {
      String[] parts = requireNonNull(FRACTIONS.get(number.group("vulgar"))).split("/");
      return whole(number.group("beside")).add(fraction(parts[0], parts[1], text, expected));
    }
    if (number.group("grouped") != null) {
      return decimal(number.group("grouped").replaceAll("[ '’]", ""));
    }
    String plain = number.group("plain");
    String rest = text.substring(number.end("plain"));
    if (AMBIGUOUS.matcher(plain).matches()) {
      throw new UnreadableException(
          "'" + text + "' can be read in two ways",
          "write " + plain.replace(",", "") + rest + " or " + shortest(plain) + rest);
    }
    if (!DECIMAL.matcher(plain).matches()) {
      throw new UnreadableException("'" + text + "' is not written as one number", expected);
    }
    return decimal(plain);
  }

  private static String shortest(String plain) {
    return decimal(plain).stripTrailingZeros().toPlainString();
  }

  private static BigDecimal decimal(String text) {
    return new BigDecimal(text.replace(',', '.'));
  }

  private static BigDecimal whole(String digits) {
    return digits == null || digits.isEmpty() ? BigDecimal.ZERO : new BigDecimal(digits);
  }

  private static BigDecimal fraction(String over, String under, String text, String expected) {
    BigDecimal divisor = new BigDecimal(under);
    if (divisor.signum() == 0) {
      throw new UnreadableException("'" + text + "' divides by zero", expected);
    }
    return new BigDecimal(over).divide(divisor, MathContext.DECIMAL128);
  }
}
