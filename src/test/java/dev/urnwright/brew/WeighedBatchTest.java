package dev.urnwright.brew;

import static dev.urnwright.brew.Brews.grams;
import static dev.urnwright.brew.Brews.percent;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Readings.Reading;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Share;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeighedBatchTest {
  private static final Share NO_STEAM = Share.ofPercent(0);

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "1.81, false", // one reading tells nothing
    "1.81 1.81, false",
    "1.81 1.81 1.81, true",
    "1.80 1.81 1.80, true", // 0.01 apart still agree
    "1.80 1.81 1.82, false",
    "1.95 1.81 1.82 1.81, true", // the first, off a cold prism, no longer counts
    "1.81 1.81 1.81 1.83, false" // the last one does
  })
  void standsWhenTheLastThreeAgree(String readings, boolean stands) {
    assertEquals(stands, read(readings).stand());
    assertEquals(stands, read(readings).strength().isPresent());
  }

  @Test
  void isTheMeanOfTheLastThree() {
    // (1.80 + 1.81 + 1.80) / 3 = 1.80333…
    assertEquals(1.8033333, read("1.92 1.80 1.81 1.80").strength().orElseThrow().percent(), 1e-6);
    assertEquals(0.02, read("1.92 1.80 1.82 1.81").spreadPercent(), 1e-9);
    assertEquals(0.12, read("1.92 1.80").spreadPercent(), 1e-9);
    assertEquals(0, read("1.92").spreadPercent());
    assertEquals(0, Readings.NONE.spreadPercent());
  }

  @Test
  void tellsAbsorptionAndExtraction() {
    // common practice, no source: 16 g and 208 g of water gave 169 g at 1.81 %, extracting 19.12 %
    WeighedBatch batch =
        new WeighedBatch(grams(16), grams(208), Optional.of(grams(169)), read("1.81 1.81 1.81"));
    Absorption kept = batch.absorption(NO_STEAM).orElseThrow();
    assertEquals(2.4375, kept.gramsPerGram(), 1e-9); // (208 − 169) / 16
    assertEquals(
        19.12,
        batch.extraction(BrewMethod.PERCOLATION, kept, NO_STEAM).orElseThrow().percent(),
        0.005);
    // steeped, the solids are in all the liquid: E = T·r / (1 − T) = 0.0181 × 13 / 0.9819
    assertEquals(
        23.964,
        batch.extraction(BrewMethod.IMMERSION, kept, NO_STEAM).orElseThrow().percent(),
        0.001);
  }

  /** 208 g less 5 % are 197.6 g; 169 g of them left, so 28.6 g stayed in 16 g of coffee. */
  @Test
  void whatWentAsSteamWasNotAbsorbed() {
    WeighedBatch batch =
        new WeighedBatch(grams(16), grams(208), Optional.of(grams(169)), Readings.NONE);
    assertEquals(1.7875, batch.absorption(Share.ofPercent(5)).orElseThrow().gramsPerGram(), 1e-9);
  }

  @Test
  void saysNothingOfWhatWasNotMeasured() {
    WeighedBatch batch =
        new WeighedBatch(grams(16), grams(208), Optional.empty(), read("1.81 1.85"));
    assertTrue(batch.absorption(NO_STEAM).isEmpty());
    assertFalse(
        batch
            .extraction(BrewMethod.PERCOLATION, Absorption.ofGramsPerGram(2), NO_STEAM)
            .isPresent());
  }

  @Test
  void cannotGiveMoreThanWentIn() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new WeighedBatch(grams(16), grams(208), Optional.of(grams(225)), Readings.NONE));
    assertThrows(
        IllegalArgumentException.class,
        () -> new WeighedBatch(grams(0), grams(208), Optional.empty(), Readings.NONE));
    assertThrows(
        IllegalArgumentException.class,
        () -> new WeighedBatch(grams(16), grams(0), Optional.empty(), Readings.NONE));
    // 16 g and 208 g give 224 g at most: that much can still have been
    WeighedBatch all =
        new WeighedBatch(grams(16), grams(208), Optional.of(grams(224)), Readings.NONE);
    assertEquals(0, all.absorption(NO_STEAM).orElseThrow().gramsPerGram());
  }

  private static Readings read(String written) {
    Readings readings = Readings.NONE;
    for (double percent :
        Arrays.stream(written.split(" ")).mapToDouble(Double::parseDouble).toArray()) {
      readings = readings.and(new Reading(percent(percent), Optional.empty()));
    }
    return readings;
  }
}
