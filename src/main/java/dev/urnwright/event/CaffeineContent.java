package dev.urnwright.event;

import dev.urnwright.quantity.Share;

/**
 * Caffeine in dry ground coffee, as a share of its mass.
 *
 * @param low the least
 * @param high the most
 */
public record CaffeineContent(Share low, Share high) {
  /** Refuses a range turned around. */
  public CaffeineContent {
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException("a caffeine range goes from the lesser to the greater");
    }
  }
}
