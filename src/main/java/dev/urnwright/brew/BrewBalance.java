package dev.urnwright.brew;

import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;

/**
 * Where the water and the solids of a brew went: {@code water = steam + absorbed + beverage}, with
 * {@code absorbed} the net liquid that the grounds keep.
 *
 * @param dose dry ground coffee, above 0
 * @param water brew water
 * @param steam water lost as vapour
 * @param absorbed net liquid kept by the grounds
 * @param beverage liquid that left the grounds
 * @param strength of that beverage
 */
public record BrewBalance(
    Mass dose, Mass water, Mass steam, Mass absorbed, Mass beverage, Strength strength) {
  /** Brew water over dose. */
  public BrewRatio ratio() {
    return BrewRatio.of(water, dose);
  }

  /** Solids in the beverage over dose: {@code E = T·B / D}. */
  public Extraction extraction() {
    return Extraction.ofFraction(strength.fraction() * beverage.grams() / dose.grams());
  }

  /** What each gram of dose kept. */
  public Absorption absorption() {
    return Absorption.ofGramsPerGram(absorbed.grams() / dose.grams());
  }

  /** Dissolved solids in the beverage. */
  public Mass solids() {
    return beverage.times(strength.fraction());
  }

  /**
   * So much of it, brewed alike.
   *
   * @param factor above 0
   */
  public BrewBalance times(double factor) {
    return new BrewBalance(
        dose.times(factor),
        water.times(factor),
        steam.times(factor),
        absorbed.times(factor),
        beverage.times(factor),
        strength);
  }

  /** Both brews together, their beverages mixed. */
  public BrewBalance plus(BrewBalance other) {
    Mass together = beverage.plus(other.beverage);
    return new BrewBalance(
        dose.plus(other.dose),
        water.plus(other.water),
        steam.plus(other.steam),
        absorbed.plus(other.absorbed),
        together,
        Strength.ofFraction(solids().plus(other.solids()).grams() / together.grams()));
  }
}
