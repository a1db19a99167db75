package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is tried where a run can't be made as the guests would like, by hand. */
class TrialsTest {
  @TempDir Path folder;

  /**
   * For each tap 120 cups come in 20 min; as many urns of 24 l each take a batch of 1.55 kg, all by
   * 9:54, and each brewer brews one from 9:44 to 9:49 and a second too late, till 9:56. There are
   * half as many brewers, so half of the coffee is in time, which with fewer urns is enough: twice
   * as many fills, in two rounds from 10:00 and 10:10. So one urn fewer than wanted is enough,
   * though half of them would be, too.
   */
  @Test
  void fewerSideBySide() throws IOException {
    assertEquals(List.of(5, 10), tapsAndFills(6, 3));
    assertEquals(List.of(7, 14), tapsAndFills(8, 4));
    // for nine a third is in time, three rounds of four urns; five or more come in two rounds
    assertEquals(List.of(4, 12), tapsAndFills(9, 3));
  }

  /**
   * Five taps pour 600 of the 720 cups in 20 min, so the last guest waits for 120 at 30 a minute.
   * Three more brewers would fill the six urns by 9:49; five minutes earlier each brews twice, from
   * 9:39 and 9:46, by 9:51. More urns would spare nothing: there are twenty.
   */
  @Test
  void whatWouldSpareTheQueue() throws IOException {
    assertEquals(
        List.of(
            "Hall (coffee): 5 taps for 36 cups a minute: the queue is about 4 min at its longest."
                + " The brewers can't have more of Urn full in time; any one of these would do:"
                + " 3 more Tall; start 5 min earlier."),
        new Written(folder).said("queue", crowd(6, 3)));
  }

  /**
   * In the afternoon there is time to brew, but six pots would be needed to pour 120 cups in 20 min
   * at one a minute each, and there are five, as many as the hall's urns that the brewers can fill:
   * 100 cups by 14:20, and the last guest waits for 20 at 5 a minute.
   */
  @Test
  void whatWouldSpareAQueueAtTooFewPots() throws IOException {
    String event =
        crowd(6, 3)
            .replace(
                "brewers:",
                "  - {name: Late, headcount: 120, cup: 200 ml, strength: 1.25 %,"
                    + " serve: 14:00-14:20, dispenser: Pot}\nbrewers:")
            .replace(
                "kitchen:",
                "  - {name: Pot, count: 5, capacity: 6 l, hold: 60 min, pour: 1 cups per minute}\n"
                    + "kitchen:");
    List<String> queues = new Written(folder).said("queue", event);
    assertEquals(2, queues.size());
    assertTrue(queues.get(0).startsWith("Hall (coffee): 5 taps"), queues.get(0));
    assertEquals(
        "Late (coffee): 5 taps for 6 cups a minute: the queue is about 4 min at its longest."
            + " 6 of Pot side by side would spare it, or a longer time to serve.",
        queues.get(1));
  }

  private List<Integer> tapsAndFills(int wanted, int brewers) throws IOException {
    GroupPlan hall = new Written(folder).plan(crowd(wanted, brewers)).groups().get(0);
    return List.of(hall.taps(), hall.fills().size());
  }

  private static String crowd(int wanted, int brewers) {
    String event =
        """
        event: A generic event
        coffee:
          reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %%}
          concentrate: {ratio: 13}
        groups:
          - {name: Hall, headcount: %d, cup: 200 ml, strength: 1.25 %%, serve: 10:00-10:20}
        brewers:
          - {name: Tall, count: %d, dose: 100 g to 1.6 kg, water: 99 l, cycle: 5 min}
        dispensers:
          - {name: Urn, count: 20, capacity: 24.8 l, hold: 60 min, pour: 6 cups per minute}
        kitchen: {opens: 09:29}
        """;
    return event.formatted(120 * wanted, brewers);
  }

  /**
   * The hall's pot is clean at 10:38, a minute before the bar's must be filled. But a single brewer
   * has the crew's decaf ready then, of which there is more, and the bar's coffee twelve minutes
   * before; so one of the two has the jug, which was out in the morning.
   */
  @Test
  void whatIsReadyBeforeItMustBe() throws IOException {
    String event =
        """
        event: A generic event
        coffees:
          house:
            name: House
            concentrate: {ratio: 13}
          decaf:
            name: Decaf
            concentrate: {ratio: 13}
        groups:
          - {name: First, headcount: 30, cup: 200 ml, strength: 1.25 %, coffee: house, dispenser: Jug,
             serve: 08:00-08:30}
          - {name: Hall, headcount: 25, cup: 200 ml, strength: 1.25 %, coffee: house,
             serve: 10:00-10:30}
          - {name: Bar, headcount: 20, cup: 200 ml, strength: 1.25 %, coffee: house,
             serve: 10:45-11:15}
          - {name: Crew, headcount: 22, cup: 200 ml, strength: 1.25 %, coffee: decaf, dispenser: Urn,
             serve: 10:45-11:15}
        brewers:
          - {name: Tall, dose: up to 900 g, water: 16 l, cycle: 10 min}
        dispensers:
          - {name: Pot, capacity: 7 l}
          - {name: Jug, capacity: 8 l}
          - {name: Urn, capacity: 9 l}
        """;
    Plan plan = new Written(folder).plan(event);
    assertEquals(
        List.of("Jug", "Pot"),
        plan.groups().stream()
            .filter(group -> List.of("Hall", "Bar").contains(group.group().name()))
            .map(group -> group.fills().get(0).dispenser().orElseThrow().name())
            .sorted()
            .toList());
  }
}
