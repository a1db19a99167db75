package dev.urnwright.schedule;

import dev.urnwright.event.Brewer;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Mass;
import java.util.Optional;

/**
 * The doses of one brewer at one ratio, in whole steps of the scale.
 *
 * @param brewer the kind of brewer
 * @param least its least dose, in steps
 * @param greatest the most that basket, brew water and vessel allow, in steps
 */
public record DoseRange(Brewer brewer, long least, long greatest) {
  /**
   * What a brewer takes: {@code D_b = min(D_max, W_max / R)}, and no more than the vessel under it
   * holds.
   *
   * @param beveragePerDose grams of beverage for each gram of dose at this ratio
   * @param vessel what the vessel takes, when the brewer names one
   */
  public static DoseRange of(
      Brewer brewer, BrewRatio ratio, double beveragePerDose, Optional<Mass> vessel, Mass step) {
    // The brew water is weighed in steps too, and rounded up: its last part step is of no use.
    Mass water = brewer.greatestWater().roundDownTo(step);
    Mass greatest = brewer.greatestDose().min(water.times(1 / ratio.gramsPerGram()));
    if (vessel.isPresent()) {
      // One step of brew water more than the ratio asks for may arrive in the vessel.
      Mass held = vessel.get().minus(step.min(vessel.get()));
      greatest = greatest.min(held.times(1 / beveragePerDose));
    }
    return new DoseRange(
        brewer,
        Math.round(brewer.leastDose().roundUpTo(step).steps(step)),
        Math.round(greatest.roundDownTo(step).steps(step)));
  }

  /** Whether any dose at all can be brewed. */
  public boolean usable() {
    return greatest > 0 && least <= greatest;
  }

  boolean takes(long steps) {
    return least <= steps && steps <= greatest;
  }
}
