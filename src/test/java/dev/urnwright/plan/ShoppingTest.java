package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.event.Note;
import dev.urnwright.input.EventReader;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Volume;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shopping, costs and packing against hand calculations. */
class ShoppingTest {
  @TempDir Path folder;

  /** 100 cups of 200 ml and 30 of 300 ml over ice, two brewers, no heels, no spill. */
  private static final String PLAIN =
      """
      event: A generic event
      coffee:
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
        bag: 500 g
        price: 9.99 EUR
        on_hand: 300 g
      groups:
        - {name: Hot, headcount: 100, cup: 200 ml, room: 15 ml, strength: 1.25 %}
        - name: Iced
          headcount: 60
          drinkers: 50 %
          cup: 300 ml
          strength: 1.25 %
          over_ice: {poured_at: 25 °C, served_at: 5 °C}
      brewers:
        - {name: Small, count: 2, dose: 100 g to 500 g, water: 7 l}
      """;

  private Plan plan(String text) throws IOException {
    Path file = folder.resolve("event.yaml");
    Files.writeString(file, text);
    Event event = new EventReader().read(file).value().orElseThrow();
    return new Planner().plan(event).value().orElseThrow();
  }

  private static ShoppingLine line(Plan plan, String item) {
    return plan.shopping().stream().filter(l -> l.item().equals(item)).findFirst().orElseThrow();
  }

  private static List<String> codes(List<Note> notes) {
    return notes.stream().map(Note::code).toList();
  }

  @Test
  void eachUseByHand() throws IOException {
    Plan plan =
        plan(
            PLAIN
                + """
                supplies:
                  - {name: Cups, use: 1 per cup, cup: 200 ml, spare: 5 %, pack: 50}
                  - {name: Tall cups, use: 1 per cup, groups: Iced, spare: 5 %, pack: 25, on_hand: 40}
                  - {name: Milk, use: 15 ml per cup, share: 55 %, groups: [Hot], pack: 1 l}
                  - {name: Sugar, use: 4 g per cup, share: 40 %, spare: 10 %, pack: 250 g}
                  - {name: Napkins, use: 2 per guest, pack: 100}
                  - {name: Filters, use: 1 per batch, brewer: Small, pack: 100}
                  - {name: Cloths, use: 3 per event}
                  - {name: Water, use: all the water, pack: 10 l}
                  - {name: Ice, use: all the ice, spare: 25 %, pack: 2 kg}
                """);
    assertEquals(130, plan.groups().stream().mapToInt(g -> g.demand().cups()).sum());
    // 100 × 1.05 = 105, in fifties
    assertNeeds(line(plan, "Cups"), Amount.ofPieces(105), 3);
    // 30 × 1.05 = 31.5: pieces are whole; 40 are there
    assertNeeds(line(plan, "Tall cups"), Amount.ofPieces(32), 0);
    // 100 × 55 % × 15 ml = 825 ml
    assertNeeds(line(plan, "Milk"), Amount.of(Volume.ofMillilitres(825)), 1);
    // 130 × 40 % × 4 g × 1.1 = 228.8 g
    assertEquals(228.8, line(plan, "Sugar").amount().value(), 1e-9);
    // 2 for each of 160 guests, drinkers or not
    assertNeeds(line(plan, "Napkins"), Amount.ofPieces(320), 4);
    assertNeeds(line(plan, "Filters"), Amount.ofPieces(plan.batches().size()), 1);
    assertEquals(Amount.ofPieces(3), line(plan, "Cloths").amount());
    double ice = plan.groups().get(1).needed().ice().grams();
    assertEquals(ice * 1.25, line(plan, "Ice").amount().value(), 1e-9);
    assertTrue(plan.shopping().stream().noneMatch(l -> l.item().startsWith("Ice, of drinking")));
    // all water weighed out, at 20 °C: 998.2 g/l (IAPWS-IF97 gives 998.21)
    double weighed =
        plan.batches().stream().mapToDouble(b -> b.brew().water().grams()).sum()
            + plan.fills().stream().mapToDouble(f -> f.blend().bypass().grams()).sum();
    assertEquals(weighed / 998.21, line(plan, "Water").amount().volume().litres(), 1e-3);
  }

