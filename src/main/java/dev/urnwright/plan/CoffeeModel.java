package dev.urnwright.plan;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.brew.Evidence;
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
import dev.urnwright.wording.Saying;
import java.util.Optional;

/**
 * A coffee's brew model, read out of what the user knows of brewing it.
 *
 * @param coffee which
 * @param evidence what its model rests on
 * @param brewing its model
 * @param reference the ratio of the reference brew, when there is one
 */
record CoffeeModel(
    Coffee coffee, Evidence evidence, BrewModel brewing, Optional<BrewRatio> reference) {
  /** Half of the water as steam is a boiling pot, not a brew. */
  private static final Share MOST_STEAM = Share.ofPercent(50);

  /** Reads a coffee; what is impossible about it is added to the findings' problems. */
  static Optional<CoffeeModel> read(Coffee coffee, Findings findings) {
    BrewProfile profile = coffee.profile();
    BrewMethod method = method(profile);
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
    Optional<ReferenceBrew> reference = profile.reference();
    Optional<Problem> impossible =
        reference.flatMap(brew -> new ReferenceCheck(coffee, brew, findings.display()).problem());
    if (impossible.isPresent()) {
      findings.refuse(impossible.get());
      return Optional.empty();
    }
    Evidence evidence = evidence(profile, method);
    Optional<Absorption> weighed = evidence.weighed();
    noteAbsorption(coffee, weighed, findings);
    Optional<BrewRatio> ratio = reference.map(brew -> BrewRatio.of(brew.water(), brew.dose()));
    if (ratio.isPresent()) {
      double kept = weighed.or(profile::absorption).orElse(method.usualAbsorption()).gramsPerGram();
      double reach = ratio.get().gramsPerGram() * (1 - profile.steamLoss().fraction());
      if (kept >= reach) {
        findings.refuse(
            new Problem(
                coffee.location(),
                "the reference brew of " + coffee.name() + " has too little water for its dose",
                "more than " + findings.display().perGram(kept) + ", which the grounds keep"));
        return Optional.empty();
      }
    }
    noteExtraction(coffee, findings);
    return Optional.of(new CoffeeModel(coffee, evidence, evidence.model(), ratio));
  }

  private static BrewMethod method(BrewProfile profile) {
    return profile.method() == Method.PERCOLATION ? BrewMethod.PERCOLATION : BrewMethod.IMMERSION;
  }

  /** What the profile rests on. */
  private static Evidence evidence(BrewProfile profile, BrewMethod method) {
    Extraction extraction = profile.extraction().orElse(BrewModel.USUAL_EXTRACTION);
    Absorption usual = method.usualAbsorption();
    boolean weighed = profile.reference().flatMap(ReferenceBrew::beverage).isPresent();
    return new Evidence(
        method,
        profile
            .reference()
            .map(
                brew ->
                    new Evidence.Reference(
                        brew.dose(), brew.water(), brew.beverage(), brew.strength())),
        // Whoever writes the figure that everybody assumes has hardly weighed or read it.
        new Evidence.Kept(
            profile.absorption().filter(given -> weighed || !given.equals(usual)), usual),
        new Evidence.Told(extraction, extraction.equals(BrewModel.USUAL_EXTRACTION)),
        profile.measured().stream().map(m -> new Knot(m.ratio(), m.extraction(), 0)).toList(),
        profile.steamLoss());
  }

  private static void noteAbsorption(
      Coffee coffee, Optional<Absorption> weighed, Findings findings) {
    Optional<Absorption> given = coffee.profile().absorption();
    if (given.isPresent() && weighed.isPresent() && !findings.learnedAbsorption(coffee)) {
      findings.note(
          "absorption-given",
          Saying.of("note.absorption-given")
              .with("coffee", coffee.name())
              .with("given", findings.display().absorption(given.get()))
              .with("weighed", findings.display().absorption(weighed.get())));
    }
    if (given.isEmpty() && weighed.isEmpty()) {
      Absorption usual = method(coffee.profile()).usualAbsorption();
      findings.note(
          "absorption-assumed",
          Saying.of("note.absorption-assumed")
              .with("coffee", coffee.name())
              .with("kept", findings.display().absorption(usual)));
    }
  }

  private static void noteExtraction(Coffee coffee, Findings findings) {
    BrewProfile profile = coffee.profile();
    if (profile.reference().isEmpty()
        && profile.measured().isEmpty()
        && profile.extraction().isEmpty()) {
      findings.note(
          "extraction-assumed",
          Saying.of("note.extraction-assumed")
              .with("coffee", coffee.name())
              .with("extraction", findings.display().extraction(BrewModel.USUAL_EXTRACTION)));
    }
  }
}
