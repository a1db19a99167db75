package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.quantity.Temperature;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a run on the clock warns of and assumes. */
class RunRemarksTest {
  @TempDir Path folder;

  /** At 1:13 the concentrate has 1.787 %, and a gram of coffee gives 10.85 g of it. */
  private static final String EVENT =
      """
      event: A generic event
      date: 2027-04-17
      coffee:
        name: House
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Hall, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30, station: Hall}
      brewers:
        - {name: Tall, dose: 100 g to 1.2 kg, water: 16 l, cycle: 10 min}
      dispensers:
        - {name: Urn, count: 4, capacity: 6 l, hold: 60 min, pour: 6 cups per minute}
      stations:
        - {name: Hall, carry: 4 min}
      """;

  private static final String COOL = EVENT + "service_temperature: 87 °C\nbypass_temperature: %s\n";

  /**
   * 4 l at 87 °C are 3869 g: 2710 g of concentrate of 88 °C and 1165 g of water of 92, in an urn
   * rinsed with that, 480 g of water: 89.51 °C. After 37 min it has lost 5 K · 37/60 and a little
   * less: 86.38. What is missing, 0.616 K, takes 0.616 · 3875 / 1165 = 2.05 K in the water, and 15
   * % more for what cools meanwhile: 94.36.
   */
  @Test
  void aCupTooCoolAndWhatMendsIt() throws IOException {
    assertEquals(
        List.of(
            "Hall: the last cup would be poured at 86 °C, below the wanted 87 °C. Bypass at 95 °C"
                + " would do. What is hotter scalds faster."),
        said("cool", cool("92 °C")));
    assertEquals(List.of(), said("cool", cool("95 °C")));
  }

  private static String cool(String bypass) {
    return COOL.replace("%s", bypass);
  }

  /** For 91 °C the water would have to boil; without water there is nothing to heat. */
  @Test
  void whereHotterWaterIsNoHelp() throws IOException {
    String smaller = "Smaller fills, poured sooner, or better insulated dispensers help.";
    assertTrue(said("cool", cool("92 °C").replace("87 °C", "91 °C")).get(0).contains(smaller));
    String undiluted = cool("92 °C").replace("ratio: 13", "ratio: 16").replace("1.25 %", "1.4 %");
    assertTrue(said("cool", undiluted).get(0).contains(smaller));
    // not rinsed, 480 g of 20 °C go in: 82 °C
    String cold = cool("92 °C") + "kitchen: {preheat: no}\n";
    assertTrue(
        said("cool", cold).get(0).contains("Rinse the dispensers hot before filling. " + smaller));
  }

  /** Two rounds of fills, the second or the first poured longer: the coolest cup is told. */
  @ParameterizedTest
  @CsvSource({"early, 1", "late, 0"})
  void theCoolestOfAGroup(String arrivals, int coolest) throws IOException {
    Plan plan =
        new Written(folder)
            .plan(
                cool("92 °C")
                    .replace("10:00-10:30", "10:00-11:00, arrivals: " + arrivals)
                    .replace("hold: 60 min", "hold: 55 min, cooling: 12 °C per hour"));
    Run run = plan.run().orElseThrow();
    assertEquals(2, run.fills().size());
    List<Temperature> last =
        run.fills().stream().map(fill -> fill.heat().orElseThrow().lastPour()).toList();
    assertTrue(last.get(coolest).compareTo(last.get(1 - coolest)) < 0, last.toString());
    assertEquals(last.get(coolest), run.coolestPour(plan.groups().get(0)).orElseThrow());
    List<String> cool = Written.said("cool", plan);
    assertEquals(1, cool.size());
    long degrees = Math.round(last.get(coolest).celsius());
    assertTrue(cool.get(0).contains("poured at " + degrees + " °C"), cool.get(0));
  }

  @Test
  void whatIsAssumedOfTheKitchen() throws IOException {
    Plan plan = new Written(folder).plan(EVENT);
    for (String silent :
        List.of(
            "cool",
            "cycle-assumed",
            "hold-assumed",
            "pour-assumed",
            "circuit-limit",
            "cooling-time",
            "no-date",
            "heater-early",
            "surplus")) {
      assertEquals(List.of(), Written.said(silent, plan), silent);
    }
    assertEquals(
        List.of(
            "The run counts 2 min to empty and reload a brewer, 3 min to fill a dispenser, 3 min to"
                + " carry it to a station that names no time, and 15 min for a brewer to warm up."),
        Written.said("run-handling", plan));
    // poured from 10:00 to 10:30 and ready at 9:53
    assertEquals(
        List.of(
            "Coffee is on average 22 min old when it is poured, at most 37 min. No schedule with"
                + " these batches pours it fresher, and none needs fewer batches."),
        Written.said("run-quality", plan));
    Plan bare =
        new Written(folder)
            .plan(
                EVENT
                        .replace("date: 2027-04-17\n", "")
                        .replace(", cycle: 10 min", ", power: 2 kW, circuit: kitchen")
                        .replace(
                            "brewers:", "brewers:\n  - {name: Small, dose: up to 90 g, water: 2 l}")
                        .replace(
                            "dispensers:",
                            "dispensers:\n  - {name: Jar, capacity: 1 l}"
                                + "\n  - {name: Can, capacity: 1 l}")
                    + "circuits: [{name: kitchen, voltage: 230 V, breaker: 16 A}]\n");
    assertEquals(
        List.of("Small: a cycle of 10 min is assumed.", "Tall: a cycle of 10 min is assumed."),
        Written.said("cycle-assumed", bare));
    assertEquals(
        List.of("Jar, Can: coffee is assumed to be good for 60 min."),
        Written.said("hold-assumed", bare));
    assertEquals(
        List.of("Jar, Can: guests are assumed to get 6 cups a minute from one."),
        Written.said("pour-assumed", bare));
    assertEquals(1, Written.said("circuit-limit", bare).size());
    assertEquals(1, Written.said("no-date", bare).size());
    assertEquals(
        List.of("Concentrate for iced groups is given 60 min to cool."),
        said(
            "cooling-time",
            EVENT.replace("station: Hall}", "over_ice: {poured_at: 25 °C, served_at: 5 °C}}")));
  }

