package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a finished plan warns of and assumes. A published reference: 60 g and 960 g gave 831 g at
 * 1.40 %, so at 1:13 the concentrate has 1.787 %.
 */
class RemarksTest {
  private static final String EVENT =
      """
      event: A generic event
      coffee:
        name: House
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 15}
        caffeine: 1.2 %
      groups:
        - {name: Crew, headcount: 15, cup: 200 ml, strength: 1.25 %}
      """;

  @TempDir Path folder;

  @Test
  void whatEveryPlanSays() throws IOException {
    Plan plan = new Written(folder).plan(EVENT + "bypass_temperature: 90 °C\n");
    assertEquals(
        List.of("scald", "lifting", "caffeine", "allergens", "water", "holding"),
        plan.cautions().stream().map(note -> note.code()).toList());
    assertTrue(
        Written.said("scald", plan).get(0).contains("bypass water are near 90 °C. Water of 60 °C"));
    assertTrue(Written.said("density", plan).get(0).contains("IAPWS-IF97"));
    assertTrue(Written.said("caffeine-extracted", plan).get(0).contains("80 to 100 %"));
    for (String other :
        List.of("far-from-reference", "outside-measured", "close-strengths", "costs")) {
      assertEquals(List.of(), Written.said(other, plan));
    }
  }

  /**
   * Weighed in steps of 100 g: 15 cups are 2924 g at 75 °C, 2046 of concentrate, so 2100; they make
   * 3002 g of 1.25 %, so 900 g of water go in: 3000 g. In steps of 500 g 50 cups take 7000 g, which
   * make 10 008, so 10 000 g. Just these may still be carried in one hand, and in two.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "100 g | 15 | 3000 g without its vessel. Carry it level, lid closed, one in each hand",
        "100 g | 16 | 3200 g without its vessel. Carry it with both hands",
        "500 g | 50 | 10.0 kg without its vessel. Carry it with both hands",
        "500 g | 53 | 10.5 kg without its vessel; two people or a trolley"
      })
  void theHeaviestFill(String step, String heads, String words) throws IOException {
    String event =
        EVENT.replace("headcount: 15", "headcount: " + heads).replace("ratio: 15", "ratio: 13")
            + "  - {name: Least, headcount: 1, cup: 200 ml, strength: 1.25 %}\nscale_step: "
            + step
            + "\n";
    String lifting = only("lifting", event);
    assertTrue(lifting.contains("the heaviest fill is " + words), lifting);
  }

  /** 80 % of 230 V and 10 A are 1840 W: twice 920 W may run, and one more watt may not. */
  @Test
  void aCircuitThatAllBrewersOverload() throws IOException {
    String wired =
        EVENT
            + """
            circuits:
              - {name: kitchen, voltage: 230 V, breaker: 10 A}
              - {name: bar, voltage: 230 V, breaker: 10 A}
            brewers:
              - {name: Tall, count: 2, dose: up to 1 kg, water: 16 l, power: 920 W, circuit: kitchen}
              - {name: Small, dose: up to 1 kg, water: 16 l, power: 1.8 kW, circuit: bar}
              - {name: Pour-over, dose: up to 1 kg, water: 16 l}
            """;
    assertEquals(List.of(), said("circuit", wired));
    assertTrue(only("electricity", wired).contains("licensed electrician"));
    assertEquals(
        "Circuit kitchen: all its brewers together draw 2.4 kW, and 80 % of its breaker is 1.8 kW."
            + " Do not run them all at once.",
        only("circuit", wired.replace("920 W", "1.2 kW")));
    assertEquals(1, said("circuit", wired.replace("920 W", "921 W")).size());
    String manual =
        EVENT + "brewers: [{name: Pour-over, dose: up to 1 kg, water: 16 l, cycle: 5 min}]\n";
    assertEquals(List.of(), said("electricity", manual));
  }

  /**
   * 200 ml of 1.25 % at 75 °C are 2.437 g of solids, at 19.39 % extracted from 12.57 g of coffee,
   * of which 1.2 % are 151 mg of caffeine; 100 ml of it hold half.
   */
  @Test
  void theCupWithTheMostCaffeine() throws IOException {
    String both = EVENT + "  - {name: Band, headcount: 9, cup: 100 ml, strength: 1.25 %}\n";
    assertTrue(only("caffeine", both).startsWith("Caffeine: up to about 151 mg a cup."));
    assertEquals(List.of(), said("decaf", both));
    assertTrue(
        only("decaf", both.replace("name: House", "name: House decaf"))
            .startsWith("House decaf is decaf, and not free of caffeine."));
  }

