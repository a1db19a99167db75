package dev.urnwright.json;

import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import dev.urnwright.schedule.BrewerUnit;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes a plan as a JSON document. */
public final class PlanJson {
  private final String version;

  /** JSON that says which version of the program planned. */
  public PlanJson(String version) {
    this.version = version;
  }

  /**
   * Writes the document and a line end; doesn't close the writer.
   *
   * @throws IOException if the writer fails
   */
  public void write(Plan plan, Writer out) throws IOException {
    JsonDocument.write(out, fields -> document(plan, fields));
  }

  private void document(Plan plan, JsonFields fields) throws IOException {
    fields.text("urnwright", version);
    fields.object("event", plan.event(), event -> event(event, fields));
    Certainty certainty = plan.certainty();
    fields.array(
        "coffees", plan.coffees(), coffee -> new CoffeeJson(fields).write(coffee, certainty));
    RunJson times = new RunJson(fields, plan.event().date().isPresent());
    fields.array(
        "groups", plan.groups(), group -> group(group, certainty, plan.run(), times, fields));
    fields.array(
        "batches",
        rows(plan, CoffeePlan::batches),
        row -> batch(row, certainty, plan.run(), times, fields));
    fields.array(
        "fills",
        rows(plan, CoffeePlan::fills),
        row -> fill(row, certainty, plan.run(), times, fields));
    if (plan.run().isPresent()) {
      fields.object("run", plan.run().get(), times::run);
    }
    ShoppingJson shopping = new ShoppingJson(fields);
    fields.array("shopping", plan.shopping(), shopping::line);
    if (plan.costs().isPresent()) {
      fields.object("costs", plan.costs().get(), shopping::costs);
    }
    if (!plan.event().taught().isEmpty()) {
      fields.object("journal", plan.event().taught(), new TaughtJson(fields)::write);
    }
    fields.array("packing", plan.packing(), shopping::packing);
    fields.notes("cautions", plan.cautions());
    fields.notes("notes", plan.notes());
  }

  /**
   * A part of one coffee's plan.
   *
   * @param coffee the coffee's key
   * @param part the part
   */
  private record Row<T>(String coffee, T part) {}

  /** Finds the parts of one coffee's plan. */
  private interface Parts<T> {
    List<T> of(CoffeePlan plan);
  }

  private static <T> Iterable<Row<T>> rows(Plan plan, Parts<T> parts) {
    return () ->
        plan.coffees().stream()
            .flatMap(
                coffee ->
                    parts.of(coffee).stream().map(part -> new Row<>(coffee.coffee().key(), part)))
            .iterator();
  }

  private static void event(Event event, JsonFields fields) throws IOException {
    fields.text("name", event.name());
    optional("date", event.date(), fields);
    optional("time", event.time(), fields);
    optional("kind", event.kind(), fields);
    fields.text("units", event.print().units().name().toLowerCase(Locale.ROOT));
  }

  private static void group(
      GroupPlan plan, Certainty certainty, Optional<Run> run, RunJson times, JsonFields fields)
      throws IOException {
    fields.text("name", plan.group().name());
    fields.text("coffee", plan.coffee().key());
    fields.count("headcount", plan.group().guests().headcount());
    fields.count("cups", plan.demand().cups());
    fields.number("cups_mean", plan.demand().mean());
    fields.number("chance_enough", 100 * plan.demand().chanceEnough());
    fields.number("poured_ml", plan.group().cup().poured().millilitres());
    fields.number("served_at", plan.group().cup().servedAt().celsius());
    fields.grams("finished_g", plan.needed().finished());
    fields.percent("strength_target", plan.group().strength());
    fields.percent("strength_reached", plan.strengthReached());
    fields.interval("strength", certainty.of(plan));
    fields.number("chance_in_window", 100 * certainty.chanceInWindow(plan));
    fields.parts(plan.needed());
    fields.number("total_water_to_coffee", plan.cup().totalWaterToCoffee().gramsPerGram());
    fields.object("cup", plan.cup().blend(), fields::parts);
    fields.object(
        "caffeine_mg_per_cup",
        plan.cup().caffeine(),
        caffeine -> {
          fields.number("low", caffeine.lowMilligrams());
          fields.number("high", caffeine.highMilligrams());
        });
    fields.count("taps", plan.taps());
    optional("station", plan.group().service().station(), fields);
    Optional<TimeWindow> window = plan.group().service().window();
    optional("serve_from", window.map(TimeWindow::start), fields);
    optional("serve_to", window.map(TimeWindow::end), fields);
    if (run.isPresent()) {
      times.group(plan, run.get());
    }
  }

  private static void batch(
      Row<Batch> row, Certainty certainty, Optional<Run> run, RunJson times, JsonFields fields)
      throws IOException {
    Batch batch = row.part();
    fields.text("id", batch.id());
    fields.text("coffee", row.coffee());
    optional("brewer", batch.unit().map(BrewerUnit::label), fields);
    fields.grams("dose_g", batch.brew().dose());
    fields.grams("brew_water_g", batch.brew().water());
    fields.number("brew_water_ml", batch.waterByVolume().millilitres());
    fields.grams("absorbed_g", batch.brew().absorbed());
    fields.grams("beverage_g", batch.brew().beverage());
    fields.percent("strength", batch.brew().strength());
    fields.interval("strength", certainty.of(batch));
    Optional<Run.BatchTime> time = run.flatMap(each -> each.timeOf(batch));
    if (time.isPresent()) {
      times.batch(time.get());
    }
  }

  private static void fill(
      Row<Fill> row, Certainty certainty, Optional<Run> run, RunJson times, JsonFields fields)
      throws IOException {
    Fill fill = row.part();
    fields.text("id", fill.id());
    fields.text("group", fill.groupName());
    fields.text("coffee", row.coffee());
    optional("dispenser", fill.dispenser().map(Dispenser::name), fields);
    fields.texts("batches", fill.draws().stream().map(Fill.Draw::batchId).toList());
    fields.array(
        "draws",
        fill.draws(),
        draw -> {
          fields.text("batch", draw.batchId());
          fields.grams("concentrate_g", draw.concentrate());
        });
    fields.parts(fill.blend());
    fields.percent("strength", fill.blend().strength());
    fields.interval("strength", certainty.of(fill));
    fields.percent("strength_in_dispenser", fill.blend().liquidStrength());
    fields.number("level_ml", fill.level().volume().millilitres());
    if (fill.level().full().isPresent()) {
      fields.number("full", fill.level().full().get().percent());
    }
    fields.number("bypass_jug_ml", fill.byJug().bypass().millilitres());
    fields.percent("strength_by_jug", fill.byJug().strength());
    Optional<Run.FillTime> time = run.flatMap(each -> each.timeOf(fill));
    if (time.isPresent()) {
      times.fill(time.get());
    }
  }

  private static void optional(String name, Optional<?> value, JsonFields fields)
      throws IOException {
    if (value.isPresent()) {
      fields.text(name, value.get().toString());
    }
  }
}
