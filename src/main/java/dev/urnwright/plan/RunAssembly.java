package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.event.Kitchen.WaterCare;
import dev.urnwright.plan.Run.BatchTime;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.plan.Run.HeaterTime;
import dev.urnwright.plan.Run.Quality;
import dev.urnwright.plan.Run.Tap;
import dev.urnwright.plan.Run.WaterUse;
import dev.urnwright.plan.TimedDraft.Slot;
import dev.urnwright.plan.TimedPlan.Filling;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.HotWater.Draw;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import dev.urnwright.wording.Saying;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts a timed plan together into the run that people follow. */
final class RunAssembly {
  /** A filter is rinsed so long before its batch starts. */
  static final int RINSE_BEFORE = 2;

  /** A dispenser is rinsed hot so long before it is filled. */
  static final int PREHEAT_BEFORE = 3;

  /** Rinsing a dispenser hot takes this share of what it holds. */
  private static final double PREHEAT_SHARE = 0.25;

  private final Event event;
  private final Timetable timetable;
  private final List<CoffeePlan> coffees;
  private final TimedPlan timed;
  private final RunClock clock;
  private final Findings findings;
  private final List<Draw> hotDraws = new ArrayList<>();
  private Volume preheating = Volume.ofLitres(0);

  /**
   * An assembly.
   *
   * @param coffees finished, in the order of the timed plan's coffees
   */
  RunAssembly(
      Event event,
      Timetable timetable,
      List<CoffeePlan> coffees,
      TimedPlan timed,
      Findings findings) {
    this.event = event;
    this.timetable = timetable;
    this.coffees = coffees;
    this.timed = timed;
    this.clock = RunClock.of(event);
    this.findings = findings;
  }

  /** The run; what hot water it can't have is among the findings' problems. */
  Run run() {
    List<BatchTime> batches = batches();
    List<FillTime> fills = fills();
    WaterUse water = water();
    HotWaterPlan hot = new HotWaterPlan(event, hotDraws);
    hot.problem(clock, findings.display()).ifPresent(findings::refuse);
    List<HeaterTime> heaters = hot.heaters(clock);
    opensInTime(heaters);
    if (event.kitchen().heaters().isEmpty() && !hotDraws.isEmpty()) {
      findings.note(
          "no-heaters",
          Saying.of("note.no-heaters")
              .with("water", findings.display().volume(Volume.ofLitres(litres(hotDraws))))
              .with("hot", findings.display().temperature(event.serving().bypassTemperature())));
    }
    return new Run(
        batches,
        fills,
        heaters,
        water,
        new RunActions(event, batches, fills, heaters, findings.display(), timetable).actions(),
        quality());
  }

  private List<BatchTime> batches() {
    List<BatchTime> times = new ArrayList<>();
    WaterCare care = event.kitchen().water();
    for (int c = 0; c < coffees.size(); c++) {
      for (int b = 0; b < coffees.get(c).batches().size(); b++) {
        TimedBatch batch = timed.batches().get(c).get(b);
        times.add(
            new BatchTime(
                coffees.get(c).batches().get(b), clock.at(batch.start()), clock.at(batch.ready())));
        if (care.rinse().litres() > 0) {
          hotDraws.add(new Draw(batch.start() - RINSE_BEFORE, care.rinse().litres()));
        }
      }
    }
    times.sort(Comparator.comparing(BatchTime::start).thenComparing(t -> t.batch().id()));
    return times;
  }

  private List<FillTime> fills() {
    List<FillTime> times = new ArrayList<>();
    for (int c = 0; c < coffees.size(); c++) {
      List<Slot> slots = timed.draft().slots().get(c);
      for (int s = 0; s < slots.size(); s++) {
        Slot slot = slots.get(s);
        GroupPlan group = coffees.get(c).groups().get(slot.share());
        times.add(
            fill(group, group.fills().get(slot.number()), slot, timed.filling().get(c).get(s)));
      }
    }
    times.sort(Comparator.comparing(FillTime::filled).thenComparing(FillTime::due));
    return times;
  }

