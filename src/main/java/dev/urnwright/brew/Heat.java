package dev.urnwright.brew;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Power;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Water;
import java.time.Duration;

/** Mixing, cooling and heating of what is mostly water. */
public final class Heat {
  private static final double SPECIFIC_HEAT = Water.SPECIFIC_HEAT_JOULES_PER_GRAM_KELVIN;

  private Heat() {}

  /**
   * Something warm that takes part in a mixture.
   *
   * @param mass of it; for a vessel, the water that would take as much heat
   * @param temperature of it
   */
  public record Part(Mass mass, Temperature temperature) {}

  /**
   * The temperature of parts mixed without loss, {@code θ = Σ m·θ / Σ m}: all of them have the
   * specific heat of water, or stand for as much water.
   *
   * @param parts with some mass among them
   * @throws IllegalArgumentException if there is no mass
   */
  public static Temperature mix(Part... parts) {
    double masses = 0;
    double products = 0;
    for (Part part : parts) {
      masses += part.mass().grams();
      products += part.mass().grams() * part.temperature().celsius();
    }
    if (masses == 0) {
      throw new IllegalArgumentException("a mixture of nothing has no temperature");
    }
    return Temperature.ofCelsius(products / masses);
  }

  /**
   * The temperature after a time in a vessel that cools by Newton's law, {@code θ(t) = θair + (θ0 −
   * θair)·exp(−t/τ)}.
   *
   * @param start θ0
   * @param air θair
   * @param lostInFirstHour kelvins that the vessel loses in its first hour from {@code start}, 0 or
   *     more and less than the difference to the air; a vessel as warm as the air or cooler keeps
   *     its temperature
   * @param after t, not negative
   * @throws IllegalArgumentException if the vessel would cool below the air
   */
  public static Temperature cooled(
      Temperature start, Temperature air, double lostInFirstHour, Duration after) {
    double difference = start.kelvinsAbove(air);
    if (difference <= 0) {
      return start;
    }
    if (!(lostInFirstHour >= 0 && lostInFirstHour < difference)) {
      throw new IllegalArgumentException(
          "a vessel " + difference + " K above the air can't lose " + lostInFirstHour + " K");
    }
    double hours = after.toSeconds() / 3600.0;
    // exp(−t/τ) with exp(−1 h/τ) = 1 − loss/difference.
    double kept = Math.pow(1 - lostInFirstHour / difference, hours);
    return Temperature.ofCelsius(air.celsius() + difference * kept);
  }

  /**
   * How long water takes to heat, {@code t = m·c·(θ1 − θ0) / (P·η)}.
   *
   * @param water m
   * @param from θ0
   * @param to θ1
   * @param power P, above 0
   * @param efficiency η, above 0
   * @return to the second, rounded up; zero when it is warm already
   */
  public static Duration heating(
      Mass water, Temperature from, Temperature to, Power power, Share efficiency) {
    double joules = water.grams() * SPECIFIC_HEAT * Math.max(0, to.kelvinsAbove(from));
    return Duration.ofSeconds(
        (long) Math.ceil(joules / (power.watts() * efficiency.fraction()) - 1e-9));
  }
}