  private static void assertNeeds(ShoppingLine line, Amount amount, long packs) {
    assertEquals(amount.value(), line.amount().value(), 1e-9, line.item());
    assertEquals(packs, line.packs().orElseThrow().count(), line.item());
  }

  @Test
  void whatIsOnHandOfACoffeeIsNotBought() throws IOException {
    Plan plan = plan(PLAIN);
    ShoppingLine coffee = plan.shopping().get(0);
    double dose = plan.batches().stream().mapToDouble(b -> b.brew().dose().grams()).sum();
    assertEquals(dose, coffee.amount().value(), 1e-9);
    assertEquals((long) Math.ceil((dose - 300) / 500), coffee.packs().orElseThrow().count());
  }

  /** Only what goes through the brewer named, and each dispenser filled counts. */
  @Test
  void usesPerBatchAndPerFillByHand() throws IOException {
    Plan plan =
        plan(
            PLAIN.replace("brewers:", "brewers:\n  - {name: Other, dose: 1 g to 2 g, water: 1 l}")
                + """
                dispensers: [{name: Pot, count: 40, capacity: 2 l}]
                supplies:
                  - {name: Filters, use: 1 per batch, brewer: Small, pack: 100}
                  - {name: Other filters, use: 1 per batch, brewer: Other, pack: 100}
                  - {name: Tags, use: 2 per fill}
                """);
    // 19.5 + 9 kg of coffee at about 1:15.3 are more than 1.5 kg of dose: some batches of 500 g
    assertTrue(plan.batches().size() >= 3);
    assertTrue(
        plan.batches().stream()
            .allMatch(b -> b.unit().orElseThrow().brewer().name().equals("Small")));
    assertNeeds(line(plan, "Filters"), Amount.ofPieces(plan.batches().size()), 1);
    assertNeeds(line(plan, "Other filters"), Amount.ofPieces(0), 0);
    assertEquals(Amount.ofPieces(2L * plan.fills().size()), line(plan, "Tags").amount());
  }

  /** Filters rinsed with half a litre each batch are water to buy, on a clock or without. */
  @Test
  void rinsingTakesWater() throws IOException {
    String rinsed =
        PLAIN
            + """
            kitchen: {rinse: 0.5 l}
            supplies:
              - {name: Water, use: all the water, pack: 10 l}
            """;
    Plan plan = plan(rinsed);
    double weighed =
        plan.batches().stream().mapToDouble(b -> b.brew().water().grams()).sum()
            + plan.fills().stream().mapToDouble(f -> f.blend().bypass().grams()).sum();
    assertEquals(
        weighed / 998.21 + 0.5 * plan.batches().size(),
        line(plan, "Water").amount().volume().litres(),
        1e-3);
    // on a clock; without dispensers none is rinsed hot
    Plan timed = plan(rinsed.replaceFirst("coffee:", "time: 10:00\ncoffee:"));
    assertTrue(timed.run().isPresent());
    double weighedThen =
        timed.batches().stream().mapToDouble(b -> b.brew().water().grams()).sum()
            + timed.fills().stream().mapToDouble(f -> f.blend().bypass().grams()).sum();
    assertEquals(
        weighedThen / 998.21 + 0.5 * timed.batches().size(),
        line(timed, "Water").amount().volume().litres(),
        1e-3);
  }

  /** Rinsing four pots of 2 l hot takes a quarter of each: 2 l more, on a clock. */
  @Test
  void preheatingTakesWater() throws IOException {
    Plan plan =
        plan(
            """
            event: A generic event
            time: 10:00
            coffee: {extraction: 20 %, absorption: 2 g/g, concentrate: {ratio: 13}}
            groups: [{name: Hall, headcount: 36, cup: 200 ml, strength: 1.25 %}]
            brewers: [{name: Tall, dose: up to 2 kg, water: 30 l, cycle: 10 min}]
            dispensers: [{name: Pot, count: 4, capacity: 2 l}]
            supplies: [{name: Water, use: all the water, pack: 10 l}]
            """);
    assertEquals(4, plan.fills().size());
    double weighed =
        plan.batches().stream().mapToDouble(b -> b.brew().water().grams()).sum()
            + plan.fills().stream().mapToDouble(f -> f.blend().bypass().grams()).sum();
    assertEquals(weighed / 998.21 + 2, line(plan, "Water").amount().volume().litres(), 1e-3);
  }

