package dev.urnwright.sheet;

import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.NumberStyle;
import dev.urnwright.scale.Recipe;
import dev.urnwright.scale.Scaled;
import dev.urnwright.wording.Saying;
import dev.urnwright.wording.Words;
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
    List<AdviceLine> advice,
    List<TrialLine> trials,
    Remarks remarks) {
  private static final int MOST_ROWS = 4;

  /**
   * Arranges a scaled brew, every quantity written for its units and scale.
   *
   * @param words in which it is written
   */
  public static ScaleView of(Scaled scaled, Words words) {
    Display display =
        new Display(scaled.request().print().units(), scaled.request().scaleStep(), words.style());
    return new ScaleView(
        Heading.of(scaled.request().name(), Optional.empty(), scaled.request().print(), words),
        RecipeCard.of(scaled, display),
        IntStream.rangeClosed(1, Math.min(MOST_ROWS, Math.max(2, scaled.recipe().batches())))
            .mapToObj(BatchLine::new)
            .toList(),
        facts(scaled, display, words),
        scaled.advice().stream()
            .map(each -> new AdviceLine(words.text(each.what()), words.text(each.why())))
            .toList(),
        TrialLine.of(scaled, display, words),
        Remarks.of(scaled.cautions(), scaled.notes(), words));
  }

  private static List<Fact> facts(Scaled scaled, Display display, Words words) {
    Recipe recipe = scaled.recipe();
    ReferenceBrew reference = scaled.request().reference().brew();
    Display plain = display.in(NumberStyle.ENGLISH);
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            words.text("fact.dose"),
            display.mass(reference.dose()).toString(),
            display.mass(recipe.brew().dose()).toString()));
    facts.add(
        new Fact(
            words.text("fact.brew-water"),
            display.mass(reference.water()).toString(),
            display.mass(recipe.brew().water()).toString()));
    facts.add(
        new Fact(
            words.text("fact.brew-ratio"),
            display.ratio(scaled.referenceRatio()),
            display.ratio(recipe.brew().ratio())));
    facts.add(
        new Fact(
            words.text("fact.total-water"),
            display.ratio(scaled.referenceRatio()),
            display.ratio(recipe.totalWaterToCoffee())));
    facts.add(
        new Fact(
            words.text("fact.extraction"),
            display.extraction(scaled.referenceExtraction()).toString(),
            display.extraction(recipe.brew().extraction()).toString()));
    recipe
        .bed()
        .ifPresent(
            bed ->
                facts.add(
                    new Fact(
                        words.text("fact.depth"),
                        scaled.referenceDepth().map(d -> display.length(d).toString()).orElse("–"),
                        display.length(bed.depth()).toString())));
    recipe
        .contact()
        .ifPresent(
            contact ->
                facts.add(
                    new Fact(
                        words.text("fact.contact"),
                        scaled
                            .request()
                            .reference()
                            .contact()
                            .map(time -> display.duration(time).toString())
                            .orElse("–"),
                        words.text(
                            Saying.of("fact.about")
                                .with("time", plain.duration(contact.expected()))))));
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
    static List<TrialLine> of(Scaled scaled, Display display, Words words) {
      Display plain = display.in(NumberStyle.ENGLISH);
      return IntStream.range(0, scaled.trials().size())
          .mapToObj(
              i -> {
                Scaled.TrialResult result = scaled.trials().get(i);
                return new TrialLine(
                    i + 1,
                    display.mass(result.trial().brew().dose()),
                    display.ratio(result.ratio()),
                    words.text(outcome(result.forecast(), plain)),
                    words.text(outcome(result.brewed(), plain)));
              })
          .toList();
    }

    /** A saying's figures are written in the style of its words. */
    private static Saying outcome(Scaled.Outcome outcome, Display plain) {
      return outcome
          .beverage()
          .map(mass -> Saying.of("trial.outcome.weighed").with("beverage", plain.mass(mass)))
          .orElse(Saying.of("trial.outcome"))
          .with("strength", plain.strength(outcome.strength()))
          .with("extraction", plain.extraction(outcome.extraction()));
    }
  }

  /**
   * What to change.
   *
   * @param text what to do
   * @param basis what that rests on
   */
  record AdviceLine(String text, String basis) {}
}
