package dev.urnwright.brew;

import dev.urnwright.quantity.Absorption;

/**
 * How water meets coffee, and what that means for the strength of the liquid.
 *
 * <p>Symbols: {@code E} dissolved solids over dose as a fraction (for immersion, at the end of the
 * steep), {@code r} = brew water left after steam over dose, {@code R(1 − v)}, g/g, {@code a}
 * absorption, g/g.
 */
public enum BrewMethod {
  /** Water passes through the grounds; what they keep carries no solids. */
  PERCOLATION(2.1) {
    /** {@code T = E / (r − a)}. */
    @Override
    double strength(double extraction, double waterPerDose, double absorption) {
      return extraction / (waterPerDose - absorption);
    }

    /** {@code E = T (r − a)}, which is {@code T·B / D}. */
    @Override
    double extraction(double strength, double waterPerDose, double absorption) {
      return strength * (waterPerDose - absorption);
    }
  },

  /** The grounds steep in all of the water, and keep some of it at full strength. */
  IMMERSION(3.0) {
    /** {@code T = E / (r + E)}: the solids spread through all the liquid, their own mass too. */
    @Override
    double strength(double extraction, double waterPerDose, double absorption) {
      return extraction / (waterPerDose + extraction);
    }

    /** {@code E = T·r / (1 − T)}, the same solved for the solids. */
    @Override
    double extraction(double strength, double waterPerDose, double absorption) {
      return strength * waterPerDose / (1 - strength);
    }
  };

  private final Absorption usualAbsorption;

  BrewMethod(double usualAbsorptionGramsPerGram) {
    this.usualAbsorption = Absorption.ofGramsPerGram(usualAbsorptionGramsPerGram);
  }

  /**
   * What the grounds are taken to keep where nobody weighed: 2.1 g/g of drip, of which published
   * figures go from about 1.5 to 2.35 g/g; 3.0 g/g of grounds that were steeped and then poured off
   * (common practice, no source).
   */
  public Absorption usualAbsorption() {
    return usualAbsorption;
  }

  /** Strength as a fraction; above 1 or infinite where the model has no brew. */
  abstract double strength(double extraction, double waterPerDose, double absorption);

  /** Dissolved solids over dose as a fraction. */
  abstract double extraction(double strength, double waterPerDose, double absorption);
}
