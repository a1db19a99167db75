package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Equipment;
import dev.urnwright.event.Event;
import dev.urnwright.event.Provision;
import dev.urnwright.problem.Problem;
import dev.urnwright.schedule.Effort;
import java.time.Duration;
import java.time.LocalTime;
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

  /**
   * Of pots 3 are needed and 1 is there, of urns 4 and 3; the jugs do. Two more pots, with a urn
   * more, would do were not more out then: so three to six more are tried, six first, then four of
   * the rest, five. Halves of what is left: 4, then 5.
   */
  @Test
  void moreThanAreMissing() {
    Event event =
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(Events.coffee("house", Events.ratio(13))),
            List.of(Events.group("Crew", 10, 200, 1.3)),
            Events.equipment(
                1,
                List.of(),
                List.of(
                    Events.dispenser("Pot", 1, 2, 0),
                    Events.dispenser("Urn", 3, 9, 0),
                    Events.dispenser("Jug", 5, 1, 0))));
    DispenserShortage pots = shortage(event, "Pot", 3);
    DispenserShortage urns = shortage(event, "Urn", 4);
    List<DispenserShortage> all = List.of(pots, urns);
    List<List<Integer>> tried = new ArrayList<>();
    Predicate<Event> six = changed -> tried.add(counts(changed)) && counts(changed).get(0) >= 7;
    assertEquals(
        "6 more, or larger ones, or serving times further apart",
        cures(event, 100, six).of(pots, all));
    assertEquals(
        List.of(List.of(3, 4, 5), List.of(7, 4, 5), List.of(5, 4, 5), List.of(6, 4, 5)), tried);
    assertEquals(
        "1 more, or larger ones, or serving times further apart",
        cures(event, 100, changed -> counts(changed).equals(List.of(3, 4, 5))).of(urns, all));
    assertEquals(
        "larger ones, or serving times further apart",
        cures(event, 100, changed -> false).of(urns, all));
  }

  private static DispenserShortage shortage(Event event, String name, int needed) {
    Dispenser kind =
        event.equipment().dispensers().stream()
            .filter(each -> each.name().equals(name))
            .findFirst()
            .orElseThrow();
    return new DispenserShortage(kind, needed, 600, List.of());
  }

  private static List<Integer> counts(Event event) {
    return event.equipment().dispensers().stream().map(Dispenser::count).toList();
  }

  /** No sooner than the day begins, in steps of five minutes. */
  @Test
  void aKitchenThatOpensAtMidnight() {
    Event event = Events.simple(Events.ratio(13), Events.group("Crew", 10, 200, 1.3));
    assertEquals(
        "fewer guests at a time: no single change that was tried cures it",
        cures(opening(event, "00:04"), 100, changed -> false).ofRun());
    assertEquals(
        "any one of these cures it: start 5 min earlier",
        cures(opening(event, "00:05"), 100, changed -> true).ofRun());
  }

  private static Event opening(Event event, String time) {
    return event.with(event.equipment(), event.kitchen().opening(LocalTime.parse(time)));
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
