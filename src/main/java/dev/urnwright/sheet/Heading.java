package dev.urnwright.sheet;

import dev.urnwright.event.Event;
import dev.urnwright.event.Paper;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * What stands at the head of every page.
 *
 * @param event the event's name
 * @param date its day in words, when given
 * @param paper the style sheet's word for the paper
 */
public record Heading(Name event, Optional<String> date, String paper) {
  /** Two lines of the running head. */
  private static final int HEAD_LETTERS = 110;

  static Heading of(Event event) {
    return new Heading(
        new Name(event.name()),
        event.date().map(Heading::inWords),
        event.print().paper() == Paper.A4 ? "A4" : "letter");
  }

  /** The event's name, cut where the running head has no room for more. */
  public String running() {
    return event.shortenedTo(HEAD_LETTERS);
  }

  /** Spelt out, since 04/05 is April to some and May to others. */
  private static String inWords(LocalDate date) {
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
