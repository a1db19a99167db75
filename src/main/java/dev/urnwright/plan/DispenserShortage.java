package dev.urnwright.plan;

import dev.urnwright.event.Dispenser;
import dev.urnwright.problem.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A kind of dispenser of which more are out at once than there are.
 *
 * @param dispenser of which there are too few
 * @param needed at the busiest minute
 * @param minute the first of these
 * @param out where they are then, one of each
 */
record DispenserShortage(Dispenser dispenser, int needed, int minute, List<Out> out) {
  private static final int NAMES = 12;

  /** One that is filled for a group, on its way, poured or coming back. */
  record Out(GroupNeed need, int from, int until) {}

  /** The shortage of a kind, or what comes nearest to one. */
  static DispenserShortage of(Dispenser dispenser, List<Out> uses) {
    int minute = 0;
    long most = 0;
    for (int at : uses.stream().mapToInt(Out::from).sorted().toArray()) {
      long there = uses.stream().filter(use -> use.from() <= at && at < use.until()).count();
      if (there > most) {
        most = there;
        minute = at;
      }
    }
    int busiest = minute;
    return new DispenserShortage(
        dispenser,
        (int) most,
        busiest,
        uses.stream().filter(use -> use.from() <= busiest && busiest < use.until()).toList());
  }

  int more() {
    return needed - dispenser.count();
  }

  /** Too few at once, for whom, and what would do. */
  Problem problem(String cure) {
    Map<GroupNeed, List<Out>> groups =
        out.stream()
            .collect(Collectors.groupingBy(Out::need, LinkedHashMap::new, Collectors.toList()));
    String named =
        groups.entrySet().stream()
            .limit(NAMES)
            .map(entry -> words(entry.getKey(), entry.getValue()))
            .collect(Collectors.joining(", "));
    int others = groups.values().stream().skip(NAMES).mapToInt(List::size).sum();
    return new Problem(
        dispenser.location(),
        "the run needs "
            + needed
            + " of "
            + dispenser.name()
            + " at once at "
            + RunClock.time(minute)
            + ", from the fill to the return for cleaning, and there are "
            + dispenser.count()
            + ": "
            + named
            + (others > 0 ? ", " + others + " for others" : ""),
        cure);
  }

  private static String words(GroupNeed need, List<Out> out) {
    return out.size()
        + " for '"
        + need.group().name()
        + "' ("
        + need.coffee().name()
        + ") "
        + RunClock.span(
            out.stream().mapToInt(Out::from).min().orElseThrow(),
            out.stream().mapToInt(Out::until).max().orElseThrow());
  }
}
