package dev.urnwright.sheet;

import dev.urnwright.event.Event;
import dev.urnwright.wording.Saying;
import dev.urnwright.wording.Words;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * A time of a run as it is printed.
 *
 * @param time of the day
 * @param day which day, in words, when it isn't the event's own
 */
record ClockTime(LocalTime time, Optional<String> day) {
  private static final long MINUTES_PER_HOUR = 60;

  /** A time on an event's clock, whose day is the epoch when the event has no date. */
  static ClockTime of(Event event, LocalDateTime at, Words words) {
    long days = ChronoUnit.DAYS.between(event.date().orElse(LocalDate.EPOCH), at.toLocalDate());
    return new ClockTime(at.toLocalTime().truncatedTo(ChronoUnit.MINUTES), inWords(days, words));
  }

  private static Optional<String> inWords(long days, Words words) {
    return days == 0
        ? Optional.empty()
        : Optional.of(
            words.text(
                Saying.of(days < 0 ? "day.before" : "day.after").with("days", Math.abs(days))));
  }

  /** How long something takes, to the nearest minute: {@code 18 min}, {@code 2 h 5 min}. */
  static String length(Duration duration) {
    long minutes = Math.round(duration.toSeconds() / 60.0);
    long hours = minutes / MINUTES_PER_HOUR;
    long rest = minutes % MINUTES_PER_HOUR;
    if (hours == 0) {
      return rest + "\u00a0min";
    }
    return hours + "\u00a0h" + (rest == 0 ? "" : "\u00a0" + rest + "\u00a0min");
  }

  /** {@code 07:54}, with the day behind it when it isn't the event's. */
  @Override
  public String toString() {
    return day.map(word -> time + " " + word).orElse(time.toString());
  }
}