  /**
   * By hand: 3 × 3.45 + 288.00 = 298.35; 298.35 / 0.7 = 426.2142… → 426.21; tax 10 % of it 42.621 →
   * 42.62; together 468.83, over 100 guests 4.6883 → 4.69. The cups are there, so they cost
   * nothing.
   */
  @Test
  void aQuoteByHand() throws IOException {
    Plan plan =
        plan(
            """
            event: A generic event
            coffee:
              extraction: 20 %
              bag: 5 kg
              price: 20 EUR
              on_hand: 5 kg
            groups:
              - {name: Everybody, headcount: 100, cup: 200 ml, strength: 1.25 %}
            supplies:
              - {name: Cups, use: 1 per cup, spare: 5 %, pack: 50, price: 3.45 EUR}
            costs:
              margin: 30 %
              tax: 10 %
              others: [{name: Two people, amount: 288 EUR}]
            """);
    Costs costs = plan.costs().orElseThrow();
    assertEquals(Money.parse("298.35 EUR"), costs.total());
    assertEquals(Money.parse("2.98 EUR"), costs.perCup());
    assertEquals(Money.parse("2.98 EUR"), costs.perGuest());
    assertEquals("EUR", costs.currency().getCurrencyCode());
    Costs.Quote quote = costs.quote().orElseThrow();
    assertEquals(Money.parse("426.21 EUR"), quote.price());
    assertEquals(Money.parse("127.86 EUR"), quote.profit());
    assertEquals(Money.parse("42.62 EUR"), quote.tax().orElseThrow().amount());
    assertEquals(Money.parse("468.83 EUR"), quote.total());
    assertEquals(Money.parse("4.69 EUR"), quote.perGuest());
  }

  @Test
  void whatHasNoPriceIsNamedAndGivesNoPrice() throws IOException {
    Plan plan =
        plan(
            PLAIN
                + """
                supplies:
                  - {name: Cups, use: 1 per cup, pack: 50}
                  - {name: Spoons, use: 1 per cup, on_hand: 500}
                costs: {margin: 25 %}
                """);
    Costs costs = plan.costs().orElseThrow();
    // the ice that nobody listed has no price either; there are spoons enough
    assertEquals(List.of("Ice, of drinking water", "Cups"), costs.leftOut());
    assertTrue(costs.quote().isEmpty());
    assertTrue(codes(plan.cautions()).contains("no-quote"));
  }

  @Test
  void milkNeedsRoomAndItsAllergensAreNamed() throws IOException {
    Plan plan =
        plan(
            PLAIN
                + """
                supplies:
                  - {name: Whole milk, use: 20 ml per cup, share: 50 %, groups: Hot, allergens: milk}
                  - {name: Oat drink, use: 15 ml per cup, groups: Hot}
                """);
    List<Note> room = plan.cautions().stream().filter(n -> n.code().equals("room")).toList();
    assertEquals(1, room.size());
    assertTrue(
        room.get(0).text().startsWith("Whole milk: a cup takes 20\u00a0ml"), room.get(0).text());
    List<Note> allergens =
        plan.cautions().stream().filter(n -> n.code().equals("allergens")).toList();
    assertEquals(1, allergens.size());
    assertTrue(
        allergens.get(0).text().contains("Whole milk: milk; Oat drink: not told, read its label"),
        allergens.get(0).text());
  }

