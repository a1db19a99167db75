package dev.urnwright.sheet;

import dev.urnwright.event.Event;
import dev.urnwright.event.Paper;
import dev.urnwright.event.Print;
import dev.urnwright.wording.Words;
import java.util.Optional;

/**
 * What stands at the head of every page.
 *
 * @param event the event's name
 * @param date its day in words, when given
 * @param paper the style sheet's word for the paper
 * @param language its tag
 */
public record Heading(Name event, Optional<String> date, String paper, String language) {
  /** Two lines of the running head. */
  private static final int HEAD_LETTERS = 110;

  static Heading of(Event event, Words words) {
    return of(
        event.name(), event.date().map(date -> DayWords.of(date, words)), event.print(), words);
  }

  static Heading of(String name, Optional<String> date, Print print, Words words) {
    return new Heading(
        new Name(name),
        date,
        print.paper() == Paper.A4 ? "A4" : "letter",
        words.locale().toLanguageTag());
  }

  /** The event's name, cut where the running head has no room for more. */
  public String running() {
    return event.shortenedTo(HEAD_LETTERS);
  }
}
