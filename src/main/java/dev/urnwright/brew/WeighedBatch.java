package dev.urnwright.brew;

import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import java.util.Optional;

/**
 * What really happened in one batch.
 *
 * @param dose dry ground coffee weighed in, above 0
 * @param brewWater water poured, above 0
 * @param beverage what left the grounds, when it was weighed; at most the brew water and the dose
 *     together
 * @param readings of its strength
 */
public record WeighedBatch(Mass dose, Mass brewWater, Optional<Mass> beverage, Readings readings) {
  /** Refuses a batch of nothing, and one that gave more than went in. */
  public WeighedBatch {
    if (dose.isZero() || brewWater.isZero()) {
      throw new IllegalArgumentException(
          "a batch has dose and brew water: " + dose + ", " + brewWater);
    }
    if (beverage.isPresent() && beverage.get().compareTo(dose.plus(brewWater)) > 0) {
      throw new IllegalArgumentException(
          "more beverage than went in: " + beverage.get() + " of " + dose.plus(brewWater));
    }
  }

  /** Brew water over dose. */
  public BrewRatio ratio() {
    return BrewRatio.of(brewWater, dose);
  }

  /**
   * What its grounds kept, {@code a = (W(1 − v) − B) / D}; 0 where more left than the steam spared.
   *
   * @param steamLoss share of the brew water lost as vapour
   * @return empty when the beverage was not weighed
   */
  public Optional<Absorption> absorption(Share steamLoss) {
    double left = brewWater.grams() * (1 - steamLoss.fraction());
    return beverage.map(
        weighed -> Absorption.ofGramsPerGram(Math.max(0, left - weighed.grams()) / dose.grams()));
  }

  /**
   * What it extracted: solids in the beverage over the dose for percolation, in all the liquid for
   * immersion.
   *
   * @param kept what the grounds kept, weighed or assumed
   * @return empty until the readings stand
   * @throws IllegalArgumentException if that would dissolve more than the whole dose
   */
  public Optional<Extraction> extraction(BrewMethod method, Absorption kept, Share steamLoss) {
    Optional<Strength> strength = readings.strength();
    return strength.map(read -> BrewModel.extractionOf(method, read, ratio(), kept, steamLoss));
  }
}
