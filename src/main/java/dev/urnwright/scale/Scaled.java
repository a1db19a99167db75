package dev.urnwright.scale;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.Note;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Length;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.wording.Saying;
import java.util.List;
import java.util.Optional;

/**
 * A brew, scaled.
 *
 * @param request what was asked for
 * @param carried what the reference alone tells of this coffee
 * @param model the same, with what the trials taught
 * @param wanted strength in the cup
 * @param recipe what to brew
 * @param instead the plain brew at the usual ratio, when {@code recipe} sends water round the bed
 * @param referenceDepth how deep the reference lies, when its basket is known
 * @param advice what to change first, and why
 * @param trials what was forecast for each trial, and what came of it
 * @param cautions what can hurt someone or disappoint them
 * @param notes every assumption made and default used
 */
public record Scaled(
    ScaleRequest request,
    BrewModel carried,
    BrewModel model,
    Strength wanted,
    Recipe recipe,
    Optional<Recipe> instead,
    Optional<Length> referenceDepth,
    List<Advice> advice,
    List<TrialResult> trials,
    List<Note> cautions,
    List<Note> notes) {
  /** Copies the lists. */
  public Scaled {
    advice = List.copyOf(advice);
    trials = List.copyOf(trials);
    cautions = List.copyOf(cautions);
    notes = List.copyOf(notes);
  }

  /** The reference's brew ratio. */
  public BrewRatio referenceRatio() {
    return BrewRatio.of(request.reference().brew().water(), request.reference().brew().dose());
  }

  /** What the reference extracted. */
  public Extraction referenceExtraction() {
    return carried.curve().at(referenceRatio());
  }

  /**
   * What to do, and why.
   *
   * @param code a stable short name
   * @param what to do
   * @param why what that rests on
   */
  public record Advice(String code, Saying what, Saying why) {
    /** What to do, in English. */
    public String text() {
      return what.toString();
    }

    /** What that rests on, in English. */
    public String basis() {
      return why.toString();
    }
  }

  /**
   * One trial against its forecast.
   *
   * @param trial as brewed
   * @param ratio its brew ratio
   * @param forecast what the reference alone foretold
   * @param brewed what came of it
   */
  public record TrialResult(
      ScaleRequest.Trial trial, BrewRatio ratio, Outcome forecast, Outcome brewed) {}

  /**
   * What a brew gives.
   *
   * @param beverage when known
   * @param strength of it
   * @param extraction solids dissolved over dose
   */
  public record Outcome(Optional<Mass> beverage, Strength strength, Extraction extraction) {}
}
