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
   * @param extra of the mean, as a fraction, from 0 to 10
   */
  record Overage(double extra) implements Provision {
    /** Refuses less than the mean, and eleven times as much. */
    public Overage {
      if (!(extra >= 0 && extra <= 10)) {
        throw new IllegalArgumentException("an overage goes from 0 to 10 times the mean: " + extra);
      }
    }
  }

  /** The mean, rounded up. */
  record Mean() implements Provision {}
}
