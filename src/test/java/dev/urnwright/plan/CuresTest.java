package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Equipment;
import dev.urnwright.event.Event;
import dev.urnwright.problem.Problem;
import dev.urnwright.schedule.Effort;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Runs that can't be made: what is said to cure them does. */
class CuresTest {
  private static final Pattern MORE = Pattern.compile("(\\d+) more (Brewer \\d+)");
  private static final Pattern HOLD = Pattern.compile("a hold (\\d+) min longer");
  private static final Pattern SHORT =
      Pattern.compile("of (Dispenser \\d+) at once.*; (\\d+) more");

  @Test
  void whoeverFollowsACureGetsAPlan() {
    int followed = 0;
    for (long seed = 0; seed < RandomEvents.count(60); seed++) {
      Event event = RandomEvents.sane(seed);
      for (Problem problem : new Planner().plan(event).problems()) {
        for (Event cured : cured(event, problem.toString())) {
          List<Problem> left = new Planner().plan(cured).problems();
          assertEquals(List.of(), left, "seed " + seed + " after " + problem.expected());
          followed++;
        }
      }
    }
    assertTrue(followed >= RandomEvents.count(60) / 20, "too few cures: " + followed);
  }

  private static List<Event> cured(Event event, String problem) {
    List<Event> cured = new ArrayList<>();
    Matcher more = MORE.matcher(problem);
    while (problem.contains("any one of these") && more.find()) {
      int units = Integer.parseInt(more.group(1));
      String name = more.group(2);
      cured.add(with(event, name, units, 0));
    }
    Matcher hold = HOLD.matcher(problem);
    if (problem.contains("any one of these") && hold.find()) {
      cured.add(with(event, "", 0, Integer.parseInt(hold.group(1))));
    }
    Matcher scarce = SHORT.matcher(problem);
    if (scarce.find()) {
      cured.add(with(event, scarce.group(1), Integer.parseInt(scarce.group(2)), 0));
    }
    return cured;
  }

  private static Event with(Event event, String name, int more, int longer) {
    Equipment equipment = event.equipment();
    List<Brewer> brewers =
        equipment.brewers().stream()
            .map(b -> b.name().equals(name) ? b.with(b.count() + more, b.supply()) : b)
            .toList();
    List<Dispenser> dispensers =
        equipment.dispensers().stream()
            .map(
                d ->
                    d.with(
                        d.name().equals(name) ? d.count() + more : d.count(),
                        longer == 0
                            ? d.hold()
                            : Optional.of(
                                d.hold().orElse(Duration.ofMinutes(60)).plusMinutes(longer))))
            .toList();
    return event.with(equipment.with(brewers, dispensers), event.kitchen());
  }

  /** Work is counted: each trial is paid for, and none begins when nothing is left. */
  @Test
  void tryingEndsWithTheEffort() {
    Event event = RandomEvents.sane(484); // twelve coffees, three kinds of brewers
    assertEquals(3, event.equipment().brewers().size());
    List<Event> tried = new ArrayList<>();
    String cure = cures(event, 1, changed -> tried.add(changed) && false).ofRun();
    assertEquals(1, tried.size());
    assertEquals(
        "fewer guests at a time: no single change that was tried cures it (not tried to the end:"
            + " 4 more Brewer 3; 4 more Brewer 2; 4 more Brewer 1; a hold 120 min longer)",
        cure);
    // Four of a kind are tried, then two, then one; a hold of 120 min, then halves of that.
    assertEquals(
        "any one of these cures it: 1 more Brewer 3; 2 more Brewer 2"
            + " (not tried to the end: 4 more Brewer 1; a hold 120 min longer)",
        cures(event, 5, changed -> units(changed) != 8 || count(changed, "Brewer 3") > 3).ofRun());
  }

  private static long units(Event event) {
    return event.equipment().brewers().stream().mapToLong(Brewer::count).sum();
  }

  private static int count(Event event, String brewer) {
    return event.equipment().brewers().stream()
        .filter(b -> b.name().equals(brewer))
        .findFirst()
        .orElseThrow()
        .count();
  }

  private static Cures cures(Event event, int trials, Predicate<Event> works) {
    Effort effort = Effort.of(trials);
    return new Cures(
        event,
        effort,
        changed -> {
          effort.spend(1);
          return works.test(changed);
        });
  }
}
