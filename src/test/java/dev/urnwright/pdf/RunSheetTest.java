package dev.urnwright.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Provision;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.sheet.SheetPlans;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RunSheetTest {
  private static final Map<ActionKind, String> WORDS =
      Map.of(
          ActionKind.SWITCH_ON, "Switch on",
          ActionKind.GRIND, "Weigh and grind",
          ActionKind.RINSE, "Rinse the filter",
          ActionKind.START, "Start brewing",
          ActionKind.PREHEAT, "Preheat",
          ActionKind.FILL, "Fill",
          ActionKind.CARRY, "Carry",
          ActionKind.COLLECT, "Bring back",
          ActionKind.DISCARD, "Pour away");

  private static PrintedPages printed(Plan plan) throws IOException {
    return PrintedPages.of(out -> PrepSheets.write(plan, out));
  }

  @ParameterizedTest
  @ValueSource(strings = {"autumn-conference", "harvest-supper", "office-carafes"})
  void everyActionIsPrintedInOrderWithItsTimeSubjectAndPlace(String sample) throws IOException {
    Plan plan = SheetPlans.sample(sample);
    Run run = plan.run().orElseThrow();
    try (PrintedPages pages = printed(plan)) {
      String text = String.join(" ", pages.texts());
      int at = text.indexOf("The run");
      int end = text.indexOf("Timeline");
      for (Run.Action action : run.actions()) {
        String subject = action.what().equals(action.where()) ? "" : action.what() + " ";
        String row =
            action.at().toLocalTime()
                + " "
                + WORDS.get(action.kind())
                + " "
                + subject
                + action.where()
                + " ";
        int found = text.indexOf(row, at);
        assertTrue(found > at && found < end, () -> "not printed, or not in order: " + row);
        at = found;
      }
    }
  }

  @Test
  void theHeadOfTheRunSaysWhatItTakes() throws IOException {
    Plan plan = SheetPlans.sample("autumn-conference");
    Run run = plan.run().orElseThrow();
    try (PrintedPages pages = printed(plan)) {
      String page = pageWith(pages.texts(), "The run");
      assertTrue(page.contains("first batch starts at " + clock(run.batches().get(0).start())));
      assertTrue(page.contains("mean " + rounded(run.quality().meanAge().toSeconds())), page);
      assertFalse(run.heaters().isEmpty());
      for (Run.HeaterTime heater : run.heaters()) {
        assertTrue(
            page.contains(heater.name() + " " + clock(heater.on()) + " " + clock(heater.hot())),
            page);
      }
      // 12 house and 3 decaf batches, each filter rinsed with 300 ml: 4.50 l.
      assertEquals(15, run.batches().size());
      assertTrue(page.contains("rinsing filters 4.50\u00a0l"), page);
    }
  }

  /** Less than an hour in whole minutes. */
  private static String rounded(long seconds) {
    return (seconds + 30) / 60 + "\u00a0min";
  }

  private static String clock(LocalDateTime at) {
    return at.toLocalTime().toString();
  }

  private static String pageWith(List<String> texts, String words) {
    return texts.stream().filter(text -> text.contains(words)).findFirst().orElseThrow();
  }

  @Test
  void labelsAndSheetsCarryTheTimesOfTheRun() throws IOException {
    Plan plan = SheetPlans.sample("autumn-conference");
    Run run = plan.run().orElseThrow();
    Map<String, Run.BatchTime> batches =
        run.batches().stream()
            .collect(Collectors.toMap(time -> time.batch().id(), Function.identity()));
    try (PrintedPages pages = printed(plan)) {
      List<String> texts = pages.texts();
      String all = String.join(" ", texts);
      String brewing = all.substring(all.indexOf(" Brew "), all.indexOf("Fill the dispensers"));
      for (Run.BatchTime time : run.batches()) {
        assertTrue(
            brewing.contains(
                time.batch().id()
                    + " "
                    + time.batch().unit().orElseThrow().label()
                    + " start "
                    + clock(time.start())
                    + " ready "
                    + clock(time.ready())),
            brewing);
      }
      String filling = all.substring(all.indexOf("Fill the dispensers"));
      String labels = all.substring(all.indexOf("Dispenser labels"));
      for (Run.FillTime time : run.fills()) {
        Fill fill = time.fill();
        assertTrue(
            filling.contains(
                fill.id()
                    + " "
                    + time.unit()
                    + " full at "
                    + clock(time.filled())
                    + " first cup "
                    + clock(time.due())),
            fill.id());
        LocalDateTime brewed =
            fill.draws().stream()
                .map(draw -> batches.get(draw.batchId()).ready())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        String label = labels.substring(labels.indexOf(" " + fill.id() + " "));
        label = label.substring(0, label.indexOf("use by ") + "use by 00:00".length());
        assertTrue(label.contains(time.unit() + ", first cup " + clock(time.due())), label);
        assertTrue(
            label.endsWith("brewed at " + clock(brewed) + " use by " + clock(time.useBy())), label);
      }
    }
  }

  @Test
  void withoutARunThereIsNoRunSheetAndLabelsLeaveRoomToWrite() throws IOException {
    Plan plan =
        SheetPlans.planned(
            Events.event(
                Events.serving(new Provision.Mean(), 0),
                List.of(Events.coffee("house", Events.ratio(13))),
                List.of(Events.group("Guests", 20, 200, 1.3)),
                Events.equipment(1, List.of(), List.of())));
    assertTrue(plan.run().isEmpty());
    try (PrintedPages pages = printed(plan)) {
      String text = String.join(" ", pages.texts());
      assertFalse(text.contains("The run"), text);
      assertFalse(text.contains("Timeline"), text);
      assertTrue(text.contains("brewed at use by"), text);
    }
  }
}
