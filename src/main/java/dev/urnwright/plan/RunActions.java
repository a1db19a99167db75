package dev.urnwright.plan;

import static java.util.Objects.requireNonNull;

import dev.urnwright.event.Event;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.plan.Run.BatchTime;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.plan.Run.HeaterTime;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.wording.Saying;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Everything that hands must do in a run, in order of time. */
final class RunActions {
  /** Coffee is weighed and ground so long before its batch starts. */
  private static final int GRIND_BEFORE = 6;

  /** Preheating and a breath, before a dispenser that came back is filled. */
  private static final int PREHEAT_TIME = 5;

  private final Event event;
  private final BatchCoffees coffees;
  private final List<BatchTime> batches;
  private final List<FillTime> fills;
  private final List<HeaterTime> heaters;
  private final Display display;
  private final Timetable timetable;
  private final List<Action> actions = new ArrayList<>();
  private final Set<String> collected = new HashSet<>(); // fills whose dispenser comes back

  RunActions(
      Event event,
      List<BatchTime> batches,
      List<FillTime> fills,
      List<HeaterTime> heaters,
      Display display,
      Timetable timetable) {
    this.event = event;
    this.coffees = new BatchCoffees(event);
    this.batches = batches;
    this.fills = fills;
    this.heaters = heaters;
    this.display = display;
    this.timetable = timetable;
  }

  List<Action> actions() {
    heaters.forEach(this::switchOn);
    Set<String> warm = new HashSet<>();
    batches.forEach(batch -> brew(batch, warm));
    Map<String, BatchTime> byId =
        batches.stream().collect(Collectors.toMap(b -> b.batch().id(), b -> b));
    returns(byId);
    fills.forEach(fill -> pour(fill, byId));
    actions.sort(Comparator.comparing(Action::at).thenComparing(Action::kind));
    return actions;
  }

  private void add(LocalDateTime at, ActionKind kind, String what, String where, Saying how) {
    actions.add(new Action(at, kind, what, where, how));
  }

  private void switchOn(HeaterTime heater) {
    add(
        heater.on(),
        ActionKind.SWITCH_ON,
        heater.name(),
        heater.name(),
        Saying.of("how.heat").with("minutes", heater.toHeat().toMinutes() + 1));
  }

  private void brew(BatchTime time, Set<String> warm) {
    Batch batch = time.batch();
    String unit = batch.unit().orElseThrow().label();
    Saying coffee = coffeeOf(batch.id());
    if (warm.add(unit)) {
      add(
          time.start().minusMinutes(TimedDraft.WARM_UP),
          ActionKind.SWITCH_ON,
          unit,
          unit,
          Saying.of("how.warm-up"));
    }
    add(
        time.start().minusMinutes(GRIND_BEFORE),
        ActionKind.GRIND,
        batch.id(),
        unit,
        Saying.of("how.grind")
            .with("dose", display.mass(batch.brew().dose()))
            .with("coffee", coffee));
    if (event.kitchen().water().rinse().litres() > 0) {
      add(
          time.start().minusMinutes(RunAssembly.RINSE_BEFORE),
          ActionKind.RINSE,
          batch.id(),
          unit,
          Saying.of("how.rinse").with("water", display.volume(event.kitchen().water().rinse())));
    }
    Saying start =
        Saying.of("how.start")
            .with("coffee", coffee)
            .with("dose", display.mass(batch.brew().dose()))
            .with("water", display.mass(batch.brew().water()))
            .with("ready", time.ready().toLocalTime());
    add(
        time.start(),
        ActionKind.START,
        batch.id(),
        unit,
        coffees
            .toRinse(time, batches)
            .map(
                other ->
                    Saying.of("how.start.rinsed").with("start", start).with("other", other.name()))
            .orElse(start));
  }

