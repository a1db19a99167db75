package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.event.Note;
import dev.urnwright.input.EventReader;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.plan.Run.Stretch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How many people a run takes. */
class CrewTest {
  @TempDir Path folder;

  private static final String ONE_BATCH =
      """
      event: A morning
      coffee:
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Hall, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30, station: Hall}
      brewers:
        - {name: Brewer, dose: 100 g to 1.2 kg, water: 16 l, cycle: 10 min}
      dispensers:
        - {name: Urn, capacity: 6 l, hold: 60 min}
      stations:
        - {name: Hall, carry: 4 min}
      """;

  @Test
  void theWorkOfOneBatch() throws IOException {
    // Carried at 9:56 and filled 3 min before, so ready at 9:53 and started at 9:43, reloaded from
    // 9:41; ground at 9:37 for 2 min. Nothing falls together but the way there and back:
    // preheat at 9:50, 1 min; fill 9:53 to 9:56; carry 9:56 to 10:04; poured away at 10:53, when
    // it is an hour old: 4 min there, a minute, 4 min back.
    Run.Crew crew = plan(ONE_BATCH).run().orElseThrow().crew();
    assertEquals(
        List.of(
            "09:28-09:29 1",
            "09:37-09:39 1",
            "09:41-09:44 1",
            "09:50-09:51 1",
            "09:53-10:04 1",
            "10:53-11:02 1"),
        crew.stretches().stream()
            .map(s -> s.from().toLocalTime() + "-" + s.until().toLocalTime() + " " + s.people())
            .toList());
    assertEquals(1, crew.enough());
  }

  @Test
  void whatTheKitchenSaysIsKept() throws IOException {
    String conference = Files.readString(Path.of("samples/autumn-conference.yaml"));
    Plan free = plan(conference);
    int enough = free.run().orElseThrow().crew().enough();
    int most = most(free);
    assertTrue(enough < most, enough + " of " + most);
    Plan levelled = plan(withPeople(conference, enough));
    assertEquals(enough, most(levelled));
    assertTrue(levelled.cautions().stream().map(Note::code).noneMatch("crew"::equals));
    Plan few = plan(withPeople(conference, enough - 1));
    assertTrue(few.cautions().stream().map(Note::code).anyMatch("crew"::equals));
  }

  /** Whoever is short of hands still brews, fills and pours in time. */
  @Test
  void nothingElseGivesWay() throws IOException {
    String conference = Files.readString(Path.of("samples/autumn-conference.yaml"));
    Run free = plan(conference).run().orElseThrow();
    for (int people = 1; people <= 6; people++) {
      Plan plan = plan(withPeople(conference, people));
      Run run = plan.run().orElseThrow();
      assertEquals(free.batches().toString(), run.batches().toString());
      assertEquals(free.heaters(), run.heaters());
      Map<String, FillTime> fills = new TreeMap<>();
      free.fills().forEach(fill -> fills.put(fill.fill().id(), fill));
      var handling = plan.event().kitchen().handling();
      for (FillTime fill : run.fills()) {
        FillTime before = fills.get(fill.fill().id());
        assertEquals(before.filledAt(fill.filled()), fill);
        assertTrue(!fill.filled().isBefore(before.filled()), "filled before it is brewed: " + fill);
        var carried = at(run, ActionKind.CARRY, fill.fill().id());
        assertTrue(!carried.isBefore(fill.filled().plus(handling.transfer())), fill.toString());
        assertTrue(
            !carried.plus(plan.event().kitchen().carryTo(fill.station())).isAfter(fill.due()),
            fill.toString());
      }
      // each brewer is empty when it is started again
      for (Run.BatchTime batch : run.batches()) {
        for (Run.BatchTime next : run.batches()) {
          if (next.batch().unit().equals(batch.batch().unit())
              && next.start().isAfter(batch.start())) {
            run.fills().stream()
                .filter(f -> f.fill().draws().stream().anyMatch(d -> last(f, run, batch, d)))
                .forEach(
                    f ->
                        assertTrue(
                            !f.filled().plus(handling.turnaround()).isAfter(next.start()),
                            f.toString()));
          }
        }
      }
      assertEquals(free.actions().size(), run.actions().size());
    }
  }

  private static boolean last(FillTime fill, Run run, Run.BatchTime batch, Fill.Draw draw) {
    return draw.batchId().equals(batch.batch().id())
        && fill.fill().draws().stream()
            .allMatch(
                d ->
                    run.batches().stream()
                        .filter(b -> b.batch().id().equals(d.batchId()))
                        .noneMatch(b -> b.ready().isAfter(batch.ready())));
  }

  private static java.time.LocalDateTime at(Run run, ActionKind kind, String what) {
    return run.actions().stream()
        .filter(action -> action.kind() == kind && action.what().equals(what))
        .map(Action::at)
        .findFirst()
        .orElseThrow();
  }

  private static int most(Plan plan) {
    return plan.run().orElseThrow().crew().busiest().map(Stretch::people).orElseThrow();
  }

  private static String withPeople(String event, int people) {
    return event.replace("kitchen:\n", "kitchen:\n  people: " + people + "\n");
  }

  private Plan plan(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("event.yaml"), text);
    Event event = new EventReader().read(file).value().orElseThrow();
    return new Planner().plan(event).value().orElseThrow();
  }
}
