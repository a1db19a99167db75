package dev.urnwright.plan;

import dev.urnwright.quantity.Amount;
import dev.urnwright.wording.Saying;
import java.util.Optional;

/**
 * Something to take along.
 *
 * @param part of the load
 * @param what to take
 * @param amount how much or how many, when the plan knows
 * @param how numbers, circuits, stations, one after the other; may be none
 */
public record PackingLine(Part part, Saying what, Optional<Amount> amount, Optional<Saying> how) {
  /** What, in English. */
  public String item() {
    return what.toString();
  }

  /** How, in English; may be empty. */
  public String detail() {
    return how.map(Saying::toString).orElse("");
  }

  /** A part of the load. */
  public enum Part {
    /** Brewers, heaters and what they are plugged into. */
    BREWING("pack.part.brewing"),
    /** Dispensers, labels, signs. */
    SERVING("pack.part.serving"),
    /** Scale, jug, refractometer, thermometer. */
    MEASURING("pack.part.measuring"),
    /** Coffee and supplies. */
    USED_UP("pack.part.used-up"),
    /** Gloves, bins, and what the user adds. */
    BESIDES("pack.part.besides");

    private final String key;

    Part(String key) {
      this.key = key;
    }

    /** For people. */
    public Saying saying() {
      return Saying.of(key);
    }
  }
}
