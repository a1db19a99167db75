package dev.urnwright.scale;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.Budget;
import dev.urnwright.brew.Doubt;
import dev.urnwright.brew.Estimate;
import dev.urnwright.brew.Evidence;
import dev.urnwright.brew.StrengthBudget;
import dev.urnwright.event.Uncertainties;
import java.util.function.ToDoubleFunction;

/**
 * How surely a strength is foretold: the standard uncertainties of what is weighed, read and
 * carried over, for the budget of {@code brew}.
 *
 * @param evidence what the forecast rests on
 * @param usual of scales, readings, water and batches
 * @param tried whether anything was brewed on this brewer
 */
record StrengthDoubts(Evidence evidence, Uncertainties usual, boolean tried)
    implements ToDoubleFunction<Doubt> {
  /** Of the extraction, before anything was brewed on this brewer: one point, our own estimate. */
  static final double CARRIED_EXTRACTION = 0.010;

  /** Published figures for drip go from 1.5 to 2.35 g/g; any of them as likely: width / √12. */
  private static final double PERCOLATION_ASSUMED = (2.35 - 1.5) / Math.sqrt(12);

  /** Steeped grounds: half a gram per gram either way, as likely: half-width / √3. */
  private static final double IMMERSION_ASSUMED = 0.5 / Math.sqrt(3);

  @Override
  public double applyAsDouble(Doubt doubt) {
    return switch (doubt) {
      case READING -> usual.refractometer().fraction();
      case REFERENCE_DOSE, REFERENCE_WATER, REFERENCE_BEVERAGE ->
          usual.scales().reference().grams();
      case ABSORPTION_ASSUMED ->
          evidence.method() == BrewMethod.PERCOLATION ? PERCOLATION_ASSUMED : IMMERSION_ASSUMED;
      case ABSORPTION -> usual.absorption().gramsPerGram();
      case EXTRACTION -> tried ? usual.extraction().fraction() : CARRIED_EXTRACTION;
      case DOSE, CONCENTRATE, BYPASS -> usual.scales().kitchen().grams();
      case BREW_WATER -> usual.brewWater().fraction();
      // there is always a reading, no journal, and never ice
      case EXTRACTION_ASSUMED, ABSORPTION_LEARNED, EXTRACTION_LEARNED, CUP -> 0;
    };
  }

  /** The strength of a cup. */
  Estimate of(BrewBalance brew, Blend cup) {
    Budget<Doubt> concentrate =
        StrengthBudget.ofConcentrate(evidence, brew.dose(), brew.water(), this);
    return new Estimate(cup.strength(), StrengthBudget.ofCup(concentrate, cup, this).uncertainty());
  }
}
