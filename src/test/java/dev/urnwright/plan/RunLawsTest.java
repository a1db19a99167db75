package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.input.EventReader;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.BatchTime;
import dev.urnwright.plan.Run.FillTime;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every run on a clock. */
class RunLawsTest {
  private final List<String> faults = new ArrayList<>();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "samples/autumn-conference.yaml",
        "samples/harvest-supper.yaml",
        "samples/corner-cafe.yaml",
        "samples/office-carafes.yaml",
        "templates/event.yaml"
      })
  void ofSamples(String file) {
    Event event = new EventReader().read(Path.of(file)).value().orElseThrow();
    new Planner().plan(event).value().orElseThrow().run().ifPresent(run -> check(event, run));
    assertEquals(List.of(), faults);
  }

  @Test
  void ofRandomEvents() {
    int runs = 0;
    for (int seed = 1; seed <= RandomEvents.count(150); seed++) {
      Event event = RandomEvents.sane(seed);
      Optional<Run> run = new Planner().plan(event).value().flatMap(Plan::run);
      if (run.isPresent()) {
        check(event, run.get());
        runs++;
        assertEquals(List.of(), faults, "seed " + seed);
      }
    }
    assertTrue(runs > RandomEvents.count(150) / 15, "too few runs: " + runs);
  }

  private void check(Event event, Run run) {
    run.fills().forEach(fill -> fill(event, fill));
    for (FillTime a : run.fills()) {
      for (FillTime b : run.fills()) {
        boolean apart = !a.filled().isBefore(b.lastPour()) || !b.filled().isBefore(a.lastPour());
        boolean listed = a.fill().dispenser().isPresent();
        that(
            a == b || !listed || !a.unit().equals(b.unit()) || apart, "twice at once: " + a.unit());
      }
    }
    Duration turnaround = event.kitchen().handling().turnaround();
    for (BatchTime a : run.batches()) {
      for (BatchTime b : run.batches()) {
        boolean same = a != b && a.batch().unit().equals(b.batch().unit());
        boolean apart =
            !a.start().isBefore(b.ready().plus(turnaround))
                || !b.start().isBefore(a.ready().plus(turnaround));
        that(!same || apart, "one brewer, two batches: " + a + " and " + b);
      }
    }
    actions(event, run);
  }

  private void fill(Event event, FillTime fill) {
    Duration cooling = fill.heat().isEmpty() ? event.kitchen().handling().cooling() : Duration.ZERO;
    LocalDateTime there =
        fill.filled()
            .plus(event.kitchen().handling().transfer())
            .plus(event.kitchen().carryTo(fill.station()))
            .plus(cooling);
    that(!there.isAfter(fill.due()), "late: " + fill);
    that(!fill.lastPour().isBefore(fill.due()), "poured before it is due: " + fill);
    that(!fill.useBy().isBefore(fill.lastPour()), "too old: " + fill);
  }

  /** Nothing is done before the kitchen opens, nor long after the last cup, nor out of order. */
  private void actions(Event event, Run run) {
    List<LocalDateTime> times = run.actions().stream().map(Action::at).toList();
    that(times.equals(times.stream().sorted().toList()), "actions are out of order: " + times);
    LocalDateTime first = run.batches().get(0).start().toLocalDate().atStartOfDay().minusDays(1);
    if (event.kitchen().opens().isPresent()) {
      first = run.batches().get(0).start().toLocalDate().atTime(event.kitchen().opens().get());
    }
    LocalDateTime last =
        run.fills().stream()
            .map(FillTime::useBy)
            .max(Comparator.naturalOrder())
            .orElseThrow()
            .plusHours(1);
    for (Action action : run.actions()) {
      that(!action.at().isBefore(first) && !action.at().isAfter(last), "outside: " + action);
    }
    for (BatchTime batch : run.batches()) {
      that(
          run.actions().stream()
              .anyMatch(
                  a ->
                      a.kind() == Run.ActionKind.START
                          && a.at().equals(batch.start())
                          && a.what().contains(batch.batch().id())),
          "nobody starts " + batch);
    }
  }

  private void that(boolean holds, String fault) {
    if (!holds) {
      faults.add(fault);
    }
  }
}
