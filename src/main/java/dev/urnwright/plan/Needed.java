package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.quantity.Extraction;

/**
 * What one coffee takes, exact.
 *
 * @param brew dose, brew water, absorption, beverage of all batches together
 * @param blend that beverage with all bypass and ice
 */
public record Needed(BrewBalance brew, Blend blend) {
  /**
   * All water over dose, grams per gram: brew water, bypass and ice. This is the ratio that
   * compares a diluted cup with an ordinary brew.
   */
  public double totalWaterToCoffee() {
    return (brew.water().grams() + blend.bypass().grams() + blend.ice().grams())
        / brew.dose().grams();
  }

  /**
   * Solids in everything finished over dose. Bypass dissolves nothing more, so it equals the
   * concentrate's extraction; printed beside it to show just that.
   */
  public Extraction extractionAfterBypass() {
    return Extraction.ofFraction(
        blend.strength().fraction() * blend.finished().grams() / brew.dose().grams());
  }

  /** Finished beverage over dose, grams per gram. It is not a brew ratio. */
  public double cupToCoffee() {
    return blend.finished().grams() / brew.dose().grams();
  }
}
