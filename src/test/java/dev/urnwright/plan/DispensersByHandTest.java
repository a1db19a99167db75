package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Provision;
import dev.urnwright.event.Serving;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which dispensers serve whom, by hand: 20 cups of 200 ml are 4 l. */
class DispensersByHandTest {
  @TempDir Path folder;

  private static final String EVENT =
      """
      event: A generic event
      coffee:
        name: House
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Hall, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30}
        - {name: Bar, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30}
      brewers:
        - {name: Tall, count: 9, dose: up to 2 kg, water: 30 l, cycle: 10 min}
      dispensers:
        - {name: Pot, count: 4, capacity: 2.2 l, pour: 6 cups per minute}
      """;

  /** Without any, each coffee of a group has a vessel of its own. */
  @Test
  void withoutDispensers() throws IOException {
    Plan plan = new Written(folder).plan(EVENT.replaceAll("(?ms)^dispensers:.*", ""));
    assertEquals(
        List.of(
            "No dispensers are listed: each coffee of a group is mixed in one vessel of your own."),
        Written.said("no-dispensers", plan));
    assertEquals(2, plan.fills().size());
    assertEquals(List.of(), said("no-dispensers", EVENT));
  }

  /** Four fills of three pots, told where no clock sees to it. */
  @Test
  void potsThatAreFilledAgain() throws IOException {
    String untimed = EVENT.replace(", serve: 10:00-10:30", "");
    assertEquals(List.of(), said("refill", untimed));
    assertEquals(
        List.of(
            "Pot: 4 fills for 3 of them. They must come back, be emptied and rinsed, and be filled"
                + " again; never with another coffee unrinsed."),
        said("refill", untimed.replace("count: 4", "count: 3")));
    assertEquals(List.of(), said("queue", untimed.replace("count: 4", "count: 3")));
  }

  /**
   * 240 cups in 30 min are eight a minute, two taps of six. One urn alone pours six: 180 by 10:30,
   * and the last of 240 ten minutes later. At just eight a minute nobody waits, nor for the three
   * taps of four that 240 cups in 20 min would want, if they come evenly within the half hour.
   */
  @Test
  void oneTapIsTooFew() throws IOException {
    String queue =
        EVENT
            .replace("headcount: 20", "headcount: 240")
            .replaceFirst("  - \\{name: Bar.*?\\}\n", "")
            .replace("count: 4, capacity: 2.2 l", "count: 1, capacity: 60 l");
    assertEquals(
        List.of(
            "Hall (House): 1 tap for 8 cups a minute: the queue is about 10 min at its longest. 2 of"
                + " Pot side by side would spare it, or a longer time to serve."),
        said("queue", queue));
    assertEquals(List.of(), said("queue", queue.replace("pour: 6", "pour: 8")));
    assertEquals(List.of(), said("queue", queue.replace("count: 1", "count: 2")));
  }

  /** Who is due all at once waits anyhow, the last of 20 cups for 20 times ten seconds. */
  @Test
  void whoComesAllAtOnceIsToldOfNoQueue() throws IOException {
    String once =
        EVENT.replace(", serve: 10:00-10:30", "").replace("2.2 l", "6 l") + "time: 10:00\n";
    assertEquals(2, new Written(folder).plan(once).run().orElseThrow().fills().size());
    assertEquals(List.of(), said("queue", once));
  }

  /**
   * A pot of 2.2 l with a heel of 40 ml and two steps of 1 g, 2.0516 ml at 75 °C, gives 2157.948
   * ml: 107 897 cups of 200 ml are 9999.96 of them, one more 10 000.05.
   */
  @Test
  void tenThousandFillsAndNoMore() {
    assertTrue(planned(107_897).isPresent());
    assertEquals(10_000, with(107_897).orElseThrow().fills());
    assertTrue(planned(107_898).isEmpty());
    assertEquals(Optional.empty(), with(107_898));
  }

  private static Optional<Plan> planned(int guests) {
    return new Planner().plan(pots(guests)).value();
  }

  private static Optional<Chosen> with(int guests) {
    Event event = pots(guests);
    GuestGroup crowd = event.groups().get(0);
    return new DispenserPlan(event, new Findings(event), DispenserPlan.Limits.NONE)
        .with(
            GroupNeed.of(event, crowd, crowd.coffees().get(0)),
            event.equipment().dispensers().get(0),
            Integer.MAX_VALUE);
  }

  private static Event pots(int guests) {
    Temperature poured = Temperature.ofCelsius(75); // as it is filled in
    return Events.event(
        new Serving(new Provision.Mean(), Share.ofPercent(0), poured, poured, poured),
        List.of(Events.coffee("house", Events.ratio(13))),
        List.of(Events.group("Crowd", guests, 200, 1.25)),
        Events.equipment(1, List.of(), List.of(Events.dispenser("Pot", 99, 2.2, 40))));
  }

  /**
   * Held for 20 min, of which the way takes six, a pot is poured for 14: half an hour is three
   * rounds, of two pots each for 240 cups. Without a clock nobody knows.
   */
  @Test
  void theFewestFillsThatStayFresh() throws IOException {
    assertEquals(List.of(1, 1), new Written(folder).plan(EVENT).leastFills());
    String brief = EVENT.replace("pour:", "hold: 20 min, pour:").replace("count: 4", "count: 9");
    assertEquals(List.of(3, 3), new Written(folder).plan(brief).leastFills());
    String crowd =
        brief
            .replace("capacity: 2.2 l", "capacity: 60 l")
            .replace("{name: Hall, headcount: 20", "{name: Hall, headcount: 240");
    assertEquals(List.of(6, 3), new Written(folder).plan(crowd).leastFills());
    assertEquals(
        List.of(1, 1),
        new Written(folder).plan(brief.replace(", serve: 10:00-10:30", "")).leastFills());
    assertEquals(
        List.of(1, 1),
        new Written(folder)
            .plan(brief.replaceAll("(?ms)^brewers:.*?^dispensers:", "dispensers:"))
            .leastFills());
  }

