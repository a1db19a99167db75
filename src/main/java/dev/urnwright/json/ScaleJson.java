package dev.urnwright.json;

import dev.urnwright.brew.ExtractionCurve;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.plan.Plan;
import dev.urnwright.scale.DayBed;
import dev.urnwright.scale.Grind;
import dev.urnwright.scale.Recipe;
import dev.urnwright.scale.Scaled;
import java.io.IOException;
import java.io.Writer;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes a scaled brew as a JSON document. */
public final class ScaleJson {
  private final String version;

  /** JSON that says which version of the program scaled. */
  public ScaleJson(String version) {
    this.version = version;
  }

  /**
   * Writes the document and a line end; doesn't close the writer.
   *
   * @throws IOException if the writer fails
   */
  public void write(Scaled scaled, Optional<Plan> day, Writer out) throws IOException {
    JsonDocument.write(out, fields -> document(scaled, day, fields));
  }

  private void document(Scaled scaled, Optional<Plan> day, JsonFields fields) throws IOException {
    fields.text("urnwright", version);
    fields.text("name", scaled.request().name());
    fields.text("coffee", scaled.request().coffee());
    fields.text("brewer", scaled.request().target().brewer().name());
    fields.percent("wanted_strength", scaled.wanted());
    fields.object("reference", scaled, given -> reference(given, fields));
    fields.object("recipe", scaled.recipe(), recipe -> recipe(recipe, fields));
    if (scaled.instead().isPresent()) {
      fields.object("without_bypass", scaled.instead().get(), plain -> recipe(plain, fields));
    }
    fields.object(
        "brewing",
        scaled.model(),
        model -> {
          fields.number("absorption", model.absorption().gramsPerGram());
          fields.array(
              "extractions",
              model.curve().knots(),
              (ExtractionCurve.Knot knot) -> {
                fields.ratio("ratio", knot.ratio());
                fields.percent("extraction", knot.extraction());
              });
        });
    fields.array(
        "advice",
        scaled.advice(),
        advice -> {
          fields.text("code", advice.code());
          fields.text("text", advice.text());
          fields.text("basis", advice.basis());
        });
    fields.array("trials", scaled.trials(), result -> trial(result, fields));
    if (day.isPresent()) {
      fields.array(
          "menu_batches",
          day.get().batches(),
          batch -> {
            fields.text("id", batch.id());
            fields.grams("dose_g", batch.brew().dose());
            fields.grams("brew_water_g", batch.brew().water());
            var time = day.get().run().flatMap(run -> run.timeOf(batch));
            if (time.isPresent()) {
              fields.text("start", moment(time.get().start(), day.get()));
              fields.text("ready", moment(time.get().ready(), day.get()));
            }
            Optional<DayBed> bed = DayBed.of(scaled, batch.brew().dose());
            if (bed.isPresent()) {
              fields.number("bed_mm", bed.get().depth().millimetres());
            }
          });
    }
    fields.notes("cautions", scaled.cautions());
    fields.notes("notes", scaled.notes());
  }

  /** Without a date only the hours and minutes mean anything. */
  private static String moment(LocalDateTime time, Plan day) {
    return day.event().date().isPresent()
        ? DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(time)
        : DateTimeFormatter.ISO_LOCAL_TIME.format(time);
  }

  private static void reference(Scaled scaled, JsonFields fields) throws IOException {
    ReferenceBrew brew = scaled.request().reference().brew();
    fields.grams("dose_g", brew.dose());
    fields.grams("brew_water_g", brew.water());
    if (brew.beverage().isPresent()) {
      fields.grams("beverage_g", brew.beverage().get());
    }
    fields.percent("strength", brew.strength());
    fields.ratio("ratio", scaled.referenceRatio());
    fields.percent("extraction", scaled.referenceExtraction());
    if (scaled.referenceDepth().isPresent()) {
      fields.number("bed_mm", scaled.referenceDepth().get().millimetres());
    }
    if (scaled.request().reference().contact().isPresent()) {
      fields.number("contact_s", scaled.request().reference().contact().get().toSeconds());
    }
  }

  private static void recipe(Recipe recipe, JsonFields fields) throws IOException {
    fields.count("batches", recipe.batches());
    fields.grams("dose_g", recipe.brew().dose());
    fields.grams("brew_water_g", recipe.brew().water());
    fields.grams("bloom_g", recipe.pours().bloom());
    fields.number("bloom_pause_s", recipe.pours().pause().toSeconds());
    fields.grams("beverage_g", recipe.brew().beverage());
    fields.percent("brewed_strength", recipe.brew().strength());
    fields.grams("bypass_g", recipe.cup().bypass());
    fields.number("bypass_share", recipe.bypassShare().percent());
    fields.grams("finished_g", recipe.cup().finished());
    fields.percent("strength", recipe.strength().strength());
    fields.percent("strength_low", recipe.strength().low());
    fields.percent("strength_high", recipe.strength().high());
    fields.percent("extraction", recipe.brew().extraction());
    fields.ratio("ratio", recipe.brew().ratio());
    fields.ratio("total_water_to_coffee", recipe.totalWaterToCoffee());
    if (recipe.bed().isPresent()) {
      fields.number("bed_mm", recipe.bed().get().depth().millimetres());
      fields.number("basket_height_needed_mm", recipe.bed().get().needed().millimetres());
      fields.text(
          "bed_verdict",
          recipe.bed().get().verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
    if (recipe.contact().isPresent()) {
      fields.number("contact_s", recipe.contact().get().expected().toSeconds());
      Optional<Grind> grind = recipe.contact().get().grind();
      if (grind.isPresent()) {
        fields.text("grind_of_that_time", grind.get().word());
      }
    }
  }

  private static void trial(Scaled.TrialResult result, JsonFields fields) throws IOException {
    fields.grams("dose_g", result.trial().brew().dose());
    fields.ratio("ratio", result.ratio());
    for (String which : List.of("forecast", "brewed")) {
      fields.object(
          which,
          which.equals("forecast") ? result.forecast() : result.brewed(),
          outcome -> {
            if (outcome.beverage().isPresent()) {
              fields.grams("beverage_g", outcome.beverage().get());
            }
            fields.percent("strength", outcome.strength());
            fields.percent("extraction", outcome.extraction());
          });
    }
  }
}
