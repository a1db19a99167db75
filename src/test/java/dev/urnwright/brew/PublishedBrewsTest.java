package dev.urnwright.brew;

import static dev.urnwright.brew.Brews.COLD;
import static dev.urnwright.brew.Brews.GRAMS_PER_POUND;
import static dev.urnwright.brew.Brews.LITRES_PER_GALLON;
import static dev.urnwright.brew.Brews.extraction;
import static dev.urnwright.brew.Brews.grams;
import static dev.urnwright.brew.Brews.percent;
import static dev.urnwright.brew.Brews.percolation;
import static dev.urnwright.brew.Brews.ratio;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Brews that others have published: what the grounds kept, what came out, how they are diluted.
 *
 * <p>Volumes were published without a temperature; they are taken for cold water of 998.2 g/l
 * throughout, in and out, as the reference figures were.
 */
class PublishedBrewsTest {
  /** Dose and water, the absorption those figures imply, the published yield; all as published. */
  @ParameterizedTest(name = "{4}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          850.486 | 25551.5 | 2.23 | 23658.8 | US Armed Forces Recipe Service, card C-005-01: 1 7/8 lb, 6 3/4 gal, yield 6 1/4 gal (ml)
          36      | 600     | 1.89 | 532     | Olechno et al., Foods 10, 2021, 1208, Table 2, ref. 72 (ml)
          453.592 | 7570.82 | 2.35 | 6506.2  | small-group table, quoted: 1 lb, 2 gal, 40 cups of 5 1/2 fl oz (ml)
          17      | 210     | 2.08 | 174.7   | hobby page, quoted: pressed paper filter (g)
          23.5    | 364.5   | 3.21 | 289     | hobby page, quoted: immersion through a mesh (g)
          """)
  void theYieldIsTheWaterLessWhatTheGroundsKeep(
      double dose, double water, double absorption, double yield, String source) {
    BrewBalance brew = percolation(20, absorption).brew(grams(dose), grams(water));
    // the absorption was printed to two decimals
    assertEquals(yield, brew.beverage().grams(), 0.005 * dose + 0.5, source);
    assertEquals(absorption * dose, brew.absorbed().grams(), 1e-9 * water, source);
  }

  @Test
  void aHundredPortionsFromAnUrn() {
    // US Armed Forces Recipe Service, card C-005-01: 1 7/8 lb and 6 3/4 gal give 6 1/4 gal, which
    // is
    // 100 × 8 fl oz, at 8.50 g a cup and a ratio of 30.0
    Mass dose = Mass.ofOunces(1.875 * 16);
    Mass water = grams(6.75 * LITRES_PER_GALLON * COLD * 1000);
    Mass wanted = grams(100 * Volume.ofFluidOunces(8).litres() * COLD * 1000);
    // 2.23 ml of cold water a gram are 2.23 × 0.9982 g
    BrewModel model = percolation(20, 2.23 * COLD);
    BrewBalance brew = model.brew(dose, water);
    assertEquals(6.25, brew.beverage().grams() / 1000 / COLD / LITRES_PER_GALLON, 0.01);
    assertEquals(8.50, dose.grams() / 100, 0.005);
    assertEquals(30.0, brew.ratio().gramsPerGram(), 0.05);
    // and backwards: for 100 cups the same dose and water
    BrewBalance planned = model.forBeverage(wanted, brew.ratio());
    assertEquals(dose.grams(), planned.dose().grams(), 0.002 * dose.grams());
    assertEquals(water.grams(), planned.water().grams(), 0.002 * water.grams());
    // 20 % extracted gives 0.70 to 0.72 % (computed), far below any window
    assertEquals(0.71, brew.strength().percent(), 0.015);
  }

  @Test
  void moreDoseKeepsExactlyItsAbsorptionMore() {
    BrewModel model = percolation(20, 2.2);
    Mass water = grams(6000);
    double before = model.brew(grams(400), water).beverage().grams();
    double after = model.brew(grams(450), water).beverage().grams();
    assertEquals(2.2 * 50, before - after, 1e-9);
  }

  /** Grams of coffee a litre and the ratio of published recipes; 1 lb to so many gallons. */
  @ParameterizedTest(name = "{4}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1.875 | 6.75 | 33.3 | 30.0 | US Armed Forces Recipe Service, C-005-01
          0.75  | 2.75 | 32.7 | 30.5 | US Armed Forces Recipe Service, C-G-1, 1986
          1     | 2.5  | 47.9 | 20.8 | Navy-Marine Corps Recipe Service, B-G-1, 1962
          1     | 1.75 | 68.5 | 14.6 | Gisslen, Professional Cooking: strongest
          1     | 2.5  | 47.9 | 20.8 | Gisslen, Professional Cooking: weakest
          1     | 2    | 59.9 | 16.7 | Gisslen, Professional Cooking: most water through the bed
          1     | 3    | 39.9 | 25.0 | Gisslen, Professional Cooking: weak regions, diluted
          2     | 2.5  | 95.9 | 10.4 | quantity recipe in the wording of Food for Fifty, quoted: iced
          """)
  void recipesByThePoundAndTheGallon(
      double pounds, double gallons, double gramsPerLitre, double ratio, String source) {
    Mass dose = Mass.ofOunces(pounds * 16);
    double litres = Volume.ofFluidOunces(gallons * 128).litres();
    assertEquals(gramsPerLitre, dose.grams() / litres, 0.05, source);
    BrewBalance brew = percolation(20, 2.1).brew(dose, grams(litres * COLD * 1000));
    assertEquals(ratio, brew.ratio().gramsPerGram(), 0.05, source);
  }

