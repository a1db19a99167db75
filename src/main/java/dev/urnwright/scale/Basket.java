package dev.urnwright.scale;

import dev.urnwright.quantity.Length;
import dev.urnwright.quantity.Mass;
import java.util.Optional;

/**
 * Where the grounds lie.
 *
 * @param shape flat or conical
 * @param diameter inside; of a cone, at its rim
 * @param height inside, when given
 */
public record Basket(Shape shape, Length diameter, Optional<Length> height) {
  /** How much of the bed's depth must be spare, for grounds swell (certification, 2014). */
  public static final double SPARE_FOR_SWELLING = 0.5;

  /** The tangent of 30°: the side of a cone of 60° against its axis. */
  private static final double SLOPE = 1 / Math.sqrt(3);

  /** Cubic millimetres in a millilitre. */
  private static final double PER_MILLILITRE = 1000;

  /** Refuses a basket that holds nothing. */
  public Basket {
    if (diameter.millimetres() == 0) {
      throw new IllegalArgumentException("a basket is wider than 0 mm");
    }
  }

  /** The form of the basket. */
  public enum Shape {
    /** Upright sides, a flat bed. */
    FLAT,
    /** Tapering to a point, 60° wide. */
    CONE
  }

  /**
   * How deep a dose lies, dry. Flat: {@code h = D / (ρ·A)}. In a cone of 60° the grounds fill its
   * tip, {@code D/ρ = π·h³/9}, and {@code h} is the depth above the tip.
   *
   * @param dose D
   * @param bulkGramsPerMillilitre ρ, dry and loose, above 0
   */
  public Length depthOf(Mass dose, double bulkGramsPerMillilitre) {
    double volume = dose.grams() / bulkGramsPerMillilitre * PER_MILLILITRE;
    return Length.ofMillimetres(
        shape == Shape.FLAT
            ? volume / areaSquareMillimetres()
            : Math.cbrt(3 * volume / (Math.PI * SLOPE * SLOPE)));
  }

  /** The dose that lies so deep: the inverse of {@link #depthOf}. */
  public Mass doseFor(Length depth, double bulkGramsPerMillilitre) {
    double h = depth.millimetres();
    double volume =
        shape == Shape.FLAT ? areaSquareMillimetres() * h : Math.PI * SLOPE * SLOPE * h * h * h / 3;
    return Mass.ofGrams(volume / PER_MILLILITRE * bulkGramsPerMillilitre);
  }

  private double areaSquareMillimetres() {
    return Math.PI * diameter.millimetres() * diameter.millimetres() / 4;
  }
}
