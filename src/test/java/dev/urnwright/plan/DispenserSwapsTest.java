package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.plan.DispenserPlan.Limits;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Who gives up which dispensers where there are too few, by hand. A pot for 10:00-10:30 is filled
 * by 9:54, three minutes of carrying and three of filling before, and is back and clean at 10:38,
 * three of carrying and five of cleaning after.
 */
class DispenserSwapsTest {
  private static final String POT = "{name: Pot, count: 1, capacity: 60 l, pour: 6 cups/min}";
  private static final String URN = "{name: Urn, count: 1, capacity: 12 l, pour: 6 cups/min}";
  private static final int NOT_EARLY = 0;

  @TempDir Path folder;

  /** 10:38 and six minutes are 10:44; a minute sooner one of the two must have the urn. */
  @Test
  void aPotThatIsBackInTimeIsNotMissing() throws IOException {
    assertEquals(
        List.of("1 Pot", "1 Pot"),
        settled(NOT_EARLY, List.of(POT, URN), "10:00-10:30 Pot", "10:44-11:14 Pot"));
    assertEquals(
        List.of("1 Urn", "1 Pot"),
        settled(NOT_EARLY, List.of(POT, URN), "10:00-10:30 Pot", "10:43-11:13 Pot"));
    // filled ten minutes sooner than it must be
    assertEquals(
        List.of("1 Pot", "1 Pot"),
        settled(10, List.of(POT, URN), "10:00-10:30 Pot", "10:54-11:24 Pot"));
    assertEquals(
        List.of("1 Urn", "1 Pot"),
        settled(10, List.of(POT, URN), "10:00-10:30 Pot", "10:53-11:23 Pot"));
    // but not when it would be past its hold: 11:18 less 40 min is 10:38
    String brief = POT.replace("pour", "hold: 40 min, pour");
    assertEquals(
        List.of("1 Pot", "1 Pot"),
        settled(10, List.of(brief, URN), "10:00-10:30 Pot", "10:48-11:18 Pot"));
    assertEquals(
        List.of("1 Urn", "1 Pot"),
        settled(10, List.of(brief, URN), "10:00-10:30 Pot", "10:47-11:17 Pot"));
  }

  /**
   * Four in a row, each in the next one's way: for 24 min (10:14 to 10:38), 20 (10:38 to 10:58) and
   * 4 (11:18 to 11:22). Without the second 4 are left, the least; then the last takes the urn,
   * which the second has brought back, and not the third.
   */
  @Test
  void whoLeavesTheLeastMissingGoesFirst() throws IOException {
    assertEquals(
        List.of("1 Pot", "1 Urn", "1 Pot", "1 Urn"),
        settled(
            NOT_EARLY,
            List.of(POT, URN),
            "10:00-10:30 Pot",
            "10:20-10:50 Pot",
            "10:44-11:14 Pot",
            "11:24-11:54 Pot"));
  }

  /** 4 l are one urn or two mugs. */
  @Test
  void theKindThatIsFilledTheLeastTakesItsPlace() throws IOException {
    String mug = "{name: Mug, count: 9, capacity: 2.2 l, pour: 6 cups/min}";
    assertEquals(
        List.of("1 Urn", "1 Pot"),
        settled(NOT_EARLY, List.of(POT, mug, URN), "10:00-10:30 Pot", "10:00-10:30 Pot"));
  }

  @Test
  void aKindThatIsOutItselfIsNoHelp() throws IOException {
    assertEquals(
        List.of("1 Pot", "1 Pot", "1 Urn"),
        settled(
            NOT_EARLY, List.of(POT, URN), "10:00-10:30 Pot", "10:00-10:30 Pot", "10:00-10:30 Urn"));
  }