  /** Of three groups two have a supply for their cups; 15 ml are left in the hot ones. */
  @Test
  void whatIsSaidOfTheSupplies() throws IOException {
    Written written = new Written(folder);
    String cups = "supplies:\n  - {name: Cups, use: 1 per cup%s}\n";
    String tea =
        PLAIN.replace(
            "brewers:", "  - {name: Bar, headcount: 9, cup: 150 ml, strength: 1 %}\nbrewers:");
    String note = "Some supplies go by the size of the cup, and none does for the cups of: ";
    assertEquals(
        List.of(note + "Iced; Bar."),
        written.said("no-cups-listed", tea + cups.replace("%s", ", cup: 200 ml")));
    assertEquals(
        List.of(note + "Iced."),
        written.said(
            "no-cups-listed",
            tea
                + cups.replace("%s", ", cup: 200 ml")
                + "  - {name: Small cups, use: 1 per cup, cup: 150 ml}\n"));
    assertEquals(
        List.of(),
        written.said(
            "no-cups-listed",
            PLAIN
                + cups.replace("%s", ", cup: 200 ml")
                + "  - {name: Tall cups, use: 1 per cup, cup: 300 ml}\n"));
    assertEquals(List.of(), written.said("no-cups-listed", tea + cups.replace("%s", "")));
    assertEquals(List.of(), written.said("shares-of-cups", tea + cups.replace("%s", "")));
    assertEquals(
        1, written.said("shares-of-cups", tea + cups.replace("%s", ", share: 99 %")).size());
    assertEquals(List.of(), written.said("water-bought", tea + cups.replace("%s", "")));
    assertEquals(
        1,
        written
            .said(
                "water-bought",
                tea + cups.replace("%s", "") + "  - {name: Water, use: all the water}\n")
            .size());
  }

  /** 15 ml of milk find the 15 ml of room that the hot cups have. */
  @Test
  void roomThatIsJustEnough() throws IOException {
    String milk = PLAIN + "supplies: [{name: Milk, use: %s per cup, groups: Hot}]\n";
    Written written = new Written(folder);
    assertEquals(List.of(), written.said("room", milk.replace("%s", "15 ml")));
    assertEquals(
        List.of(
            "Milk: a cup takes 16 ml, which is more than the room left in it: Hot 15 ml. Give these"
                + " groups more room, or a larger cup."),
        written.said("room", milk.replace("%s", "16 ml")));
  }

  /** Costs are told of where there are any; without one there is nothing to ask a price for. */
  @Test
  void costsAndWhatHasNone() throws IOException {
    Written written = new Written(folder);
    String free = PLAIN.replace("  price: 9.99 EUR\n", "");
    assertEquals(1, written.said("costs", PLAIN).size());
    assertEquals(List.of(), written.said("costs", free));
    assertEquals(List.of(), written.said("no-quote", PLAIN));
    assertEquals(
        List.of(
            "There is no price for the client: no cost at all is known. Give its pack and price; 0"
                + " is a price too."),
        written.said("no-quote", free + "costs: {margin: 25 %}\n"));
    assertEquals(
        List.of(
            "There is no price for the client: no cost is known of Ice, of drinking water. Give its"
                + " pack and price; 0 is a price too."),
        written.said("no-quote", PLAIN + "costs: {margin: 25 %}\n"));
  }

  @Test
  void currenciesKeepTheirSmallestCoin() throws IOException {
    String event =
        """
        event: A generic event
        coffee: {extraction: 20 %%, bag: 1 kg, price: %s}
        groups:
          - {name: Everybody, headcount: 7, cup: 200 ml, strength: 1.25 %%}
        costs: {margin: 30 %%}
        """;
    // 1250 / 0.7 = 1785.71…; 4.5 / 0.7 = 6.42857…
    assertEquals(Money.parse("1786 JPY"), price(event.formatted("1250 JPY")));
    assertEquals(Money.parse("6.429 KWD"), price(event.formatted("4.5 KWD")));
  }

  private Money price(String event) throws IOException {
    return plan(event).costs().flatMap(Costs::quote).orElseThrow().price();
  }

