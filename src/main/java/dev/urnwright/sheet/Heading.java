package dev.urnwright.sheet;

import dev.urnwright.event.Event;
import dev.urnwright.event.Paper;
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
        event.date().map(DayWords::of),
        event.print().paper() == Paper.A4 ? "A4" : "letter");
  }

  /** The event's name, cut where the running head has no room for more. */
  public String running() {
    return event.shortenedTo(HEAD_LETTERS);
  }
}
