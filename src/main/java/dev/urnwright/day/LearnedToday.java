package dev.urnwright.day;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.brew.ExtractionCurve;
import dev.urnwright.brew.ExtractionCurve.Knot;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Extraction;
import java.util.List;

/** How a coffee brews today, from the batches measured so far. */
final class LearnedToday {
  /** A curve is not lifted beyond what coffee can give. */
  private static final double MOST_EXTRACTED = 0.35;

  private LearnedToday() {}

  /**
   * The planned model with the mean absorption of the weighed batches, and its curve lifted or
   * lowered by the mean of what was read against what it expected at the same ratio.
   */
  static BrewModel model(BrewModel planned, List<MeasuredBatch> measured) {
    double kept =
        measured.stream()
            .filter(MeasuredBatch::isBeverageWeighed)
            .mapToDouble(batch -> batch.absorption().gramsPerGram())
            .average()
            .orElse(planned.absorption().gramsPerGram());
    double factor =
        measured.stream()
            .filter(MeasuredBatch::isRead)
            .mapToDouble(
                batch ->
                    batch.extraction().fraction()
                        / planned.curve().at(batch.weighed().ratio()).fraction())
            .average()
            .orElse(1);
    return new BrewModel(
        planned.method(),
        lifted(planned.curve(), factor),
        Absorption.ofGramsPerGram(kept),
        planned.steamLoss());
  }

  private static ExtractionCurve lifted(ExtractionCurve curve, double factor) {
    return factor == 1
        ? curve
        : ExtractionCurve.through(
            curve.knots().stream()
                .map(
                    knot ->
                        new Knot(
                            knot.ratio(),
                            Extraction.ofFraction(
                                Math.min(MOST_EXTRACTED, knot.extraction().fraction() * factor)),
                            0))
                .toList());
  }
}
