package dev.urnwright.brew;

import static dev.urnwright.brew.Brews.grams;
import static dev.urnwright.brew.Brews.percent;
import static dev.urnwright.brew.Brews.ratio;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.event.Window;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import org.junit.jupiter.api.Test;

/** A small concentrate, weighed, read and diluted. All check values: common practice, no source. */
class CommonPracticeTest {
  // common practice, no source: 16 g of coffee, 208 g of water, 169 g of beverage, read 1.81 %
  private static final Mass DOSE = grams(16);
  private static final Mass WATER = grams(208);
  private static final Mass BEVERAGE = grams(169);
  private static final Strength READ = percent(1.81);
  private static final BrewBalance BREW =
      new BrewBalance(DOSE, WATER, Mass.ZERO, WATER.minus(BEVERAGE), BEVERAGE, READ);

  @Test
  void extractsAsMuch() {
    // common practice, no source: 19.12 %
    assertEquals(19.12, BREW.extraction().percent(), 0.005);
    // and through the model, with (208 − 169) / 16 = 2.4375 g/g kept
    double modelled =
        BrewModel.extractionOf(
                BrewMethod.PERCOLATION,
                READ,
                ratio(13),
                Absorption.ofGramsPerGram(2.4375),
                Share.ofPercent(0))
            .percent();
    assertEquals(19.12, modelled, 0.005);
  }

  @Test
  void isDilutedToAStrength() {
    // common practice, no source: to bring it to 1.36 % the finished beverage is 224.9 g, so 55.9 g
    // of bypass; the extraction stays 19.12 %
    Mass finished = BEVERAGE.times(READ.fraction() / 0.0136);
    assertEquals(224.9, finished.grams(), 0.05);
    Blend blend = Blend.of(finished, percent(1.36), READ, Share.ofPercent(0));
    assertEquals(169, blend.concentrate().grams(), 1e-9);
    assertEquals(55.9, blend.bypass().grams(), 0.05);
    assertEquals(1.36, blend.strength().percent(), 1e-9);
    assertEquals(19.12, 100 * blend.solids().grams() / DOSE.grams(), 0.005);
  }

  @Test
  void isDilutedWithSoMuchWater() {
    // common practice, no source: adding 50 g makes 219 g at 1.397 %
    Blend blend = new Blend(BEVERAGE, grams(50), Mass.ZERO, READ);
    assertEquals(219, blend.finished().grams(), 1e-9);
    assertEquals(1.397, blend.strength().percent(), 0.0005);
    assertEquals(19.12, 100 * blend.solids().grams() / DOSE.grams(), 0.005);
  }

  @Test
  void isGoodWithinAWindow() {
    // common practice, no source: good extraction 18 to 22 %, strength 1.15 to 1.45 %
    assertEquals(1.15, Window.USUAL.weakest().percent(), 1e-12);
    assertEquals(1.45, Window.USUAL.strongest().percent(), 1e-12);
    assertEquals(18, Window.USUAL.leastExtracted().percent(), 1e-12);
    assertEquals(22, Window.USUAL.mostExtracted().percent(), 1e-12);
  }
}
