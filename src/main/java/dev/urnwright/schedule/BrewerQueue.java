package dev.urnwright.schedule;

import dev.urnwright.event.Brewer;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Gives batches to brewers, each to the one that is done with it first. This spreads the work; it
 * is not yet a clock.
 */
public final class BrewerQueue {
  private static final Duration UNKNOWN_CYCLE = Duration.ofMinutes(10);

  private final List<Place> places = new ArrayList<>();

  /** One brewer and how long it is taken. */
  private static final class Place {
    final BrewerUnit unit;
    Duration free = Duration.ZERO;

    Place(BrewerUnit unit) {
      this.unit = unit;
    }

    Duration done() {
      return free.plus(unit.brewer().cycle().orElse(UNKNOWN_CYCLE));
    }
  }

  /** A queue before all brewers of these kinds, all of them free. */
  public BrewerQueue(List<Brewer> brewers) {
    for (Brewer brewer : brewers) {
      for (int number = 1; number <= brewer.count(); number++) {
        places.add(new Place(new BrewerUnit(brewer, number)));
      }
    }
  }

  /**
   * The brewer for the next batch; it is taken for one cycle.
   *
   * @param kinds those that can brew it, one of this queue's at least
   */
  public BrewerUnit next(List<Brewer> kinds) {
    Place place =
        places.stream()
            .filter(p -> kinds.contains(p.unit.brewer()))
            .min(Comparator.comparing(Place::done))
            .orElseThrow(() -> new IllegalArgumentException("no brewer of " + kinds));
    place.free = place.done();
    return place.unit;
  }
}
