package dev.urnwright.plan;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Temperature;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
              group
                  + ": the last cup would be poured at "
                  + display.temperature(heat.lastPour())
                  + ", below the wanted "
                  + display.temperature(heat.wanted())
                  + ". "
                  + mend(fill, heat)
                  + " What is hotter scalds faster.");
        });
  }

  private String mend(FillTime fill, Run.Heat heat) {
    double missing = heat.wanted().kelvinsAbove(heat.lastPour());
    double bypass = fill.fill().blend().bypass().grams();
    double all = fill.fill().blend().liquid().grams();
    // The whole fill must be warmer by what the last cup lacks; only the bypass can bring it.
    double hotter =
        event.serving().bypassTemperature().celsius()
            + (bypass == 0 ? Double.MAX_VALUE : 1.15 * missing * all / bypass);
    Optional<String> hotBypass =
        hotter <= HOTTEST
            ? Optional.of(
                "Bypass at "
                    + display.temperature(Temperature.ofCelsius(Math.ceil(hotter)))
                    + " would do.")
            : Optional.empty();
    String preheat =
        event.kitchen().water().preheat() ? "" : "Rinse the dispensers hot before filling. ";
    return preheat
        + hotBypass.orElse("Smaller fills, poured sooner, or better insulated dispensers help.");
  }

  private void assumed(Run run) {
    noteBrewers(
        "cycle-assumed",
        event.equipment().brewers().stream().filter(b -> b.cycle().isEmpty()).toList(),
        "a cycle of " + TimedDraft.USUAL_CYCLE + " min is assumed");
    List<String> unheld =
        event.equipment().dispensers().stream()
            .filter(d -> d.hold().isEmpty())
            .map(Dispenser::name)
            .toList();
    if (!unheld.isEmpty()) {
      findings.note(
          "hold-assumed",
          String.join(", ", unheld)
              + ": coffee is assumed to be good for "
              + Timetable.USUAL_HOLD.toMinutes()
              + " min.");
    }
    List<String> unpoured =
        event.equipment().dispensers().stream()
            .filter(d -> d.cupsPerMinute().isEmpty())
            .map(Dispenser::name)
            .toList();
    if (!unpoured.isEmpty()) {
      findings.note(
          "pour-assumed",
          String.join(", ", unpoured)
              + ": guests are assumed to get "
              + Math.round(Timetable.USUAL_POUR)
              + " cups a minute from one.");
    }
    findings.note(
        "run-handling",
        "The run counts "
            + event.kitchen().handling().turnaround().toMinutes()
            + " min to empty and reload a brewer, "
            + event.kitchen().handling().transfer().toMinutes()
            + " min to fill a dispenser, "
            + event.kitchen().handling().carry().toMinutes()
            + " min to carry it to a station that names no time, and "
            + TimedDraft.WARM_UP
            + " min for a brewer to warm up.");
    if (!event.equipment().circuits().isEmpty()) {
      findings.note(
          "circuit-limit",
          "Circuits are loaded to 80\u00a0% of their breaker at most, heaters counted at full power"
              + " all the time. A licensed electrician and your local code have the last word.");
    }
    if (event.groups().stream().anyMatch(group -> group.ice().isPresent())) {
      findings.note(
          "cooling-time",
          "Concentrate for iced groups is given "
              + event.kitchen().handling().cooling().toMinutes()
              + " min to cool.");
    }
    findings.note("run-quality", quality(run.quality()));
    if (event.date().isEmpty()) {
      findings.note("no-date", "The event has no date, so the run has times of the day only.");
    }
  }

  private void noteBrewers(String code, List<Brewer> brewers, String text) {
    brewers.stream()
        .sorted(Comparator.comparing(Brewer::name))
        .forEach(brewer -> findings.note(code, brewer.name() + ": " + text + "."));
  }

  private static String quality(Run.Quality quality) {
    String age =
        "Coffee is on average "
            + quality.meanAge().toMinutes()
            + " min old when it is poured, at most "
            + quality.greatestAge().toMinutes()
            + " min. ";
    String proof =
        quality.leastAge()
            ? "No schedule with these batches pours it fresher"
            : "No schedule with these batches can pour it fresher than "
                + quality.meanAgeBound().toMinutes()
                + " min on average";
    return age
        + proof
        + (quality.fewestBatches()
            ? ", and none needs fewer batches."
            : "; whether fewer batches could do is not proven.");
  }
}
