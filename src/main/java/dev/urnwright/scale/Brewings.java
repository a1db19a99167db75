package dev.urnwright.scale;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.brew.Evidence;
import dev.urnwright.brew.ExtractionCurve;
import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Uncertainties;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What weighed brews tell of a coffee: what its grounds keep, and what they give at a ratio. */
final class Brewings {
  /** There is always a point: the reference, or a trial. */
  private static final Evidence.Told NOT_NEEDED =
      new Evidence.Told(BrewModel.USUAL_EXTRACTION, false);

  private final ScaleRequest request;
  private final BrewMethod method;

  Brewings(ScaleRequest request) {
    this.request = request;
    this.method =
        request.brewing().method() == BrewProfile.Method.PERCOLATION
            ? BrewMethod.PERCOLATION
            : BrewMethod.IMMERSION;
  }

  /** Whether the absorption is a usual one, for want of anything weighed. */
  boolean assumesAbsorption() {
    return request.brewing().absorption().isEmpty()
        && request.reference().brew().beverage().isEmpty();
  }

  /** The model of the reference alone. */
  BrewModel carried() {
    return reference().model();
  }

  /** The model of the trials, or of the reference where there are none. */
  BrewModel refined() {
    return evidence().model();
  }

  /** How surely strengths are foretold. */
  StrengthDoubts doubts() {
    return new StrengthDoubts(
        evidence(), Uncertainties.usual(request.scaleStep()), !request.trials().isEmpty());
  }

  private Evidence reference() {
    ReferenceBrew brew = request.reference().brew();
    return new Evidence(
        method,
        Optional.of(
            new Evidence.Reference(brew.dose(), brew.water(), brew.beverage(), brew.strength())),
        new Evidence.Kept(request.brewing().absorption(), method.usualAbsorption()),
        NOT_NEEDED,
        List.of(),
        request.brewing().steamLoss());
  }

  /**
   * What the trials tell: the mean of what their grounds kept, and a curve through what they
   * extracted, those of the same ratio averaged. Without trials it is the reference.
   */
  private Evidence evidence() {
    List<ReferenceBrew> trials = request.trials().stream().map(ScaleRequest.Trial::brew).toList();
    if (trials.isEmpty()) {
      return reference();
    }
    OptionalDouble mean =
        trials.stream()
            .flatMap(trial -> weighed(trial).stream())
            .mapToDouble(Absorption::gramsPerGram)
            .average();
    Absorption kept =
        mean.isPresent() ? Absorption.ofGramsPerGram(mean.getAsDouble()) : carried().absorption();
    Map<BrewRatio, Double> points =
        trials.stream()
            .collect(
                Collectors.groupingBy(
                    Brewings::ratio,
                    TreeMap::new,
                    Collectors.averagingDouble(trial -> extraction(trial, kept).fraction())));
    return new Evidence(
        method,
        Optional.empty(),
        new Evidence.Kept(Optional.of(kept), method.usualAbsorption()),
        NOT_NEEDED,
        points.entrySet().stream()
            .map(
                point ->
                    new ExtractionCurve.Knot(
                        point.getKey(), Extraction.ofFraction(point.getValue()), 0))
            .toList(),
        request.brewing().steamLoss());
  }

  /** What a brew's grounds kept, when its beverage was weighed: {@code (W(1 − v) − B) / D}. */
  Optional<Absorption> weighed(ReferenceBrew brew) {
    double left = brew.water().grams() * (1 - request.brewing().steamLoss().fraction());
    return brew.beverage()
        .map(
            beverage ->
                Absorption.ofGramsPerGram(
                    Math.max(0, left - beverage.grams()) / brew.dose().grams()));
  }

  /** What a brew extracted, by what it kept, or else by what is known to be kept. */
  Extraction extraction(ReferenceBrew brew, Absorption otherwise) {
    return BrewModel.extractionOf(
        method,
        brew.strength(),
        ratio(brew),
        weighed(brew).orElse(otherwise),
        request.brewing().steamLoss());
  }

  static BrewRatio ratio(ReferenceBrew brew) {
    return BrewRatio.of(brew.water(), brew.dose());
  }

  /** Whether anything runs out of a brew, with what the grounds keep. */
  static boolean runs(BrewModel model, Mass dose, Mass water) {
    return model.brewsAt(BrewRatio.of(water, dose));
  }
}
