package dev.urnwright.event;

import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Volume;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A kind of dispenser: airpot, urn, carafe.
 *
 * @param name distinct among the dispensers
 * @param count how many of it, 1 or more
 * @param capacity what it holds
 * @param heel what can't be drawn from it, less than {@code capacity}
 * @param hold how long coffee stays good in it, when given
 * @param coolingKelvinsFirstHour how far it cools in the first hour, when given
 * @param cupsPerMinute how many cups guests get from it in a minute, above 0, when given
 * @param location where it stands
 */
public record Dispenser(
    String name,
    int count,
    Volume capacity,
    Volume heel,
    Optional<Duration> hold,
    OptionalDouble coolingKelvinsFirstHour,
    OptionalDouble cupsPerMinute,
    Location location) {
  /** The same kind, so many of it, which holds so long. */
  public Dispenser with(int otherCount, Optional<Duration> otherHold) {
    return new Dispenser(
        name,
        otherCount,
        capacity,
        heel,
        otherHold,
        coolingKelvinsFirstHour,
        cupsPerMinute,
        location);
  }

  /** Refuses a dispenser from which nothing can be drawn. */
  public Dispenser {
    if (count < 1 || heel.compareTo(capacity) >= 0) {
      throw new IllegalArgumentException("the heel must be less than the capacity: " + heel);
    }
  }
}
