package dev.urnwright.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one day asks for.
 *
 * @param date the day
 * @param deliveries of one carafe at least, in the order of the table
 * @param missed rows that get nothing though it is one of their days, and why
 */
public record DayOfRound(LocalDate date, List<Delivery> deliveries, List<Missed> missed) {
  /** Copies the lists. */
  public DayOfRound {
    deliveries = List.copyOf(deliveries);
    missed = List.copyOf(missed);
  }

  /**
   * What a row gets.
   *
   * @param drop the row
   * @param carafes 1 or more
   * @param change why it isn't the par, if it isn't an ordinary day
   */
  public record Delivery(Drop drop, int carafes, Optional<Change> change) {}

  /**
   * What a row doesn't get.
   *
   * @param drop the row
   * @param change why
   */
  public record Missed(Drop drop, Change change) {}

  /** What the round asks for on that day. */
  public static DayOfRound of(Round round, LocalDate date) {
    List<Change> today =
        round.changes().stream()
            .filter(change -> !date.isBefore(change.from()) && !date.isAfter(change.to()))
            .toList();
    List<Delivery> deliveries = new ArrayList<>();
    List<Missed> missed = new ArrayList<>();
    for (Drop drop : round.drops()) {
      boolean itsDay = drop.days().contains(date.getDayOfWeek());
      Optional<Change> change = change(today, drop, date);
      int carafes =
          change
              .map(c -> carafes(round, drop, c, itsDay))
              .orElse(itsDay ? drop.par().carafes() : 0);
      if (carafes > 0) {
        deliveries.add(new Delivery(drop, carafes, change));
      } else if (itsDay && change.isPresent()) {
        missed.add(new Missed(drop, change.get()));
      }
    }
    return new DayOfRound(date, deliveries, missed);
  }

  /** Of several changes the narrowest holds, and of those the one that is written last. */
  private static Optional<Change> change(List<Change> today, Drop drop, LocalDate date) {
    return today.stream()
        .filter(change -> change.concerns(drop, date))
        .reduce(
            (earlier, later) ->
                Comparator.<Change>comparingInt(c -> c.whom().narrowness()).compare(later, earlier)
                        >= 0
                    ? later
                    : earlier);
  }

  private static int carafes(Round round, Drop drop, Change change, boolean itsDay) {
    if (change.what() instanceof Change.What.Closed) {
      return 0;
    }
    // A number for a leg or for everybody changes what is delivered, and adds no delivery.
    if (!itsDay && change.whom().site().isEmpty()) {
      return 0;
    }
    if (change.what() instanceof Change.What.People people) {
      Drop.People drinkers =
          drop.par()
              .people()
              .map(usual -> usual.times(people.count()))
              .orElseGet(() -> new Drop.People(people.count(), people.usualCup(), 1));
      return round.carafe(drop.content().carafe()).holding(drinkers.drunk());
    }
    return ((Change.What.Carafes) change.what()).count();
  }
}