  private FillTime fill(GroupPlan group, Fill fill, Slot slot, Filling filling) {
    boolean iced = group.group().ice().isPresent();
    if (!iced) {
      hotDraws.add(
          new Draw(
              filling.lastReady(),
              Volume.ofWater(fill.blend().bypass(), event.serving().bypassTemperature()).litres()));
    }
    if (!iced && event.kitchen().water().preheat() && fill.dispenser().isPresent()) {
      Volume rinse = fill.dispenser().get().capacity().times(PREHEAT_SHARE);
      hotDraws.add(new Draw(filling.firstReady() - PREHEAT_BEFORE, rinse.litres()));
      preheating = preheating.plus(rinse);
    }
    Optional<Integer> hold = timetable.hold(group.group(), fill.dispenser());
    FillHeat heat = new FillHeat(event, group, fill);
    LocalDateTime filled = clock.at(filling.lastReady());
    LocalDateTime due = clock.at(slot.window().due());
    LocalDateTime last = clock.at(slot.window().lastPour());
    return new FillTime(
        fill,
        filling.unit().orElse("Vessel for " + group.group().name()),
        group.group().service().station(),
        new Tap(slot.number() % slot.taps() + 1, slot.taps()),
        filled,
        due,
        last,
        hold.map(h -> clock.at(filling.firstReady() + h)).orElse(last),
        iced ? Optional.empty() : Optional.of(heat.over(filled, due, last)));
  }

  private WaterUse water() {
    Mass brewing = Mass.ZERO;
    Mass bypass = Mass.ZERO;
    int batches = 0;
    for (CoffeePlan coffee : coffees) {
      brewing = brewing.plus(coffee.brewed().brew().water());
      batches += coffee.batches().size();
      for (Fill fill : coffee.fills()) {
        bypass = bypass.plus(fill.blend().bypass());
      }
    }
    return new WaterUse(
        brewing, bypass, event.kitchen().water().rinse().times(batches), preheating);
  }

  private void opensInTime(List<HeaterTime> heaters) {
    event
        .kitchen()
        .opens()
        .ifPresent(
            opens ->
                heaters.stream()
                    .filter(h -> h.on().isBefore(clock.day().atTime(opens)))
                    .findFirst()
                    .ifPresent(
                        h ->
                            findings.caution(
                                "heater-early",
                                Saying.of("caution.heater-early")
                                    .with("heater", h.name())
                                    .with("on", h.on().toLocalTime())
                                    .with("opens", opens))));
  }

  private Quality quality() {
    double grams = 0;
    double gramMinutes = 0;
    int greatest = 0;
    for (int c = 0; c < coffees.size(); c++) {
      List<Slot> slots = timed.draft().slots().get(c);
      for (int s = 0; s < slots.size(); s++) {
        Filling filling = timed.filling().get(c).get(s);
        if (coffees.get(c).groups().get(slots.get(s).share()).group().ice().isPresent()) {
          continue; // it is meant to stand and cool
        }
        for (Map.Entry<Integer, Double> drawn : filling.drawn().entrySet()) {
          int ready = timed.batches().get(c).get(drawn.getKey()).ready();
          grams += drawn.getValue();
          gramMinutes += drawn.getValue() * (slots.get(s).window().meanPour() - ready);
          greatest = Math.max(greatest, slots.get(s).window().lastPour() - ready);
        }
      }
    }
    double better = timed.solution().waitGramMinutes() - timed.solution().proof().waitBound();
    return new Quality(
        timed.solution().proof().fewestBatches(),
        timed.solution().proof().leastWait(),
        minutes(grams == 0 ? 0 : gramMinutes / grams),
        minutes(grams == 0 ? 0 : Math.max(0, gramMinutes - better) / grams),
        Duration.ofMinutes(greatest));
  }

  private static Duration minutes(double minutes) {
    return Duration.ofSeconds(Math.round(minutes * 60));
  }

  private static double litres(List<Draw> draws) {
    return draws.stream().mapToDouble(Draw::litres).sum();
  }
}
