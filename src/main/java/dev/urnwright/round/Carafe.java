package dev.urnwright.round;

import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Volume;
import java.time.Duration;
import java.util.Optional;

/**
 * A kind of carafe.
 *
 * @param name distinct among the carafes
 * @param count how many the service owns, 1 or more
 * @param capacity to the brim
 * @param fill what is filled in, less than {@code capacity}
 * @param tare empty and closed, when given
 * @param hold how long coffee stays good in it, from the brewer on
 * @param coolingKelvinsFirstHour how far it cools in the first hour, 0 or more
 * @param location where it stands
 */
public record Carafe(
    String name,
    int count,
    Volume capacity,
    Volume fill,
    Optional<Mass> tare,
    Duration hold,
    double coolingKelvinsFirstHour,
    Location location) {
  /** Refuses a carafe that overflows. */
  public Carafe {
    if (count < 1 || fill.compareTo(capacity) > 0) {
      throw new IllegalArgumentException("a carafe holds its fill: " + fill + ", " + capacity);
    }
  }

  /** The fewest carafes that hold a volume. */
  public int holding(Volume volume) {
    return (int) Math.ceil(volume.litres() / fill.litres() - 1e-9);
  }
}
