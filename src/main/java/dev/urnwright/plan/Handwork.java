package dev.urnwright.plan;

import static java.util.Objects.requireNonNull;

import dev.urnwright.event.Event;
import dev.urnwright.plan.Levelling.Work;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.plan.Run.BatchTime;
import dev.urnwright.plan.Run.Crew;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.plan.Run.Stretch;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The actions of a run as work for hands: how long each takes, and how much earlier or later it may
 * be done without making coffee older than it may be, a batch late, or a guest wait.
 */
final class Handwork {
  /** Coffee may be ground so long before it is usually. */
  private static final int GRIND_EARLY = 20;

  /** A brewer may be switched on so long before it must be. */
  private static final int ON_EARLY = 15;

  /** A dispenser may be rinsed hot so long before it is usually: it is empty and clean by then. */
  private static final int PREHEAT_EARLY = 2;

  /** Which hot water may be drawn at other minutes than planned, if the heaters keep ahead. */
  enum Water {
    /** Bypass, and what preheats. */
    ALL,
    /** Bypass alone. */
    BYPASS,
    /** None. */
    NONE
  }

  private final Event event;
  private final Timetable timetable;
  private final HandTimes times;
  private final RunClock clock;
  private final Map<String, FillTime> fills;
  private final Map<String, BatchTime> batches;
  private final List<Action> actions;
  private final Water water;
  private final Map<String, Action> lastFill = new HashMap<>(); // what completes each fill
  private final List<Work> works = new ArrayList<>();
  private final Map<Action, Integer> workOf = new IdentityHashMap<>();

  /**
   * The work of a run.
   *
   * @param actions in any order
   * @param water which of it may be drawn at other minutes than planned
   */
  Handwork(
      Event event,
      List<BatchTime> batches,
      List<FillTime> fills,
      List<Action> actions,
      Water water) {
    this.event = event;
    this.timetable = new Timetable(event);
    this.times = new HandTimes(event);
    this.clock = RunClock.of(event);
    this.fills = fills.stream().collect(Collectors.toMap(f -> f.fill().id(), f -> f));
    this.batches = batches.stream().collect(Collectors.toMap(b -> b.batch().id(), b -> b));
    this.actions = List.copyOf(actions);
    this.water = water;
    for (Action action : actions) {
      if (action.kind() == ActionKind.FILL && action.at().equals(fillOf(action).filled())) {
        lastFill.put(action.what(), action);
      }
    }
    read();
  }

  /** How many people are busy at once at the most, at the times that the actions have. */
  int most() {
    return Levelling.none(works).most();
  }

  /**
   * How many people that takes, at the times that the actions have.
   *
   * @param enough so many would be enough at other times
   */
  Crew crew(int enough) {
    Levelling as = Levelling.none(works);
    List<Stretch> stretches = new ArrayList<>();
    int[] busy = as.busy();
    int since = 0;
    for (int i = 1; i <= busy.length; i++) {
      if (i == busy.length || busy[i] != busy[since]) {
        if (busy[since] > 0) {
          stretches.add(
              new Stretch(clock.at(as.from() + since), clock.at(as.from() + i), busy[since]));
        }
        since = i;
      }
    }
    return new Crew(event.kitchen().people().count(), stretches, enough);
  }

  /** The actions, spread so that so many people can do them, as far as that can be; in order. */
  List<Action> levelled(int people) {
    Levelling levelling = Levelling.to(people, works);
    List<Action> levelled = new ArrayList<>();
    for (Action action : actions) {
      levelled.add(
          new Action(
              clock.at(levelling.at(requireNonNull(workOf.get(action)))),
              action.kind(),
              action.what(),
              action.where(),
              action.how()));
    }
    return inOrder(levelled);
  }

  /** What is done in a stretch, by kind. */
  Map<ActionKind, Integer> busyIn(Stretch stretch) {
    Map<ActionKind, Integer> kinds = new TreeMap<>();
    int from = minute(stretch.from());
    for (Work work : works) {
      if (work.at() - work.before() <= from && from < work.at() + work.minutes()) {
        kinds.merge(work.kind(), 1, Integer::sum);
      }
    }
    return kinds;
  }

  /** Actions at the times that they had in a plan, those that it had. */
  static List<Action> atTimesOf(List<Action> planned, List<Action> actions) {
    Map<String, List<LocalDateTime>> had = new HashMap<>();
    planned.forEach(a -> had.computeIfAbsent(key(a), key -> new ArrayList<>()).add(a.at()));
    List<Action> moved = new ArrayList<>();
    for (Action action : actions) {
      List<LocalDateTime> at = had.getOrDefault(key(action), List.of());
      moved.add(
          at.size() == 1
              ? new Action(at.get(0), action.kind(), action.what(), action.where(), action.how())
              : action);
    }
    return inOrder(moved);
  }

