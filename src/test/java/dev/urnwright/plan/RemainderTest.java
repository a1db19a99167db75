package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Blend;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is left of a morning when the hall's batch is brewed and its urn is out. Each group's 20
 * cups take 2730 g of concentrate, of 255 g of coffee that gives 10.85 g to the gram.
 */
class RemainderTest {
  private static final String EVENT =
      """
      event: A generic event
      date: 2027-04-17
      coffee:
        name: House
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Hall, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30}
        - {name: Late, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 13:00-13:30}
      brewers:
        - {name: Tall, dose: 100 g to 1.2 kg, water: 16 l, cycle: 10 min}
      heaters: [{name: Boiler, capacity: 10 l, power: 3 kW}]
      dispensers:
        - {name: Urn, count: 2, capacity: 6 l, hold: 60 min}
      """;

  @TempDir Path folder;
  private Plan plan;

  @BeforeEach
  void plan() throws IOException {
    plan = new Written(folder).plan(EVENT);
  }

  @Test
  void theHallIsServed() {
    Plan left = left(List.of("coffee-2"), "Late").orElseThrow();
    // the boiler is hot and the brewer warm; the hall's urn, filled at 9:54 and good for an hour,
    // is fetched then
    assertEquals(
        List.of(
            "09:57 Carry coffee-F1",
            "10:54 Collect coffee-F1",
            "12:38 Grind coffee-2",
            "12:44 Start coffee-2",
            "12:51 Preheat coffee-F2",
            "12:54 Fill coffee-F2",
            "12:57 Carry coffee-F2",
            "13:54 Discard coffee-F2"),
        actions(left));
    CoffeePlan coffee = left.coffees().get(0);
    assertEquals(List.of("coffee-2"), coffee.batches().stream().map(Batch::id).toList());
    assertEquals(2730, coffee.needed().blend().concentrate().grams(), 1e-9);
    assertEquals(2730 / 10.85, coffee.needed().brew().dose().grams(), 1e-9);
    assertEquals(255 * 10.85, coffee.brewed().brew().beverage().grams(), 1e-9);
    assertEquals(0, coffee.brewed().leftOver().grams(), 1e-9);
    assertEquals(20, left.groups().get(0).demand().cups());
    assertEquals(1, left.run().orElseThrow().fills().size());
    assertEquals("what-is-left", left.cautions().get(0).code());
  }

  @Test
  void nothingOrAllIsLeft() {
    assertEquals(Optional.empty(), left(List.of(), "nobody"));
    Plan all = left(List.of("coffee-1", "coffee-2"), "Hall", "Late").orElseThrow();
    assertEquals(actions(plan), actions(all));
    assertTrue(actions(all).stream().anyMatch(action -> action.endsWith("Switch on Tall")));
    assertTrue(actions(all).stream().anyMatch(action -> action.endsWith("Switch on Boiler")));
  }

  /** The second brewer is still cold when only the first has brewed. */
  @Test
  void aBrewerThatIsStillCold() throws IOException {
    plan =
        new Written(folder)
            .plan(
                EVENT
                    .replace(
                        "{name: Tall, dose: 100 g to 1.2 kg",
                        "{name: Tall, count: 2, dose: 100 g to 260 g")
                    .replace("13:00-13:30", "10:00-10:30"));
    assertEquals(2, plan.batches().size());
    Plan left = left(List.of("coffee-2"), "Late").orElseThrow();
    assertEquals(
        List.of("Switch on " + plan.batches().get(1).unit().orElseThrow().label()),
        actions(left).stream()
            .filter(action -> action.contains("Switch on"))
            .map(action -> action.substring(6))
            .toList());
  }

  /** One of the hall's two urns is out, with half of 40 cups. */
  @Test
  void halfOfAGroupIsLeft() throws IOException {
    plan =
        new Written(folder)
            .plan(EVENT.replace("{name: Hall, headcount: 20", "{name: Hall, headcount: 40"));
    List<Fill> hall = plan.groups().get(0).fills();
    assertEquals(2, hall.size());
    GroupPlan half =
        new Remainder(plan, Map.of(), Map.of(hall.get(1).id(), hall.get(1)))
            .plan()
            .orElseThrow()
            .groups()
            .get(0);
    assertEquals(List.of(hall.get(1)), half.fills());
    assertEquals(20, half.demand().cups());
    assertEquals(20, half.demand().mean(), 1e-9);
  }

