package dev.urnwright.brew;

import static dev.urnwright.brew.Brews.grams;
import static dev.urnwright.brew.Brews.ratio;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.brew.Evidence.Kept;
import dev.urnwright.brew.Evidence.Reference;
import dev.urnwright.brew.Evidence.Told;
import dev.urnwright.brew.ExtractionCurve.Knot;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** What a model is made of, and how each error goes into it: by hand. */
class EvidenceTest {
  private static final Reference WEIGHED =
      new Reference(grams(60), grams(960), Optional.of(grams(831)), Strength.ofPercent(1.4));
  private static final Reference UNWEIGHED =
      new Reference(grams(60), grams(960), Optional.empty(), Strength.ofPercent(1.4));
  private static final Kept USUAL = new Kept(Optional.empty(), kept(2.1));
  private static final Told ASSUMED = new Told(Extraction.ofPercent(20), true);

  /** 2 % of 960 g go as steam: 940.8 g are left, 109.8 g stay in 60 g of coffee. */
  @Test
  void theGroundsOfAWeighedReferenceTellWhatTheyKept() {
    Evidence evidence = evidence(BrewMethod.PERCOLATION, WEIGHED, USUAL, 2);
    assertEquals(1.83, evidence.weighed().orElseThrow().gramsPerGram(), 1e-12);
    assertEquals(1.83, evidence.model().absorption().gramsPerGram(), 1e-12);
    // 1.4 % of 831 g over 60 g
    assertEquals(0.1939, extraction(evidence.model(), 16), 1e-12);
    assertEquals(1.4, evidence.model().strengthAt(ratio(16)).percent(), 1e-9);
    assertEquals(Optional.empty(), evidence(BrewMethod.PERCOLATION, UNWEIGHED, USUAL, 2).weighed());
  }

  /** Published figures: 1.5 to 2.35 g/g for drip, about 3 for what was steeped and poured off. */
  @Test
  void whatIsUsuallyKept() {
    assertEquals(2.1, BrewMethod.PERCOLATION.usualAbsorption().gramsPerGram());
    assertEquals(3.0, BrewMethod.IMMERSION.usualAbsorption().gramsPerGram());
  }

  /** Not weighed, it rests on the usual 2.1 g/g: 1.4 % × (16 × 0.98 − 2.1) = 18.984 %. */
  @Test
  void anUnweighedReferenceTakesTheUsualAbsorption() {
    BrewModel model = evidence(BrewMethod.PERCOLATION, UNWEIGHED, USUAL, 2).model();
    assertEquals(2.1, model.absorption().gramsPerGram());
    assertEquals(0.014 * (15.68 - 2.1), extraction(model, 16), 1e-12);
  }

  /** What is given counts for the batches to come; the reference extracted what it weighed. */
  @Test
  void aGivenAbsorptionLeavesTheReferencesExtraction() {
    Kept given = new Kept(Optional.of(kept(2.5)), kept(2.1));
    BrewModel model = evidence(BrewMethod.PERCOLATION, WEIGHED, given, 0).model();
    assertEquals(2.5, model.absorption().gramsPerGram());
    assertEquals(0.014 * 831 / 60, extraction(model, 16), 1e-12);
    // and steeped, with all the liquid: 1.4 % × 16 / 98.6 %, whatever is kept
    assertEquals(
        0.014 * 16 / 0.986,
        extraction(evidence(BrewMethod.IMMERSION, WEIGHED, given, 0).model(), 16),
        1e-12);
  }

  /** Nobody read it: both doubts of the extraction add, and a reading's error has no part in it. */
  @Test
  void anAssumedExtractionIsOffByItsOwnDoubts() {
    Evidence evidence = told(ASSUMED, 0);
    assertEquals(0.2, extraction(evidence.model(), 12), 1e-12);
    BrewModel off =
        evidence.model(
            errors(
                Map.of(
                    Doubt.EXTRACTION_ASSUMED, 0.01, Doubt.EXTRACTION, 0.004, Doubt.READING, 0.9)));
    assertEquals(0.214, extraction(off, 12), 1e-12);
  }

  /**
   * An extraction that was read stands for a reading at 1:16: with 5 % of steam and 2.1 g/g kept,
   * 13.1 g of beverage to the gram, so 0.03 % misread are 0.393 % of extraction.
   */
  @Test
  void aReadExtractionIsOffByItsReading() {
    Evidence evidence = told(new Told(Extraction.ofPercent(19), false), 5);
    BrewModel off =
        evidence.model(
            errors(
                Map.of(
                    Doubt.READING, 3e-4, Doubt.EXTRACTION, 0.004, Doubt.EXTRACTION_ASSUMED, 0.9)));
    assertEquals(0.19 + 3e-4 * (16 * 0.95 - 2.1) + 0.004, extraction(off, 12), 1e-12);
  }

  /** What a journal has taught is off by what it scatters: upward, where that is upward. */
  @Test
  void whatWasLearnedIsOffByItsOwnDoubts() {
    Kept learned = new Kept(Optional.of(kept(2.5)), kept(2.1));
    BrewModel wetter =
        evidence(BrewMethod.PERCOLATION, WEIGHED, learned, 0)
            .model(errors(Map.of(Doubt.ABSORPTION_LEARNED, 0.1, Doubt.ABSORPTION, 0.02)));
    assertEquals(2.5 + 0.1 + 0.02, wetter.absorption().gramsPerGram(), 1e-12);
    BrewModel more =
        points(Optional.empty(), point(12, 18), point(15, 20))
            .model(errors(Map.of(Doubt.EXTRACTION_LEARNED, 0.006, Doubt.EXTRACTION, 0.001)));
    assertEquals(0.18 + 0.006 + 0.001, extraction(more, 12), 1e-12);
  }

