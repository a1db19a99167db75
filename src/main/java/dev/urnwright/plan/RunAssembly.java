package dev.urnwright.plan;

import static java.util.Objects.requireNonNull;

import dev.urnwright.event.Event;
import dev.urnwright.plan.Handwork.Water;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.plan.Run.BatchTime;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.plan.Run.HeaterTime;
import dev.urnwright.plan.Run.Tap;
import dev.urnwright.plan.TimedDraft.Slot;
import dev.urnwright.plan.TimedPlan.Filling;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.HotWater.Draw;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import dev.urnwright.wording.Saying;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts a timed plan together into the run that people follow. */
final class RunAssembly {
  /** A filter is rinsed so long before its batch starts. */
  static final int RINSE_BEFORE = 2;

  /** Of more to do than this nobody asks how few people could do it. */
  private static final int MOST_SPREAD = 6_000;

  /** A dispenser is rinsed hot so long before it is filled. */
  static final int PREHEAT_BEFORE = 3;

  private final Event event;
  private final Timetable timetable;
  private final List<CoffeePlan> coffees;
  private final TimedPlan timed;
  private final RunClock clock;
  private final Findings findings;
  private final Map<String, Integer> firstReady = new HashMap<>(); // of a fill's batches

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
    List<HeaterTime> heaters = new HotWaterPlan(event, draws(fills, List.of())).heaters(clock);
    Doing planned =
        new Doing(
            fills,
            new RunActions(event, batches, fills, heaters, findings.display(), timetable)
                .actions());
    int enough = enough(batches, heaters, planned);
    Doing doing = planned;
    if (event.kitchen().people().count().isPresent()) {
      doing = levelled(event.kitchen().people().count().getAsInt(), batches, heaters, planned);
    }
    List<Draw> draws = draws(doing.fills(), doing.actions());
    new HotWaterPlan(event, draws).problem(clock, findings.display()).ifPresent(findings::refuse);
    opensInTime(heaters);
    if (event.kitchen().heaters().isEmpty() && !draws.isEmpty()) {
      findings.note(
          "no-heaters",
          Saying.of("note.no-heaters")
              .with("water", findings.display().volume(Volume.ofLitres(litres(draws))))
              .with("hot", findings.display().temperature(event.serving().bypassTemperature())));
    }
    return new Run(
        batches,
        doing.fills(),
        heaters,
        new WaterNeeded(event).of(batches.stream().map(BatchTime::batch).toList(), doing.fills()),
        doing.actions(),
        work(batches, doing, Water.NONE).crew(enough),
        new CoffeeAge(coffees, timed).quality());
  }

  /** What is done, with the fills as they are completed then. */
  private record Doing(List<FillTime> fills, List<Action> actions) {}

  private Handwork work(List<BatchTime> batches, Doing doing, Water water) {
    return new Handwork(event, batches, doing.fills(), doing.actions(), water);
  }

  /** Spread over time for so many people, with hot water drawn when heaters have it. */
  private Doing levelled(
      int people, List<BatchTime> batches, List<HeaterTime> heaters, Doing planned) {
    for (Water water : Water.values()) {
      List<Action> actions = work(batches, planned, water).levelled(people);
      Doing doing = new Doing(filledAt(planned.fills(), actions), actions);
      HotWaterPlan drawn = new HotWaterPlan(event, draws(doing.fills(), actions));
      if (drawn.isServedBy(heaters, clock)) {
        return doing;
      }
    }
    return planned;
  }

  /** How few people the run could be spread for. */
  private int enough(List<BatchTime> batches, List<HeaterTime> heaters, Doing planned) {
    int high = work(batches, planned, Water.NONE).most();
    int low = planned.actions().size() > MOST_SPREAD ? high : 0;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      Doing doing = levelled(middle, batches, heaters, planned);
      if (work(batches, doing, Water.NONE).most() <= middle) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /**
   * Fills at the times at which hands complete them.
   *
   * @param actions in order of time
   */
  private static List<FillTime> filledAt(List<FillTime> fills, List<Action> actions) {
    Map<String, LocalDateTime> last = new HashMap<>();
    actions.stream()
        .filter(action -> action.kind() == ActionKind.FILL)
        .forEach(action -> last.put(action.what(), action.at()));
    return fills.stream()
        .map(fill -> fill.filledAt(requireNonNull(last.get(fill.fill().id()))))
        .sorted(Comparator.comparing(FillTime::filled).thenComparing(FillTime::due))
        .toList();
  }

  /** The hot water of the run: for filters, for dispensers, and as bypass. */
  private List<Draw> draws(List<FillTime> fills, List<Action> actions) {
    Map<String, LocalDateTime> preheated = new HashMap<>();
    actions.stream()
        .filter(action -> action.kind() == ActionKind.PREHEAT)
        .forEach(action -> preheated.put(action.what(), action.at()));
    List<Draw> draws = new ArrayList<>();
    WaterNeeded water = new WaterNeeded(event);
    double rinse = event.kitchen().water().rinse().litres();
    if (rinse > 0) {
      for (List<TimedBatch> ofCoffee : timed.batches()) {
        ofCoffee.forEach(batch -> draws.add(new Draw(batch.start() - RINSE_BEFORE, rinse)));
      }
    }
    for (FillTime fill : fills) {
      if (fill.heat().isPresent()) {
        draws.add(
            new Draw(
                clock.minute(fill.filled()),
                Volume.ofWater(fill.fill().blend().bypass(), event.serving().bypassTemperature())
                    .litres()));
      }
      if (water.preheating(fill).litres() > 0) {
        String id = fill.fill().id();
        int usual = requireNonNull(firstReady.get(id)) - PREHEAT_BEFORE;
        draws.add(
            new Draw(
                Optional.ofNullable(preheated.get(id)).map(clock::minute).orElse(usual),
                water.preheating(fill).litres()));
      }
    }
    return draws;
  }

  private List<BatchTime> batches() {
    List<BatchTime> times = new ArrayList<>();
    for (int c = 0; c < coffees.size(); c++) {
      for (int b = 0; b < coffees.get(c).batches().size(); b++) {
        TimedBatch batch = timed.batches().get(c).get(b);
        times.add(
            new BatchTime(
                coffees.get(c).batches().get(b), clock.at(batch.start()), clock.at(batch.ready())));
      }
    }
    times.sort(Comparator.comparing(BatchTime::start));
    return times;
  }

  private List<FillTime> fills() {
    List<FillTime> times = new ArrayList<>();
    for (int c = 0; c < coffees.size(); c++) {
      List<Slot> slots = timed.draft().slots().get(c);
      for (int s = 0; s < slots.size(); s++) {
        Slot slot = slots.get(s);
        GroupPlan group = coffees.get(c).groups().get(slot.share());
        Fill fill = group.fills().get(slot.number());
        Filling filling = timed.filling().get(c).get(s);
        firstReady.put(fill.id(), filling.firstReady());
        times.add(fill(group, fill, slot, filling));
      }
    }
    times.sort(Comparator.comparing(FillTime::filled).thenComparing(FillTime::due));
    return times;
  }

  private FillTime fill(GroupPlan group, Fill fill, Slot slot, Filling filling) {
    boolean iced = group.group().ice().isPresent();
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

  private static double litres(List<Draw> draws) {
    return draws.stream().mapToDouble(Draw::litres).sum();
  }
}
