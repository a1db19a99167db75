package dev.urnwright.input;

import dev.urnwright.event.TimeWindow;
import dev.urnwright.quantity.Span;
import dev.urnwright.quantity.UnreadableException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Kinds of values that are days and times of the day. */
final class Times {
  private static final String EXPECTED_DATE = "expected year-month-day such as 2027-04-17";
  private static final String EXPECTED_TIME = "expected a time of the day such as 08:30";
  private static final String EXPECTED_WINDOW = "expected from and to such as 08:00-10:00";

  private static final Pattern DATE = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
  private static final Pattern TIME =
      Pattern.compile("(\\d{1,2})(?::(\\d{2}))? ?([ap])\\.?m\\.?|(\\d{1,2}):(\\d{2})");

  private static final int FIRST_YEAR = 2000;
  private static final int LAST_YEAR = 2199;
  private static final int NOON = 12;

  private static final String DATE_PATTERN = "^\\s*\\d{4}-\\d{1,2}-\\d{1,2}\\s*$";
  private static final String TIME_PATTERN =
      "(?:\\d{1,2}(?::\\d{2})? ?[aApP]\\.?[mM]\\.?|\\d{1,2}:\\d{2})";

  static final Kind<LocalDate> A_DATE =
      new Scalar<>(Shape.Value.of(DATE_PATTERN, EXPECTED_DATE), Times::date);
  static final Kind<LocalTime> A_TIME =
      new Scalar<>(
          Shape.Value.of("^\\s*" + TIME_PATTERN + "\\s*$", EXPECTED_TIME),
          text -> time(text, text, EXPECTED_TIME));
  static final Kind<TimeWindow> A_WINDOW =
      new Scalar<>(
          Shape.Value.of(
              "^\\s*" + TIME_PATTERN + "\\s*(?:to|[-–—])\\s*" + TIME_PATTERN + "\\s*$",
              EXPECTED_WINDOW),
          Times::window);

  private Times() {}

  /** A day, wherever it stands. */
  static LocalDate date(String text) {
    Matcher date = DATE.matcher(text.strip());
    if (!date.matches()) {
      throw new UnreadableException(Words.quoted(text) + " is not a date", EXPECTED_DATE);
    }
    int year = Integer.parseInt(date.group(1));
    int month = Integer.parseInt(date.group(2));
    int day = Integer.parseInt(date.group(3));
    if (year < FIRST_YEAR || year > LAST_YEAR) {
      throw new UnreadableException(
          "the year " + year + " is out of range",
          "expected from " + FIRST_YEAR + " to " + LAST_YEAR);
    }
    if (month < 1 || month > 12) {
      throw new UnreadableException(text.strip() + " has no such month", EXPECTED_DATE);
    }
    YearMonth days = YearMonth.of(year, month);
    if (!days.isValidDay(day)) {
      throw new UnreadableException(
          text.strip() + " does not exist",
          days.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
              + " "
              + year
              + " has "
              + days.lengthOfMonth()
              + " days");
    }
    return days.atDay(day);
  }

  private static TimeWindow window(String text) {
    Span span =
        Span.of(text)
            .orElseThrow(
                () ->
                    new UnreadableException(
                        Words.quoted(text) + " is not a window of time", EXPECTED_WINDOW));
    LocalTime start = time(span.from(), text, EXPECTED_WINDOW);
    LocalTime end = time(span.to(), text, EXPECTED_WINDOW);
    if (start.equals(end)) {
      throw new UnreadableException(Words.quoted(text) + " ends when it starts", EXPECTED_WINDOW);
    }
    return new TimeWindow(start, end);
  }

  /** A time of the day, wherever it stands. */
  static LocalTime time(String text) {
    return time(text, text, EXPECTED_TIME);
  }

  private static LocalTime time(String text, String whole, String expected) {
    Matcher time = TIME.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!time.matches()) {
      throw new UnreadableException(Words.quoted(whole) + " is not a time of the day", expected);
    }
    boolean twelve = time.group(3) != null;
    int hour = Integer.parseInt(twelve ? time.group(1) : time.group(4));
    String minutes = twelve ? time.group(2) : time.group(5);
    int minute = minutes == null ? 0 : Integer.parseInt(minutes);
    if (minute > 59 || (twelve ? hour < 1 || hour > NOON : hour > 23)) {
      throw new UnreadableException(
          Words.quoted(whole) + " does not exist", expected + ", within 00:00 to 23:59");
    }
    if (twelve) {
      hour = hour % NOON + (time.group(3).equals("p") ? NOON : 0);
    }
    return LocalTime.of(hour, minute);
  }
}
