package dev.urnwright.json;

import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Run;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.plan.Run.BatchTime;
import dev.urnwright.plan.Run.Crew;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.plan.Run.Heat;
import dev.urnwright.plan.Run.HeaterTime;
import dev.urnwright.plan.Run.Quality;
import dev.urnwright.plan.Run.Stretch;
import dev.urnwright.plan.Run.WaterUse;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** The parts of the document that tell of the run. */
final class RunJson {
  private static final DateTimeFormatter DAY_AND_TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final JsonFields fields;
  private final DateTimeFormatter moments;

  /**
   * Writes with those fields.
   *
   * @param dated whether the event has a date; without one, only times of the day are known
   */
  RunJson(JsonFields fields, boolean dated) {
    this.fields = fields;
    this.moments = dated ? DAY_AND_TIME : TIME;
  }

  /** Fields of a batch. */
  void batch(BatchTime time) throws IOException {
    moment("start", time.start());
    moment("ready", time.ready());
  }

  /** Fields of a fill. */
  void fill(FillTime time) throws IOException {
    fields.text("dispenser_unit", time.unit());
    if (time.station().isPresent()) {
      fields.text("station", time.station().get());
    }
    fields.count("tap", time.tap().number());
    moment("filled", time.filled());
    moment("due", time.due());
    moment("last_pour", time.lastPour());
    moment("use_by", time.useBy());
    if (time.heat().isPresent()) {
      Heat heat = time.heat().get();
      fields.number("filled_temperature", heat.filled().celsius());
      fields.number("first_pour_temperature", heat.firstPour().celsius());
      fields.number("pour_temperature", heat.lastPour().celsius());
      fields.number("wanted_temperature", heat.wanted().celsius());
    }
  }

  /** Fields of a group. */
  void group(GroupPlan group, Run run) throws IOException {
    if (run.coolestPour(group).isPresent()) {
      fields.number("pour_temperature", run.coolestPour(group).get().celsius());
    }
  }

  /** The object that tells of the run as a whole. */
  void run(Run run) throws IOException {
    fields.object("quality", run.quality(), this::quality);
    fields.object("water", run.water(), this::water);
    fields.array("heaters", run.heaters(), this::heater);
    fields.array("actions", run.actions(), this::action);
    fields.object("crew", run.crew(), this::crew);
  }

  private void crew(Crew crew) throws IOException {
    if (crew.people().isPresent()) {
      fields.count("people", crew.people().getAsInt());
    }
    fields.count("most", crew.busiest().map(Stretch::people).orElse(0));
    fields.count("enough", crew.enough());
    fields.array("stretches", crew.stretches(), this::stretch);
  }

  private void stretch(Stretch stretch) throws IOException {
    moment("from", stretch.from());
    moment("until", stretch.until());
    fields.count("people", stretch.people());
  }

  private void quality(Quality quality) throws IOException {
    fields.flag("fewest_batches_proven", quality.fewestBatches());
    fields.flag("least_age_proven", quality.leastAge());
    minutes("mean_age_min", quality.meanAge());
    minutes("mean_age_bound_min", quality.meanAgeBound());
    minutes("greatest_age_min", quality.greatestAge());
  }

  private void water(WaterUse water) throws IOException {
    fields.grams("brewing_g", water.brewing());
    fields.grams("bypass_g", water.bypass());
    fields.number("rinsing_ml", water.rinsing().millilitres());
    fields.number("preheating_ml", water.preheating().millilitres());
  }

  private void heater(HeaterTime heater) throws IOException {
    fields.text("name", heater.name());
    moment("on", heater.on());
    moment("hot", heater.hot());
    minutes("to_heat_min", heater.toHeat());
  }

  private void action(Action action) throws IOException {
    moment("at", action.at());
    fields.text("kind", word(action.kind()));
    fields.text("what", action.what());
    fields.text("where", action.where());
    fields.text("detail", action.detail());
  }

  private static String word(ActionKind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private void moment(String name, LocalDateTime time) throws IOException {
    fields.text(name, moments.format(time));
  }

  private void minutes(String name, Duration duration) throws IOException {
    fields.number(name, duration.toSeconds() / 60.0);
  }
}
