package dev.urnwright.round;

import dev.urnwright.event.TimeWindow;
import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Volume;
import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * One row of the table: what one floor of a site gets of one coffee.
 *
 * @param place where
 * @param stop on which leg, and when
 * @param content what is in its carafes
 * @param par how many carafes it gets
 * @param days on which it gets them
 * @param location where it stands
 */
public record Drop(
    Place place, Stop stop, Content content, Par par, Set<DayOfWeek> days, Location location) {
  /** Copies the days. */
  public Drop {
    days =
        days.isEmpty()
            ? Set.of()
            : Collections.unmodifiableSet(EnumSet.copyOf(days)); // in the order of the week
  }

  /**
   * Where.
   *
   * @param site the building or firm
   * @param floor or group in it; empty when the site has only one
   * @param address a line, when given
   * @param contact whom to ask for, when given
   * @param notes for the driver, when given
   */
  public record Place(
      String site,
      String floor,
      Optional<String> address,
      Optional<String> contact,
      Optional<String> notes) {
    /** Site and floor as people say them. */
    public String inWords() {
      return floor.isEmpty() ? site : site + ", " + floor;
    }
  }

  /**
   * When in the day.
   *
   * @param leg its name
   * @param number in the order of the way, 1 or more
   * @param window in which it is expected, when given
   */
  public record Stop(String leg, int number, Optional<TimeWindow> window) {}

  /**
   * What is in the carafes.
   *
   * @param coffee its key
   * @param strengthName as the table names it
   * @param strength of the finished beverage
   * @param carafe the name of its kind
   */
  public record Content(String coffee, String strengthName, Strength strength, String carafe) {}

  /**
   * How much is enough on an ordinary day.
   *
   * @param carafes 0 or more
   * @param cup what a cup takes there, when given
   * @param people that the carafes are counted from, when they are
   */
  public record Par(int carafes, Optional<Volume> cup, Optional<People> people) {}

  /**
   * Who drinks it.
   *
   * @param count 1 or more
   * @param cup what each cup takes
   * @param cupsEach cups for each of them, above 0
   */
  public record People(int count, Volume cup, double cupsEach) {
    /** What they drink together. */
    public Volume drunk() {
      return cup.times(count * cupsEach);
    }

    /** As many others who drink alike. */
    public People times(int others) {
      return new People(others, cup, cupsEach);
    }
  }
}
