package dev.urnwright.plan;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.Budget;
import dev.urnwright.brew.Doubt;
import dev.urnwright.event.Taught;
import dev.urnwright.event.Uncertainties;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The standard uncertainty of each doubt about one coffee's strength.
 *
 * @param given with the event, or its defaults
 * @param method how the coffee is brewed
 * @param taught what a journal taught of it
 */
record Doubts(Uncertainties given, BrewMethod method, Optional<Taught.Brewing> taught)
    implements ToDoubleFunction<Doubt> {
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
      case ABSORPTION_LEARNED -> ofAbsorption();
      case EXTRACTION_LEARNED -> ofExtraction();
      case ABSORPTION -> given.absorption().gramsPerGram();
      case EXTRACTION -> given.extraction().fraction();
      case DOSE, CONCENTRATE, BYPASS -> given.scales().kitchen().grams();
      case BREW_WATER -> given.brewWater().fraction();
      case CUP -> given.cup().fraction();
    };
  }

  /** The interval that was learned is one of 95 %, as those of k = 2 are. */
  private static double standard(double low, double high) {
    return (high - low) / 2 / Budget.COVERAGE;
  }

  private double ofAbsorption() {
    return taught
        .flatMap(Taught.Brewing::absorption)
        .map(kept -> standard(kept.low().gramsPerGram(), kept.high().gramsPerGram()))
        .orElse(0.0);
  }

  /** Where it was learned the least surely. */
  private double ofExtraction() {
    return taught.stream()
        .flatMap(brewing -> brewing.extraction().stream())
        .map(Taught.Extracted::extraction)
        .mapToDouble(at -> standard(at.low().fraction(), at.high().fraction()))
        .max()
        .orElse(0);
  }
}
