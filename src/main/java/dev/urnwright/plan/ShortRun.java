package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.plan.TimedDraft.Slot;
import dev.urnwright.problem.Problem;
import dev.urnwright.schedule.Order;
import dev.urnwright.schedule.Rationing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A run that can't be made: who goes short, when and by how many cups. */
record ShortRun(Event event, List<CoffeeDraft> drafts, TimedDraft draft) {
  private static final int NAMES = 12;

  /** What one group lacks of one coffee. */
  private record Lack(GroupNeed need, int cups, int from, int to) {
    String words() {
      return "'"
          + need.group().name()
          + "' ("
          + need.coffee().name()
          + ") goes short of "
          + cups
          + (cups == 1 ? " cup " : " cups ")
          + RunClock.span(from, to);
    }
  }

  /** What stands in the way, in the order in which it hurts. */
  List<Problem> problems(Cures cures) {
    List<Problem> problems = new ArrayList<>(tooOldAnyway());
    if (problems.isEmpty()) {
      problems.add(
          new Problem(
              event.location(),
              "the run can't be made with the equipment and the time there is: " + goesShort(),
              cures.ofRun()));
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
    List<Lack> lacks = new ArrayList<>();
    List<List<Order>> leftOut = Rationing.of(draft.problem());
    for (int coffee = 0; coffee < drafts.size(); coffee++) {
      Map<Integer, List<Slot>> unserved = new LinkedHashMap<>();
      for (Slot slot : draft.slots().get(coffee)) {
        if (leftOut.get(coffee).contains(slot.order())) {
          unserved.computeIfAbsent(slot.share(), share -> new ArrayList<>()).add(slot);
        }
      }
      List<FillRounding.Share> shares = drafts.get(coffee).shares();
      unserved.forEach((share, slots) -> lacks.add(lack(shares.get(share), slots)));
    }
    if (lacks.isEmpty()) {
      return "together the coffees ask too much of the brewers";
    }
    lacks.sort(Comparator.comparingInt(Lack::from).thenComparingInt(Lack::to));
    String named = lacks.stream().limit(NAMES).map(Lack::words).collect(Collectors.joining(", "));
    List<Lack> others = lacks.subList(Math.min(NAMES, lacks.size()), lacks.size());
    return others.isEmpty()
        ? named
        : named
            + ", and "
            + others.size()
            + " more of "
            + others.stream().mapToInt(Lack::cups).sum()
            + " cups";
  }

  /** Fills are equal, so a group that misses some of them misses that share of its cups. */
  private static Lack lack(FillRounding.Share share, List<Slot> unserved) {
    double part = (double) unserved.size() / share.fills();
    return new Lack(
        share.need(),
        (int) Math.ceil(share.need().demand().cups() * part - 1e-9),
        unserved.stream().mapToInt(slot -> slot.window().due()).min().orElseThrow(),
        unserved.stream().mapToInt(slot -> slot.window().lastPour()).max().orElseThrow());
  }
}
