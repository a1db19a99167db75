package dev.urnwright.event;

import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import java.util.List;
import java.util.Optional;

/**
 * What is known of brewing a coffee, as the user gave it.
 *
 * @param method how water meets coffee
 * @param reference the brew that tasted right, when given
 * @param extraction when there is no reference; the dissolved solids at the end of the steep for
 *     immersion
 * @param absorption when given; otherwise it follows from a weighed reference, or is assumed
 * @param measured more points of extraction against ratio, of distinct ratios, in rising order
 * @param steamLoss brew water lost as vapour
 */
public record BrewProfile(
    Method method,
    Optional<ReferenceBrew> reference,
    Optional<Extraction> extraction,
    Optional<Absorption> absorption,
    List<Measured> measured,
    Share steamLoss) {
  /** Copies the list. */
  public BrewProfile {
    measured = List.copyOf(measured);
  }

  /** How water meets coffee. */
  public enum Method {
    /** Water passes through the grounds: drip, pour-over, batch brewer. */
    PERCOLATION,
    /** The grounds steep in all of the water. */
    IMMERSION
  }

  /**
   * One brew that was weighed and read.
   *
   * @param dose dry ground coffee, above 0
   * @param water brew water
   * @param beverage what left the grounds, when it was weighed
   * @param strength what the refractometer read
   */
  public record ReferenceBrew(Mass dose, Mass water, Optional<Mass> beverage, Strength strength) {}

  /**
   * One measured point.
   *
   * @param ratio brew water over dose
   * @param extraction what it extracted
   */
  public record Measured(BrewRatio ratio, Extraction extraction) {}
}