  /** At eight the urn is free and one of three pots, too; at ten neither is. */
  @Test
  void whoIsInNobodysWayKeepsWhatItHas() throws IOException {
    assertEquals(
        List.of("1 Pot", "1 Pot", "1 Pot", "1 Urn"),
        settled(
            NOT_EARLY,
            List.of(POT, URN),
            "08:00-08:30 Pot",
            "10:00-10:30 Pot",
            "10:00-10:30 Pot",
            "10:00-10:30 Urn"));
    // 216 cups in 12 min want three taps of six cups a minute
    assertEquals(
        List.of("3 Pot", "1 Pot", "1 Pot", "1 Pot", "1 Pot"),
        settled(
            NOT_EARLY,
            List.of(POT.replace("count: 1", "count: 3")),
            "08:00-08:12 Pot 216",
            "10:00-10:30 Pot",
            "10:00-10:30 Pot",
            "10:00-10:30 Pot",
            "10:00-10:30 Pot"));
  }

  /**
   * Three pots for a hall that wants them all, and a bar that wants one: two pots pour twelve cups
   * a minute, two urns of 5.9 less, and four would be wanted of them.
   */
  @Test
  void aKindThatMakesTheQueueLongerIsNoHelp() throws IOException {
    String three = POT.replace("count: 1", "count: 3");
    String urns = "{name: Urn, count: 2, capacity: 60 l, pour: 5.9 cups/min}";
    assertEquals(
        List.of("2 Pot", "1 Pot"),
        settled(NOT_EARLY, List.of(three, urns), "10:00-10:12 Pot 216", "10:00-10:12 Pot 20 only"));
  }

  /**
   * Two halls that want three each, and four pots: first one, then the other does with two, rather
   * than one of them with a single one.
   */
  @Test
  void whatIsLackingIsShared() throws IOException {
    assertEquals(
        List.of("2 Pot", "2 Pot"),
        settled(
            NOT_EARLY,
            List.of(POT.replace("count: 1", "count: 4")),
            "10:00-10:12 Pot 216",
            "10:00-10:12 Pot 216"));
  }

  /**
   * What groups have in the end.
   *
   * @param groups each its time, the kind it has first, how many there are of it, 20 if nothing is
   *     said, and whether it wants no other kind
   */
  private List<String> settled(int early, List<String> kinds, String... groups) throws IOException {
    StringBuilder text =
        new StringBuilder(
            """
            event: A generic event
            coffee:
              reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
              concentrate: {ratio: 13}
            brewers:
              - {name: Tall, count: 9, dose: up to 2 kg, water: 30 l, cycle: 10 min}
            groups:
            """);
    List<String> first = new ArrayList<>();
    for (String group : groups) {
      String[] parts = group.split(" ");
      first.add(parts[1]);
      text.append(
          "  - {name: G%d, headcount: %s, cup: 200 ml, strength: 1.25 %%, serve: %s%s}\n"
              .formatted(
                  first.size(),
                  parts.length > 2 ? parts[2] : "20",
                  parts[0],
                  parts.length > 3 ? ", dispenser: " + parts[1] : ""));
    }
    text.append("dispensers:\n");
    kinds.forEach(kind -> text.append("  - ").append(kind).append('\n'));
    return settled(new Written(folder).event(text.toString()), early, first);
  }

  private static List<String> settled(Event event, int early, List<String> first) {
    List<GroupNeed> needs =
        event.groups().stream()
            .map(group -> GroupNeed.of(event, group, group.coffees().get(0)))
            .toList();
    DispenserPlan plan = new DispenserPlan(event, new Findings(event), Limits.NONE);
    Map<GroupNeed, Chosen> chosen = new IdentityHashMap<>();
    for (int i = 0; i < needs.size(); i++) {
      Dispenser kind = named(event, first.get(i));
      chosen.put(needs.get(i), plan.with(needs.get(i), kind, Integer.MAX_VALUE).orElseThrow());
    }
    new DispenserSwaps(plan, event, early).settle(needs, chosen);
    return needs.stream()
        .map(need -> chosen.get(need).taps() + " " + chosen.get(need).dispenser().name())
        .toList();
  }

  private static Dispenser named(Event event, String name) {
    return event.equipment().dispensers().stream()
        .filter(kind -> kind.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
