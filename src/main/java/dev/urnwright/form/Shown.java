package dev.urnwright.form;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DateUtil;

/** A spreadsheet's numbers as people would type them, by the way they are shown. */
final class Shown {
  /** A spreadsheet's numbers are exact to so many digits. */
  private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_UP);

  private static final int MOST_ZEROS = 15;

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd");
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm");
  private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("HH:mm:ss");

  private static final Pattern ESCAPES = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private Shown() {}

  /** A percentage, a date, a time of the day, or a plain number. */
  static String number(BigDecimal exact, CellStyle style, boolean from1904) {
    BigDecimal number = exact.round(DIGITS);
    String format = style == null ? null : style.getDataFormatString();
    if (format != null && format.replaceAll("\"[^\"]*\"|\\\\.", "").contains("%")) {
      return plain(number.movePointRight(2)) + " %";
    }
    boolean date =
        format != null
            && DateUtil.isADateFormat(style.getDataFormat(), format)
            && DateUtil.isValidExcelDate(number.doubleValue());
    return date ? date(number.doubleValue(), from1904) : plain(number);
  }

  /** A text for a cell; spreadsheets read {@code _x0041_} as the character 41 (hexadecimal). */
  static String escaped(String text) {
    return ESCAPES.matcher(text).replaceAll("_x005F_");
  }

  /** A text without spaces at its ends, no-break ones included. */
  static String stripped(String text) {
    int start = 0;
    int end = text.length();
    while (start < end && isSpace(text.charAt(start))) {
      start++;
    }
    while (end > start && isSpace(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(start, end);
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }

  private static String date(double number, boolean from1904) {
    LocalDateTime time = DateUtil.getLocalDateTime(number, from1904, true);
    if (time == null) {
      return plain(BigDecimal.valueOf(number));
    }
    boolean day = number >= 1;
    boolean clock = !day || time.toLocalTime().toSecondOfDay() > 0;
    return (day ? DAY.format(time) : "")
        + (day && clock ? " " : "")
        + (clock ? (time.getSecond() == 0 ? MINUTE : SECOND).format(time) : "");
  }

  private static String plain(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return stripped.scale() < -MOST_ZEROS ? stripped.toString() : stripped.toPlainString();
  }
}
