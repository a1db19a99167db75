package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.plan.DispenserPlan.Limits;
import dev.urnwright.problem.Problem;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import dev.urnwright.schedule.Effort;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs that can't be made: who goes short, and what cures it, by hand. 20 cups take 255 g of
 * coffee; the hall's urn must be filled by 9:53, the bar's by 9:54.
 */
class RefusedRunTest {
  @TempDir Path folder;

  private static final String EVENT =
      """
      event: A generic event
      coffee:
        name: House
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Hall, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30, station: Hall}
      brewers:
        - {name: Tall, dose: 100 g to 260 g, water: 16 l, cycle: 10 min}
      dispensers:
        - {name: Urn, count: 9, capacity: 6 l, hold: 45 min, pour: 6 cups per minute}
      stations:
        - {name: Hall, carry: 4 min}
      """;

  private static final String BAR =
      "  - {name: Bar, headcount: 10, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30}\n";

  private static final String BOTH = EVENT.replace("brewers:", BAR + "brewers:");

  /** Warm at 9:44 at the earliest, a minute after the batch must start; at 9:43 just in time. */
  @Test
  void aKitchenThatOpensTooLate() throws IOException {
    Problem problem = only(EVENT + "kitchen: {opens: 09:29}\n");
    assertEquals(
        "the run can't be made with the equipment and the time there is: 'Hall' (House) goes short"
            + " of 20 cups from 10:00 to 10:30",
        problem.wrong());
    assertEquals("any one of these cures it: start 5 min earlier", problem.expected());
    assertTrue(new Written(folder).plan(EVENT + "kitchen: {opens: 09:28}\n").run().isPresent());
    // who is told no time is served at the event's; a single cup is one
    String single =
        EVENT.replace("headcount: 20", "headcount: 1").replace("100 g to", "5 g to")
            + "kitchen: {opens: 09:29}\n";
    assertTrue(
        only(single.replace("serve: 10:00-10:30, ", "") + "time: 10:00\n")
            .wrong()
            .endsWith("'Hall' (House) goes short of 1 cup at 10:00"));
  }

  /**
   * One batch of 12 min is ready between 9:45 and 9:54, and holds no more than the hall's. A second
   * brewer does both; with five minutes more the bar's may be ready at 9:41.
   */
  @Test
  void aBrewerThatIsTooSmall() throws IOException {
    Problem problem = only(BOTH);
    assertTrue(
        problem.wrong().endsWith(": 'Bar' (House) goes short of 10 cups from 10:00 to 10:30"),
        problem.wrong());
    assertEquals("any one of these cures it: 1 more Tall; a hold 5 min longer", problem.expected());
  }

  /** 80 % of 230 V and 16 A are 2944 W: two brewers of 2 kW never run at once, nor do more. */
  @Test
  void aCircuitThatIsTooWeak() throws IOException {
    String wired =
        BOTH.replace("{name: Tall,", "{name: Tall, count: 2, power: 2 kW, circuit: kitchen,")
            + "circuits: [{name: kitchen, voltage: 230 V, breaker: 16 A}]\n";
    assertEquals(
        "any one of these cures it: Tall on another circuit; a hold 5 min longer",
        only(wired).expected());
    // 1472 W each are just enough; a heater's 2 × 100 W on the same circuit are too much, with
    // which
    // 1372 W each are just enough
    String enough = wired.replace("2 kW", "1472 W");
    assertTrue(new Written(folder).plan(enough).run().isPresent());
    String heater = "heaters: [{name: Kettle, count: 2, capacity: 9 l, power: 100 W, circuit: %s}]";
    assertEquals(
        "any one of these cures it: Tall on another circuit; a hold 5 min longer",
        only(enough + heater.replace("%s", "kitchen")).expected());
    assertTrue(isTooWeak(wired.replace("2 kW", "1373 W") + heater.replace("%s", "kitchen")));
    assertFalse(isTooWeak(wired.replace("2 kW", "1372 W") + heater.replace("%s", "kitchen")));
    String other =
        enough.replace(
            "breaker: 16 A}", "breaker: 16 A}, {name: bar, voltage: 230 V, breaker: 6 A}");
    assertFalse(isTooWeak(other + heater.replace("%s", "bar")));
  }

  private boolean isTooWeak(String event) throws IOException {
    return new Planner()
        .plan(new Written(folder).event(event)).problems().stream()
            .anyMatch(problem -> problem.wrong().contains("goes short"));
  }

