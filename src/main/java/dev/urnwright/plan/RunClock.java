package dev.urnwright.plan;

import dev.urnwright.event.Event;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;

/** Minutes of the event's day as times. */
record RunClock(LocalDate day) {
  static RunClock of(Event event) {
    return new RunClock(event.date().orElse(LocalDate.EPOCH));
  }

  /** A minute of the event's day as a time of day, such as {@code 09:05}. */
  static String time(int minute) {
    int ofDay = Math.floorMod(minute, 24 * 60);
    return String.format(Locale.ROOT, "%02d:%02d", ofDay / 60, ofDay % 60);
  }

  /** From one minute to another, or at one. */
  static String span(int from, int to) {
    return from == to ? "at " + time(from) : "from " + time(from) + " to " + time(to);
  }

  int minute(LocalDateTime at) {
    return (int) Duration.between(day.atStartOfDay(), at).toMinutes();
  }

  LocalDateTime at(int minute) {
    return day.atStartOfDay().plusMinutes(minute);
  }
}
