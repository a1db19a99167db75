package dev.urnwright.sheet;

import java.time.LocalDate;
import java.util.Locale;

/** A day spelt out, since 04/05 is April to some and May to others. */
public final class DayWords {
  private DayWords() {}

  /** {@code Tuesday 2 March 2027}. */
  public static String of(LocalDate date) {
    return titled(date.getDayOfWeek())
        + " "
        + date.getDayOfMonth()
        + " "
        + titled(date.getMonth())
        + " "
        + date.getYear();
  }

  private static String titled(Enum<?> day) {
    return day.name().charAt(0) + day.name().substring(1).toLowerCase(Locale.ROOT);
  }
}