  @Test
  void theSameRuleInPoundsAndInMetric() {
    // Gisslen: 2 gal through 1 lb is 59.9 g/l, 8 l through 500 g is 62.5 g/l: round figures of one
    // rule, 4.3 % apart
    double us = Mass.ofOunces(16).grams() / Volume.ofFluidOunces(256).litres();
    assertEquals(59.9, us, 0.05);
    double metric = Mass.ofGrams(500).grams() / Volume.ofLitres(8).litres();
    assertEquals(1.043, metric / us, 0.0005);
  }

  /** Concentrate of 2 gal through 1 lb, then 1 gal of bypass; 20 % extracted. */
  @ParameterizedTest(name = "a = {0}: {1} % brewed, {2} % diluted")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1.5 | 1.32 | 0.85 | 35 | Gisslen, Professional Cooking: 2 gal brewed + 1 gal water a lb; strengths computed
          2.0 | 1.36 | 0.87 | 36 | the same
          """)
  void gallonsOfBypass(
      double absorption, double brewed, double diluted, int ofBeverage, String source) {
    Mass gallon = grams(LITRES_PER_GALLON * COLD * 1000);
    BrewBalance brew = percolation(20, absorption).brew(grams(GRAMS_PER_POUND), gallon.times(2));
    assertEquals(16.66, brew.ratio().gramsPerGram(), 0.005, source);
    assertEquals(brewed, brew.strength().percent(), 0.005, source);
    Blend blend = new Blend(brew.beverage(), gallon, Mass.ZERO, brew.strength());
    assertEquals(diluted, blend.strength().percent(), 0.005, source);
    assertTrue(blend.strength().percent() < 1.15, "far below the published window");
    // 1 lb to 3 gal: the ratio that compares the diluted cup with an ordinary brew
    double totalWater = (brew.water().grams() + gallon.grams()) / brew.dose().grams();
    assertEquals(25.0, totalWater, 0.02, source);
    // bypass is a third of all water, and 35 to 36 % of the finished beverage
    double ofWater = gallon.grams() / (totalWater * brew.dose().grams());
    assertEquals(33.3, 100 * ofWater, 0.05, source);
    assertEquals(ofBeverage, Math.round(100 * gallon.grams() / blend.finished().grams()), source);
  }

  @ParameterizedTest(name = "{4}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          36  | 10  | 18 | 20    | encyclopedia article Coffee extraction, quoted: 36 g at 10 % from 18 g
          300 | 1.3 | 20 | 19.5  | worked extraction budget, computed: 300 g at 1.30 % from 20 g
          """)
  void extractionIsSolidsOverDose(
      double beverage, double strength, double dose, double extraction, String source) {
    // absorption 2 stands for any: water = beverage + 2 × dose
    assertEquals(extraction, extraction(dose, beverage + 2 * dose, 2, strength), 1e-9, source);
  }

  @Test
  void dilutionOfABrewingFaq() {
    // A general brewing FAQ dilutes 200 g at 1.5 % with 50 g of water; its text says 1.25 %, its
    // own
    // figures 300 / 250 = 1.20 %
    Blend blend = new Blend(grams(200), grams(50), Mass.ZERO, percent(1.5));
    assertEquals(1.20, blend.strength().percent(), 1e-12);
  }

  @Test
  void leavingOutWhatTheGroundsKeepIsACommonMistake() {
    // A homework page: 1:15 at 1.4 % taken for 21 %; with 2 g/g kept it is 18.2 %
    assertEquals(18.2, extraction(1, 15, 2, 1.4), 1e-9);
    assertEquals(21, extraction(1, 15, 0, 1.4), 1e-9);
  }

  @Test
  void ratioOfAPercolatedBrewIsSolvedForInClosedForm() {
    // R = (E / T + a) / (1 − v), by hand: (0.20 / 0.016 + 2.1) / 0.98 = 14.6 / 0.98 = 14.89796
    BrewModel model = Brews.model(BrewMethod.PERCOLATION, 20, 2.1, 2);
    assertEquals(14.6 / 0.98, model.ratioFor(percent(1.6)).gramsPerGram(), 1e-9);
    assertEquals(1.6, model.strengthAt(ratio(14.6 / 0.98)).percent(), 1e-9);
  }
}