  /**
   * 60 cups in two urns of 4095 g of concentrate take 754.8 g of coffee, which is more than one
   * batch of 600 g. Two of at least 500 g give 10 850 g, 2660 more than wanted. A step of the scale
   * more in each is rounding, and not worth a word.
   */
  @Test
  void whatLeastDosesLeaveOver() throws IOException {
    String sixty =
        EVENT
            .replace("headcount: 20", "headcount: 60")
            .replace("capacity: 6 l", "capacity: 6.5 l")
            .replace("to 1.2 kg", "to 600 g");
    assertEquals(
        List.of(
            "House: the brewers' least doses force about 245 g more coffee than the guests need,"
                + " which leaves 2660 g of concentrate over."),
        said("surplus", sixty.replace("100 g to", "500 g to")));
    assertEquals(List.of(), said("surplus", sixty.replace("100 g to", "380 g to")));
    assertEquals(1, said("surplus", sixty.replace("100 g to", "385 g to")).size());
  }

  /**
   * No heaters: 300 ml to rinse the filter, a quarter of the urn's 6 l, and 1175 g of bypass, which
   * are 1.22 l at 92 °C.
   */
  @Test
  void hotWaterThatNobodyHeats() throws IOException {
    String rinsed = EVENT + "kitchen: {rinse: 300 ml, opens: 09:00}\n";
    assertEquals(
        List.of(
            "No heaters are listed: have 3.02 l of water at 92 °C ready as the run sheet calls for it."),
        said("no-heaters", rinsed));
    Run.WaterUse water = new Written(folder).plan(rinsed).run().orElseThrow().water();
    assertEquals(3315, water.brewing().grams(), 1e-9);
    assertEquals(1175, water.bypass().grams(), 1e-9);
    assertEquals(0.3, water.rinsing().litres(), 1e-9);
    assertEquals(1.5, water.preheating().litres(), 1e-9);
  }

  /**
   * 10 l of 3 kW take 1151 s (at 15 °C from the tap): on at 9:21 for the filter at 9:41, which is
   * before the kitchen opens, or just when it does.
   */
  @Test
  void aHeaterThatMustBeOnBeforeTheKitchenOpens() throws IOException {
    String heated =
        EVENT
            + "heaters: [{name: Boiler, capacity: 10 l, power: 3 kW, efficiency: 90 %}]\n"
            + "kitchen: {rinse: 300 ml, opens: 09:22}\n";
    assertEquals(
        List.of(
            "Boiler must be on at 09:21, before the kitchen opens at 09:22: fill it with hot water,"
                + " or set its timer the night before if its maker allows."),
        said("heater-early", heated));
    assertEquals(List.of(), said("heater-early", heated.replace("09:22", "09:21")));
    assertEquals(List.of(), said("no-heaters", heated));
    Run.Action on = new Written(folder).plan(heated).run().orElseThrow().actions().get(0);
    assertEquals("Fill with tap water, switch on; hot in about 20 min", on.detail());
    assertEquals("09:21", on.at().toLocalTime().toString());
    assertEquals("Switch on", on.kind().words());
    // for the urn at 9:50 where no filter is rinsed, for its bypass at 9:53 where nothing is
    String dry = heated.replace("rinse: 300 ml, ", "");
    assertEquals(List.of("09:30"), switchedOn(dry));
    assertEquals(List.of("09:33"), switchedOn(dry.replace("opens:", "preheat: no, opens:")));
  }

  /** A litre is hot at 9:50, and a quarter of the urn's 6 l is wanted. */
  @Test
  void tooLittleHotWater() throws IOException {
    String kettle = EVENT + "heaters: [{name: Kettle, capacity: 1 l, power: 1 kW}]\n";
    var problems = new Planner().plan(new Written(folder).event(kettle)).problems();
    assertEquals(1, problems.size());
    assertTrue(problems.get(0).wrong().contains("short of hot water at 09:50"), "" + problems);
  }

  @Test
  void whyThereIsNoRun() throws IOException {
    String start = "There is no run on a clock: ";
    assertEquals(
        List.of(start + "no brewers are listed."),
        said("no-run", EVENT.replaceAll("(?ms)^brewers:.*?^dispensers:", "dispensers:")));
    assertEquals(
        List.of(start + "not every group says when it is served, nor the event its time."),
        said("no-run", EVENT.replace("serve: 10:00-10:30, ", "")));
    assertEquals(List.of(), said("no-run", EVENT));
  }

  private List<String> said(String code, String event) throws IOException {
    return new Written(folder).said(code, event);
  }

  private List<String> switchedOn(String event) throws IOException {
    return new Written(folder)
        .plan(event).run().orElseThrow().heaters().stream()
            .map(heater -> heater.on().toLocalTime().toString())
            .toList();
  }
}
