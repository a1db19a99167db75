package dev.urnwright.journal;

import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * What one group drank of one coffee.
 *
 * @param id the same wherever the entry travels
 * @param recordedAt when it was entered
 * @param occasion the event
 * @param kind of event, such as conference, when the user gave one
 * @param group the group's name
 * @param coffee the coffee's name
 * @param asked what was planned for it
 * @param putOut finished beverage that stood ready
 * @param cameBack of it, unpoured; at most {@code putOut}
 */
public record ServiceEntry(
    UUID id,
    Instant recordedAt,
    Occasion occasion,
    Optional<String> kind,
    String group,
    String coffee,
    Asked asked,
    Mass putOut,
    Mass cameBack) {
  /** Refuses more coming back than went out. */
  public ServiceEntry {
    if (cameBack.compareTo(putOut) > 0) {
      throw new IllegalArgumentException("more came back than went out: " + cameBack);
    }
  }

  /**
   * What was planned.
   *
   * @param headcount guests who came, from 1 to 1 000 000
   * @param drinkers the share of them planned to drink this coffee
   * @param cupsEach planned for each drinker, above 0, at most 100
   * @param cups planned, 0 or more
   * @param cup beverage in one of them, above 0
   */
  public record Asked(int headcount, Share drinkers, double cupsEach, int cups, Mass cup) {
    private static final int MOST_GUESTS = 1_000_000;
    private static final double MOST_CUPS = 100;

    /** Refuses what nobody could have been asked for. */
    public Asked {
      if (headcount < 1 || headcount > MOST_GUESTS) {
        throw new IllegalArgumentException("guests are 1 to 1 000 000: " + headcount);
      }
      if (!(cupsEach > 0 && cupsEach <= MOST_CUPS) || cups < 0 || cup.isZero()) {
        throw new IllegalArgumentException(
            "cups are more than nothing, and at most 100 each: "
                + cupsEach
                + " each, "
                + cups
                + " planned, of "
                + cup);
      }
    }
  }

  /** Cups poured: what did not come back, in cups. */
  public double cupsPoured() {
    return putOut.minus(cameBack).grams() / asked.cup().grams();
  }
}
