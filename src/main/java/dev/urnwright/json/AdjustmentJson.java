package dev.urnwright.json;

import dev.urnwright.day.Adjustment;
import dev.urnwright.day.Adjustment.BatchChange;
import dev.urnwright.day.Adjustment.CoffeeDay;
import dev.urnwright.day.Adjustment.FillChange;
import dev.urnwright.day.Adjustment.Judged;
import dev.urnwright.day.Adjustment.Remedy;
import dev.urnwright.plan.Fill;
import java.io.IOException;
import java.io.Writer;

/** Writes what to do now as a JSON document, in the units of the plan's. */
public final class AdjustmentJson {
  private final String version;

  /** JSON that says which version of the program adjusted. */
  public AdjustmentJson(String version) {
    this.version = version;
  }

  /**
   * Writes the document and a line end; doesn't close the writer.
   *
   * @throws IOException if the writer fails
   */
  public void write(Adjustment adjustment, Writer out) throws IOException {
    JsonDocument.write(
        out,
        fields -> {
          fields.text("urnwright", version);
          fields.text("event", adjustment.plan().event().name());
          body(adjustment, fields);
        });
  }

  static void body(Adjustment adjustment, JsonFields fields) throws IOException {
    fields.flag("readings_stand", adjustment.stands());
    fields.array("coffees", adjustment.coffees(), day -> coffee(day, fields));
  }

  private static void coffee(CoffeeDay day, JsonFields fields) throws IOException {
    fields.text("coffee", day.coffee().key());
    fields.array("measured", day.measured(), judged -> measured(judged, fields));
    fields.count("cups_short", day.cupsShort());
    fields.array("fills", day.fills(), change -> fill(change, fields));
    fields.array("standing", day.standing(), remedy -> remedy(remedy, fields));
    fields.array("batches", day.batches(), change -> batch(change, fields));
  }

  private static void measured(Judged judged, JsonFields fields) throws IOException {
    var batch = judged.batch();
    fields.text("batch", batch.planned().id());
    fields.flag("stands", judged.verdict().stands());
    fields.texts("remarks", judged.verdict().remarks());
    fields.grams("dose_g", batch.weighed().dose());
    fields.grams("brew_water_g", batch.weighed().brewWater());
    fields.grams("beverage_g", batch.beverage());
    fields.flag("beverage_weighed", batch.isBeverageWeighed());
    fields.percent("strength", batch.strength());
    fields.flag("strength_read", batch.isRead());
    fields.percent("extraction", batch.extraction());
    fields.number("absorption", batch.absorption().gramsPerGram());
  }

  private static void fill(FillChange change, JsonFields fields) throws IOException {
    Fill now = change.now();
    fields.text("fill", now.id());
    fields.text("group", now.groupName());
    fields.flag("changed", change.isChanged());
    fields.texts("batches", now.draws().stream().map(Fill.Draw::batchId).toList());
    fields.parts(now.blend());
    fields.percent("strength", now.blend().strength());
    fields.percent("strength_target", change.wanted());
    fields.count("cups_short", change.cupsShort());
  }

  private static void remedy(Remedy remedy, JsonFields fields) throws IOException {
    fields.text("fill", remedy.fill().id());
    fields.grams("holds_g", remedy.holds());
    fields.percent("strength", remedy.strength());
    fields.percent("strength_target", remedy.wanted());
    fields.flag("can_be_put_right", remedy.dilution().isPresent());
    if (remedy.dilution().isPresent()) {
      fields.grams("draw_off_g", remedy.dilution().get().drawOff());
      fields.grams("add_water_g", remedy.dilution().get().water());
      fields.grams("add_concentrate_g", remedy.dilution().get().concentrate());
      fields.percent("strength_then", remedy.dilution().get().strength());
    }
    if (remedy.batchId().isPresent()) {
      fields.text("concentrate_of", remedy.batchId().get());
    }
  }

  private static void batch(BatchChange change, JsonFields fields) throws IOException {
    fields.text("batch", change.now().id());
    fields.flag("changed", change.isChanged());
    fields.grams("dose_g", change.now().brew().dose());
    fields.grams("brew_water_g", change.now().brew().water());
    fields.grams("beverage_g", change.now().brew().beverage());
    fields.percent("strength", change.now().brew().strength());
    if (change.limit().isPresent()) {
      fields.text("limit", change.limit().get());
    }
  }
}
