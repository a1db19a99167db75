package dev.urnwright.brew;

import static dev.urnwright.brew.Brews.grams;
import static dev.urnwright.brew.Brews.immersion;
import static dev.urnwright.brew.Brews.percent;
import static dev.urnwright.brew.Brews.ratio;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Steeped coffee: the solids spread through all the liquid, and the grounds keep some of it. */
class ImmersionTest {
  /**
   * The published model is {@code TDS = 100 % / (1 + R / (K·E_max))} with K about 0.717 and E_max
   * about 0.30, hence 21.5 % dissolved. Equations and parameters are from memory; the abstract
   * confirms about 21 %, nearly the same at every ratio.
   */
  @ParameterizedTest(name = "1:{0}: {1} %")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          10 | 2.11 | Liang, Chan, Ristenpart, Sci. Rep. 11, 2021, 6904; parameters from memory, curve computed from them
          12 | 1.76 | the same
          15 | 1.41 | the same
          16 | 1.33 | the same
          17 | 1.25 | the same
          18 | 1.18 | the same
          20 | 1.06 | the same
          25 | 0.85 | the same
          """)
  void strengthFollowsTheEquilibriumModel(double ratio, double strength, String source) {
    // to the printed hundredth
    double modelled = immersion(100 * 0.717 * 0.30, 3).strengthAt(ratio(ratio)).percent();
    assertEquals(strength, modelled, 0.006, source);
  }

  @Test
  void twentyOnePercentIsDissolvedAtEveryRatio() {
    // Liang 2021, abstract: about 21 %, nearly independent of the ratio
    for (double r = 8; r <= 25; r++) {
      double strength = immersion(21, 3).strengthAt(ratio(r)).fraction();
      double dissolved =
          BrewModel.extractionOf(
                  BrewMethod.IMMERSION,
                  Strength.ofFraction(strength),
                  ratio(r),
                  Absorption.ofGramsPerGram(3),
                  Share.ofPercent(0))
              .percent();
      assertEquals(21, dissolved, 1e-9);
    }
  }

  @Test
  void strengthTimesRatioIsNearlyConstant() {
    // Liang 2021, abstract: TDS goes nearly as 1/R. Exactly, T·R = E / (1 + E/R).
    double at10 = 10 * immersion(21, 3).strengthAt(ratio(10)).percent();
    double at25 = 25 * immersion(21, 3).strengthAt(ratio(25)).percent();
    assertEquals(at10, at25, 0.02 * at10);
    assertEquals(100 * 0.21 / (1 + 0.021), at10, 1e-9);
  }

  @Test
  void allTheLiquidCounts() {
    // a trade lesson, quoted: EY = TDS × (water + solids) / dose = TDS·R / (1 − TDS). By hand for
    // 60 g, 900 g at 1.38 %: 0.0138 × 15 / 0.9862 = 20.99 %
    double extraction =
        BrewModel.extractionOf(
                BrewMethod.IMMERSION,
                percent(1.38),
                ratio(15),
                Absorption.ofGramsPerGram(3),
                Share.ofPercent(0))
            .percent();
    assertEquals(20.99, extraction, 0.005);
  }

  @Test
  void lessReachesTheCupThanWasDissolved() {
    // By hand: D 100, W 1000, E_d 21 %, a 3. L = 1000 + 21 = 1021; T = 21 / 1021 = 2.0568 %;
    // B = 1000 − 300 = 700; E = 0.020568 × 700 / 100 = 14.398 %
    BrewBalance brew = immersion(21, 3).brew(grams(100), grams(1000));
    assertEquals(2.0568, brew.strength().percent(), 5e-5);
    assertEquals(700, brew.beverage().grams(), 1e-9);
    assertEquals(14.398, brew.extraction().percent(), 5e-4);
  }

  @Test
  void coldBrewIsDilutedToTwoPercent() {
    // Batali et al., Foods 11, 2022, 2440, abstract: full immersion, then diluted to exactly 2 %
    // TDS.
    // Fuller and Rao, Sci. Rep. 7, 2017, 17979: 35 g in 350 g. With 21 % dissolved (Liang 2021):
    // T = 7.35 / 357.35 = 2.0568 %, so 245 g of it become 245 × 1.02840 = 251.96 g
    BrewBalance brew = immersion(21, 3).brew(grams(35), grams(350));
    Mass finished = brew.beverage().times(brew.strength().percent() / 2);
    Blend blend = Blend.of(finished, percent(2), brew.strength(), Share.ofPercent(0));
    assertEquals(245, blend.concentrate().grams(), 1e-6);
    assertEquals(6.96, blend.bypass().grams(), 0.005);
    assertEquals(2, blend.strength().percent(), 1e-9);
  }

  @Test
  void theStrongestSteepStillRunsOffItsGrounds() {
    // 3 g/g kept: no steep below 1:3 gives a drop, whatever its strength
    BrewModel steep = immersion(20, 3);
    assertTrue(steep.leastRatio().gramsPerGram() > 3);
    assertTrue(steep.brewsAt(steep.leastRatio()));
    assertTrue(steep.beveragePerDose(steep.leastRatio()) > 0);
    // at 1:3.001 the liquid would be 0.2 / 3.201 = 6.25 % strong: 8 % can't be had
    assertTrue(!steep.reaches(percent(8)));
  }
}
