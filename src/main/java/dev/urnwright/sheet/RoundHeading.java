package dev.urnwright.sheet;

import dev.urnwright.dispatch.Dispatch;
import dev.urnwright.quantity.Display;
import dev.urnwright.round.Round;
import dev.urnwright.wording.Words;
import java.util.Optional;

/** What all sheets of a round have in common. */
final class RoundHeading {
  private RoundHeading() {}

  static Heading of(Dispatch day, Words words) {
    return of(day.round(), DayWords.of(day.day().date(), words), words);
  }

  static Heading of(Round round, String days, Words words) {
    return Heading.of(round.name(), Optional.of(days), round.room().print(), words);
  }

  static Display display(Round round, Words words) {
    return new Display(
        round.room().print().units(), round.room().equipment().scaleStep(), words.style());
  }
}
