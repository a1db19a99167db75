package dev.urnwright.learn;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.brew.ExtractionCurve;
import dev.urnwright.brew.ExtractionCurve.Knot;
import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is believed of a coffee before the journal is opened.
 *
 * @param method how it is brewed
 * @param absorption what its grounds keep
 * @param curve its extraction
 * @param steamLoss what it loses as vapour
 */
public record Starting(
    BrewMethod method, Absorption absorption, ExtractionCurve curve, Share steamLoss) {
  private static final BrewRatio ANYWHERE = BrewRatio.ofGramsPerGram(16);

  /** Where nothing is known: 2.1 g/g kept, of steeped coffee 3.0 g/g; 20 % extracted. */
  public static Starting usual(BrewMethod method, Share steamLoss) {
    return new Starting(
        method,
        method.usualAbsorption(),
        ExtractionCurve.constant(ANYWHERE, BrewModel.USUAL_EXTRACTION),
        steamLoss);
  }

  /**
   * What an event file says of a coffee, as the planner understands it.
   *
   * @return empty when its reference brew can't be
   */
  public static Optional<Starting> of(BrewProfile profile) {
    BrewMethod method =
        profile.method() == Method.PERCOLATION ? BrewMethod.PERCOLATION : BrewMethod.IMMERSION;
    Optional<Absorption> weighed =
        profile.reference().flatMap(brew -> absorption(brew, profile.steamLoss()));
    Absorption kept = profile.absorption().or(() -> weighed).orElse(method.usualAbsorption());
    List<Knot> knots = new ArrayList<>();
    profile.measured().forEach(point -> knots.add(new Knot(point.ratio(), point.extraction(), 0)));
    if (profile.reference().isPresent()) {
      ReferenceBrew brew = profile.reference().get();
      BrewRatio ratio = BrewRatio.of(brew.water(), brew.dose());
      double left = ratio.gramsPerGram() * (1 - profile.steamLoss().fraction());
      if (left <= weighed.orElse(kept).gramsPerGram()) {
        return Optional.empty();
      }
      if (knots.stream().noneMatch(knot -> knot.ratio().equals(ratio))) {
        knots.add(
            new Knot(
                ratio,
                BrewModel.extractionOf(
                    method, brew.strength(), ratio, weighed.orElse(kept), profile.steamLoss()),
                0));
      }
    }
    ExtractionCurve curve =
        knots.isEmpty()
            ? ExtractionCurve.constant(
                ANYWHERE, profile.extraction().orElse(BrewModel.USUAL_EXTRACTION))
            : ExtractionCurve.through(knots);
    return Optional.of(new Starting(method, kept, curve, profile.steamLoss()));
  }

  private static Optional<Absorption> absorption(ReferenceBrew brew, Share steamLoss) {
    return brew.beverage()
        .map(
            beverage ->
                Absorption.ofGramsPerGram(
                    Math.max(
                            0, brew.water().grams() * (1 - steamLoss.fraction()) - beverage.grams())
                        / brew.dose().grams()));
  }
}
