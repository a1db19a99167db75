package dev.urnwright.plan;

import dev.urnwright.quantity.Amount;
import java.util.Optional;

/**
 * Something to take along.
 *
 * @param part of the load
 * @param item what
 * @param amount how much or how many, when the plan knows
 * @param detail numbers, circuits, stations; may be empty
 */
public record PackingLine(Part part, String item, Optional<Amount> amount, String detail) {
  /** A part of the load. */
  public enum Part {
    /** Brewers, heaters and what they are plugged into. */
    BREWING("Brewing and power"),
    /** Dispensers, labels, signs. */
    SERVING("Serving"),
    /** Scale, jug, refractometer, thermometer. */
    MEASURING("Measuring"),
    /** Coffee and supplies. */
    USED_UP("Used up"),
    /** Gloves, bins, and what the user adds. */
    BESIDES("Besides");

    private final String words;

    Part(String words) {
      this.words = words;
    }

    /** For people. */
    public String words() {
      return words;
    }
  }
}
