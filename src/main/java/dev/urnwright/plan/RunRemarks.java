package dev.urnwright.plan;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.wording.Saying;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The cautions and the assumptions that go with a run on the clock. */
final class RunRemarks {
  /** No bypass is asked for hotter than this: it would boil on high ground. */
  private static final double HOTTEST = 97;

  private final Event event;
  private final Findings findings;
  private final Display display;

  RunRemarks(Event event, Findings findings) {
    this.event = event;
    this.findings = findings;
    this.display = findings.display();
  }

  void on(Run run) {
    cool(run);
    assumed(run);
  }

  /** Groups whose last cup is cooler than they want, with what would mend it. */
  private void cool(Run run) {
    Map<String, FillTime> coolest = new LinkedHashMap<>();
    for (FillTime fill : run.fills()) {
      if (fill.heat().filter(heat -> !heat.isWarmEnough()).isPresent()) {
        coolest.merge(
            fill.fill().groupName(),
            fill,
            (a, b) ->
                a.heat().orElseThrow().lastPour().compareTo(b.heat().orElseThrow().lastPour()) <= 0
                    ? a
                    : b);
      }
    }
    coolest.forEach(
        (group, fill) -> {
          Run.Heat heat = fill.heat().orElseThrow();
          findings.caution(
              "cool",
              Saying.of("caution.cool")
                  .with("group", group)
                  .with("last", display.temperature(heat.lastPour()))
                  .with("wanted", display.temperature(heat.wanted()))
                  .with("cure", mend(fill, heat)));
        });
  }

  private Saying mend(FillTime fill, Run.Heat heat) {
    double missing = heat.wanted().kelvinsAbove(heat.lastPour());
    double bypass = fill.fill().blend().bypass().grams();
    double all = fill.fill().blend().liquid().grams();
    // The whole fill must be warmer by what the last cup lacks; only the bypass can bring it, and
    // none would have to be infinitely hot.
    double hotter = event.serving().bypassTemperature().celsius() + 1.15 * missing * all / bypass;
    Saying cure =
        hotter <= HOTTEST
            ? Saying.of("caution.cool.hotter-bypass")
                .with("bypass", display.temperature(Temperature.ofCelsius(Math.ceil(hotter))))
            : Saying.of("caution.cool.smaller-fills");
    return event.kitchen().water().preheat()
        ? cure
        : Saying.of("caution.cool.rinse-first").with("cure", cure);
  }

  private void assumed(Run run) {
    event.equipment().brewers().stream()
        .filter(brewer -> brewer.cycle().isEmpty())
        .sorted(Comparator.comparing(Brewer::name))
        .forEach(
            brewer ->
                findings.note(
                    "cycle-assumed",
                    Saying.of("note.cycle-assumed")
                        .with("brewer", brewer.name())
                        .with("minutes", TimedDraft.USUAL_CYCLE)));
    List<String> unheld =
        event.equipment().dispensers().stream()
            .filter(d -> d.hold().isEmpty())
            .map(Dispenser::name)
            .toList();
    if (!unheld.isEmpty()) {
      findings.note(
          "hold-assumed",
          Saying.of("note.hold-assumed")
              .with("dispensers", String.join(", ", unheld))
              .with("minutes", Timetable.USUAL_HOLD.toMinutes()));
    }
    List<String> unpoured =
        event.equipment().dispensers().stream()
            .filter(d -> d.cupsPerMinute().isEmpty())
            .map(Dispenser::name)
            .toList();
    if (!unpoured.isEmpty()) {
      findings.note(
          "pour-assumed",
          Saying.of("note.pour-assumed")
              .with("dispensers", String.join(", ", unpoured))
              .with("cups", Math.round(Timetable.USUAL_POUR)));
    }
    findings.note(
        "run-handling",
        Saying.of("note.run-handling")
            .with("turnaround", event.kitchen().handling().turnaround().toMinutes())
            .with("transfer", event.kitchen().handling().transfer().toMinutes())
            .with("carry", event.kitchen().handling().carry().toMinutes())
            .with("warming", TimedDraft.WARM_UP));
    if (!event.equipment().circuits().isEmpty()) {
      findings.note("circuit-limit", Saying.of("note.circuit-limit"));
    }
    if (event.groups().stream().anyMatch(group -> group.ice().isPresent())) {
      findings.note(
          "cooling-time",
          Saying.of("note.cooling-time")
              .with("minutes", event.kitchen().handling().cooling().toMinutes()));
    }
    findings.note("run-quality", quality(run.quality()));
    if (event.date().isEmpty()) {
      findings.note("no-date", Saying.of("note.no-date"));
    }
  }

  private static Saying quality(Run.Quality quality) {
    return Saying.of("note.run-quality")
        .with("mean", quality.meanAge().toMinutes())
        .with("greatest", quality.greatestAge().toMinutes())
        .with("freshest", quality.leastAge())
        .with("bound", quality.meanAgeBound().toMinutes())
        .with("fewest", quality.fewestBatches());
  }
}
