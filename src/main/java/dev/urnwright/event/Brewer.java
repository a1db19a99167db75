package dev.urnwright.event;

import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Power;
import dev.urnwright.quantity.Volume;
import java.time.Duration;
import java.util.Optional;

/**
 * A kind of brewer.
 *
 * @param name distinct among the brewers
 * @param count how many of it, 1 or more
 * @param leastDose below it a bed is too thin to brew evenly
 * @param greatestDose what the basket takes
 * @param greatestWater the most brew water for one batch
 * @param vessel what the vessel under it takes, when given
 * @param cycle from start to the last drop, when given
 * @param supply its electrical supply
 * @param location where it stands
 */
public record Brewer(
    String name,
    int count,
    Mass leastDose,
    Mass greatestDose,
    Mass greatestWater,
    Optional<Volume> vessel,
    Optional<Duration> cycle,
    Supply supply,
    Location location) {
  /** Refuses a range turned around. */
  public Brewer {
    if (count < 1 || leastDose.compareTo(greatestDose) > 0) {
      throw new IllegalArgumentException("a brewer takes a dose from the lesser to the greater");
    }
  }

  /** The same kind, so many of it, fed otherwise. */
  public Brewer with(int otherCount, Supply other) {
    return new Brewer(
        name, otherCount, leastDose, greatestDose, greatestWater, vessel, cycle, other, location);
  }

  /**
   * How a brewer is fed.
   *
   * @param power when given
   * @param circuit the name of its circuit, when given
   */
  public record Supply(Optional<Power> power, Optional<String> circuit) {}
}