  /** A dose that its brewer never takes is said as such, and not as a lack of time, too. */
  @Test
  void aDoseThatIsTooSmallForEveryBrewer() throws IOException {
    // 20 cups take 255 g, and with no more than 3 l of water it is 230 g at the most
    Problem problem =
        only(EVENT.replace("100 g to 260 g, water: 16 l", "240 g to 260 g, water: 3 l"));
    assertFalse(problem.wrong().contains("goes short"), problem.wrong());
  }

  /** Too late and too few: neither alone cures it. */
  @Test
  void whatNoSingleChangeCures() throws IOException {
    assertEquals(
        "fewer guests at a time: no single change that was tried cures it, not even 4 more Tall;"
            + " start 120 min earlier; a hold 120 min longer",
        only(BOTH + "kitchen: {opens: 09:29}\n").expected());
  }

  /**
   * Few come in the middle of the hour: two rounds are poured for 30 min each, but three, as many
   * as the urns must be filled, for 13.4, 33.3 and 13.4. From 10:13 to 10:47, with 7 min before, an
   * urn is 41 min old, 4 past its hold.
   */
  @Test
  void urnsThatAreHeldTooShort() throws IOException {
    Problem problem =
        only(
            EVENT
                .replace("10:00-10:30,", "10:00-11:00, arrivals: [49.9 %, 0.2 %, 49.9 %],")
                .replace("headcount: 20", "headcount: 60")
                .replace("hold: 45 min", "hold: 37 min")
                .replace("100 g to 260 g", "100 g to 2 kg"));
    assertEquals(
        "a dispenser of group 'Hall' would be 4 min past its hold at the last pour",
        problem.wrong());
  }

  /** Held for 41 min they are just fresh enough: only the time is too short. */
  @Test
  void urnsThatAreHeldJustLongEnough() throws IOException {
    String wrong =
        only(EVENT
                    .replace("10:00-10:30,", "10:00-11:00, arrivals: [49.9 %, 0.2 %, 49.9 %],")
                    .replace("headcount: 20", "headcount: 60")
                    .replace("hold: 45 min", "hold: 41 min")
                    .replace("100 g to 260 g", "100 g to 2 kg")
                + "kitchen: {opens: 09:50}\n")
            .wrong();
    assertTrue(wrong.contains("'Hall' (House) goes short of"), wrong);
  }

  /**
   * 40 cups are 8 l, two urns, one after the other: the first by 9:53, a minute too early, and the
   * second, for the other 20 cups, at 10:08.
   */
  @Test
  void halfOfAGroupGoesShort() throws IOException {
    assertEquals(
        "the run can't be made with the equipment and the time there is: 'Hall' (House) goes short"
            + " of 20 cups from 10:00 to 10:15",
        only(EVENT.replace("headcount: 20", "headcount: 40") + "kitchen: {opens: 09:29}\n")
            .wrong());
  }

  /**
   * Whoever is served first is named first, whatever the order of the coffees; then who is done.
   */
  @Test
  void whoGoesShortFirstIsNamedFirst() throws IOException {
    String text =
        """
        event: A generic event
        coffees:
          late:
            name: Late
            concentrate: {ratio: 13}
          early:
            name: Early
            concentrate: {ratio: 13}
        groups:
          - {name: A, headcount: 20, cup: 200 ml, strength: 1.25 %, coffee: late, serve: 10:01-10:31}
          - {name: B, headcount: 20, cup: 200 ml, strength: 1.25 %, coffee: late, serve: 10:00-10:31}
          - {name: C, headcount: 20, cup: 200 ml, strength: 1.25 %, coffee: early, serve: 10:00-10:30}
          - {name: D, headcount: 20, cup: 200 ml, strength: 1.25 %, coffee: early, serve: 09:59-10:32}
        brewers:
          - {name: Tall, count: 4, dose: 100 g to 900 g, water: 16 l, cycle: 10 min}
        kitchen: {opens: 09:50}
        """;
    assertEquals(
        "'D' (Early) goes short of 20 cups from 09:59 to 10:32, 'C' (Early) goes short of 20 cups"
            + " from 10:00 to 10:30, 'B' (Late) goes short of 20 cups from 10:00 to 10:31, 'A'"
            + " (Late) goes short of 20 cups from 10:01 to 10:31",
        only(text).wrong().replaceAll("^.*there is: ", ""));
  }