  private void pour(FillTime time, Map<String, BatchTime> byId) {
    Fill fill = time.fill();
    Saying coffee = coffeeOf(fill.id());
    LocalDateTime first = first(time, byId);
    if (time.heat().isPresent()
        && event.kitchen().water().preheat()
        && fill.dispenser().isPresent()) {
      add(
          first.minusMinutes(RunAssembly.PREHEAT_BEFORE),
          ActionKind.PREHEAT,
          fill.id(),
          time.unit(),
          Saying.of("how.preheat").with("coffee", coffee));
    }
    LocalDateTime lastReady = last(time, byId);
    for (Fill.Draw draw : fill.drawsByScale(event.equipment().scaleStep())) {
      LocalDateTime ready = batchOf(draw, byId).ready();
      if (ready.isBefore(lastReady)) {
        add(
            ready,
            ActionKind.FILL,
            fill.id(),
            time.unit(),
            Saying.of("how.draw")
                .with("coffee", coffee)
                .with("part", display.mass(draw.concentrate()))
                .with("batch", draw.batchId())
                .with("rest", time.filled().toLocalTime()));
      }
    }
    add(time.filled(), ActionKind.FILL, fill.id(), time.unit(), last(time, byId, coffee));
    int carry = Timetable.minutesUp(event.kitchen().carryTo(time.station()));
    add(
        time.due().minusMinutes(carry),
        ActionKind.CARRY,
        fill.id(),
        time.station().orElse(fill.groupName()),
        Saying.of("how.carry")
            .with("unit", time.called())
            .with("coffee", coffee)
            .with("due", time.due().toLocalTime())
            .with("others", time.tap().hasOthers())
            .with("tap", time.tap().saying()));
    if (!collected.contains(fill.id())) {
      add(
          time.useBy(),
          ActionKind.DISCARD,
          fill.id(),
          time.station().orElse(fill.groupName()),
          Saying.of("how.discard").with("unit", time.called()));
    }
  }

  /** What completes a fill: the rest of the concentrate, and the water. */
  private Saying last(FillTime time, Map<String, BatchTime> byId, Saying coffee) {
    Fill fill = time.fill();
    LocalDateTime lastReady = last(time, byId);
    boolean topUp =
        fill.draws().stream().anyMatch(draw -> batchOf(draw, byId).ready().isBefore(lastReady));
    List<Fill.Draw> draws =
        fill.drawsByScale(event.equipment().scaleStep()).stream()
            .filter(draw -> !batchOf(draw, byId).ready().isBefore(lastReady))
            .toList();
    Mass more = draws.stream().map(Fill.Draw::concentrate).reduce(Mass.ZERO, Mass::plus);
    return Saying.of(topUp ? "how.top-up" : "how.fill")
        .with("coffee", coffee)
        .with("more", display.mass(more))
        .with("batches", draws.stream().map(Fill.Draw::batchId).collect(Collectors.joining(", ")))
        .with("concentrate", display.mass(fill.blend().concentrate()))
        .with("water", display.mass(fill.blend().bypass()))
        .with("diluted", !fill.blend().bypass().isZero())
        .with("iced", !fill.blend().ice().isZero());
  }

  /** Dispensers that are filled again come back first, with time to be cleaned. */
  private void returns(Map<String, BatchTime> byId) {
    Map<String, FillTime> last = new HashMap<>();
    List<FillTime> inOrder =
        fills.stream().sorted(Comparator.comparing(fill -> first(fill, byId))).toList();
    for (FillTime time : inOrder) {
      FillTime before = last.put(time.unit(), time);
      if (before != null && before.fill().dispenser().isPresent()) {
        collected.add(before.fill().id());
        collect(before, time, first(time, byId));
      }
    }
  }

  private void collect(FillTime before, FillTime next, LocalDateTime refilled) {
    int carry = Timetable.minutesUp(event.kitchen().carryTo(before.station()));
    LocalDateTime latest =
        refilled.minusMinutes((long) timetable.cleaning() + carry + PREHEAT_TIME);
    LocalDateTime empty = latest.isAfter(before.lastPour()) ? latest : before.lastPour();
    Saying coffee = coffeeOf(next.fill().id());
    boolean same = coffeeOf(before.fill().id()).equals(coffee);
    add(
        // what is left in it is good until then, and nobody passes by to pour it away
        empty.isAfter(before.useBy()) ? before.useBy() : empty,
        ActionKind.COLLECT,
        before.fill().id(),
        before.station().orElse(before.fill().groupName()),
        Saying.of("how.collect")
            .with("unit", before.called())
            .with("same", same)
            .with("coffee", coffee)
            .with("refilled", refilled.toLocalTime()));
  }

  private static BatchTime batchOf(Fill.Draw draw, Map<String, BatchTime> byId) {
    return requireNonNull(byId.get(draw.batchId()));
  }

  /** When the first of a fill's batches is ready. */
  private static LocalDateTime first(FillTime time, Map<String, BatchTime> byId) {
    return time.fill().draws().stream()
        .map(draw -> batchOf(draw, byId).ready())
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** When the last of a fill's batches is ready. */
  private static LocalDateTime last(FillTime time, Map<String, BatchTime> byId) {
    return time.fill().draws().stream()
        .map(draw -> batchOf(draw, byId).ready())
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  private Saying coffeeOf(String id) {
    return coffees
        .of(id)
        .map(
            coffee ->
                coffee.decaf()
                    ? Saying.of("coffee.decaf").with("name", coffee.name())
                    : Saying.verbatim(coffee.name()))
        .orElse(Saying.verbatim(id));
  }
}