  /**
   * The armed forces' recipe card C-005-01 for 100 portions of 8 fl oz: 30 oz of coffee, 6 3/4 gal
   * of water, 6 1/4 gal of coffee, so 1 1/2 gal less 1 gal (8.345 lb) stay in the grounds.
   */
  @Test
  void theHundredPortionRecipeTakesItsTwoPounds() throws IOException {
    Plan plan =
        plan(
            """
            event: A generic event
            units: us
            coffee:
              reference: {dose: 30 oz, water: 6.75 gal, beverage: 834.5 oz, strength: 0.72 %}
              bag: 1 lb
              price: 12 USD
            groups:
              - {name: Portions, headcount: 100, cup: 8 fl oz, strength: 0.72 %,
                 service_temperature: 20 °C}
            supplies:
              - {name: Cups, use: 1 per cup, pack: 25, price: 2 USD}
            """);
    ShoppingLine coffee = plan.shopping().get(0);
    assertEquals(30, coffee.amount().mass().ounces(), 0.35);
    assertEquals(2, coffee.packs().orElseThrow().count());
    assertEquals(4, line(plan, "Cups").packs().orElseThrow().count());
    // 2 × 12 + 4 × 2
    assertEquals(Money.parse("32.00 USD"), plan.costs().orElseThrow().total());
  }

  @Test
  void totalsAreTheSumOfTheirLinesAndMoreGuestsNeverCostLess() throws IOException {
    String event =
        """
        event: A generic event
        service_level: 90 %%
        coffee:
          reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %%}
          concentrate: {ratio: 13}
          bag: 250 g
          price: 7.3333 EUR
          on_hand: 700 g
        groups:
          - {name: One, headcount: %d, drinkers: 70 %%, cup: 200 ml, strength: 1.25 %%}
          - {name: Two, headcount: %d, cups_each: 1.4, cup: 180 ml, strength: 1.35 %%}
        supplies:
          - {name: Cups, use: 1 per cup, cup: 180 ml, spare: 7 %%, pack: 30, price: 1.0001 EUR, on_hand: 20}
          - {name: Milk, use: 12 ml per cup, share: 33 %%, pack: 750 ml, price: 0.999 EUR}
          - {name: Sticks, use: 1.5 per guest, pack: 17, price: 0.015 EUR}
          - {name: Water, use: all the water, pack: 1.5 l, price: 0.385 EUR}
        costs: {margin: 22.5 %%, others: [{name: Van, amount: 12.345 EUR}]}
        """;
    Money last = Money.parse("0 EUR");
    for (int guests = 3; guests < 3000; guests *= 2) {
      Plan plan = plan(event.formatted(guests, guests + 1));
      Costs costs = plan.costs().orElseThrow();
      Money sum =
          plan.shopping().stream()
              .map(l -> l.packs().orElseThrow().cost().orElseThrow())
              .reduce(costs.others().get(0).cost(), Money::plus);
      assertEquals(sum, costs.total());
      assertEquals(costs.total(), costs.total().rounded());
      assertEquals(
          costs.quote().orElseThrow().price(),
          costs.total().plus(costs.quote().orElseThrow().profit()));
      assertTrue(
          costs.total().amount().compareTo(last.amount()) >= 0, guests + ": " + costs.total());
      last = costs.total();
      for (ShoppingLine line : plan.shopping()) {
        double bought =
            line.packs().orElseThrow().count() * line.packs().orElseThrow().size().value();
        assertTrue(bought + line.onHand().value() >= line.amount().value() - 1e-6, line.toString());
        assertTrue(
            bought == 0
                || bought - line.packs().orElseThrow().size().value() < line.missing().value(),
            line.toString());
      }
    }
  }

  @Test
  void thePackingListCountsWhatThePlanUses() throws IOException {
    Plan plan = plan(PLAIN + "bring: [Trolley, Two tables]\n");
    String list =
        plan.packing().stream()
            .map(l -> l.amount().map(a -> Math.round(a.value()) + " ").orElse("") + l.item())
            .collect(Collectors.joining("\n"));
    long units = plan.batches().stream().map(b -> b.unit().orElseThrow()).distinct().count();
    assertTrue(list.contains(units + " Small\n"), list);
    assertTrue(list.contains(plan.batches().size() + " Filters for Small"), list);
    assertTrue(list.endsWith("Trolley\nTwo tables"), list);
  }
}
