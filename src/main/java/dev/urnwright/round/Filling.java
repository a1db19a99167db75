package dev.urnwright.round;

import java.time.Duration;

/**
 * How carafes are filled and loaded. The carafes of one leg are filled one after another, so many
 * at a time, and before those of the leg that leaves next.
 *
 * @param each from the empty carafe to the closed lid
 * @param hands how many people fill at the same time, 1 or more
 * @param loading from the last lid until the leg leaves
 */
public record Filling(Duration each, int hands, Duration loading) {
  /** Refuses nobody. */
  public Filling {
    if (hands < 1) {
      throw new IllegalArgumentException("somebody fills the carafes: " + hands);
    }
  }

  /** How long so many carafes take, to the full minute. */
  public Duration of(int carafes) {
    long turns = (carafes + hands - 1L) / hands;
    long seconds = turns * each.toSeconds();
    return Duration.ofMinutes((seconds + 59) / 60);
  }
}
