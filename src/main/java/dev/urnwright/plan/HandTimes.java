package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.schedule.BrewerUnit;
import dev.urnwright.wording.Saying;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How many minutes each action takes of one person. What the event's kitchen says counts; the rest
 * is common practice, no source.
 */
record HandTimes(Event event) {
  /** To weigh and grind a dose. */
  static final int GRIND = 2;

  /** To start a brewer, rinse a dispenser, switch a brewer on, pour away. */
  static final int TOUCH = 1;

  /** To fill a heater with tap water and switch it on. */
  static final int HEATER = 3;

  /** Minutes before an action's time that are taken too: a brewer is emptied and reloaded. */
  int before(ActionKind kind) {
    return kind == ActionKind.START
        ? Timetable.minutesUp(event.kitchen().handling().turnaround())
        : 0;
  }

  /**
   * Minutes from an action's time on.
   *
   * @param station of the dispenser that it is about, when it has one
   * @param together how many go the same way at once
   */
  int minutes(Action action, Optional<String> station, int together) {
    int way = Timetable.minutesUp(event.kitchen().carryTo(station));
    return switch (action.kind()) {
      case GRIND -> GRIND;
      case RINSE -> 0; // while the brewer is reloaded
      case START, PREHEAT -> TOUCH;
      case SWITCH_ON -> isHeater(action) ? HEATER : TOUCH;
      case FILL -> Math.max(TOUCH, Timetable.minutesUp(event.kitchen().handling().transfer()));
      case CARRY -> Math.max(TOUCH, 2 * way);
      case COLLECT ->
          2 * way + together * Timetable.minutesUp(event.kitchen().handling().cleaning());
      case DISCARD -> 2 * way + together * TOUCH;
    };
  }

  /** Whether it is none of the brewers, though it may be called much like one. */
  boolean isHeater(Action action) {
    return event.equipment().brewers().stream()
        .flatMap(
            brewer ->
                IntStream.rangeClosed(1, brewer.count()).mapToObj(n -> new BrewerUnit(brewer, n)))
        .noneMatch(unit -> unit.label().equals(action.what()));
  }

  /** The table in words. */
  Saying saying() {
    return Saying.of("note.hand-times")
        .with("grind", GRIND)
        .with("touch", TOUCH)
        .with("heater", HEATER)
        .with("together", event.kitchen().people().perWalk());
  }
}
