package dev.urnwright.event;

import java.time.LocalTime;

/**
 * From one time of the day to another; past midnight when the end isn't after the start.
 *
 * @param start when the first cup may be poured
 * @param end when the last one is
 */
public record TimeWindow(LocalTime start, LocalTime end) {
  /** As people write it, {@code 08:00–10:00}. */
  @Override
  public String toString() {
    return start + "–" + end;
  }
}
