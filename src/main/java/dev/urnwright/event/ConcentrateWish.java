package dev.urnwright.event;

import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Strength;

/** How strong the concentrate is to be. */
public sealed interface ConcentrateWish {
  /**
   * This brew ratio.
   *
   * @param ratio brew water over dose
   */
  record ByRatio(BrewRatio ratio) implements ConcentrateWish {}

  /**
   * The ratio that gives this strength.
   *
   * @param strength of the undiluted beverage
   */
  record ByStrength(Strength strength) implements ConcentrateWish {}

  /**
   * Any ratio in between: the one that needs the fewest batches, then the one nearest to the
   * reference.
   *
   * @param strongest the least ratio
   * @param weakest the greatest ratio
   */
  record Between(BrewRatio strongest, BrewRatio weakest) implements ConcentrateWish {
    /** Refuses a range turned around. */
    public Between {
      if (strongest.compareTo(weakest) > 0) {
        throw new IllegalArgumentException("a range goes from the lesser to the greater ratio");
      }
    }
  }

  /** The reference ratio when it is strong enough for every group, else the ratio that just is. */
  record AsReference() implements ConcentrateWish {}
}
