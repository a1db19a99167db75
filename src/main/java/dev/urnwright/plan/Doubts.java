package dev.urnwright.plan;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.Doubt;
import dev.urnwright.event.Uncertainties;
import java.util.function.ToDoubleFunction;

/**
 * The standard uncertainty of each doubt about one coffee's strength.
 *
 * @param given with the event, or its defaults
 * @param method how the coffee is brewed
 */
record Doubts(Uncertainties given, BrewMethod method) implements ToDoubleFunction<Doubt> {
  /** Published figures for drip go from 1.5 to 2.35 g/g; any of them as likely: width / √12. */
  static final double PERCOLATION_ASSUMED = (2.35 - 1.5) / Math.sqrt(12);

  /** Steeped grounds, poured off: half a gram per gram either way, as likely: half-width / √3. */
  static final double IMMERSION_ASSUMED = 0.5 / Math.sqrt(3);

  /** Anywhere from 18 to 22 %, as likely: width / √12. */
  static final double EXTRACTION_ASSUMED = (0.22 - 0.18) / Math.sqrt(12);

  @Override
  public double applyAsDouble(Doubt doubt) {
    return switch (doubt) {
      case READING -> given.refractometer().fraction();
      case REFERENCE_DOSE, REFERENCE_WATER, REFERENCE_BEVERAGE ->
          given.scales().reference().grams();
      case ABSORPTION_ASSUMED ->
          method == BrewMethod.PERCOLATION ? PERCOLATION_ASSUMED : IMMERSION_ASSUMED;
      case EXTRACTION_ASSUMED -> EXTRACTION_ASSUMED;
      case ABSORPTION -> given.absorption().gramsPerGram();
      case EXTRACTION -> given.extraction().fraction();
      case DOSE, CONCENTRATE, BYPASS -> given.scales().kitchen().grams();
      case BREW_WATER -> given.brewWater().fraction();
      case CUP -> given.cup().fraction();
    };
  }
}
