package dev.urnwright.json;

import dev.urnwright.day.Ladder;
import dev.urnwright.day.Tasting;
import dev.urnwright.day.Tasting.TastedGroup;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.OnTheDay.Rung;
import dev.urnwright.plan.Plan;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Optional;

/** Writes taste ladders as a JSON document, in the units of the plan's. */
public final class LadderJson {
  private final String version;

  /** JSON that says which version of the program wrote it. */
  public LadderJson(String version) {
    this.version = version;
  }

  /**
   * Writes the document and a line end; doesn't close the writer.
   *
   * @param tasted what came of tasting, when something did
   * @throws IOException if the writer fails
   */
  public void write(Plan plan, List<Ladder> ladders, Optional<Tasting.Outcome> tasted, Writer out)
      throws IOException {
    JsonDocument.write(
        out,
        fields -> {
          fields.text("urnwright", version);
          fields.text("event", plan.event().name());
          fields.array("ladders", ladders, ladder -> ladder(plan, ladder, fields));
          if (tasted.isPresent()) {
            fields.object("tasted", tasted.get(), outcome -> outcome(outcome, fields));
          }
        });
  }

  private static void ladder(Plan plan, Ladder ladder, JsonFields fields) throws IOException {
    fields.text("coffee", ladder.coffee().coffee().key());
    if (ladder.dispenser().isPresent()) {
      fields.text("fill", ladder.dispenser().get().id());
    }
    fields.percent("concentrate_strength", ladder.from().strength());
    fields.flag("concentrate_read", ladder.from().read());
    fields.percent("extraction_planned", ladder.coffee().brewed().brew().extraction());
    fields.grams("sample_g", ladder.table().sample());
    fields.grams("step_g", ladder.table().step());
    fields.count("steps_that_fit", ladder.stepsThatFit(plan));
    fields.array("groups", ladder.groups(), group -> group(ladder, group, fields));
    fields.array("steps", ladder.table().rungs(), rung -> rung(ladder, rung, fields));
  }

  private static void group(Ladder ladder, GroupPlan group, JsonFields fields) throws IOException {
    fields.text("group", group.group().name());
    fields.percent("strength_target", group.group().strength());
    fields.grams("concentrate_g", group.fills().get(0).blend().concentrate());
    fields.number("expected_steps", ladder.expectedSteps(group));
  }

  private static void rung(Ladder ladder, Rung rung, JsonFields fields) throws IOException {
    fields.grams("water_g", rung.water());
    fields.grams("together_g", ladder.table().sample().plus(rung.water()));
    fields.percent("strength", rung.strength());
    fields.grams("bypass_g", rung.bypass());
  }

  private static void outcome(Tasting.Outcome outcome, JsonFields fields) throws IOException {
    fields.text("coffee", outcome.ladder().coffee().coffee().key());
    fields.percent("as_if_read", outcome.asIfRead());
    fields.array("groups", outcome.groups(), group -> tasted(group, fields));
    fields.object(
        "adjustment", outcome.adjustment(), adjustment -> AdjustmentJson.body(adjustment, fields));
  }

  private static void tasted(TastedGroup group, JsonFields fields) throws IOException {
    fields.text("group", group.group().group().name());
    if (group.steps().isPresent()) {
      fields.number("steps", group.steps().getAsDouble());
    }
    fields.number("water_per_concentrate", group.waterPerGram());
    fields.percent("strength", group.strength());
  }
}
