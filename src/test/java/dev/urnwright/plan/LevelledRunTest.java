package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.plan.Run.FillTime;
import dev.urnwright.plan.Run.Stretch;
import dev.urnwright.problem.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A run spread over time for the hands that there are, by hand. One batch is ready at 9:53, the
 * last minute for the two urns of the hall (there at 10:00, 4 min away, filled for 3) while the
 * bar's is in time until 10:04: three are busy for 3 min, two if the bar's urn waits until 9:56.
 * The hall's urns go in one walk from 9:56 to 10:04.
 */
class LevelledRunTest {
  private static final String EVENT =
      """
      event: A generic event
      date: 2027-04-17
      coffee:
        name: House
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Front, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30, station: Hall}
        - {name: Back, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30, station: Hall}
        - {name: Bar, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:10-10:30}
      brewers:
        - {name: Tall, dose: 100 g to 1.2 kg, water: 16 l, cycle: 10 min}
      heaters: [{name: Boiler, capacity: 40 l, power: 9 kW}]
      dispensers:
        - {name: Urn, count: 4, capacity: 6 l, hold: 60 min, pour: 6 cups per minute}
      stations:
        - {name: Hall, carry: 4 min}
      kitchen: {turnaround: 2 min, transfer: 3 min, cleaning: 8 min, preheat: no}
      """;

  private static final String FOR_TWO = EVENT.replace("kitchen: {", "kitchen: {people: 2, ");

  @TempDir Path folder;

  @Test
  void whereNobodyIsCountedItIsToldThatTwoAreEnough() throws IOException {
    Plan plan = new Written(folder).plan(EVENT);
    assertEquals("09:53-09:56 3", busiest(plan));
    assertEquals(List.of("Front 09:53", "Back 09:53", "Bar 09:53"), fills(plan));
    assertEquals(2, plan.run().orElseThrow().crew().enough());
    assertEquals(1, Written.said("crew", plan).size());
  }

  @Test
  void forTwoTheBarWaits() throws IOException {
    Plan plan = new Written(folder).plan(FOR_TWO);
    assertEquals(2, plan.run().orElseThrow().crew().busiest().orElseThrow().people());
    assertEquals(List.of("Front 09:53", "Back 09:53", "Bar 09:56"), fills(plan));
    assertEquals(List.of(), Written.said("crew", plan));
  }

  /**
   * Three urns are rinsed hot at 9:50, the first hot water of all: the boiler has none at 9:49. Of
   * what rinses the filter at 9:41 it has, and one urn is rinsed a minute earlier.
   */
  @Test
  void nothingIsDrawnBeforeTheBoilerIsHot() throws IOException {
    String preheated = FOR_TWO.replace("preheat: no", "preheat: yes");
    Plan cold = new Written(folder).plan(preheated);
    assertEquals(List.of("09:50", "09:50", "09:50"), times(cold, ActionKind.PREHEAT));
    assertEquals(List.of("Front 09:53", "Back 09:53", "Bar 09:56"), fills(cold));
    Plan hot =
        new Written(folder).plan(preheated.replace("preheat: yes", "preheat: yes, rinse: 300 ml"));
    assertEquals(List.of("09:49", "09:50", "09:50"), times(hot, ActionKind.PREHEAT));
    assertEquals(2, hot.run().orElseThrow().crew().busiest().orElseThrow().people());
  }

  /** Spread or not, a litre an hour or so is too little. */
  @Test
  void aBoilerThatIsTooSmallIsSaid() throws IOException {
    List<Problem> problems =
        new Planner()
            .plan(
                new Written(folder)
                    .event(
                        FOR_TWO.replace(
                            "capacity: 40 l, power: 9 kW", "capacity: 1 l, power: 100 W")))
            .problems();
    assertEquals(1, problems.size(), problems.toString());
    assertEquals("the heaters run", problems.get(0).wrong().substring(0, 15));
  }

  private static String busiest(Plan plan) {
    Stretch most = plan.run().orElseThrow().crew().busiest().orElseThrow();
    return most.from().toLocalTime() + "-" + most.until().toLocalTime() + " " + most.people();
  }

  private static List<String> fills(Plan plan) {
    return plan.run().orElseThrow().fills().stream()
        .map((FillTime fill) -> fill.fill().groupName() + " " + fill.filled().toLocalTime())
        .toList();
  }

  private static List<String> times(Plan plan, ActionKind kind) {
    return plan.run().orElseThrow().actions().stream()
        .filter(action -> action.kind() == kind)
        .map(action -> action.at().toLocalTime().toString())
        .toList();
  }
}
