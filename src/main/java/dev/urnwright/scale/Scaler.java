package dev.urnwright.scale;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Scales a brew. Stateless. */
public final class Scaler {
  /**
   * Scales a brew.
   *
   * @return what to do on the new brewer; or why it can't be done there, and what could
   */
  public Checked<Scaled> scale(ScaleRequest request) {
    Display display = new Display(request.print().units(), request.scaleStep());
    Brewings brewings = new Brewings(request);
    List<Problem> problems = unbrewable(request, brewings, display);
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    BrewModel carried = brewings.carried();
    BrewModel model = brewings.refined();
    Strength wanted = request.wish().strength().orElse(request.reference().brew().strength());
    boolean asReference = request.trials().isEmpty() && request.wish().strength().isEmpty();
    if (!asReference && !model.reaches(wanted)) {
      return refused(
          request.location(),
          "no brew of this coffee is " + display.strength(wanted) + " strong",
          "expected "
              + display.strength(model.strengthAt(model.leastRatio()))
              + " at most, which this coffee reaches");
    }
    BrewRatio ratio =
        asReference ? Brewings.ratio(request.reference().brew()) : model.ratioFor(wanted);
    RecipeMaker maker = new RecipeMaker(request, model, wanted, brewings.doubts());
    Optional<Recipe> plain = maker.plain(ratio);
    if (plain.isEmpty()) {
      Mass least =
          model
              .brew(
                  request.target().brewer().leastDose().max(request.scaleStep()),
                  ratio.waterFor(request.target().brewer().leastDose().max(request.scaleStep())))
              .beverage();
      return refused(
          request.target().brewer().location(),
          "at " + display.ratio(ratio) + " this brewer can't make that",
          "expected "
              + display.mass(least)
              + " of beverage or more, for its least dose is "
              + display.mass(request.target().brewer().leastDose())
              + "; its greatest dose, brew water and vessel set the upper limit");
    }
    Recipe first = plain.get();
    Optional<Recipe> instead =
        first.bed().filter(bed -> bed.verdict() == Recipe.Bed.Verdict.SHALLOW).isPresent()
            ? maker.deeper(first)
            : maker.quicker(first);
    Recipe recipe = instead.orElse(first);
    Remarks remarks = new Remarks(request, brewings, model, display, maker);
    return Checked.of(
        new Scaled(
            request,
            carried,
            model,
            wanted,
            recipe,
            instead.map(stronger -> first),
            request
                .reference()
                .basket()
                .map(
                    basket ->
                        basket.depthOf(
                            request.reference().brew().dose(),
                            request.brewing().bulkGramsPerMillilitre())),
            new AdviceBook(request, brewings, recipe, display).advice(),
            results(request, brewings, carried),
            remarks.cautions(recipe),
            remarks.notes(recipe)));
  }

  private static List<Scaled.TrialResult> results(
      ScaleRequest request, Brewings brewings, BrewModel carried) {
    List<Scaled.TrialResult> results = new ArrayList<>();
    for (ScaleRequest.Trial trial : request.trials()) {
      ReferenceBrew brew = trial.brew();
      BrewRatio ratio = Brewings.ratio(brew);
      results.add(
          new Scaled.TrialResult(
              trial,
              ratio,
              new Scaled.Outcome(
                  Optional.of(carried.brew(brew.dose(), brew.water()).beverage()),
                  carried.strengthAt(ratio),
                  carried.curve().at(ratio)),
              new Scaled.Outcome(
                  brew.beverage(),
                  brew.strength(),
                  brewings.extraction(brew, carried.absorption()))));
    }
    return results;
  }

  /** Brews from which, with what the grounds keep, nothing would have run. */
  private static List<Problem> unbrewable(
      ScaleRequest request, Brewings brewings, Display display) {
    List<Problem> problems = new ArrayList<>();
    BrewModel carried = brewings.carried();
    dry(request.reference().brew(), request.reference().location(), carried, display)
        .ifPresent(problems::add);
    for (ScaleRequest.Trial trial : request.trials()) {
      dry(trial.brew(), trial.location(), carried, display).ifPresent(problems::add);
    }
    return problems;
  }

  private static Optional<Problem> dry(
      ReferenceBrew brew, Location place, BrewModel model, Display display) {
    return Brewings.runs(model, brew.dose(), brew.water())
        ? Optional.empty()
        : Optional.of(
            new Problem(
                place,
                "at "
                    + display.ratio(Brewings.ratio(brew))
                    + " hardly anything leaves grounds that keep "
                    + display.absorption(model.absorption()),
                "expected more water to the dose, or less absorption"));
  }

  private static Checked<Scaled> refused(Location place, String wrong, String expected) {
    return Checked.refused(List.of(new Problem(place, wrong, expected)));
  }
}