  /** Fourteen groups at once; twelve are named, those that are served first before others. */
  @Test
  void manyGoShort() throws IOException {
    StringBuilder groups = new StringBuilder();
    for (int i = 1; i <= 14; i++) {
      groups.append(
          "  - {name: G%s, headcount: 10, cup: 200 ml, strength: 1.25 %%, serve: 10:00-10:3%s}\n"
              .formatted(i, i == 1 ? 1 : 0));
    }
    String many =
        EVENT.replace("brewers:", groups + "brewers:").replace("count: 9", "count: 30")
            + "kitchen: {opens: 09:40}\n";
    String wrong = only(many).wrong();
    assertTrue(
        wrong.contains("there is: 'G2' (House) goes short of 10 cups from 10:00 to 10:30, 'G3'")
            || wrong.contains("there is: 'Hall' (House) goes short of 20 cups"),
        wrong);
    assertTrue(wrong.endsWith(", and 3 more of 30 cups"), wrong);
  }

  /**
   * A single urn: the hall's comes back 4 min after 10:30 and is cleaned for 5, but the bar's must
   * be filled 6 min before 10:35, and no batch holds for both.
   */
  @Test
  void tooFewUrns() throws IOException {
    String few =
        EVENT
            .replace("brewers:", BAR.replace("10:00-10:30", "10:35-11:00") + "brewers:")
            .replace("count: 9", "count: 1")
            .replace("100 g to 260 g", "100 g to 2 kg");
    Problem problem = only(few);
    assertEquals(
        "the run needs 2 of Urn at once at 10:29, from the fill to the return for cleaning, and"
            + " there are 1: 1 for 'Hall' (House) from 09:53 to 10:39, 1 for 'Bar' (House) from"
            + " 10:29 to 11:08",
        problem.wrong());
    assertEquals("1 more, or larger ones, or serving times further apart", problem.expected());
  }

  /** A search that found no run though nobody need go without: that is told as it is. */
  @Test
  void nobodyInParticularGoesShort() throws IOException {
    Event event = new Written(folder).event(EVENT);
    Findings findings = new Findings(event);
    CoffeeModel model = CoffeeModel.read(event.coffees().get(0), findings).orElseThrow();
    GuestGroup hall = event.groups().get(0);
    List<GroupNeed> needs = List.of(GroupNeed.of(event, hall, hall.coffees().get(0)));
    Map<GroupNeed, Chosen> urns = new DispenserPlan(event, findings, Limits.NONE).choose(needs);
    List<CoffeeDraft> drafts =
        List.of(CoffeeDraft.of(event, model, needs, urns, findings).orElseThrow());
    List<Problem> problems =
        new ShortRun(event, drafts, TimedDraft.of(event, new Timetable(event), drafts))
            .problems(new Cures(event, Effort.of(1), changed -> false));
    assertEquals(
        "the run can't be made with the equipment and the time there is: together the coffees ask"
            + " too much of the brewers",
        problems.get(0).wrong());
  }

  /** A clock is asked for so many fills at the most. */
  @Test
  void aRunOfTooManyFills() throws IOException {
    String two = BOTH.replace("100 g to 260 g", "100 g to 2 kg");
    assertTrue(
        new Planner(2)
            .plan(new Written(folder).event(two))
            .value()
            .orElseThrow()
            .run()
            .isPresent());
    Plan plan = new Planner(1).plan(new Written(folder).event(two)).value().orElseThrow();
    assertTrue(plan.run().isEmpty());
    assertEquals(
        List.of("There is no run on a clock: 2 fills are more than the 1 that one is planned for."),
        Written.said("no-run", plan));
    assertEquals(1, Written.said("lifting", plan).size());
  }

  /** Four hours a batch, twelve before the first order: three batches and no fourth. */
  @Test
  void aDayIsLongEnough() throws IOException {
    String slow =
        EVENT
            .replaceAll("(?ms)^dispensers:.*?^stations:", "stations:")
            .replace("cycle: 10 min", "cycle: 238 min");
    assertTrue(
        new Written(folder).plan(slow.replace("headcount: 20", "headcount: 60")).run().isPresent());
    assertTrue(only(slow.replace("headcount: 20", "headcount: 80")).wrong().contains("goes short"));
    // just after midnight work begins the day before
    Run night =
        new Written(folder).plan(EVENT.replace("10:00-10:30", "00:05-00:35")).run().orElseThrow();
    assertEquals("23:48", night.batches().get(0).start().toLocalTime().toString());
  }

  private Problem only(String event) throws IOException {
    List<Problem> problems = new Planner().plan(new Written(folder).event(event)).problems();
    assertEquals(1, problems.size(), problems.toString());
    return new Problem(
        problems.get(0).location(),
        plain(problems.get(0).wrong()),
        plain(problems.get(0).expected()));
  }

  private static String plain(String words) {
    return words.replace('\u00a0', ' ');
  }
}