  @Test
  void milkAndIce() throws IOException {
    assertTrue(only("allergens", EVENT).startsWith("Milk and plant drinks carry allergens"));
    String milk = EVENT + "supplies: [{name: Milk, use: 10 ml per cup, allergens: milk}]\n";
    assertTrue(only("allergens", milk).startsWith("Allergens: milk is one"));
    assertEquals(List.of(), said("cooling", EVENT));
    String iced = EVENT.replace("1.25 %}", "1 %, over_ice: {poured_at: 25 °C, served_at: 5 °C}}");
    assertTrue(only("cooling", iced).startsWith("Iced coffee is cooled before"));
  }

  /** Up to a part of water to the gram of coffee from the reference's 1:16 nothing is said. */
  @Test
  void farFromTheReference() throws IOException {
    assertEquals(List.of(), said("far-from-reference", EVENT));
    assertEquals(
        "House is brewed at 1:14.9 and its only reference at 1:16.0: the same extraction is"
            + " assumed, and may not hold. Measure the first batch.",
        only("far-from-reference", EVENT.replace("ratio: 15", "ratio: 14.9")));
    assertEquals(1, said("far-from-reference", EVENT.replace("ratio: 15", "ratio: 17.1")).size());
  }

  /** Measured from 1:13 to 1:16, both included. */
  @ParameterizedTest
  @CsvSource({"12.9, true", "13, false", "16, false", "16.1, true"})
  void outsideWhatWasMeasured(String ratio, boolean outside) throws IOException {
    String measured =
        """
        event: A generic event
        coffee:
          name: House
          absorption: 2 g/g
          measured: [{ratio: 13, extraction: 19 %}, {ratio: 16, extraction: 20 %}]
          concentrate: {ratio: RATIO}
        groups: [{name: Crew, headcount: 15, cup: 200 ml, strength: 1.20 %}]
        """
            .replace("RATIO", ratio);
    assertEquals(
        outside
            ? List.of(
                "House is brewed at 1:%s, outside the measured 1:13.0 to 1:16.0: the nearest point's extraction is taken. Measure the first batch."
                    .formatted(ratio))
            : List.of(),
        said("outside-measured", measured));
    assertEquals(List.of(), said("far-from-reference", measured));
  }

  /** The control chart's window ends at 18 and 22 % of extraction, at 1.15 and 1.45 %. */
  @ParameterizedTest
  @CsvSource({
    "17.9, 1.14, true, true",
    "18, 1.15, false, false",
    "22, 1.45, false, false",
    "22.1, 1.46, true, true"
  })
  void outsideTheWindow(String extraction, String strength, boolean extracted, boolean strong)
      throws IOException {
    String event =
        """
        event: A generic event
        coffee: {name: House, extraction: %s %%, absorption: 2 g/g, concentrate: {ratio: 12}}
        groups: [{name: Crew, headcount: 15, cup: 200 ml, strength: %s %%}]
        """
            .formatted(extraction, strength);
    assertEquals(
        extracted
            ? List.of(
                "House extracts %s %%, outside the window of 18.0 %% to 22.0 %%; water can't change that."
                    .formatted(extraction))
            : List.of(),
        said("extraction-outside-window", event));
    assertEquals(
        strong
            ? List.of(
                "Crew is served at %s %%, outside the window of 1.15 %% to 1.45 %%."
                    .formatted(strength))
            : List.of(),
        said("strength-outside-window", event));
  }

  /** Tasters noticed 0.24 % and no less (Frost, Ristenpart, Guinard 2019). */
  @ParameterizedTest
  @CsvSource({
    "1.01, true",
    "1.02, false",
    "1.24, false",
    "1.25, true",
    "1.26, false",
    "1.48, false",
    "1.49, true"
  })
  void strengthsThatHardlyDiffer(String strength, boolean apartOrOne) throws IOException {
    String event =
        EVENT + "  - {name: Band, headcount: 9, cup: 200 ml, strength: " + strength + " %}\n";
    assertEquals(apartOrOne ? 0 : 1, said("close-strengths", event).size(), strength);
    // the third is far from the second, whichever stands first
    String three = event + "  - {name: Choir, headcount: 9, cup: 200 ml, strength: 0.70 %}\n";
    assertEquals(apartOrOne ? 0 : 1, said("close-strengths", three).size(), strength);
  }

  private String only(String code, String event) throws IOException {
    List<String> said = said(code, event);
    assertEquals(1, said.size(), said.toString());
    return said.get(0);
  }

  private List<String> said(String code, String event) throws IOException {
    return new Written(folder).said(code, event);
  }
}
