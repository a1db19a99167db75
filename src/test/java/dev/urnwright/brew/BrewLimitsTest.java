package dev.urnwright.brew;

import static dev.urnwright.brew.Brews.grams;
import static dev.urnwright.brew.Brews.model;
import static dev.urnwright.brew.Brews.percent;
import static dev.urnwright.brew.Brews.ratio;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.quantity.Share;
import org.junit.jupiter.api.Test;

/** Where brewing ends: no water runs off, no brew is that strong, no ratio goes that far. */
class BrewLimitsTest {
  /** A 64th of the water is left of its steam, so that binary numbers meet the limits exactly. */
  private static final double STEAM = 100 * 63 / 64.0;

  @Test
  void nothingButSteamIsNoBrew() {
    BrewModel brew = model(BrewMethod.PERCOLATION, 20, 2, 0);
    Share all = Share.ofPercent(100);
    assertThrows(
        IllegalArgumentException.class,
        () -> new BrewModel(brew.method(), brew.curve(), brew.absorption(), all));
    assertEquals(2 / 0.25, model(BrewMethod.PERCOLATION, 20, 2, 75).dryRatio(), 1e-12);
  }

  /**
   * With 1/64 left, grounds that keep 15.125 g/g give half a gram at 1:1000, for (15.125 + 0.5)·64
   * = 1000; and 15 % of solids in that half gram are 30 %. A hair more of either and nothing does.
   */
  @Test
  void theWeakestRatioIsTheLastHope() {
    BrewModel barely = model(BrewMethod.PERCOLATION, 15, 15.125, STEAM);
    assertTrue(barely.brews());
    assertEquals(1000, barely.leastRatio().gramsPerGram(), 1e-9);
    BrewModel tooStrong = model(BrewMethod.PERCOLATION, 16, 15.125, STEAM);
    assertFalse(tooStrong.brews());
    assertThrows(IllegalArgumentException.class, tooStrong::leastRatio);
    assertFalse(tooStrong.reaches(percent(1)));
    BrewModel tooDry = model(BrewMethod.PERCOLATION, 15, 15.2, STEAM);
    assertFalse(tooDry.brews());
    assertThrows(IllegalArgumentException.class, tooDry::leastRatio);
  }

  @Test
  void bothEndsOfTheRangeOfStrengthsAreReached() {
    for (BrewMethod method : BrewMethod.values()) {
      BrewModel brew = model(method, 19.4, 2.15, 1);
      var strongest = brew.strengthAt(brew.leastRatio());
      assertTrue(brew.reaches(strongest));
      assertEquals(brew.leastRatio().gramsPerGram(), brew.ratioFor(strongest).gramsPerGram(), 1e-9);
      var weakest = brew.strengthAt(ratio(1000));
      assertTrue(brew.reaches(weakest));
      assertEquals(1000, brew.ratioFor(weakest).gramsPerGram(), 1e-6);
      assertFalse(brew.reaches(percent(strongest.percent() + 0.001)));
      assertFalse(brew.reaches(percent(weakest.percent() * 0.999)));
      assertThrows(IllegalArgumentException.class, () -> brew.ratioFor(percent(31)));
      assertThrows(IllegalArgumentException.class, () -> brew.ratioFor(percent(0.001)));
    }
  }

  /** Steeped grounds that keep 3 g/g give nothing at 1:3 and 1:2, though there is a liquid. */
  @Test
  void whereNothingLeavesTheGroundsThereIsNoStrength() {
    BrewModel steep = model(BrewMethod.IMMERSION, 20, 3, 0);
    assertThrows(IllegalArgumentException.class, () -> steep.strengthAt(ratio(3)));
    assertThrows(IllegalArgumentException.class, () -> steep.strengthAt(ratio(2)));
    assertThrows(IllegalArgumentException.class, () -> steep.brew(grams(100), grams(300)));
    assertEquals(0.2 / 3.7, steep.strengthAt(ratio(3.5)).fraction(), 1e-12);
  }
}
