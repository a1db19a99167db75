package dev.urnwright.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.ConcentrateWish;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.GuestGroup.CoffeeShare;
import dev.urnwright.event.Kitchen;
import dev.urnwright.event.Note;
import dev.urnwright.event.Paper;
import dev.urnwright.event.Provision;
import dev.urnwright.event.Uncertainties;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Power;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.Volume;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EventReaderTest {
  private static final String LEAST =
      """
      event: Mill fair
      coffee: {name: House}
      groups:
        - headcount: 40
          cup: 240 ml
          strength: 1.3 %
      """;

  private static final String MOST =
      """
      event: Mill fair
      date: 2027-04-17
      time: 07:15
      units: us
      paper: Letter
      window: {strength: 1.2 % to 1.5 %, extraction: 17 % to 23 %}
      overage: 10 %
      spill: 2 %
      service_temperature: 70 °C
      bypass_temperature: 90 °C
      filling_temperature: 15 °C
      coffees:
        house:
          name: House filter
          method: percolation
          reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
          measured: [{ratio: 17, extraction: 19.8 %}, {ratio: "1:13", extraction: 19.1 %}]
          steam_loss: 1 %
          concentrate: {range: 12 to 16}
          caffeine: 1.0 % to 1.4 %
          bag: 1 kg
          price: 26.50 EUR
        cold:
          name: Steeped
          decaf: yes
          method: immersion
          extraction: 21 %
          absorption: 3 g/g
          concentrate: {strength: 1.75 %}
          caffeine: 0.1 %
      strengths: {strong: 1.45 %}
      groups:
        - name: Crew
          headcount: 40
          drinkers: 85 %
          cups_each: 1.5
          cup: 240 ml
          room: 20 ml
          strength: strong
          coffee: {house: 85 %, cold: 15 %}
          service_temperature: 65 °C
          serve: 06:30-07:30
          arrivals: late
          station: Barn
          dispenser: Airpot
        - name: Iced
          headcount: 30
          cup: 300 ml
          strength: 1.30 %
          coffee: cold
          over_ice: {poured_at: 25 °C, served_at: 5 °C}
          serve: 11:30 pm to 1 am
      brewers:
        - name: Twin
          count: 2
          dose: 150 g to 480 g
          water: 6 kg
          vessel: 7 l
          cycle: 11 min
          power: 3.1 kW
          circuit: kitchen A
      circuits:
        - {name: kitchen A, voltage: 230 V, breaker: 32 A}
      dispensers:
        - name: Airpot
          count: 14
          capacity: 2.2 l
          heel: 40 ml
          hold: 60 min
          cooling: 6 °C per hour
      kitchen:
        opens: 05:30
        people: 3
        per_walk: 1
        turnaround: 1 min
        transfer: 2 min
        carry: 4 min
        cleaning: 6 min
        cooling: 50 min
        preheat: no
        tap: 10 °C
        air: -2 °C
        concentrate: 86 °C
        rinse: 300 ml
      stations:
        - name: Barn
          carry: 5 min
        - name: Lawn
      heaters:
        - name: Kettle
          count: 2
          capacity: 10 l
          power: 2.8 kW
          efficiency: 80 %
          circuit: kitchen A
      scale_step: 2 g
      jug_mark: 20 ml
      uncertainty:
        scale: 3 g
        reference_scale: 0.1 g
        refractometer: 0.02 %
        brew_water: 2 %
        absorption: 0.1 g/g
        extraction: 0.3 %
        cup: 4 %
      """;

  @TempDir Path folder;

  @Test
  void readsEveryKey() throws IOException {
    Event event = read(MOST);
    assertEquals("Mill fair", event.name());
    assertEquals(Optional.of(LocalDate.of(2027, 4, 17)), event.date());
    assertEquals(Optional.of(LocalTime.of(7, 15)), event.time());
    assertEquals(UnitSystem.US, event.print().units());
    assertEquals(Paper.LETTER, event.print().paper());
    assertEquals(Strength.ofPercent(1.2), event.print().window().weakest());
    assertEquals(Extraction.ofPercent(23), event.print().window().mostExtracted());
    assertEquals(new Provision.Overage(0.1), event.serving().provision());
    assertEquals(Share.ofPercent(2), event.serving().spill());
    assertEquals(Temperature.ofCelsius(70), event.serving().serviceTemperature());
    assertEquals(Temperature.ofCelsius(90), event.serving().bypassTemperature());
    assertEquals(Temperature.ofCelsius(15), event.serving().fillingTemperature());
    assertEquals(Mass.ofGrams(2), event.equipment().scaleStep());
    assertEquals(Volume.ofMillilitres(20), event.equipment().jugMark());
    assertEquals(
        List.of("default-steam-loss", "default-drinkers", "default-cups-each", "default-arrivals"),
        codes(event));
  }

  @Test
  void readsEveryKeyOfCoffees() throws IOException {
    Coffee house = read(MOST).coffee("house");
    assertEquals("House filter", house.name());
    assertFalse(house.decaf());
    BrewProfile.ReferenceBrew reference = house.profile().reference().orElseThrow();
    assertEquals(Mass.ofGrams(60), reference.dose());
    assertEquals(Mass.ofGrams(960), reference.water());
    assertEquals(Optional.of(Mass.ofGrams(831)), reference.beverage());
    assertEquals(Strength.ofPercent(1.4), reference.strength());
    assertEquals(Share.ofPercent(1), house.profile().steamLoss());
    assertEquals(
        List.of(
            new BrewProfile.Measured(BrewRatio.ofGramsPerGram(13), Extraction.ofPercent(19.1)),
            new BrewProfile.Measured(BrewRatio.ofGramsPerGram(17), Extraction.ofPercent(19.8))),
        house.profile().measured());
    assertEquals(
        new ConcentrateWish.Between(BrewRatio.ofGramsPerGram(12), BrewRatio.ofGramsPerGram(16)),
        house.concentrate());
    assertEquals(Share.ofPercent(1.4), house.caffeine().high());
    assertEquals(
        Optional.of(
            new Coffee.Bag(Mass.ofGrams(1000), Optional.of(Money.parse("26.50 EUR")), Mass.ZERO)),
        house.bag());

    Coffee cold = read(MOST).coffee("cold");
    assertTrue(cold.decaf());
    assertEquals(BrewProfile.Method.IMMERSION, cold.profile().method());
    assertEquals(Optional.of(Extraction.ofPercent(21)), cold.profile().extraction());
    assertEquals(3, cold.profile().absorption().orElseThrow().gramsPerGram());
    assertEquals(new ConcentrateWish.ByStrength(Strength.ofPercent(1.75)), cold.concentrate());
  }

  @Test
  void readsEveryKeyOfGroups() throws IOException {
    GuestGroup crew = read(MOST).groups().get(0);
    assertEquals(new GuestGroup.Guests(40, Share.ofPercent(85), 1.5), crew.guests());
    assertEquals(Volume.ofMillilitres(240), crew.cup().size());
    assertEquals(Volume.ofMillilitres(20), crew.cup().room());
    assertEquals(Temperature.ofCelsius(65), crew.cup().servedAt());
    assertEquals(Strength.ofPercent(1.45), crew.strength());
    assertEquals(
        List.of(
            new CoffeeShare("house", Share.ofPercent(85)),
            new CoffeeShare("cold", Share.ofPercent(15))),
        crew.coffees());
    assertEquals("06:30–07:30", crew.service().window().orElseThrow().toString());
    assertEquals(GuestGroup.Arrivals.LATE, crew.service().arrivals());
    assertEquals(Optional.of("Barn"), crew.service().station());
    assertEquals(Optional.of("Airpot"), crew.service().dispenser());

    GuestGroup iced = read(MOST).groups().get(1);
    assertEquals(Optional.of(new GuestGroup.OverIce(Temperature.ofCelsius(25))), iced.ice());
    assertEquals(Temperature.ofCelsius(5), iced.cup().servedAt());
    assertEquals("23:30–01:00", iced.service().window().orElseThrow().toString());
    assertEquals(List.of(new CoffeeShare("cold", Share.ofPercent(100))), iced.coffees());
  }

  @Test
  void readsEveryKeyOfEquipment() throws IOException {
    Event event = read(MOST);
    Brewer brewer = event.equipment().brewers().get(0);
    assertEquals(2, brewer.count());
    assertEquals(Mass.ofGrams(150), brewer.leastDose());
    assertEquals(Mass.ofGrams(480), brewer.greatestDose());
    assertEquals(Mass.ofGrams(6000), brewer.greatestWater());
    assertEquals(Optional.of(Volume.ofLitres(7)), brewer.vessel());
    assertEquals(Optional.of(Duration.ofMinutes(11)), brewer.cycle());
    assertEquals(Optional.of(Power.ofWatts(3100)), brewer.supply().power());
    assertEquals(Optional.of("kitchen A"), brewer.supply().circuit());
    assertEquals(230, event.equipment().circuits().get(0).volts());
    assertEquals(32, event.equipment().circuits().get(0).breakerAmperes());
    Dispenser airpot = event.equipment().dispensers().get(0);
    assertEquals(14, airpot.count());
    assertEquals(Volume.ofLitres(2.2), airpot.capacity());
    assertEquals(Volume.ofMillilitres(40), airpot.heel());
    assertEquals(Optional.of(Duration.ofHours(1)), airpot.hold());
    assertEquals(6, airpot.coolingKelvinsFirstHour().orElseThrow());
  }

  @Test
  void readsEveryKeyOfUncertainty() throws IOException {
    assertEquals(
        new Uncertainties(
            new Uncertainties.Scales(Mass.ofGrams(3), Mass.ofGrams(0.1)),
            Strength.ofPercent(0.02),
            Share.ofPercent(2),
            Absorption.ofGramsPerGram(0.1),
            Extraction.ofPercent(0.3),
            Share.ofPercent(4)),
        read(MOST).equipment().uncertainties());
  }

  /** A weighing is two readings, each up to half a step of 5 g off: 5 g / √6 = 2.04 g. */
  @Test
  void whatIsNotGivenOfUncertaintyIsTakenAndSaid() throws IOException {
    Event event = read(LEAST + "uncertainty: {cup: 5 %}\n");
    Uncertainties uncertainties = event.equipment().uncertainties();
    assertEquals(5 / Math.sqrt(6), uncertainties.scales().kitchen().grams(), 1e-12);
    assertEquals(1 / Math.sqrt(6), uncertainties.scales().reference().grams(), 1e-12);
    assertEquals(Share.ofPercent(5), uncertainties.cup());
    assertEquals(
        Optional.of(
            "Standard uncertainties taken: 2\u00a0g of the scale (two readings to its step),"
                + " 0.41\u00a0g of the reference's (likewise, to the gram), 0.03\u00a0% of a"
                + " refractometer (as makers claim), 1\u00a0% of brew water (to a mark),"
                + " 0.15\u00a0g/g of what grounds keep (assumed), 0.4\u00a0% of what they give"
                + " (assumed)"),
        event.defaults().stream()
            .filter(note -> note.code().equals("default-uncertainty"))
            .map(Note::text)
            .findFirst());
  }

  @Test
  void readsEveryKeyOfTheKitchen() throws IOException {
    Kitchen kitchen = read(MOST).kitchen();
    assertEquals(Optional.of(LocalTime.of(5, 30)), kitchen.opens());
    assertEquals(new Kitchen.People(OptionalInt.of(3), 1), kitchen.people());
    assertEquals(
        new Kitchen.Handling(
            Duration.ofMinutes(1),
            Duration.ofMinutes(2),
            Duration.ofMinutes(4),
            Duration.ofMinutes(6),
            Duration.ofMinutes(50)),
        kitchen.handling());
    assertEquals(
        new Kitchen.WaterCare(
            Temperature.ofCelsius(10),
            Temperature.ofCelsius(-2),
            Temperature.ofCelsius(86),
            Volume.ofMillilitres(300),
            false),
        kitchen.water());
    assertEquals(Duration.ofMinutes(5), kitchen.carryTo(Optional.of("Barn")));
    assertEquals(Duration.ofMinutes(4), kitchen.carryTo(Optional.of("Lawn")));
    assertEquals(Duration.ofMinutes(4), kitchen.carryTo(Optional.empty()));
    Kitchen.Heater kettle = kitchen.heaters().get(0);
    assertEquals(1, kitchen.heaters().size());
    assertEquals("Kettle", kettle.name());
    assertEquals(2, kettle.count());
    assertEquals(Volume.ofLitres(10), kettle.capacity());
    assertEquals(Power.ofWatts(2800), kettle.power());
    assertEquals(Share.ofPercent(80), kettle.efficiency());
    assertEquals(Optional.of("kitchen A"), kettle.circuit());
  }

  @ParameterizedTest
  @CsvSource({
    "even,                      EVEN,   ''",
    "Late,                      LATE,   ''",
    "'[30 %, 50 %, 20 %]',      LISTED, '30.0 %, 50.0 %, 20.0 %'",
    "'[0 %, 100 %]',            LISTED, '0.0 %, 100.0 %'",
    "'[33.3 %, 33.3 %, 33.4 %]', LISTED, '33.3 %, 33.3 %, 33.4 %'"
  })
  void readsArrivals(String written, GuestGroup.Arrivals.Shape shape, String shares)
      throws IOException {
    GuestGroup.Arrivals arrivals =
        read(MOST.replace("arrivals: late", "arrivals: " + written))
            .groups()
            .get(0)
            .service()
            .arrivals();
    assertEquals(shape, arrivals.shape());
    assertEquals(
        shares,
        arrivals.shares().stream()
            .map(share -> share.percent() + " %")
            .collect(Collectors.joining(", ")));
  }

  @Test
  void notesDefaultsOfTheKitchenWhenThereIsARun() throws IOException {
    String brewers =
        """
        brewers:
          - {name: Twin, count: 1, dose: up to 480 g, water: 6 kg}
        """;
    assertEquals(Kitchen.USUAL, read(LEAST).kitchen());
    assertEquals(List.of(), kitchenNotes(read(LEAST + brewers)));
    assertEquals(List.of(), kitchenNotes(read("time: 08:00\n" + LEAST)));
    assertEquals(
        List.of(
            "default-opens: Work may begin as early as the run needs it: no opening time",
            "default-turnaround: A brewer is emptied and reloaded in 2 min",
            "default-transfer: A dispenser is filled in 3 min",
            "default-carry: Where no carrying time is given, the way to a station takes 3 min",
            "default-air: The air around the dispensers is at 20 °C",
            "default-concentrate-temperature: Concentrate leaves the brewer at 88 °C",
            "default-rinse: Filters are not rinsed: no hot water is counted for it"),
        kitchenNotes(read("time: 08:00\n" + LEAST + brewers)));
  }

  /** With iced guests alone nothing is kept hot; with dispensers and heaters there is more. */
  @Test
  void notesOnlyDefaultsOfTheKitchenThatMatter() throws IOException {
    String most =
        MOST.replaceAll("(?s)kitchen:\n  opens.*?stations", "stations")
            .replace("    efficiency: 80 %\n", "");
    assertEquals(
        List.of(
            "default-efficiency: Where no efficiency is given, 90 % of a heater's power reaches its"
                + " water: Kettle",
            "default-opens: Work may begin as early as the run needs it: no opening time",
            "default-turnaround: A brewer is emptied and reloaded in 2 min",
            "default-transfer: A dispenser is filled in 3 min",
            "default-carry: Where no carrying time is given, the way to a station takes 3 min",
            "default-cleaning: A dispenser that came back is cleaned in 5 min",
            "default-cooling: Concentrate for iced groups is cooled for 60 min",
            "default-tap: Heaters are filled from the tap at 59 °F", // 15 · 1.8 + 32
            "default-air: The air around the dispensers is at 68 °F", // 20 · 1.8 + 32
            "default-concentrate-temperature: Concentrate leaves the brewer at 190 °F", // 190.4
            "default-rinse: Filters are not rinsed: no hot water is counted for it",
            "default-preheat: Dispensers are rinsed hot before they are filled"),
        kitchenNotes(read(most)));
    String iced =
        LEAST
            + """
                serve: 08:00-09:00
                station: Lawn
                over_ice: {poured_at: 25 °C, served_at: 5 °C}
            brewers: [{name: Twin, count: 1, dose: up to 480 g, water: 6 kg}]
            stations: [{name: Lawn, carry: 1 min}]
            """;
    assertEquals(
        List.of(
            "default-opens",
            "default-turnaround",
            "default-transfer",
            "default-cooling",
            "default-rinse"),
        kitchenNotes(read(iced)).stream().map(note -> note.replaceFirst(":.*", "")).toList());
  }

  @Test
  void remembersWhereThingsStand() throws IOException {
    Event event = read(MOST);
    Path file = folder.resolve("event.yaml");
    assertEquals(file + ":1:8", event.location().toString());
    assertEquals(file + ":14:11", event.coffee("house").location().toString());
    assertEquals(file + ":33:11", event.groups().get(0).location().toString());
    assertEquals(file + ":54:11", event.equipment().brewers().get(0).location().toString());
    assertEquals(file + ":63:12", event.equipment().circuits().get(0).location().toString());
    assertEquals(file + ":65:11", event.equipment().dispensers().get(0).location().toString());
  }

  @Test
  void notesEveryDefault() throws IOException {
    Event event = read(LEAST);
    assertEquals(
        List.of(
            "default-units: Sheets print metric units",
            "default-scale-step: The scale is read to 5 g",
            "default-paper: Sheets are laid out for A4 paper",
            "default-window-strength: A cup is usually liked from 1.15 % to 1.45 % strong",
            "default-window-extraction: A cup is usually liked when 18.0 % to 22.0 % of the coffee"
                + " is extracted",
            "default-provision: As many cups are planned as are drunk on average, rounded up",
            "default-spill: Nothing is spilled: 0 %",
            "default-service-temperature: Coffee is served at 75 °C",
            "default-bypass-temperature: Bypass water is added at 92 °C",
            "default-filling-temperature: Brew water measured by volume is at 20 °C",
            "default-method: Where no method is given, water passes through the coffee"
                + " (percolation): House",
            "default-steam-loss: Where no steam loss is given, 0 % of the brew water is lost as"
                + " vapour: House",
            "default-extraction: Where neither a reference nor an extraction is given, 20.0 % of"
                + " the coffee is taken to be extracted: House",
            "default-concentrate: Where no concentrate is given, the reference ratio is brewed, or"
                + " the ratio that just serves the strongest group: House",
            "default-caffeine: Coffee is taken to have 1.1 % to 1.3 % of caffeine: House",
            "default-jug-mark: The measuring jug is read to 10 ml",
            "default-uncertainty: Standard uncertainties taken: 2 g of the scale (two readings to"
                + " its step), 0.41 g of the reference's (likewise, to the gram), 0.03 % of a"
                + " refractometer (as makers claim), 1 % of brew water (to a mark), 0.15 g/g of what"
                + " grounds keep (assumed), 0.4 % of what they give (assumed), 3 % of a cup (by eye)",
            "default-group-name: Groups without a name go by their number: Group 1",
            "default-drinkers: Where no share of drinkers is given, 100 % of the guests drink"
                + " coffee: Group 1",
            "default-cups-each: Where no cups each are given, every drinker takes 1 cup: Group 1"),
        event.defaults().stream()
            .map(note -> note.code() + ": " + note.text().replace('\u00a0', ' '))
            .toList());
    GuestGroup group = event.groups().get(0);
    assertEquals(new GuestGroup.Guests(40, Share.ofPercent(100), 1), group.guests());
    assertEquals(Temperature.ofCelsius(75), group.cup().servedAt());
    assertEquals(List.of(new CoffeeShare("coffee", Share.ofPercent(100))), group.coffees());
    assertEquals(new ConcentrateWish.AsReference(), event.coffees().get(0).concentrate());
  }

  @Test
  void defaultsFollowTheUnits() throws IOException {
    Event event = read("units: us\n" + LEAST);
    assertEquals(Paper.LETTER, event.print().paper());
    assertEquals(Mass.ofOunces(0.1), event.equipment().scaleStep());
    assertEquals(Volume.ofFluidOunces(0.5), event.equipment().jugMark());
    assertTrue(
        event.defaults().stream()
            .map(Note::text)
            .anyMatch("Coffee is served at 167\u00a0°F"::equals)); // 75 · 1.8 + 32
  }

  @ParameterizedTest
  @CsvSource({
    "{name: Night decaf},               true",
    "{name: Night Decaffeinated},       true",
    "'{name: Night decaf, decaf: no}',  false",
    "'{name: Night, decaf: yes}',       true",
    "{name: Night},                     false"
  })
  void knowsDecafWhenItIsNamed(String coffee, boolean decaf) throws IOException {
    Event event = read(LEAST.replace("{name: House}", coffee));
    assertEquals(decaf, event.coffees().get(0).decaf());
    assertEquals(decaf, event.coffees().get(0).caffeine().high().percent() < 0.2);
  }

  /** 960 ml of water at 20 °C weigh 960 · 0.998206 = 958.28 g (IAPWS-IF97 table). */
  @Test
  void weighsWaterGivenByVolume() throws IOException {
    Event event =
        read(
            LEAST.replace(
                "{name: House}",
                "{name: House, reference: {dose: 60 g, water: 960 ml, strength: 1.4 %}}"));
    BrewProfile.ReferenceBrew reference =
        event.coffees().get(0).profile().reference().orElseThrow();
    assertEquals(958.28, reference.water().grams(), 0.01);
    assertTrue(codes(event).contains("water-by-volume"));
  }

  @Test
  void sharesMayBeFractions() throws IOException {
    Event event =
        read(MOST.replace("{house: 85 %, cold: 15 %}", "{house: 66 2/3 %, cold: 33 1/3 %}"));
    assertEquals(2, event.groups().get(0).coffees().size());
  }

  @Test
  void takesWindowsLineEndsAndByteOrderMark() throws IOException {
    assertEquals("Mill fair", read("\uFEFF" + LEAST.replace("\n", "\r\n")).name());
    assertEquals(
        List.of(folder.resolve("event.yaml") + ":5:10"),
        problems("\uFEFF" + LEAST.replace("\n", "\r\n").replace("240 ml", "240")).stream()
            .map(problem -> problem.location().toString())
            .toList());
  }

  @Test
  void readsManyGroups() throws IOException {
    StringBuilder text = new StringBuilder("event: Mill fair\ncoffee: {name: House}\ngroups:\n");
    for (int i = 0; i < 50_000; i++) {
      text.append("  - {headcount: 4, cup: 240 ml, strength: 1.3 %}\n");
    }
    Event event = read(text.toString());
    assertEquals(50_000, event.groups().size());
    assertEquals("Group 50000", event.groups().get(49_999).name());
    assertTrue(
        event.defaults().stream()
            .allMatch(note -> note.text().length() < 300)); // names a few, counts the rest
  }

  @Test
  void refusesFilesThatCannotBeRead() throws IOException {
    Path missing = folder.resolve("missing.yaml");
    assertEquals(
        List.of(missing + ": there is no such file; expected an event file in YAML"),
        strings(new EventReader().read(missing).problems()));
    assertEquals(
        List.of(folder + ": this is a folder; expected an event file in YAML"),
        strings(new EventReader().read(folder).problems()));
    Path large = folder.resolve("large.yaml");
    Files.write(large, new byte[(16 << 20) + 1]);
    assertEquals(
        List.of(large + ": this file is larger than 16 MiB; expected an event file in YAML"),
        strings(new EventReader().read(large).problems()));
  }

  @Test
  void aFileOfAnotherKindIsOneProblem() throws IOException {
    assertEquals(
        List.of(
            "event.yaml:1:1: this file is a round of an office coffee service: 'urnwright round'"
                + " plans it; expected one with the key 'event'"),
        problems("round: Heron Way\nsites: sites.csv\nlegs: []\n").stream()
            .map(problem -> problem.toString().replace(folder + "/", ""))
            .toList());
  }

  @Test
  void doesNotGrowWithAliasesNorSinkWithNesting() throws IOException {
    StringBuilder bomb = new StringBuilder("event: &a0 [x, x, x, x]\n");
    for (int i = 1; i < 60; i++) {
      bomb.append("k" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1) + "]\n");
    }
    assertEquals(1, problems(bomb.toString()).size());
    for (String nested : List.of("[", "{a: ", "- ", "? ", "- - [")) {
      assertFalse(problems("event: X\ngroups:\n  " + nested.repeat(100_000)).isEmpty());
      assertFalse(problems(nested.repeat(100_000)).isEmpty());
    }
  }

  @Test
  void problemsStandInTheOrderOfTheFile() throws IOException {
    List<Problem> problems =
        problems(
            MOST.replace("dose: 150 g to 480 g", "dose: 480")
                .replace("spill: 2 %", "spill: 2")
                .replace("headcount: 30", "headcount: many")
                .replace("scale_step: 2 g", "scale_step: 2"));
    assertEquals(4, problems.size());
    assertEquals(List.of(8, 47, 56, 96), problems.stream().map(p -> p.location().line()).toList());
  }

  private Event read(String text) throws IOException {
    Path file = folder.resolve("event.yaml");
    Files.writeString(file, text, StandardCharsets.UTF_8);
    var read = new EventReader().read(file);
    assertEquals(List.of(), strings(read.problems()));
    return read.value().orElseThrow();
  }

  private List<Problem> problems(String text) throws IOException {
    Path file = folder.resolve("event.yaml");
    Files.writeString(file, text, StandardCharsets.UTF_8);
    return new EventReader().read(file).problems();
  }

  private static List<String> kitchenNotes(Event event) {
    Set<String> codes =
        Set.of(
            "default-heater-count",
            "default-efficiency",
            "default-opens",
            "default-turnaround",
            "default-transfer",
            "default-carry",
            "default-cleaning",
            "default-cooling",
            "default-tap",
            "default-air",
            "default-concentrate-temperature",
            "default-rinse",
            "default-preheat");
    return event.defaults().stream()
        .filter(note -> codes.contains(note.code()))
        .map(note -> note.code() + ": " + note.text().replace('\u00a0', ' '))
        .toList();
  }

  private static List<String> codes(Event event) {
    return event.defaults().stream().map(Note::code).toList();
  }

  private static List<String> strings(List<Problem> problems) {
    return problems.stream().map(Problem::toString).toList();
  }
}
