package dev.urnwright.plan;

import dev.urnwright.event.Event;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;

/** Minutes of the event's day as times. */
record RunClock(LocalDate day) {
  static RunClock of(Event event) {
    return new RunClock(event.date().orElse(LocalDate.EPOCH));
  }

  int minute(LocalDateTime at) {
    return (int) Duration.between(day.atStartOfDay(), at).toMinutes();
  }

  LocalDateTime at(int minute) {
    return day.atStartOfDay().plusMinutes(minute);
  }
}
