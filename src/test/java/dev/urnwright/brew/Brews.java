package dev.urnwright.brew;

import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;

/** Short ways to a brew model for tests. */
final class Brews {
  static final double GRAMS_PER_POUND = 453.59237;
  static final double LITRES_PER_GALLON = 3.785411784;

  /** Cold water, kg/l, as the reference figures were worked out. */
  static final double COLD = 0.9982;

  private Brews() {}

  static BrewModel percolation(double extractionPercent, double absorption) {
    return model(BrewMethod.PERCOLATION, extractionPercent, absorption, 0);
  }

  static BrewModel immersion(double dissolvedPercent, double absorption) {
    return model(BrewMethod.IMMERSION, dissolvedPercent, absorption, 0);
  }

  static BrewModel model(
      BrewMethod method, double extractionPercent, double absorption, double steamPercent) {
    return new BrewModel(
        method,
        ExtractionCurve.constant(ratio(16), Extraction.ofPercent(extractionPercent)),
        Absorption.ofGramsPerGram(absorption),
        Share.ofPercent(steamPercent));
  }

  static BrewRatio ratio(double gramsPerGram) {
    return BrewRatio.ofGramsPerGram(gramsPerGram);
  }

  static Mass grams(double grams) {
    return Mass.ofGrams(grams);
  }

  static Strength percent(double percent) {
    return Strength.ofPercent(percent);
  }

  /** The extraction of a percolated brew, in percent. */
  static double extraction(double dose, double water, double absorption, double strengthPercent) {
    return BrewModel.extractionOf(
            BrewMethod.PERCOLATION,
            percent(strengthPercent),
            ratio(water / dose),
            Absorption.ofGramsPerGram(absorption),
            Share.ofPercent(0))
        .percent();
  }
}
