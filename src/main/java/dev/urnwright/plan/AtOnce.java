package dev.urnwright.plan;

import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.problem.Problem;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Whether there are enough dispensers for all that is served at the same time: each coffee of each
 * group needs one at least.
 */
record AtOnce(Event event, List<GroupNeed> needs) {
  private static final int NAMES = 4;

  /** What is short at the busiest minute, if anything is. */
  Optional<Problem> problem() {
    int there = event.equipment().dispensers().stream().mapToInt(Dispenser::count).sum();
    TreeMap<Integer, Integer> changes = new TreeMap<>();
    for (GroupNeed need : needs) {
      changes.merge(start(need), 1, Integer::sum);
      changes.merge(end(need), -1, Integer::sum);
    }
    int running = 0;
    int most = 0;
    int when = 0;
    for (var change : changes.entrySet()) {
      running += change.getValue();
      if (running > most) {
        most = running;
        when = change.getKey();
      }
    }
    return most > there ? Optional.of(problem(when, most, there)) : Optional.empty();
  }

  private Problem problem(int minute, int needed, int there) {
    List<GroupNeed> served =
        needs.stream().filter(n -> start(n) <= minute && minute < end(n)).toList();
    String names =
        served.stream()
            .limit(NAMES)
            .map(n -> "'" + n.group().name() + "' (" + n.coffee().name() + ")")
            .collect(Collectors.joining(", "));
    return new Problem(
        served.get(served.size() - 1).group().location(),
        "at once "
            + needed
            + " coffees of groups are served, "
            + names
            + (needed > NAMES ? " and " + (needed - NAMES) + " more" : "")
            + ", with "
            + there
            + (there == 1 ? " dispenser" : " dispensers"),
        needed + " dispensers or more, or serving times that don't overlap");
  }

  /** Minutes of the day; a group without a window is due at the event's time. */
  private int start(GroupNeed need) {
    return window(need)
        .map(TimeWindow::startMinute)
        .orElse(Timetable.minuteOf(event.time().orElse(LocalTime.MIDNIGHT)));
  }

  private int end(GroupNeed need) {
    return window(need).map(TimeWindow::endMinute).orElse(start(need) + 1);
  }

  private static Optional<TimeWindow> window(GroupNeed need) {
    return need.group().service().window();
  }
}
