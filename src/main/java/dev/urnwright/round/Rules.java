package dev.urnwright.round;

import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Volume;
import java.time.Duration;

/**
 * What the round goes by.
 *
 * @param fresh how long coffee must still be good when it is handed over
 * @param cup what a cup takes where the table doesn't say
 * @param tuning how leftovers change tomorrow's carafes
 */
public record Rules(Duration fresh, Volume cup, Tuning tuning) {
  /**
   * How leftovers change tomorrow's carafes.
   *
   * @param days of the same weekday that are looked back on, 1 or more
   * @param least of them that must be known before anything is changed, 1 or more
   * @param margin kept above the most that was poured on any of them
   */
  public record Tuning(int days, int least, Share margin) {
    /** Refuses to learn from nothing. */
    public Tuning {
      if (least < 1 || days < least) {
        throw new IllegalArgumentException("something is looked back on: " + least + ", " + days);
      }
    }
  }
}
