package dev.urnwright.sheet;

import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Note;
import dev.urnwright.event.Paper;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.scale.Recipe;
import dev.urnwright.scale.Scaled;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A scaled brew as its sheet shows it.
 *
 * @param heading of every page
 * @param recipe what to do
 * @param rows each batch, to tick off and write in
 * @param facts the reference beside the new brew
 * @param advice what to change first, and why
 * @param trials what was forecast and what came of it
 * @param remarks cautions and assumptions
 */
public record ScaleView(
    Heading heading,
    RecipeCard recipe,
    List<BatchLine> rows,
    List<Fact> facts,
    List<Scaled.Advice> advice,
    List<TrialLine> trials,
    Remarks remarks) {
  private static final int MOST_ROWS = 4;

  /** Arranges a scaled brew, every quantity written for its units and scale. */
  public static ScaleView of(Scaled scaled) {
    Display display = new Display(scaled.request().print().units(), scaled.request().scaleStep());
    return new ScaleView(
        new Heading(
            new Name(scaled.request().name()),
            Optional.empty(),
            scaled.request().print().paper() == Paper.A4 ? "A4" : "letter"),
        RecipeCard.of(scaled, display),
        IntStream.rangeClosed(1, Math.min(MOST_ROWS, Math.max(2, scaled.recipe().batches())))
            .mapToObj(BatchLine::new)
            .toList(),
        facts(scaled, display),
        scaled.advice(),
        TrialLine.of(scaled, display),
        new Remarks(
            scaled.cautions().stream().map(Note::text).toList(),
            scaled.notes().stream().map(Note::text).toList()));
  }

  private static List<Fact> facts(Scaled scaled, Display display) {
    Recipe recipe = scaled.recipe();
    ReferenceBrew reference = scaled.request().reference().brew();
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            "Dose",
            display.mass(reference.dose()).toString(),
            display.mass(recipe.brew().dose()).toString()));
    facts.add(
        new Fact(
            "Brew water",
            display.mass(reference.water()).toString(),
            display.mass(recipe.brew().water()).toString()));
    facts.add(
        new Fact(
            "Brew ratio",
            display.ratio(scaled.referenceRatio()),
            display.ratio(recipe.brew().ratio())));
    facts.add(
        new Fact(
            "Total water to coffee",
            display.ratio(scaled.referenceRatio()),
            display.ratio(recipe.totalWaterToCoffee())));
    facts.add(
        new Fact(
            "Extraction",
            display.extraction(scaled.referenceExtraction()).toString(),
            display.extraction(recipe.brew().extraction()).toString()));
    recipe
        .bed()
        .ifPresent(
            bed ->
                facts.add(
                    new Fact(
                        "Depth of the dry bed",
                        scaled.referenceDepth().map(d -> display.length(d).toString()).orElse("–"),
                        display.length(bed.depth()).toString())));
    recipe
        .contact()
        .ifPresent(
            contact ->
                facts.add(
                    new Fact(
                        "Contact time",
                        scaled
                            .request()
                            .reference()
                            .contact()
                            .map(time -> display.duration(time).toString())
                            .orElse("–"),
                        "about " + display.duration(contact.expected()))));
    return facts;
  }

  /**
   * What to do for each batch.
   *
   * @param coffee its name
   * @param brewer its name
   * @param batches how many, when more than one
   * @param dose to weigh
   * @param water to brew with
   * @param bloom the part poured first
   * @param pause before the rest
   * @param rest the other part
   * @param expect what it gives
   * @param bypass water added afterwards, when there is any
   */
  record RecipeCard(
      Name coffee,
      Name brewer,
      Optional<Integer> batches,
      Figure dose,
      Figure water,
      Figure bloom,
      Figure pause,
      Figure rest,
      Expected expect,
      Optional<Bypass> bypass) {
    static RecipeCard of(Scaled scaled, Display display) {
      Recipe recipe = scaled.recipe();
      return new RecipeCard(
          new Name(scaled.request().coffee()),
          new Name(scaled.request().target().brewer().name()),
          recipe.batches() == 1 ? Optional.empty() : Optional.of(recipe.batches()),
          display.mass(recipe.brew().dose()),
          display.mass(recipe.brew().water()),
          display.mass(recipe.pours().bloom()),
          display.duration(recipe.pours().pause()),
          display.mass(recipe.pours().rest()),
          new Expected(
              display.mass(recipe.brew().beverage()),
              display.strength(recipe.brew().strength()),
              display.strength(recipe.strength().strength()),
              display.strength(recipe.strength().low()),
              display.strength(recipe.strength().high())),
          recipe.cup().bypass().isZero()
              ? Optional.empty()
              : Optional.of(
                  new Bypass(
                      display.mass(recipe.cup().bypass()),
                      display.mass(recipe.cup().finished()),
                      display.share(recipe.bypassShare()))));
    }
  }

  /**
   * What a batch gives.
   *
   * @param beverage that runs through
   * @param brewed its strength
   * @param cup strength in the cup
   * @param low likely not below
   * @param high likely not above
   */
  record Expected(Figure beverage, Figure brewed, Figure cup, Figure low, Figure high) {}

  /**
   * Water added afterwards.
   *
   * @param water how much
   * @param finished with it
   * @param share of everything finished
   */
  record Bypass(Figure water, Figure finished, Figure share) {}

  /**
   * One batch to write in.
   *
   * @param number counted from 1
   */
  record BatchLine(int number) {}

  /**
   * One figure before and after.
   *
   * @param what its name
   * @param reference before
   * @param each after
   */
  record Fact(String what, String reference, String each) {}

  /**
   * One trial.
   *
   * @param number counted from 1
   * @param dose of it
   * @param ratio of it
   * @param forecast strength and extraction
   * @param brewed the same as brewed
   */
  record TrialLine(int number, Figure dose, String ratio, String forecast, String brewed) {
    static List<TrialLine> of(Scaled scaled, Display display) {
      return IntStream.range(0, scaled.trials().size())
          .mapToObj(
              i -> {
                Scaled.TrialResult result = scaled.trials().get(i);
                return new TrialLine(
                    i + 1,
                    display.mass(result.trial().brew().dose()),
                    display.ratio(result.ratio()),
                    outcome(result.forecast(), display),
                    outcome(result.brewed(), display));
              })
          .toList();
    }

    private static String outcome(Scaled.Outcome outcome, Display display) {
      return outcome.beverage().map(mass -> display.mass(mass) + " at ").orElse("")
          + display.strength(outcome.strength())
          + ", extraction "
          + display.extraction(outcome.extraction());
    }
  }
}
