package dev.urnwright.scale;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Note;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Length;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What one should know of a scaled brew: cautions, and what was assumed. */
final class Remarks {
  /** Further from the reference than this, a constant extraction is only a guess. */
  private static final double NEAR = 1.0;

  /**
   * Brewers are tested full, and never below this unless made for it (a testing centre's rules).
   */
  private static final double LEAST_LOAD = 2.0 / 3;

  private final ScaleRequest request;
  private final Brewings brewings;
  private final BrewModel model;
  private final Display display;
  private final RecipeMaker maker;

  Remarks(
      ScaleRequest request,
      Brewings brewings,
      BrewModel model,
      Display display,
      RecipeMaker maker) {
    this.request = request;
    this.brewings = brewings;
    this.model = model;
    this.display = display;
    this.maker = maker;
  }

  List<Note> cautions(Recipe recipe) {
    List<Note> cautions = new ArrayList<>();
    cautions.add(
        new Note(
            "scald",
            "Brew water and fresh beverage scald, and a full vessel is heavy. Let a sample cool"
                + " before reading it. What the maker of the brewer says comes first."));
    recipe.bed().ifPresent(bed -> depth(bed, recipe, cautions));
    if (recipe.contact().isPresent()
        && recipe.contact().get().expected().compareTo(Recipe.Contact.MOST) > 0) {
      cautions.add(
          new Note(
              "slow",
              "Water is expected to touch the coffee for "
                  + display.duration(recipe.contact().get().expected())
                  + "; brewers are certified to take no longer than "
                  + display.duration(Recipe.Contact.MOST)
                  + "."));
    }
    Mass full = request.target().brewer().greatestDose();
    if (recipe.brew().dose().grams() < LEAST_LOAD * full.grams()
        && request.wish().beverage().isPresent()) {
      cautions.add(
          new Note(
              "part-load",
              "A batch of "
                  + display.mass(recipe.brew().dose())
                  + " is less than two thirds of what this brewer takes. Published testing rules"
                  + " load a brewer no lower, unless it was made for part loads: try it first."));
    }
    window(recipe, cautions);
    return cautions;
  }

  private void depth(Recipe.Bed bed, Recipe recipe, List<Note> cautions) {
    String guide = display.length(Recipe.Bed.LEAST) + " to " + display.length(Recipe.Bed.MOST);
    if (bed.verdict() == Recipe.Bed.Verdict.SHALLOW) {
      String cure =
          maker
              .deepEnough()
              .map(
                  dose ->
                      "From "
                          + display.mass(dose)
                          + " of coffee on, it lies deep enough: make more at once, or use a"
                          + " narrower basket.")
              .orElse("A narrower basket, or one with an insert, would make it deeper.");
      cautions.add(
          new Note(
              "shallow-bed",
              "The bed is "
                  + display.length(bed.depth())
                  + " deep, less than the "
                  + guide
                  + " that brew most evenly. "
                  + cure));
    }
    if (bed.verdict() == Recipe.Bed.Verdict.DEEP) {
      Mass most =
          request
              .target()
              .basket()
              .orElseThrow()
              .doseFor(Recipe.Bed.MOST, request.brewing().bulkGramsPerMillilitre())
              .roundDownTo(request.scaleStep());
      int batches =
          (int) Math.ceil(recipe.brew().dose().grams() * recipe.batches() / most.grams() - 1e-9);
      cautions.add(
          new Note(
              "deep-bed",
              "The bed is "
                  + display.length(bed.depth())
                  + " deep, more than the "
                  + guide
                  + " that brew most evenly. Up to "
                  + display.mass(most)
                  + " lies within them, so that "
                  + batches
                  + " batches would; or send part of the water round the bed, with a trial of the"
                  + " stronger brew first."));
    }
    Optional<Length> height = request.target().basket().flatMap(Basket::height);
    if (height.isPresent() && height.get().compareTo(bed.needed()) < 0) {
      cautions.add(
          new Note(
              "overflow",
              "Grounds swell by about half the bed's depth, so this dose needs a basket "
                  + display.length(bed.needed())
                  + " high; this one is "
                  + display.length(height.get())
                  + " and may overflow with hot water and grounds."));
    }
  }

  private void window(Recipe recipe, List<Note> cautions) {
    Extraction extraction = recipe.brew().extraction();
    boolean inside =
        extraction.compareTo(request.print().window().leastExtracted()) >= 0
            && extraction.compareTo(request.print().window().mostExtracted()) <= 0;
    if (!inside) {
      cautions.add(
          new Note(
              "outside-window",
              "An extraction of "
                  + display.extraction(extraction)
                  + " lies outside "
                  + display.extraction(request.print().window().leastExtracted())
                  + " to "
                  + display.extraction(request.print().window().mostExtracted())
                  + ", where a cup is usually liked."));
    }
  }

  List<Note> notes(Recipe recipe) {
    List<Note> notes = new ArrayList<>(request.defaults());
    if (brewings.assumesAbsorption()) {
      notes.add(
          new Note(
              "absorption-assumed",
              "The reference's beverage was not weighed, so its grounds are taken to keep "
                  + display.absorption(brewings.carried().absorption())
                  + "."));
    }
    ReferenceBrew reference = request.reference().brew();
    double away =
        Math.abs(recipe.brew().ratio().gramsPerGram() - Brewings.ratio(reference).gramsPerGram());
    if (request.trials().isEmpty()) {
      notes.add(
          new Note(
              "extraction-carried",
              "Until a trial was brewed, this brewer is taken to extract as the reference did, "
                  + display.extraction(brewings.carried().curve().at(recipe.brew().ratio()))
                  + " give or take 2 points (k = 2)."));
      if (away > NEAR) {
        notes.add(
            new Note(
                "ratio-far",
                "The planned ratio, "
                    + display.ratio(recipe.brew().ratio())
                    + ", is far from the reference's; extraction changes with the ratio, so brew a"
                    + " trial at it."));
      }
    } else {
      notes.add(
          new Note(
              "trials-count",
              "What this brewer's grounds keep ("
                  + display.absorption(model.absorption())
                  + ") and what it extracts come from its trials, not from the reference."));
      if (model.curve().knots().size() > 1 && !model.curve().covers(recipe.brew().ratio())) {
        notes.add(
            new Note(
                "ratio-untried",
                "The planned ratio, "
                    + display.ratio(recipe.brew().ratio())
                    + ", lies outside of those tried; there the nearest trial's extraction is"
                    + " taken."));
      }
    }
    if (recipe.bypassShare().fraction() > 0) {
      notes.add(
          new Note(
              "bypass-share",
              display.share(Share.ofFraction(recipe.bypassShare().fraction()))
                  + " of the finished beverage is bypass: water over everything finished. Some"
                  + " sources put it over all water instead, which is less."));
    }
    recipe
        .bed()
        .filter(bed -> bed.verdict() == Recipe.Bed.Verdict.NOT_GUIDED)
        .ifPresent(
            bed ->
                notes.add(
                    new Note(
                        "cone",
                        "In a cone (taken to be 60° wide) depth is told from the tip; the"
                            + " published guide is for flat beds.")));
    return notes;
  }
}
