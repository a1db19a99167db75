package dev.urnwright.quantity;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a language writes numbers. {@link #ENGLISH} has a decimal point and a no-break space between
 * groups of digits, so that nobody takes a group for a fraction; the others follow the data that
 * come with Java (CLDR).
 *
 * @param decimal between the whole and its fraction
 * @param grouping between groups of three digits
 */
public record NumberStyle(String decimal, String grouping) {
  /** As every other style is written from. */
  public static final NumberStyle ENGLISH = new NumberStyle(".", Display.NO_BREAK_SPACE);

  private static final Pattern SEPARATOR = Pattern.compile("(?<=\\d)([.\u00a0])(?=\\d)");

  /** The style of a language, and of where it is spoken if the locale tells. */
  public static NumberStyle of(Locale locale) {
    if (locale.getLanguage().equals(Locale.ENGLISH.getLanguage())) {
      return ENGLISH;
    }
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(locale);
    return new NumberStyle(
        String.valueOf(symbols.getDecimalSeparator()),
        String.valueOf(symbols.getGroupingSeparator()));
  }

  /** Numbers in the English style, rewritten in this one. */
  public String of(String english) {
    return equals(ENGLISH)
        ? english
        : SEPARATOR
            .matcher(english)
            .replaceAll(
                found -> Matcher.quoteReplacement(found.group().equals(".") ? decimal : grouping));
  }
}
