package dev.urnwright.sheet;

import dev.urnwright.brew.Estimate;
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
    String brew, String totalWater, String cup, Sure strength, BeforeAndAfter extraction) {
  static Ratios of(Needed needed, Estimate batch, Display display) {
    return new Ratios(
        display.ratio(needed.brew().ratio()),
        display.perGram(needed.totalWaterToCoffee()),
        display.perGram(needed.cupToCoffee()),
        new Sure(
            display.strength(needed.brew().strength()),
            display.strengths(batch.low(), batch.high())),
        new BeforeAndAfter(
            display.extraction(needed.brew().extraction()),
            display.extraction(needed.extractionAfterBypass())));
  }

  /**
   * A strength.
   *
   * @param expected as planned
   * @param likely from where to where a batch lies, at k = 2
   */
  record Sure(Figure expected, Figure likely) {}

  /**
   * Extraction.
   *
   * @param before bypass
   * @param after it
   */
  record BeforeAndAfter(Figure before, Figure after) {}
}