  /** At 1:12, with 9.9 g to the gram, the same misreading is less; and each point has its own. */
  @Test
  void measuredPointsAreOffByTheirReadings() {
    Evidence evidence = points(Optional.empty(), point(12, 18), point(15, 20));
    BrewModel off = evidence.model(errors(Map.of(Doubt.READING, 3e-4, Doubt.EXTRACTION, 0.001)));
    assertEquals(0.18 + 3e-4 * 9.9 + 0.001, extraction(off, 12), 1e-12);
    assertEquals(0.20 + 3e-4 * 12.9 + 0.001, extraction(off, 15), 1e-12);
  }

  /** Where the grounds would have kept all of it nothing was read, so no reading moves it. */
  @Test
  void aPointThatGaveNothingWasNotRead() {
    Evidence evidence = points(Optional.empty(), point(2.1, 18), point(2, 17), point(15, 20));
    BrewModel off = evidence.model(errors(Map.of(Doubt.READING, 3e-4)));
    assertEquals(0.18, extraction(off, 2.1), 1e-12);
    assertEquals(0.17, extraction(off, 2), 1e-12);
  }

  /** A point at the reference's own ratio takes its place; elsewhere both are on the curve. */
  @Test
  void aPointAtTheReferencesRatioReplacesIt() {
    assertEquals(List.of(ratio(16)), ratios(points(Optional.of(WEIGHED), point(16, 20)).model()));
    assertEquals(0.20, extraction(points(Optional.of(WEIGHED), point(16, 20)).model(), 16), 1e-12);
    BrewModel both = points(Optional.of(WEIGHED), point(12, 18)).model();
    assertEquals(List.of(ratio(12), ratio(16)), ratios(both));
    assertEquals(0.1939, extraction(both, 16), 1e-12);
  }

  /** 6 g more water than was thought are 966 / 60 = 1:16.1; 1.5 g less coffee 960 / 58.5. */
  @Test
  void aMisweighedReferenceStandsAtAnotherRatio() {
    Evidence evidence = points(Optional.of(WEIGHED), point(12, 18));
    BrewModel water = evidence.model(errors(Map.of(Doubt.REFERENCE_WATER, 6.0)));
    assertEquals(16.1, ratios(water).get(1).gramsPerGram(), 1e-12);
    assertEquals((966 - 831) / 60.0, water.absorption().gramsPerGram(), 1e-12);
    BrewModel dose = evidence.model(errors(Map.of(Doubt.REFERENCE_DOSE, -1.5)));
    assertEquals(960 / 58.5, ratios(dose).get(1).gramsPerGram(), 1e-12);
    assertEquals(129 / 58.5, dose.absorption().gramsPerGram(), 1e-12);
    BrewModel beverage = evidence.model(errors(Map.of(Doubt.REFERENCE_BEVERAGE, 3.0)));
    assertEquals(126 / 60.0, beverage.absorption().gramsPerGram(), 1e-12);
    assertEquals(0.014 * 834 / 60, extraction(beverage, 16), 1e-12);
  }

  /** Grounds keep no less than nothing and coffee dissolves no more than all of itself. */
  @Test
  void noErrorLeavesTheRange() {
    Evidence evidence = evidence(BrewMethod.PERCOLATION, WEIGHED, USUAL, 0);
    assertEquals(
        0, evidence.model(errors(Map.of(Doubt.ABSORPTION, -5.0))).absorption().gramsPerGram());
    assertEquals(
        20, evidence.model(errors(Map.of(Doubt.ABSORPTION, 50.0))).absorption().gramsPerGram());
    assertEquals(0, extraction(evidence.model(errors(Map.of(Doubt.EXTRACTION, -1.0))), 16));
    assertEquals(1, extraction(evidence.model(errors(Map.of(Doubt.EXTRACTION, 1.0))), 16));
    assertEquals(0, extraction(evidence.model(errors(Map.of(Doubt.READING, -0.5))), 16));
  }

  private static Evidence evidence(
      BrewMethod method, Reference reference, Kept kept, double steamPercent) {
    return new Evidence(
        method, Optional.of(reference), kept, ASSUMED, List.of(), Share.ofPercent(steamPercent));
  }

  private static Evidence told(Told told, double steamPercent) {
    return new Evidence(
        BrewMethod.PERCOLATION,
        Optional.empty(),
        USUAL,
        told,
        List.of(),
        Share.ofPercent(steamPercent));
  }

  private static Evidence points(Optional<Reference> reference, Knot... points) {
    return new Evidence(
        BrewMethod.PERCOLATION, reference, USUAL, ASSUMED, List.of(points), Share.ofPercent(0));
  }

  private static Knot point(double ratio, double percent) {
    return new Knot(ratio(ratio), Extraction.ofPercent(percent), 0);
  }

  private static List<BrewRatio> ratios(BrewModel model) {
    return model.curve().knots().stream().map(Knot::ratio).toList();
  }

  private static double extraction(BrewModel model, double ratio) {
    return model.curve().at(ratio(ratio)).fraction();
  }

  private static ToDoubleFunction<Doubt> errors(Map<Doubt, Double> errors) {
    return doubt -> errors.getOrDefault(doubt, 0.0);
  }

  private static Absorption kept(double gramsPerGram) {
    return Absorption.ofGramsPerGram(gramsPerGram);
  }
}
