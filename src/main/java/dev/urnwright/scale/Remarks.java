package dev.urnwright.scale;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Note;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Length;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.wording.Saying;
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
    cautions.add(new Note("scald", Saying.of("scale.scald")));
    recipe.bed().ifPresent(bed -> depth(bed, recipe, cautions));
    if (recipe.contact().isPresent()
        && recipe.contact().get().expected().compareTo(Recipe.Contact.MOST) > 0) {
      cautions.add(
          new Note(
              "slow",
              Saying.of("scale.slow")
                  .with("expected", display.duration(recipe.contact().get().expected()))
                  .with("most", display.duration(Recipe.Contact.MOST))));
    }
    Mass full = request.target().brewer().greatestDose();
    if (recipe.brew().dose().grams() < LEAST_LOAD * full.grams()
        && request.wish().beverage().isPresent()) {
      cautions.add(
          new Note(
              "part-load",
              Saying.of("scale.part-load").with("dose", display.mass(recipe.brew().dose()))));
    }
    window(recipe, cautions);
    return cautions;
  }

  private void depth(Recipe.Bed bed, Recipe recipe, List<Note> cautions) {
    if (bed.verdict() == Recipe.Bed.Verdict.SHALLOW) {
      Saying cure =
          maker
              .deepEnough()
              .map(dose -> Saying.of("scale.shallow.more").with("dose", display.mass(dose)))
              .orElse(Saying.of("scale.shallow.basket"));
      cautions.add(new Note("shallow-bed", bed("scale.shallow", bed).with("cure", cure)));
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
              bed("scale.deep", bed).with("dose", display.mass(most)).with("batches", batches)));
    }
    Optional<Length> height = request.target().basket().flatMap(Basket::height);
    if (height.isPresent() && height.get().compareTo(bed.needed()) < 0) {
      cautions.add(
          new Note(
              "overflow",
              Saying.of("scale.overflow")
                  .with("needed", display.length(bed.needed()))
                  .with("height", display.length(height.get()))));
    }
  }

  private Saying bed(String key, Recipe.Bed bed) {
    return Saying.of(key)
        .with("depth", display.length(bed.depth()))
        .with("least", display.length(Recipe.Bed.LEAST))
        .with("most", display.length(Recipe.Bed.MOST));
  }

  private Figure ratio(Recipe recipe) {
    return Figure.bare(display.ratio(recipe.brew().ratio()));
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
              Saying.of("scale.outside-window")
                  .with("extraction", display.extraction(extraction))
                  .with("least", display.extraction(request.print().window().leastExtracted()))
                  .with("most", display.extraction(request.print().window().mostExtracted()))));
    }
  }

  List<Note> notes(Recipe recipe) {
    List<Note> notes = new ArrayList<>(request.defaults());
    if (brewings.assumesAbsorption()) {
      notes.add(
          new Note(
              "absorption-assumed",
              Saying.of("scale.absorption-assumed")
                  .with("kept", display.absorption(brewings.carried().absorption()))));
    }
    ReferenceBrew reference = request.reference().brew();
    double away =
        Math.abs(recipe.brew().ratio().gramsPerGram() - Brewings.ratio(reference).gramsPerGram());
    if (request.trials().isEmpty()) {
      notes.add(
          new Note(
              "extraction-carried",
              Saying.of("scale.extraction-carried")
                  .with(
                      "extraction",
                      display.extraction(brewings.carried().curve().at(recipe.brew().ratio())))));
      if (away > NEAR) {
        notes.add(new Note("ratio-far", Saying.of("scale.ratio-far").with("ratio", ratio(recipe))));
      }
    } else {
      notes.add(
          new Note(
              "trials-count",
              Saying.of("scale.trials-count")
                  .with("kept", display.absorption(model.absorption()))));
      if (model.curve().knots().size() > 1 && !model.curve().covers(recipe.brew().ratio())) {
        notes.add(
            new Note(
                "ratio-untried", Saying.of("scale.ratio-untried").with("ratio", ratio(recipe))));
      }
    }
    if (recipe.bypassShare().fraction() > 0) {
      notes.add(
          new Note(
              "bypass-share",
              Saying.of("scale.bypass-share")
                  .with(
                      "share", display.share(Share.ofFraction(recipe.bypassShare().fraction())))));
    }
    recipe
        .bed()
        .filter(bed -> bed.verdict() == Recipe.Bed.Verdict.NOT_GUIDED)
        .ifPresent(bed -> notes.add(new Note("cone", Saying.of("scale.cone"))));
    return notes;
  }
}
