package dev.urnwright.sheet;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A time of the day, {@code 05:40}. */
final class ClockText {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private ClockText() {}

  static String of(LocalDateTime time) {
    return CLOCK.format(time);
  }
}
