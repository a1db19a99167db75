package dev.urnwright.scale;

import static dev.urnwright.scale.ScaleRequests.DRIP;
import static dev.urnwright.scale.ScaleRequests.STEEPED;
import static dev.urnwright.scale.ScaleRequests.TWENTY_GRAMS;
import static dev.urnwright.scale.ScaleRequests.atFlow;
import static dev.urnwright.scale.ScaleRequests.brew;
import static dev.urnwright.scale.ScaleRequests.brewer;
import static dev.urnwright.scale.ScaleRequests.full;
import static dev.urnwright.scale.ScaleRequests.grams;
import static dev.urnwright.scale.ScaleRequests.inBasket;
import static dev.urnwright.scale.ScaleRequests.on;
import static dev.urnwright.scale.ScaleRequests.reference;
import static dev.urnwright.scale.ScaleRequests.scaled;
import static dev.urnwright.scale.ScaleRequests.timed;
import static dev.urnwright.scale.ScaleRequests.trial;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Estimate;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Note;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScalerTest {
  private static final Brewer TALL = brewer(100, 700, 9000, Duration.ofMinutes(8));

  @Test
  void onTheSameBrewerTheSameAmountIsTheSameBrew() {
    Brewer bar = brewer(10, 30, 500, Duration.ofMinutes(3));
    for (ScaleRequest.Brewing brewing : List.of(DRIP, STEEPED)) {
      Recipe recipe =
          new Scaler()
              .scale(ScaleRequests.of(brewing, reference(TWENTY_GRAMS), on(bar), grams(277)))
              .value()
              .orElseThrow()
              .recipe();
      assertEquals(1, recipe.batches());
      assertEquals(20, recipe.brew().dose().grams(), 1e-9);
      assertEquals(320, recipe.brew().water().grams(), 1e-9);
      assertEquals(277, recipe.brew().beverage().grams(), 1e-9);
      assertEquals(1.38, recipe.strength().strength().percent(), 1e-9);
      assertTrue(recipe.cup().bypass().isZero());
    }
  }

  @Test
  void sixKilogramsByHand() {
    // absorbed (320 − 277)/20 = 2.15 g/g, so each gram of coffee gives 16 − 2.15 = 13.85 g of
    // beverage: 6000/13.85 = 433.2, up to 434 g; water 16 · 434 = 6944 g; beverage 13.85 · 434 =
    // 6010.9 g; extraction 1.38 % · 277/20 = 19.113 %
    Recipe recipe = scaled(reference(TWENTY_GRAMS), on(TALL), grams(6000)).recipe();
    assertEquals(434, recipe.brew().dose().grams(), 1e-9);
    assertEquals(6944, recipe.brew().water().grams(), 1e-9);
    assertEquals(6010.9, recipe.brew().beverage().grams(), 1e-6);
    assertEquals(19.113, recipe.brew().extraction().percent(), 1e-9);
    // twice the dose first, 30 s, then the rest: the usual practice, no source
    assertEquals(868, recipe.pours().bloom().grams(), 1e-9);
    assertEquals(Duration.ofSeconds(30), recipe.pours().pause());
    assertEquals(6944 - 868, recipe.pours().rest().grams(), 1e-9);
  }

  @Test
  void howSurelyByHand() {
    // T = E/(R − a), E = T_ref·B/D of the reference, a = (W − B)/D of it. Relative standard
    // uncertainties of T: carried extraction 1/19.113 = 5.232 %; the reference's reading
    // 0.03/1.38 = 2.174 %, its dose (1/√6)/20 = 2.041 %, times 1 + 2.15/13.85 for it moves a too =
    // 2.358 %, its water (1/√6)/20/13.85 = 0.147 %, its beverage nothing (E and R − a move alike);
    // absorption 0.15/13.85 = 1.083 %; brew water 1 % · 16/13.85 = 1.155 %; dose (1/√6)/434 ·
    // 16/13.85 = 0.109 %. Root of the sum of squares 6.341 %; twice that of 1.38 % is 0.1750 %.
    Estimate strength = scaled(reference(TWENTY_GRAMS), on(TALL), grams(6000)).recipe().strength();
    assertEquals(1.38 - 0.1750, strength.low().percent(), 2e-4);
    assertEquals(1.38 + 0.1750, strength.high().percent(), 2e-4);
  }

  @Test
  void morethanOneBatchIsSplitAlike() {
    // 20 000/13.85 = 1444.04 g, up to 1445 g; a batch takes 9000/16 = 562 g: three, of 482 g
    Recipe recipe = scaled(reference(TWENTY_GRAMS), on(TALL), grams(20_000)).recipe();
    assertEquals(3, recipe.batches());
    assertEquals(482, recipe.brew().dose().grams(), 1e-9);
    assertTrue(recipe.finished().grams() >= 20_000);
  }

  @Test
  void theTextbooksDilution() {
    // Gisslen, Professional Cooking: at most 8 l through 500 g, then dilute; some like 500 g to 12
    // l. A reference at 1:24 on a brewer of 8 kg of water whose 500 g lie 25 mm deep: 8 kg go
    // through the bed and 24 · 500 − 8000 = 4000 g round it.
    ReferenceBrew weak = brew(20, 480, 437, 0.90);
    Brewer eightLitres = brewer(100, 700, 8000, Duration.ofMinutes(6));
    Scaled scaled = scaled(reference(weak), inBasket(eightLitres, 252.3), full());
    Recipe recipe = scaled.recipe();
    assertEquals(500, recipe.brew().dose().grams(), 1e-9);
    assertEquals(8000, recipe.brew().water().grams(), 1e-9);
    assertEquals(4000, recipe.cup().bypass().grams(), 1e-6);
    assertEquals(0.90, recipe.strength().strength().percent(), 1e-9);
    assertEquals(24, recipe.totalWaterToCoffee().gramsPerGram(), 1e-9);
    // bypass over everything finished: 4000/(8000 − 2.15 · 500 + 4000) = 4000/10925
    assertEquals(100.0 * 4000 / 10925, recipe.bypassShare().percent(), 1e-6);
    // without: 8000/24 = 333 g, 333/0.40/499.945 cm² = 16.65 mm
    Recipe plain = scaled.instead().orElseThrow();
    assertEquals(333, plain.brew().dose().grams(), 1e-9);
    assertEquals(16.65, plain.bed().orElseThrow().depth().millimetres(), 0.005);
    assertEquals(Recipe.Bed.Verdict.SHALLOW, plain.bed().orElseThrow().verdict());
    assertEquals(Recipe.Bed.Verdict.WITHIN, recipe.bed().orElseThrow().verdict());
  }

  @Test
  void aSmallAmountInAWideBasketIsLeftShallowAndSaidSo() {
    Scaled scaled = scaled(reference(TWENTY_GRAMS), inBasket(TALL, 252.3), grams(2000));
    assertTrue(scaled.instead().isEmpty());
    String told = caution(scaled, "shallow-bed");
    assertTrue(told.contains("From 500\u00a0g of coffee on, it lies deep enough"), told);
  }

  @Test
  void aDeepBedIsSaidWithWhatWouldLieWithinTheGuide() {
    // 562 g in 150 mm: 562/0.40/176.71 cm² = 79.5 mm; 50 mm take 0.40 · 176.71 · 5 = 353 g
    Scaled scaled = scaled(reference(TWENTY_GRAMS), inBasket(TALL, 150), full());
    assertEquals(79.5, scaled.recipe().bed().orElseThrow().depth().millimetres(), 0.05);
    assertEquals(119.3, scaled.recipe().bed().orElseThrow().needed().millimetres(), 0.05);
    String told = caution(scaled, "deep-bed");
    assertTrue(told.contains("Up to 353\u00a0g lies within them, so that 2 batches would"), told);
  }

  @Test
  void contactByFlowAndByCycleByHand() {
    // 6944 g at 93 °C are 6944/963.28 = 7.2087 l; at 1.1 l/min 6.553 min = 393 s, told as 390 s
    Recipe flowing = scaled(reference(TWENTY_GRAMS), atFlow(TALL, 1.1), grams(6000)).recipe();
    assertEquals(Duration.ofSeconds(390), flowing.contact().orElseThrow().expected());
    assertEquals(Optional.of(Grind.COARSE), flowing.contact().orElseThrow().grind());
    // 480 s · 6944/9000 = 370.3 s, told as 370 s
    Recipe cycling = scaled(reference(TWENTY_GRAMS), on(TALL), grams(6000)).recipe();
    assertEquals(Duration.ofSeconds(370), cycling.contact().orElseThrow().expected());
  }

  @Test
  void waterThatWouldTakeLongerThanAnyBrewIsSentRoundTheBed() {
    // 6944 g at 0.6 l/min would take 7.2087/0.6 = 12.01 min; 8 min pass 4.8 l = 4623.7 g
    Scaled scaled = scaled(reference(TWENTY_GRAMS), atFlow(TALL, 0.6), grams(6000));
    Recipe recipe = scaled.recipe();
    assertTrue(recipe.brew().water().grams() <= 4624, recipe::toString);
    assertEquals(Duration.ofMinutes(8), recipe.contact().orElseThrow().expected());
    assertEquals(1.38, recipe.strength().strength().percent(), 1e-3);
    assertEquals(16, recipe.totalWaterToCoffee().gramsPerGram(), 0.01);
    assertTrue(recipe.finished().grams() >= 5999, recipe::toString);
  }

  @ParameterizedTest(name = "{0} s here, {1} s there: {2}")
  @CsvSource({"190,8,grind-coarser", "600,8,grind-finer", "370,8,grind-keep"})
  void theDirectionFollowsTheContactTime(int before, int cycle, String code) {
    Brewer brewer = brewer(100, 700, 9000, Duration.ofMinutes(cycle));
    Scaled scaled =
        scaled(timed(TWENTY_GRAMS, Duration.ofSeconds(before)), on(brewer), grams(6000));
    assertEquals(code, scaled.advice().get(0).code());
    assertFalse(scaled.advice().get(0).basis().isEmpty());
  }

  @Test
  void whereTheFlowCanBeSetItIsMovedFirst() {
    Scaled scaled =
        scaled(timed(TWENTY_GRAMS, Duration.ofSeconds(190)), atFlow(TALL, 1.1), grams(6000));
    assertEquals("flow-up", scaled.advice().get(0).code());
  }

  @Test
  void aTrialThatGaveWhatWasForecastChangesNothingButTheDoubt() {
    Recipe before = scaled(reference(TWENTY_GRAMS), on(TALL), grams(6000)).recipe();
    Scaled after =
        scaled(reference(TWENTY_GRAMS), on(TALL), grams(6000), trial(brew(400, 6400, 5540, 1.38)));
    assertEquals(before.brew().dose().grams(), after.recipe().brew().dose().grams(), 1e-9);
    assertEquals(before.brew().water().grams(), after.recipe().brew().water().grams(), 1);
    assertEquals("grind-keep", after.advice().get(0).code());
    assertTrue(width(after.recipe()) < width(before) / 1.5, after.recipe()::toString);
  }

  @Test
  void twoTrialsByHand() {
    // (6880 − 5950)/430 = (6450 − 5520)/430 = 2.1628 g/g. Extractions 1.33 % · 5950/430 = 18.403 %
    // at 1:16 and 1.42 % · 5520/430 = 18.229 % at 1:15. Between them the curve of two points is a
    // straight line, so 1.38 % asks for R with 18.229 + 0.1744(R − 15) = 1.38(R − 2.1628), which is
    // R = 15.424.
    Scaled scaled =
        scaled(
            reference(TWENTY_GRAMS),
            on(TALL),
            full(),
            trial(brew(430, 6880, 5950, 1.33)),
            trial(brew(430, 6450, 5520, 1.42)));
    assertEquals(2.1628, scaled.model().absorption().gramsPerGram(), 5e-5);
    assertEquals(15.424, scaled.recipe().brew().ratio().gramsPerGram(), 0.002);
    assertEquals(1.38, scaled.recipe().strength().strength().percent(), 1e-3);
    Scaled.TrialResult first = scaled.trials().get(0);
    assertEquals(18.403, first.brewed().extraction().percent(), 5e-4);
    assertEquals(1.38, first.forecast().strength().percent(), 1e-9);
    // 13.85 · 430 = 5955.5 g
    assertEquals(5955.5, first.forecast().beverage().orElseThrow().grams(), 1e-6);
    assertEquals("grind-finer", scaled.advice().get(0).code());
  }

  @Test
  void tooLittleForTheBrewerIsRefusedWithWhatWouldDo() {
    // the least dose, 100 g, gives 1385 g
    List<Problem> problems =
        new Scaler()
            .scale(ScaleRequests.of(DRIP, reference(TWENTY_GRAMS), on(TALL), grams(500)))
            .problems();
    assertEquals(
        List.of(
            "cafe.yaml:1:1: at 1:16.0 this brewer can't make that; expected 1385 g of beverage or"
                + " more, for its least dose is 100 g; its greatest dose, brew water and vessel set"
                + " the upper limit"),
        problems.stream().map(p -> p.toString().replace('\u00a0', ' ')).toList());
  }

  @Test
  void aStrengthThatNoBrewReachesIsRefused() {
    ScaleRequest.Wish inky =
        new ScaleRequest.Wish(Optional.empty(), Optional.of(Strength.ofPercent(45)));
    List<Problem> problems =
        new Scaler()
            .scale(ScaleRequests.of(DRIP, reference(TWENTY_GRAMS), on(TALL), inky))
            .problems();
    assertEquals(1, problems.size());
    assertTrue(problems.get(0).wrong().contains("45.00"), problems::toString);
  }

  /** Whatever the brew and the brewer: solids are kept, the ratio is kept, nobody goes short. */
  @Test
  void lawsOnRandomBrews() {
    Random random = new Random(20270306);
    int made = 0;
    for (int i = 0; i < 2000; i++) {
      double dose = 12 + random.nextInt(30);
      double ratio = 13 + 5 * random.nextDouble();
      double kept = 1.6 + random.nextDouble();
      ReferenceBrew reference =
          brew(dose, dose * ratio, dose * (ratio - kept), 1.15 + 0.4 * random.nextDouble());
      Brewer brewer =
          brewer(
              50 + random.nextInt(100),
              300 + random.nextInt(1500),
              4000 + random.nextInt(20_000),
              Duration.ofMinutes(3 + random.nextInt(12)));
      double wanted = 1000 + random.nextInt(20_000);
      boolean full = random.nextInt(4) == 0;
      Optional<Scaled> scaled =
          new Scaler()
              .scale(
                  ScaleRequests.of(
                      DRIP,
                      reference(reference),
                      inBasket(brewer, 100 + random.nextInt(250)),
                      full ? full() : grams(wanted)))
              .value();
      if (scaled.isEmpty()) {
        continue;
      }
      made++;
      Recipe recipe = scaled.get().recipe();
      String told = i + ": " + recipe;
      Mass solids = recipe.cup().solids();
      assertEquals(
          scaled.get().referenceExtraction().fraction(),
          solids.grams() / recipe.brew().dose().grams(),
          1e-9,
          told);
      // a gram of water more or less, of some kilograms
      assertEquals(
          reference.strength().percent(), recipe.strength().strength().percent(), 2e-3, told);
      assertEquals(ratio, recipe.totalWaterToCoffee().gramsPerGram(), 0.03, told);
      assertTrue(recipe.brew().dose().compareTo(brewer.greatestDose()) <= 0, told);
      assertTrue(recipe.brew().water().grams() <= brewer.greatestWater().grams() + 1, told);
      if (!full) {
        // the last gram of bypass may be rounded down in each batch
        assertTrue(recipe.finished().grams() >= wanted - recipe.batches(), told);
      }
    }
    assertTrue(made > 1000, made + " could be made");
  }

  private static double width(Recipe recipe) {
    return recipe.strength().high().percent() - recipe.strength().low().percent();
  }

  private static String caution(Scaled scaled, String code) {
    return scaled.cautions().stream()
        .filter(note -> note.code().equals(code))
        .map(Note::text)
        .findFirst()
        .orElseThrow();
  }
}
