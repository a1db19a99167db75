package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.plan.PackingLine.Part;
import dev.urnwright.quantity.Amount;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is taken along, counted by hand. */
class PackingTest {
  @TempDir Path folder;

  /**
   * At 1:13 a gram of coffee gives 10.85 g at 1.787 %; the hall's 20 l, 19 497 g at 75 °C, are four
   * pots of 4874 g: 3409, so 3410 g of concentrate in each. 13 640 g are 1257 g of coffee, in two
   * batches of 630 g. The bar's 3899 g take 2730 g of concentrate, 252, so 260 g of coffee.
   */
  private static final String EVENT =
      """
      event: A generic event
      scale_step: 10 g
      jug_mark: 50 ml
      coffees:
        house:
          name: House
          reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
          concentrate: {ratio: 13}
        evening:
          name: Evening decaf
          reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
          concentrate: {ratio: 13}
      groups:
        - {name: Hall, headcount: 100, cup: 200 ml, strength: 1.25 %, coffee: house, dispenser: Pot}
        - {name: Bar, headcount: 20, cup: 200 ml, strength: 1.25 %, coffee: evening, dispenser: Urn}
      brewers:
        - {name: Tall, count: 2, dose: 100 g to 700 g, water: 20 l, power: 3.64 kW, circuit: kitchen}
        - {name: Tiny, dose: 1 g to 2 g, water: 100 ml}
      circuits: [{name: kitchen, voltage: 230 V, breaker: 63 A}]
      heaters:
        - {name: Kettle, count: 3, capacity: 2 l, power: 2 kW}
        - {name: Boiler, capacity: 20 l, power: 3 kW, circuit: kitchen}
      dispensers:
        - {name: Pot, count: 3, capacity: 6 l}
        - {name: Urn, count: 9, capacity: 12 l}
        - {name: Flask, count: 9, capacity: 1 l}
      bring: [Trolley]
      """;

  @Test
  void eachThingThatThePlanUses() throws IOException {
    Plan plan = plan(EVENT);
    assertEquals(
        List.of(
            "2 Tall (3.6 kW each, on kitchen)",
            "3 Filters for Tall (one a batch, and some to spare)",
            "Grinder, unless the coffee comes ground",
            "3 Kettle (2.0 kW each)",
            "1 Boiler (3.0 kW each, on kitchen)",
            "Sockets on kitchen (230 V, 63 A: what leads may be used on it, a licensed electrician"
                + " says)"),
        lines(plan, Part.BREWING));
    // four fills of three pots, and one urn
    assertEquals(
        List.of(
            "3 Pot",
            "1 Urn",
            "5 Labels, printed (one for each fill)",
            "Signs for House",
            "Signs for Evening decaf (decaf, in large letters, at each of its stations)"),
        lines(plan, Part.SERVING));
    assertEquals(
        List.of(
            "Scale (reads to 10 g, with batteries)",
            "Jug (marked every 50 ml)",
            "Refractometer, or the sheet with the taste ladder",
            "Thermometer",
            "Clock or timer that everybody sees"),
        lines(plan, Part.MEASURING));
    assertEquals(List.of("1260 g House", "260 g Evening decaf"), lines(plan, Part.USED_UP));
    // a gram of coffee keeps 2.15 g of water: 3.15 × 1520 g
    assertEquals(
        List.of(
            "Bin for wet grounds (takes about 4788 g in all; let them cool, lift small bags)",
            "Bins for cups and rubbish, bags",
            "Gloves against heat, aprons, cloths",
            "First-aid kit with something for burns",
            "These sheets, pens, tape",
            "Trolley"),
        lines(plan, Part.BESIDES));
  }

  /** Whoever lists what a batch uses up gets no filters of ours beside it. */
  @Test
  void filtersAreListedOnce() throws IOException {
    assertFilters(0, "1 per batch");
    assertFilters(0, "1 per batch, brewer: Tall");
    assertFilters(1, "1 per batch, brewer: Tiny");
    assertFilters(1, "1 per fill");
    assertFilters(1, "all the water");
  }

  private void assertFilters(long expected, String use) throws IOException {
    Plan plan = plan(EVENT + "supplies: [{name: Papers, use: " + use + "}]\n");
    assertEquals(
        expected,
        plan.packing().stream().filter(line -> line.item().startsWith("Filters")).count(),
        use);
  }

  /**
   * A brewer that is told neither power nor circuit says nothing of them; each part of the load has
   * its heading.
   */
  @Test
  void whatIsNotKnownIsNotSaid() throws IOException {
    List<PackingLine> lines =
        plan(EVENT.replace(", power: 3.64 kW, circuit: kitchen", "")).packing();
    assertEquals("", lines.get(0).detail());
    assertEquals(
        List.of("Brewing and power", "Serving", "Measuring", "Used up", "Besides"),
        lines.stream().map(line -> line.part().saying().toString()).distinct().toList());
  }

  /**
   * On a clock each dispenser is named with where it goes first. 10 l of two pots stand in the
   * foyer until 10:20, the third is filled for nowhere in particular before they are back; at noon
   * the garden gets one that has come back.
   */
  @Test
  void dispensersByTheirStations() throws IOException {
    Plan plan =
        plan(
            """
            event: A generic event
            coffee:
              reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
              concentrate: {ratio: 13}
            groups:
              - {name: Hall, headcount: 50, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:20,
                 station: Foyer, dispenser: Pot}
              - {name: Bar, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:22-10:40,
                 dispenser: Pot}
              - {name: Crew, headcount: 10, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:20,
                 station: Cellar, dispenser: Urn}
              - {name: Band, headcount: 10, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:20,
                 dispenser: Jar}
              - {name: Late, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 12:00-12:20,
                 station: Garden, dispenser: Pot}
            brewers: [{name: Tall, count: 2, dose: 100 g to 1 kg, water: 20 l, cycle: 10 min}]
            dispensers:
              - {name: Pot, count: 3, capacity: 6 l, pour: 12 cups per minute}
              - {name: Urn, capacity: 12 l}
              - {name: Jar, capacity: 12 l}
              - {name: Flask, count: 9, capacity: 1 l}
            """);
    assertEquals(
        List.of("3 Pot (Foyer: no. 1, 2; no. 3)", "1 Urn (Cellar)", "1 Jar"),
        lines(plan, Part.SERVING).subList(0, 3));
  }

  private static List<String> lines(Plan plan, Part part) {
    return plan.packing().stream()
        .filter(line -> line.part() == part)
        .map(
            line ->
                line.amount().map(PackingTest::amount).orElse("")
                    + line.item()
                    + (line.detail().isEmpty() ? "" : " (" + line.detail() + ")"))
        .map(text -> text.replace('\u00a0', ' '))
        .toList();
  }

  private static String amount(Amount amount) {
    return Math.round(amount.value()) + (amount.kind() == Amount.Kind.MASS ? " g " : " ");
  }

  private Plan plan(String event) throws IOException {
    return new Written(folder).plan(event);
  }
}
