package dev.urnwright.plan;

import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.plan.TimedDraft.Slot;
import dev.urnwright.problem.Problem;
import dev.urnwright.schedule.Order;
import dev.urnwright.schedule.RunProblem;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunProblem.Kind;
import dev.urnwright.schedule.RunScheduler;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;

/**
 * A run that can't be made: who goes short, when and by how many cups, and the smallest changes
 * that would cure it, each tried by solving again.
 */
record ShortRun(Event event, List<CoffeeDraft> drafts, TimedDraft draft) {
  private static final int MOST_UNITS = 4;
  private static final int MINUTES_STEP = 5;
  private static final int MOST_MINUTES = 120;
  private static final int NAMES = 4;

  /** What stands in the way, in the order in which it hurts. */
  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>(tooOldAnyway());
    if (problems.isEmpty()) {
      problems.add(
          new Problem(
              event.location(),
              "the run can't be made with the equipment and the time there is: " + goesShort(),
              cures()));
    }
    return problems;
  }

  /** Too few dispensers at once, with the number that would do. */
  static List<Problem> dispensers(TimedPlan plan) {
    List<Problem> problems = new ArrayList<>();
    for (Map.Entry<Dispenser, Integer> entry : plan.shortOf().entrySet()) {
      Dispenser dispenser = entry.getKey();
      int more = entry.getValue() - dispenser.count();
      problems.add(
          new Problem(
              dispenser.location(),
              "the run needs "
                  + entry.getValue()
                  + " of "
                  + dispenser.name()
                  + " at once, from the fill to the return for cleaning, and there are "
                  + dispenser.count(),
              more + " more, or larger ones, or serving times further apart"));
    }
    return problems;
  }

  /**
   * Fills that no batch can serve, whatever the brewers: held too short for the way and the pour.
   */
  private List<Problem> tooOldAnyway() {
    List<Problem> problems = new ArrayList<>();
    for (int coffee = 0; coffee < drafts.size(); coffee++) {
      for (Slot slot : draft.slots().get(coffee)) {
        Order order = slot.order();
        if (order.earliestReady() > order.latestReady()) {
          GroupNeed need = drafts.get(coffee).shares().get(slot.share()).need();
          problems.add(
              new Problem(
                  need.group().location(),
                  "a dispenser of group '"
                      + need.group().name()
                      + "' would be "
                      + (order.earliestReady() - order.latestReady())
                      + " min past its hold at the last pour",
                  "a longer hold, a shorter way, or more and smaller dispensers"));
        }
      }
    }
    return problems;
  }

  private String goesShort() {
    Map<String, int[]> shorts = new LinkedHashMap<>(); // cups, from, to
    for (int coffee = 0; coffee < drafts.size(); coffee++) {
      for (Slot slot : unserved(coffee)) {
        FillRounding.Share share = drafts.get(coffee).shares().get(slot.share());
        int cups = (int) Math.ceil((double) share.need().demand().cups() / share.fills());
        String who = share.need().group().name() + "' (" + share.need().coffee().name() + ")";
        int[] sum =
            shorts.computeIfAbsent(
                who, key -> new int[] {0, slot.window().due(), slot.window().lastPour()});
        sum[0] += cups;
        sum[1] = Math.min(sum[1], slot.window().due());
        sum[2] = Math.max(sum[2], slot.window().lastPour());
      }
    }
    if (shorts.isEmpty()) {
      return "together the coffees ask too much of the brewers";
    }
    String listed =
        shorts.entrySet().stream()
            .sorted(Comparator.comparingInt(e -> e.getValue()[1]))
            .limit(NAMES)
            .map(
                e ->
                    "'"
                        + e.getKey()
                        + " goes short of "
                        + e.getValue()[0]
                        + " cups from "
                        + clock(e.getValue()[1])
                        + " to "
                        + clock(e.getValue()[2]))
            .collect(Collectors.joining(", "));
    return shorts.size() > NAMES ? listed + ", and " + (shorts.size() - NAMES) + " more" : listed;
  }

  /** The fewest fills, the ones due first dropped last, without which the rest can be served. */
  private List<Slot> unserved(int coffee) {
    List<Slot> kept = new ArrayList<>();
    List<Slot> dropped = new ArrayList<>();
    List<Slot> latestFirst =
        draft.slots().get(coffee).stream()
            .sorted(Comparator.comparing(Slot::order, Order.DUE.reversed()))
            .toList();
    for (Slot slot : latestFirst) {
      kept.add(slot);
      if (!isFeasible(with(coffee, kept))) {
        kept.remove(kept.size() - 1);
        dropped.add(slot);
      }
    }
    return dropped;
  }

  /** The problem with only some orders of one coffee, and those of the coffees before it. */
  private RunProblem with(int coffee, List<Slot> kept) {
    List<CoffeeOrders> coffees = new ArrayList<>();
    for (int c = 0; c <= coffee; c++) {
      CoffeeOrders all = draft.problem().coffees().get(c);
      List<Order> orders = c < coffee ? all.orders() : kept.stream().map(Slot::order).toList();
      coffees.add(new CoffeeOrders(orders, all.gramsPerStep(), all.doses()));
    }
    return with(coffees, draft.problem().kinds(), draft.problem().earliestStart());
  }

  private String cures() {
    List<String> cures = new ArrayList<>();
    for (int kind = 0; kind < draft.problem().kinds().size(); kind++) {
      int which = kind;
      String name = event.equipment().brewers().get(kind).name();
      least(1, MOST_UNITS, more -> moreUnits(which, more))
          .ifPresent(more -> cures.add(more + " more " + name));
      if (draft.problem().kinds().get(kind).circuit() >= 0 && isFeasible(ownCircuit(which))) {
        cures.add(name + " on another circuit");
      }
    }
    if (event.kitchen().opens().isPresent()) {
      leastMinutes(
              early ->
                  with(
                      draft.problem().coffees(),
                      draft.problem().kinds(),
                      draft.problem().earliestStart() - early))
          .ifPresent(early -> cures.add("start " + early + " min earlier"));
    }
    leastMinutes(this::longerHold).ifPresent(more -> cures.add("a hold " + more + " min longer"));
    return cures.isEmpty()
        ? "fewer guests at a time: no single change of brewers, circuits, opening or hold is enough"
        : "any one of these cures it: " + String.join("; ", cures);
  }

  private Optional<Integer> leastMinutes(IntFunction<RunProblem> change) {
    return least(1, MOST_MINUTES / MINUTES_STEP, n -> change.apply(n * MINUTES_STEP))
        .map(n -> n * MINUTES_STEP);
  }

  /** The least of a change that is enough; more of it is never worse. */
  private Optional<Integer> least(int from, int to, IntFunction<RunProblem> change) {
    if (!isFeasible(change.apply(to))) {
      return Optional.empty();
    }
    int low = from - 1;
    int high = to;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (isFeasible(change.apply(middle))) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return Optional.of(high);
  }

  private RunProblem moreUnits(int kind, int more) {
    Kind is = draft.problem().kinds().get(kind);
    return changed(
        kind,
        new Kind(
            is.units() + more, is.brewMinutes(), is.turnaroundMinutes(), is.watts(), is.circuit()));
  }

  private RunProblem ownCircuit(int kind) {
    Kind is = draft.problem().kinds().get(kind);
    return changed(
        kind, new Kind(is.units(), is.brewMinutes(), is.turnaroundMinutes(), is.watts(), -1));
  }

  private RunProblem changed(int kind, Kind other) {
    List<Kind> kinds = new ArrayList<>(draft.problem().kinds());
    kinds.set(kind, other);
    return with(draft.problem().coffees(), kinds, draft.problem().earliestStart());
  }

  private RunProblem longerHold(int minutes) {
    List<CoffeeOrders> coffees =
        draft.problem().coffees().stream()
            .map(
                coffee ->
                    new CoffeeOrders(
                        coffee.orders().stream()
                            .map(
                                o ->
                                    new Order(
                                        o.id(),
                                        o.grams(),
                                        o.earliestReady() - minutes,
                                        o.latestReady()))
                            .toList(),
                        coffee.gramsPerStep(),
                        coffee.doses()))
            .toList();
    return with(coffees, draft.problem().kinds(), draft.problem().earliestStart());
  }

  private RunProblem with(List<CoffeeOrders> coffees, List<Kind> kinds, int earliestStart) {
    return new RunProblem(coffees, kinds, draft.problem().circuitWatts(), earliestStart);
  }

  private static boolean isFeasible(RunProblem problem) {
    return RunScheduler.canServe(problem);
  }

  private static String clock(int minute) {
    int ofDay = Math.floorMod(minute, 24 * 60);
    return String.format(Locale.ROOT, "%02d:%02d", ofDay / 60, ofDay % 60);
  }
}