  private static String key(Action action) {
    return action.kind() + " " + action.what();
  }

  private static List<Action> inOrder(List<Action> actions) {
    return actions.stream()
        .sorted(Comparator.comparing(Action::at).thenComparing(Action::kind))
        .toList();
  }

  /** One work for each action; what goes the same way at the same minute goes together. */
  private void read() {
    Map<String, List<Action>> walks = new LinkedHashMap<>();
    for (Action action : actions) {
      switch (action.kind()) {
        case CARRY, COLLECT, DISCARD -> {
          String way = action.kind() + " " + action.at() + " " + action.where();
          walks.computeIfAbsent(way, key -> new ArrayList<>()).add(action);
        }
        default -> add(List.of(action));
      }
    }
    int together = event.kitchen().people().perWalk();
    for (List<Action> walk : walks.values()) {
      for (int i = 0; i < walk.size(); i += together) {
        add(walk.subList(i, Math.min(i + together, walk.size())));
      }
    }
  }

  private void add(List<Action> alike) {
    alike.forEach(action -> workOf.put(action, works.size()));
    works.add(work(alike));
  }

  private Work work(List<Action> alike) {
    Action first = alike.get(0);
    int at = minute(first.at());
    int earliest = Integer.MIN_VALUE;
    int latest = Integer.MAX_VALUE;
    List<Integer> after = new ArrayList<>();
    int gap = 0;
    for (Action action : alike) {
      earliest = Math.max(earliest, earliest(action, at));
      latest = Math.min(latest, action.kind() == ActionKind.FILL ? latestFill(action, at) : at);
      if (action.kind() == ActionKind.CARRY) {
        gap = Math.max(gap, gap(action));
        Optional.ofNullable(lastFill.get(action.what())).map(workOf::get).ifPresent(after::add);
      }
    }
    return new Work(
        first.kind(),
        at,
        times.before(first.kind()),
        times.minutes(
            first,
            Optional.ofNullable(fills.get(first.what())).flatMap(FillTime::station),
            alike.size()),
        earliest,
        latest,
        after,
        gap);
  }

  private int earliest(Action action, int at) {
    return switch (action.kind()) {
      case SWITCH_ON -> times.isHeater(action) ? at : opened(at, at - ON_EARLY);
      case GRIND -> opened(at, at - GRIND_EARLY);
      case PREHEAT -> water == Water.ALL ? at - PREHEAT_EARLY : at;
      case COLLECT, DISCARD -> Math.min(at, minute(fillOf(action).lastPour()));
      case CARRY ->
          lastFill.containsKey(action.what())
              ? Math.min(at, minute(fillOf(action).filled()) + gap(action))
              : at;
      default -> at;
    };
  }

  /** From the fill until it can be carried. */
  private int gap(Action action) {
    return timetable.transfer() + cooling(fillOf(action));
  }

  /** A fill may wait as long as it is in time, and its brewers aren't needed again. */
  private int latestFill(Action action, int at) {
    FillTime fill = fillOf(action);
    if (water == Water.NONE || !action.at().equals(fill.filled())) {
      return at;
    }
    int way = Timetable.minutesUp(event.kitchen().carryTo(fill.station()));
    int latest = minute(fill.due()) - way - timetable.transfer() - cooling(fill);
    for (Fill.Draw draw : fill.fill().draws()) {
      BatchTime drawn = requireNonNull(batches.get(draw.batchId()));
      for (BatchTime next : batches.values()) {
        if (next.batch().unit().equals(drawn.batch().unit())
            && next.start().isAfter(drawn.start())) {
          latest = Math.min(latest, minute(next.start()) - timetable.turnaround());
        }
      }
    }
    return Math.max(at, latest);
  }

  private int cooling(FillTime fill) {
    return fill.heat().isPresent() ? 0 : Timetable.minutesUp(event.kitchen().handling().cooling());
  }

  /** No earlier than the kitchen opens, unless it is planned so. */
  private int opened(int at, int earlier) {
    return event
        .kitchen()
        .opens()
        .map(opens -> Math.min(at, Math.max(earlier, Timetable.minuteOf(opens))))
        .orElse(earlier);
  }

  private FillTime fillOf(Action action) {
    return requireNonNull(fills.get(action.what()));
  }

  private int minute(LocalDateTime at) {
    return clock.minute(at);
  }
}