  /**
   * Over ice, in 20 cups of 200 g: 4.186 · 20 / (333.55 + 4.186 · 25) of the 4000 g, and of what
   * rounding adds, are ice.
   */
  @Test
  void iceIsLeft() throws IOException {
    plan = new Written(folder).plan(icedFirst());
    CoffeePlan coffee = left(List.of("coffee-1"), "Hall").orElseThrow().coffees().get(0);
    assertEquals(
        4000 * 4.186 * 20 / (333.55 + 4.186 * 25), coffee.needed().blend().ice().grams(), 2.5);
  }

  /**
   * Iced coffee is made long before the boiler is switched on: that stays. When it was filled
   * later, the boiler was on by then.
   */
  @Test
  void aBoilerThatIsStillCold() throws IOException {
    plan = new Written(folder).plan(icedFirst());
    Run run = plan.run().orElseThrow();
    Run.FillTime iced = run.fills().get(0);
    assertEquals("08:54", iced.filled().toLocalTime().toString());
    assertTrue(iced.filled().isBefore(run.heaters().get(0).on()));
    assertTrue(isBoilerLeft());
    List<Run.FillTime> late = new ArrayList<>(run.fills());
    late.set(0, iced.filledAt(run.heaters().get(0).on()));
    plan =
        new Plan(
            plan.event(),
            plan.coffees(),
            Optional.of(
                new Run(
                    run.batches(),
                    late,
                    run.heaters(),
                    run.water(),
                    run.actions(),
                    run.crew(),
                    run.quality())),
            plan.shopping(),
            plan.cautions(),
            plan.notes());
    assertFalse(isBoilerLeft());
  }

  private boolean isBoilerLeft() {
    return actions(left(List.of("coffee-2"), "Late").orElseThrow()).stream()
        .anyMatch(action -> action.endsWith("Switch on Boiler"));
  }

  /** No cup of the hall is hot. */
  private static String icedFirst() {
    return EVENT.replace(
        "serve: 10:00-10:30", "serve: 10:00-10:30, over_ice: {poured_at: 25 °C, served_at: 5 °C}");
  }

  /** Nothing can be confused with a brewer that is on already. */
  @Test
  void aBrewerThatIsCalledLikeABatch() throws IOException {
    plan = new Written(folder).plan(EVENT.replace("Tall", "coffee-2"));
    List<String> actions = actions(left(List.of("coffee-2"), "Late").orElseThrow());
    assertTrue(actions.contains("12:38 Grind coffee-2"), actions.toString());
    assertTrue(actions.stream().noneMatch(action -> action.contains("Switch on")));
  }

  /** An urn for which no concentrate came: the brew is as planned, not one of nothing. */
  @Test
  void anUrnThatStaysEmpty() {
    Fill late = plan.groups().get(1).fills().get(0);
    Fill empty =
        new Fill(
            late.id(),
            late.groupName(),
            late.dispenser(),
            List.of(),
            new Blend(Mass.ZERO, Mass.ZERO, Mass.ZERO, Strength.ofFraction(0)),
            late.level(),
            late.byJug());
    Plan left = new Remainder(untimed(), Map.of(), Map.of(late.id(), empty)).plan().orElseThrow();
    CoffeePlan coffee = left.coffees().get(0);
    assertEquals(0, coffee.needed().blend().concentrate().grams(), 1e-9);
    assertEquals(plan.coffees().get(0).needed().brew(), coffee.needed().brew());
  }

  private Plan untimed() {
    return new Plan(
        plan.event(),
        plan.coffees(),
        Optional.empty(),
        plan.shopping(),
        plan.cautions(),
        plan.notes());
  }

  /** All is brewed: what the fills take is of the batches as they were planned. */
  @Test
  void onlyFillsAreLeft() {
    Plan left = left(List.of(), "Late").orElseThrow();
    CoffeePlan coffee = left.coffees().get(0);
    assertEquals(plan.coffees().get(0).brewed(), coffee.brewed());
    assertEquals(2730 / 10.85, coffee.needed().brew().dose().grams(), 1e-9);
    assertTrue(actions(left).stream().noneMatch(action -> action.contains("Start")));
  }

  private static List<String> actions(Plan plan) {
    return plan.run().orElseThrow().actions().stream()
        .map(a -> a.at().toLocalTime() + " " + a.kind().words() + " " + a.what())
        .toList();
  }

  private Optional<Plan> left(List<String> batches, String... groups) {
    Map<String, Batch> toBrew = new HashMap<>();
    plan.batches().stream()
        .filter(batch -> batches.contains(batch.id()))
        .forEach(batch -> toBrew.put(batch.id(), batch));
    Map<String, Fill> toFill = new HashMap<>();
    plan.fills().stream()
        .filter(fill -> List.of(groups).contains(fill.groupName()))
        .forEach(fill -> toFill.put(fill.id(), fill));
    return new Remainder(plan, toBrew, toFill).plan();
  }
}
