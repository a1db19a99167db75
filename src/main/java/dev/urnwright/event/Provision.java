package dev.urnwright.event;

import dev.urnwright.quantity.Share;

/** How many cups are planned when it isn't certain who drinks how much. */
public sealed interface Provision {
  /**
   * Enough cups with this probability.
   *
   * @param level above 0 and below 100 %
   */
  record ServiceLevel(Share level) implements Provision {
    /** Refuses a certainty that no finite number of cups gives. */
    public ServiceLevel {
      if (level.fraction() <= 0 || level.fraction() >= 1) {
        throw new IllegalArgumentException(
            "a service level lies between 0 and 100 %: " + level.percent() + " %");
      }
    }
  }

  /**
   * So much more than the mean.
   *
   * @param extra 0 % or more of the mean, as a fraction
   */
  record Overage(double extra) implements Provision {
    /** Refuses less than the mean. */
    public Overage {
      if (!(extra >= 0) || Double.isInfinite(extra)) {
        throw new IllegalArgumentException("an overage must be 0 or more: " + extra);
      }
    }
  }

  /** The mean, rounded up. */
  record Mean() implements Provision {}
}
