package dev.urnwright.event;

import java.time.LocalTime;

/**
 * From one time of the day to another; past midnight when the end isn't after the start.
 *
 * @param start when the first cup may be poured
 * @param end when the last one is
 */
public record TimeWindow(LocalTime start, LocalTime end) {
  private static final int DAY = 24 * 60;

  /** Minutes from midnight to the start. */
  public int startMinute() {
    return start.toSecondOfDay() / 60;
  }

  /** Minutes to the end from the midnight before the start: a day or more past midnight. */
  public int endMinute() {
    int end = end().toSecondOfDay() / 60;
    return end > startMinute() ? end : end + DAY;
  }

  /** As people write it, {@code 08:00–10:00}. */
  @Override
  public String toString() {
    return start + "–" + end;
  }
}
