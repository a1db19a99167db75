package dev.urnwright.learn;

import dev.urnwright.event.Learned;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import java.util.List;
import java.util.Optional;

/**
 * What weighed batches of one coffee on one kind of brewer teach.
 *
 * @param starting what was believed before
 * @param batches so many entries were looked at
 * @param absorption what the grounds keep; empty where no beverage was weighed
 * @param extraction at the ratios of the curve before and at both ends of what was brewed, in
 *     rising order; none where no readings stand
 * @param odd entries unlike the rest
 */
public record Fit(
    Starting starting,
    int batches,
    Optional<Learned<Absorption>> absorption,
    List<Point> extraction,
    List<Oddity> odd) {
  /** Copies the lists. */
  public Fit {
    extraction = List.copyOf(extraction);
    odd = List.copyOf(odd);
  }

  /**
   * Extraction at a ratio.
   *
   * @param ratio brew water over dose
   * @param extraction there
   * @param brewed whether the ratio lies within what was brewed; outside, the curve before is moved
   *     as at the nearer end
   */
  public record Point(BrewRatio ratio, Learned<Extraction> extraction, boolean brewed) {}

  /** Whether there was anything to learn from. */
  public boolean teaches() {
    return absorption.isPresent() || !extraction.isEmpty();
  }
}
