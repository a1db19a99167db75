package dev.urnwright.plan;

import dev.urnwright.brew.Estimate;
import dev.urnwright.plan.StrengthAccount.Entry;
import dev.urnwright.quantity.Display;

/**
 * What to improve first.
 *
 * @param first the source that makes the most of the uncertainty
 * @param cup as it is
 * @param after as it is when every batch is read on the day
 * @param display for the figures
 */
record Advice(Entry first, Estimate cup, Estimate after, Display display) {
  String text() {
    String most = "Most of it comes from: " + first.source().words() + " (" + part() + "). ";
    String reading =
        "Reading every batch when it is ready, and correcting for it, leaves "
            + plusMinus(after)
            + " instead of "
            + plusMinus(cup)
            + ".";
    boolean readingHelps = after.uncertainty() < cup.uncertainty();
    String cure = cure();
    if (cure.isEmpty()) {
      return most + (readingHelps ? reading : "Reading the batches makes it no surer.");
    }
    return most
        + cure
        + ", at best from "
        + plusMinus(cup)
        + " to "
        + plusMinus(first.without())
        + "."
        + (readingHelps ? " " + reading : "");
  }

  /** What to do about it before the day; empty where only the day can tell. */
  private String cure() {
    return switch (first.source()) {
      case REFRACTOMETER -> "A surer refractometer for the reference would narrow it";
      case REFERENCE_SCALE -> "A larger reference, or a finer scale under it, would narrow it";
      case ABSORPTION_ASSUMED -> "Weighing the beverage of one batch would narrow it";
      case EXTRACTION_ASSUMED -> "Weighing and reading one batch would narrow it";
      case BREW_WATER -> "Weighing the brew water instead of filling to a mark would narrow it";
      case SCALE -> "A better scale would narrow it";
      case CUP -> "Measuring what is poured over the ice would narrow it";
      case ABSORPTION, EXTRACTION -> "";
    };
  }

  private String part() {
    return Math.round(first.share().percent()) + "\u00a0%";
  }

  private String plusMinus(Estimate estimate) {
    return "±" + display.strength(estimate.plusMinus());
  }
}
