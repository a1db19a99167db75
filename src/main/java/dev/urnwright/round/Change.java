package dev.urnwright.round;

import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Volume;
import dev.urnwright.wording.Saying;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Days that aren't ordinary: nothing is delivered, or another number of carafes.
 *
 * @param from the first day
 * @param to the last day, not before {@code from}
 * @param whom it concerns
 * @param what is different
 * @param location where it stands
 */
public record Change(LocalDate from, LocalDate to, Whom whom, What what, Location location) {
  /** Refuses a time turned around. */
  public Change {
    if (to.isBefore(from)) {
      throw new IllegalArgumentException("a change goes from the earlier to the later day");
    }
  }

  /** Whether it concerns that row on that day. */
  public boolean concerns(Drop drop, LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(to) && whom.includes(drop);
  }

  /**
   * Whom a change concerns: everybody, unless narrowed down.
   *
   * @param leg of these stops alone, when given
   * @param site of this one alone, when given
   * @param floor of this one alone, when given
   */
  public record Whom(Optional<String> leg, Optional<String> site, Optional<String> floor) {
    boolean includes(Drop drop) {
      return leg.map(drop.stop().leg()::equals).orElse(true)
          && site.map(drop.place().site()::equals).orElse(true)
          && floor.map(drop.place().floor()::equals).orElse(true);
    }

    /** The narrower of two changes holds. */
    int narrowness() {
      return (floor.isPresent() ? 4 : 0) + (site.isPresent() ? 2 : 0) + (leg.isPresent() ? 1 : 0);
    }
  }

  /** What is different. */
  public sealed interface What {
    /** Why, for people. */
    Saying saying();

    /** The same in English. */
    default String inWords() {
      return saying().toString();
    }

    /**
     * Nothing is delivered.
     *
     * @param reason in the user's words
     */
    record Closed(String reason) implements What {
      @Override
      public Saying saying() {
        return Saying.verbatim(reason);
      }
    }

    /**
     * So many carafes instead, also on a day that has no delivery otherwise.
     *
     * @param count 0 or more
     */
    record Carafes(int count) implements What {
      @Override
      public Saying saying() {
        return Saying.of("round.change.carafes").with("count", count);
      }
    }

    /**
     * So many people instead.
     *
     * @param count 0 or more
     * @param usualCup what a cup takes where the table doesn't say
     */
    record People(int count, Volume usualCup) implements What {
      @Override
      public Saying saying() {
        return Saying.of("round.change.people").with("count", count);
      }
    }
  }
}
