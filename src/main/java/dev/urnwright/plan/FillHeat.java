package dev.urnwright.plan;

import dev.urnwright.brew.Heat;
import dev.urnwright.brew.Heat.Part;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.Kitchen.WaterCare;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Temperature;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.OptionalDouble;

/**
 * How warm a dispenser is from filling to the last cup.
 *
 * @param group whom it serves, hot
 */
public record FillHeat(Event event, GroupPlan group, Fill fill) {
  /** A vessel takes the heat of this many grams of water for each millilitre it holds. */
  private static final double VESSEL_WATER = 0.08;

  /** Kelvins that a vessel of which nothing is said loses in its first hour. */
  static final double USUAL_LOSS = 5;

  Run.Heat over(LocalDateTime filled, LocalDateTime due, LocalDateTime last) {
    Temperature start = mixed(event.serving().bypassTemperature(), isPreheated());
    return new Run.Heat(
        start,
        after(start, Duration.between(filled, due)),
        after(start, Duration.between(filled, last)),
        group.group().cup().servedAt());
  }

  /** What the mixture would be with bypass of another temperature. */
  Temperature mixed(Temperature bypass, boolean preheated) {
    WaterCare care = event.kitchen().water();
    Mass vessel =
        Mass.ofGrams(
            VESSEL_WATER * fill.dispenser().map(d -> d.capacity().millilitres()).orElse(0.0));
    return Heat.mix(
        new Part(fill.blend().concentrate(), care.concentrate()),
        new Part(fill.blend().bypass(), bypass),
        new Part(vessel, preheated ? event.serving().bypassTemperature() : care.air()));
  }

  boolean isPreheated() {
    return event.kitchen().water().preheat();
  }

  Temperature after(Temperature start, Duration time) {
    Temperature air = event.kitchen().water().air();
    double loss =
        fill.dispenser()
            .map(Dispenser::coolingKelvinsFirstHour)
            .orElse(OptionalDouble.empty())
            .orElse(USUAL_LOSS);
    return cooled(start, air, loss, time);
  }

  /**
   * What is left of a temperature after a time.
   *
   * @param loss kelvins in the first hour; more than there are to lose is taken for nearly all
   */
  public static Temperature cooled(Temperature start, Temperature air, double loss, Duration time) {
    double most = Math.max(0, start.kelvinsAbove(air)) * 0.99;
    return Heat.cooled(start, air, Math.min(loss, most), time);
  }
}
