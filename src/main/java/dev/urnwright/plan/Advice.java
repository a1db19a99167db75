package dev.urnwright.plan;

import dev.urnwright.brew.Estimate;
import dev.urnwright.plan.StrengthAccount.Entry;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.wording.Saying;
import java.util.Optional;

/**
 * What to improve first.
 *
 * @param first the source that makes the most of the uncertainty
 * @param cup as it is
 * @param after as it is when every batch is read on the day
 * @param display for the figures
 */
record Advice(Entry first, Estimate cup, Estimate after, Display display) {
  Saying saying() {
    boolean readingHelps = after.uncertainty() < cup.uncertainty();
    Optional<Saying> cure = cure();
    return Saying.of("sure.advice")
        .with("source", first.source().saying())
        .with("part", new Figure(Long.toString(Math.round(first.share().percent())), "%"))
        .with("curable", cure.isPresent())
        .with("cure", cure.orElse(Saying.verbatim("")))
        .with("cup", display.strength(cup.plusMinus()))
        .with("without", display.strength(first.without().plusMinus()))
        .with("readingHelps", readingHelps)
        .with("reading", cure.isEmpty() || readingHelps)
        .with("after", display.strength(after.plusMinus()));
  }

  /** What to do about it before the day; empty where only the day can tell. */
  private Optional<Saying> cure() {
    return switch (first.source()) {
      case ABSORPTION, EXTRACTION -> Optional.empty();
      default -> Optional.of(Saying.of("cure." + first.source().saying().key()));
    };
  }
}
