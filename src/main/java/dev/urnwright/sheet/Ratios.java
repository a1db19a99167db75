package dev.urnwright.sheet;

import dev.urnwright.plan.Needed;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;

/**
 * The ratios of a coffee, each by its own name, and what bypass changes and doesn't.
 *
 * @param brew brew water to dose
 * @param totalWater brew water, bypass and ice to dose
 * @param cup finished beverage to dose
 * @param strength of the concentrate
 * @param extraction before bypass and after
 */
record Ratios(
    String brew, String totalWater, String cup, Figure strength, BeforeAndAfter extraction) {
  static Ratios of(Needed needed, Display display) {
    return new Ratios(
        display.ratio(needed.brew().ratio()),
        display.perGram(needed.totalWaterToCoffee()),
        display.perGram(needed.cupToCoffee()),
        display.strength(needed.brew().strength()),
        new BeforeAndAfter(
            display.extraction(needed.brew().extraction()),
            display.extraction(needed.extractionAfterBypass())));
  }

  /**
   * Extraction.
   *
   * @param before bypass
   * @param after it
   */
  record BeforeAndAfter(Figure before, Figure after) {}
}
