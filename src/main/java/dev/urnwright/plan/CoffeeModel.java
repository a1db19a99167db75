package dev.urnwright.plan;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.brew.ExtractionCurve;
import dev.urnwright.brew.ExtractionCurve.Knot;
import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Coffee;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A coffee's brew model, read out of what the user knows of brewing it.
 *
 * @param coffee which
 * @param brewing its model
 * @param reference the ratio of the reference brew, when there is one
 */
record CoffeeModel(Coffee coffee, BrewModel brewing, Optional<BrewRatio> reference) {
  /** Between about 1.5 and 2.35 g/g for drip in published figures. */
  private static final Absorption USUAL_PERCOLATION = Absorption.ofGramsPerGram(2.1);

  /** Grounds that were steeped and then decanted keep about this. */
  private static final Absorption USUAL_IMMERSION = Absorption.ofGramsPerGram(3.0);

  /** Assumed when the user gives neither a reference nor an extraction: the centre of the chart. */
  private static final Extraction USUAL_EXTRACTION = Extraction.ofPercent(20);

  /** Half of the water as steam is a boiling pot, not a brew. */
  private static final Share MOST_STEAM = Share.ofPercent(50);

  /** A ratio for a curve that is the same everywhere. */
  private static final BrewRatio ANYWHERE = BrewRatio.ofGramsPerGram(16);

  /** Reads a coffee; what is impossible about it is added to the findings' problems. */
  static Optional<CoffeeModel> read(Coffee coffee, Findings findings) {
    BrewProfile profile = coffee.profile();
    BrewMethod method =
        profile.method() == Method.PERCOLATION ? BrewMethod.PERCOLATION : BrewMethod.IMMERSION;
    if (profile.steamLoss().compareTo(MOST_STEAM) > 0) {
      findings.refuse(
          new Problem(
              coffee.location(),
              "a steam loss of "
                  + findings.display().share(profile.steamLoss())
                  + " leaves no brew",
              "at most " + findings.display().share(MOST_STEAM)));
      return Optional.empty();
    }
    Optional<Absorption> weighed = Optional.empty();
    Optional<BrewRatio> ratio = Optional.empty();
    if (profile.reference().isPresent()) {
      ReferenceBrew brew = profile.reference().get();
      Optional<Problem> impossible = new ReferenceCheck(coffee, brew, findings.display()).problem();
      if (impossible.isPresent()) {
        findings.refuse(impossible.get());
        return Optional.empty();
      }
      ratio = Optional.of(BrewRatio.of(brew.water(), brew.dose()));
      weighed = brew.beverage().map(beverage -> absorption(brew, profile));
    }
    Absorption absorption = absorption(coffee, weighed, findings);
    Optional<Knot> fromReference = Optional.empty();
    if (profile.reference().isPresent()) {
      double kept = weighed.orElse(absorption).gramsPerGram();
      double reach = ratio.get().gramsPerGram() * (1 - profile.steamLoss().fraction());
      if (kept >= reach) {
        findings.refuse(
            new Problem(
                coffee.location(),
                "the reference brew of " + coffee.name() + " has too little water for its dose",
                "more than " + findings.display().perGram(kept) + ", which the grounds keep"));
        return Optional.empty();
      }
      fromReference =
          Optional.of(
              new Knot(
                  ratio.get(),
                  BrewModel.extractionOf(
                      method,
                      profile.reference().get().strength(),
                      ratio.get(),
                      weighed.orElse(absorption),
                      profile.steamLoss()),
                  0));
    }
    ExtractionCurve curve = curve(coffee, fromReference, findings);
    return Optional.of(
        new CoffeeModel(
            coffee, new BrewModel(method, curve, absorption, profile.steamLoss()), ratio));
  }

  /** {@code a = (W(1 − v) − B) / D}. */
  private static Absorption absorption(ReferenceBrew brew, BrewProfile profile) {
    double left = brew.water().grams() * (1 - profile.steamLoss().fraction());
    return Absorption.ofGramsPerGram(
        Math.max(0, left - brew.beverage().orElseThrow().grams()) / brew.dose().grams());
  }

  private static Absorption absorption(
      Coffee coffee, Optional<Absorption> weighed, Findings findings) {
    Optional<Absorption> given = coffee.profile().absorption();
    if (given.isPresent()) {
      weighed.ifPresent(
          other ->
              findings.note(
                  "absorption-given",
                  coffee.name()
                      + ": planned with the absorption you gave, "
                      + findings.display().absorption(given.get())
                      + ", not with the reference brew's "
                      + findings.display().absorption(other)
                      + "."));
      return given.get();
    }
    if (weighed.isPresent()) {
      return weighed.get();
    }
    Absorption usual =
        coffee.profile().method() == Method.PERCOLATION ? USUAL_PERCOLATION : USUAL_IMMERSION;
    findings.note(
        "absorption-assumed",
        coffee.name()
            + ": the grounds are assumed to keep "
            + findings.display().absorption(usual)
            + ", since no beverage was weighed. Weigh one batch to be sure.");
    return usual;
  }

  private static ExtractionCurve curve(
      Coffee coffee, Optional<Knot> fromReference, Findings findings) {
    List<Knot> points = new ArrayList<>();
    coffee.profile().measured().forEach(m -> points.add(new Knot(m.ratio(), m.extraction(), 0)));
    fromReference
        .filter(knot -> points.stream().noneMatch(p -> p.ratio().equals(knot.ratio())))
        .ifPresent(points::add);
    if (!points.isEmpty()) {
      return ExtractionCurve.through(points);
    }
    Optional<Extraction> given = coffee.profile().extraction();
    if (given.isEmpty()) {
      findings.note(
          "extraction-assumed",
          coffee.name()
              + ": an extraction of "
              + findings.display().extraction(USUAL_EXTRACTION)
              + " is assumed. Weigh and read one batch to be sure.");
    }
    return ExtractionCurve.constant(ANYWHERE, given.orElse(USUAL_EXTRACTION));
  }
}
