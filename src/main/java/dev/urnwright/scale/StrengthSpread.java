package dev.urnwright.scale;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.brew.ExtractionCurve;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;

/**
 * How surely a strength is foretold: standard uncertainties of dose, brew water, absorption and
 * extraction, propagated to first order (JCGM 100:2008, 5.1.2), {@code u²(T) = Σ (∂T/∂x·u(x))²}.
 *
 * @param step of the scale; a reading of it has the standard uncertainty step/√12
 * @param absorption standard uncertainty, g/g
 * @param extraction standard uncertainty, as a fraction
 */
record StrengthSpread(Mass step, double absorption, double extraction) {
  /**
   * Of the absorption when it is a usual one: published figures lie 0.43 g/g around their middle.
   */
  static final double USUAL_ABSORPTION = 0.25;

  /** Of the absorption when it was weighed, on another brewer and on this one. */
  static final double CARRIED_ABSORPTION = 0.15;

  /** See {@link #CARRIED_ABSORPTION}. */
  static final double WEIGHED_ABSORPTION = 0.05;

  /** Of the extraction before anything was brewed on this brewer: one point. */
  static final double CARRIED_EXTRACTION = 0.010;

  /** And of a single trial: half a point, which is what a good refractometer is worth. */
  static final double TRIED_EXTRACTION = 0.005;

  private static final double COVERAGE = 2;

  /** The cup's strength with its interval at k = 2. */
  Recipe.Interval of(BrewModel model, Mass dose, Mass water, Mass bypass) {
    double resolution = step.grams() / Math.sqrt(12);
    double t = cup(model, dose.grams(), water.grams(), bypass, 0, 0);
    double byDose = slope(d -> cup(model, dose.grams() + d, water.grams(), bypass, 0, 0), 1e-3);
    double byWater = slope(d -> cup(model, dose.grams(), water.grams() + d, bypass, 0, 0), 1e-3);
    double byKept = slope(d -> cup(model, dose.grams(), water.grams(), bypass, d, 0), 1e-5);
    double byGiven = slope(d -> cup(model, dose.grams(), water.grams(), bypass, 0, d), 1e-5);
    double u =
        Math.sqrt(
            square(byDose * resolution)
                + square(byWater * resolution)
                + square(byKept * absorption)
                + square(byGiven * extraction));
    return new Recipe.Interval(
        Strength.ofFraction(t),
        Strength.ofFraction(Math.max(0, t - COVERAGE * u)),
        Strength.ofFraction(Math.min(1, t + COVERAGE * u)));
  }

  private static double cup(
      BrewModel model, double dose, double water, Mass bypass, double kept, double given) {
    Absorption absorption =
        Absorption.ofGramsPerGram(Math.max(0, model.absorption().gramsPerGram() + kept));
    BrewRatio ratio = BrewRatio.ofGramsPerGram(water / dose);
    Extraction extraction = Extraction.ofFraction(model.curve().at(ratio).fraction() + given);
    BrewModel moved =
        new BrewModel(
            model.method(),
            ExtractionCurve.constant(ratio, extraction),
            absorption,
            model.steamLoss());
    double beverage = moved.beveragePerDose(ratio) * dose;
    return moved.strengthAt(ratio).fraction() * beverage / (beverage + bypass.grams());
  }

  /** A function of a small change. */
  private interface Change {
    double of(double change);
  }

  private static double slope(Change change, double by) {
    return (change.of(by) - change.of(-by)) / (2 * by);
  }

  private static double square(double value) {
    return value * value;
  }
}
