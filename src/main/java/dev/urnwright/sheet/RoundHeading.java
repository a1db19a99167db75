package dev.urnwright.sheet;

import dev.urnwright.dispatch.Dispatch;
import dev.urnwright.event.Paper;
import dev.urnwright.quantity.Display;
import dev.urnwright.round.Round;
import java.util.Optional;

/** What all sheets of a round have in common. */
final class RoundHeading {
  private RoundHeading() {}

  static Heading of(Dispatch day) {
    return new Heading(
        new Name(day.round().name()),
        Optional.of(DayWords.of(day.day().date())),
        paper(day.round()));
  }

  static String paper(Round round) {
    return round.room().print().paper() == Paper.A4 ? "A4" : "letter";
  }

  static Display display(Round round) {
    return new Display(round.room().print().units(), round.room().equipment().scaleStep());
  }
}
