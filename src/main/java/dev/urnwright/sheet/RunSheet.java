package dev.urnwright.sheet;

import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Run;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.wording.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The run: what hands must do, one row after the other.
 *
 * @param summary the run at a glance
 * @param water how much of it, and for what
 * @param heaters when to switch each on
 * @param actions in order of time
 * @param timelines the same drawn
 */
record RunSheet(
    Summary summary,
    WaterTotals water,
    List<HeaterRow> heaters,
    List<ActionRow> actions,
    List<TimelineView> timelines) {
  static Optional<RunSheet> of(Plan plan, Display display, Words words) {
    return plan.run().map(run -> of(plan, run, display, words));
  }

  private static RunSheet of(Plan plan, Run run, Display display, Words words) {
    return new RunSheet(
        Summary.of(plan, run, words),
        WaterTotals.of(run.water(), display),
        run.heaters().stream().map(heater -> HeaterRow.of(plan, heater, words)).toList(),
        actions(plan, run, words),
        TimelineView.of(plan, words));
  }

  private static List<ActionRow> actions(Plan plan, Run run, Words words) {
    List<ActionRow> rows = new ArrayList<>();
    Optional<Action> before = Optional.empty();
    for (Action action : run.actions()) {
      rows.add(ActionRow.of(plan, action, before, words));
      before = Optional.of(action);
    }
    return rows;
  }

  /**
   * The run at a glance.
   *
   * @param firstAction when hands are first needed for what is still to be made
   * @param firstStart when the first batch that is to be brewed starts
   * @param meanAge of the coffee at pouring
   * @param greatestAge of any coffee at pouring
   * @param crew how many people it takes at its busiest, and when
   */
  record Summary(
      Optional<ClockTime> firstAction,
      Optional<ClockTime> firstStart,
      String meanAge,
      String greatestAge,
      Optional<Busiest> crew) {
    /** On the day, what is done with these tells nothing of when the making goes on. */
    private static final Set<ActionKind> OF_FULL_DISPENSERS =
        EnumSet.of(ActionKind.CARRY, ActionKind.COLLECT, ActionKind.DISCARD);

    static Summary of(Plan plan, Run run, Words words) {
      return new Summary(
          run.actions().stream()
              .filter(action -> !OF_FULL_DISPENSERS.contains(action.kind()))
              .findFirst()
              .map(a -> ClockTime.of(plan.event(), a.at(), words)),
          plan.batches().stream()
              .flatMap(batch -> run.timeOf(batch).stream())
              .map(Run.BatchTime::start)
              .min(Comparator.naturalOrder())
              .map(start -> ClockTime.of(plan.event(), start, words)),
          ClockTime.length(run.quality().meanAge()),
          ClockTime.length(run.quality().greatestAge()),
          run.crew()
              .busiest()
              .map(
                  most ->
                      new Busiest(
                          most.people(),
                          ClockTime.of(plan.event(), most.from(), words),
                          ClockTime.of(plan.event(), most.until(), words))));
    }
  }

  /**
   * When the most people are busy.
   *
   * @param people how many
   * @param from its start
   * @param until its end
   */
  record Busiest(int people, ClockTime from, ClockTime until) {}

  /**
   * Water, by what it is for.
   *
   * @param brewing on the grounds
   * @param bypass into the dispensers
   * @param rinsing filters, when any are rinsed
   * @param preheating dispensers, when any are warmed
   */
  record WaterTotals(
      Figure brewing, Figure bypass, Optional<Figure> rinsing, Optional<Figure> preheating) {
    static WaterTotals of(Run.WaterUse water, Display display) {
      return new WaterTotals(
          display.mass(water.brewing()),
          display.mass(water.bypass()),
          Optional.of(water.rinsing()).filter(v -> v.litres() > 0).map(display::volume),
          Optional.of(water.preheating()).filter(v -> v.litres() > 0).map(display::volume));
    }
  }

  /**
   * A heater.
   *
   * @param name which
   * @param on when to switch it on
   * @param hot when its water is first drawn
   * @param toHeat how long a full one takes
   */
  record HeaterRow(Name name, ClockTime on, ClockTime hot, String toHeat) {
    static HeaterRow of(Plan plan, Run.HeaterTime heater, Words words) {
      return new HeaterRow(
          new Name(heater.name()),
          ClockTime.of(plan.event(), heater.on(), words),
          ClockTime.of(plan.event(), heater.hot(), words),
          ClockTime.length(heater.toHeat()));
    }
  }
}