  /** Six minutes are gone when a pot is there, and one is left to pour at least. */
  @Test
  void aHoldTooShortForTheWay() throws IOException {
    String brief = EVENT.replace("pour:", "hold: 6 min, pour:");
    List<Problem> problems = problems(brief);
    assertEquals(2, problems.size());
    assertEquals(
        "no dispenser holds long enough for the way to group 'Hall'", problems.get(0).wrong());
    assertEquals("a longer hold, or a station nearer to the brewers", problems.get(0).expected());
    // another kind holds long enough and is too small: that is what is told
    String small = brief + "  - {name: Cup, count: 9, capacity: 60 ml, heel: 55 ml}\n";
    assertTrue(
        problems(small).get(0).wrong().startsWith("no dispenser listed can serve group 'Hall'"));
  }

  /** Of the kind that the group wants, not of the one with the larger heel. */
  @Test
  void whatAKindMustHold() throws IOException {
    // two steps of 5 g are 10.4 ml at 92 °C, beside a heel of 55 ml: 66 ml
    String wanted =
        EVENT.replaceAll("10:00-10:30\\}", "10:00-10:30, dispenser: Cup}")
            + "  - {name: Cup, count: 9, capacity: 60 ml, heel: 55 ml}\n"
            + "  - {name: Mug, count: 9, capacity: 2 l, heel: 1 l}\n";
    assertEquals(
        "a dispenser of more than 66 ml, which its heel and the scale step take up",
        problems(wanted).get(0).expected().replace('\u00a0', ' '));
  }

  /**
   * Three pots for two groups of two at the same time: one is missing, and the urn, which alone is
   * enough for a group, takes its place; the group keeps its pots that can't have another kind.
   */
  @Test
  void anotherKindTakesTheirPlace() throws IOException {
    String urn = "  - {name: Urn, count: 1, capacity: 12 l, pour: 6 cups per minute}\n";
    String scarce = EVENT.replace("count: 4", "count: 3");
    assertTrue(
        problems(scarce).get(0).wrong().startsWith("the run needs 4 of Pot at once"),
        problems(scarce).toString());
    // the choice takes the urn for the first of two equal groups; the other has the pots
    assertEquals(List.of("Bar 2 Pot", "Hall 1 Urn"), kinds(scarce + urn));
    assertEquals(
        List.of("Bar 1 Urn", "Hall 2 Pot"),
        kinds(
            (scarce + urn)
                .replace("Hall, headcount: 20,", "Hall, dispenser: Pot, headcount: 20,")));
  }

  /**
   * Four pots are out early, the only urn is the bar's, and the hall, which would take the urn for
   * having to be filled once, has two of the pots that are back long before.
   */
  @Test
  void whatIsBackInTimeTakesItsPlace() throws IOException {
    String event =
        EVENT
                .replace("{name: Bar, headcount: 20,", "{name: Bar, headcount: 30, dispenser: Urn,")
                .replace(
                    "brewers:",
                    "  - {name: Early, headcount: 40, cup: 200 ml, strength: 1.25 %,"
                        + " serve: 08:00-08:30, dispenser: Pot}\nbrewers:")
            + "  - {name: Urn, capacity: 12 l, pour: 6 cups per minute}\n";
    assertEquals(List.of("Bar 1 Urn", "Early 4 Pot", "Hall 2 Pot"), kinds(event));
    // who insists on the urn doesn't get another kind
    List<Problem> insists = problems(event.replace("{name: Hall,", "{name: Hall, dispenser: Urn,"));
    assertTrue(insists.get(0).wrong().startsWith("the run needs 2 of Urn at once"), "" + insists);
  }

  /** 216 cups in 12 min are 18 a minute, three taps of six for each of two: there are four. */
  @Test
  void fewerSideBySideWhereThereAreTooFew() throws IOException {
    String crowds =
        EVENT
            .replace("headcount: 20", "headcount: 216")
            .replace("10:00-10:30", "10:00-10:12")
            .replace("capacity: 2.2 l", "capacity: 60 l");
    Plan plan = new Written(folder).plan(crowds);
    assertEquals(List.of(2, 2), plan.groups().stream().map(GroupPlan::taps).toList());
    assertEquals(4, plan.fills().size());
    assertTrue(!Written.said("queue", plan).isEmpty());
    Plan six = new Written(folder).plan(crowds.replace("count: 4", "count: 6"));
    assertEquals(List.of(3, 3), six.groups().stream().map(GroupPlan::taps).toList());
    assertEquals(List.of(), Written.said("queue", six));
  }

  private List<String> kinds(String event) throws IOException {
    return new Written(folder)
        .plan(event).groups().stream()
            .map(
                group ->
                    group.group().name()
                        + " "
                        + group.fills().size()
                        + " "
                        + group.fills().get(0).dispenser().orElseThrow().name())
            .sorted()
            .collect(Collectors.toList());
  }

  private List<Problem> problems(String event) throws IOException {
    return new Planner().plan(new Written(folder).event(event)).problems();
  }

  private List<String> said(String code, String event) throws IOException {
    return new Written(folder).said(code, event);
  }
}
