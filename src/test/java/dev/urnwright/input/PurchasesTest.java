package dev.urnwright.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.event.Purchases;
import dev.urnwright.event.Supply;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Volume;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PurchasesTest {
  private static final String EVENT =
      """
      event: Mill fair
      coffee: {name: House, bag: 1 kg, price: 20 EUR, on_hand: 500 g}
      groups:
        - {name: Millers, headcount: 40, cup: 240 ml, strength: 1.3 %}
      brewers:
        - {name: Urn, dose: up to 5 kg, water: 70 l}
      """;

  @TempDir Path folder;

  private Checked<Event> read(String more) throws IOException {
    Path file = folder.resolve("fair.yaml");
    Files.writeString(file, EVENT + more);
    return new EventReader().read(file);
  }

  @Test
  void everythingThatCanBeSaid() throws IOException {
    Event event =
        read("""
            supplies:
              - name: Oat drink
                use: 25 ml per cup
                share: 20 %
                spare: 10 %
                cup: 240 ml
                groups: [Millers]
                pack: 1 l
                price: 2.10 EUR
                on_hand: 300 ml
                allergens: oats (gluten)
              - {name: Filters, use: 1 / batch, brewer: Urn, pack: 100}
              - {name: Water, use: all water}
            costs: {margin: 30 %, tax: 7.5 %, others: [{name: Van, amount: 40 EUR}]}
            bring: Trolley
            """)
            .value()
            .orElseThrow();
    assertEquals(Mass.ofGrams(500), event.coffees().get(0).bag().orElseThrow().onHand());
    Purchases bought = event.purchases();
    Supply oat = bought.supplies().get(0);
    Amount each = Amount.of(Volume.ofMillilitres(25));
    assertEquals(new Supply.Use.Each(each, Supply.Per.CUP), oat.use());
    assertEquals(Optional.of(Volume.ofMillilitres(25)), oat.pouredIntoCup());
    assertEquals(Share.ofPercent(20), oat.takers().share());
    assertEquals(0.1, oat.takers().spare());
    assertEquals(List.of("Millers"), oat.takers().groups());
    assertEquals(Optional.of(Money.parse("2.10 EUR")), oat.stock().pack().orElseThrow().price());
    assertEquals(Amount.of(Volume.ofMillilitres(300)), oat.stock().onHand());
    assertEquals(Optional.of("oats (gluten)"), oat.allergens());
    assertEquals(Optional.of("Urn"), bought.supplies().get(1).takers().brewer());
    assertEquals(new Supply.Use.AllWater(), bought.supplies().get(2).use());
    assertEquals(Optional.of(Share.ofPercent(7.5)), bought.costing().tax());
    assertEquals(
        List.of(new Purchases.Charge("Van", Money.parse("40 EUR"))), bought.costing().others());
    assertEquals(List.of("Trolley"), bought.bring());
  }

  /** Each at its place, with what would be right. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          supplies: [{name: A, use: some}] | 7:27: 'some' doesn't say how much goes for each of what; expected an amount per cup
          supplies: [{name: A, use: 0 per cup}] | 7:27: '0 per cup' is none of it
          supplies: [{name: A, use: 2 cups per cup}] | 7:27: 2 cups: cups and spoons come in many sizes
          supplies: [{name: A, use: 1 per cup, price: 3 EUR}] | 7:38: this price is for no pack; expected a pack beside it
          supplies: [{name: A, use: 1 per cup, pack: 1 kg}] | 7:44: this is told in g, and the use in pieces; expected a number of pieces such as 50
          supplies: [{name: A, use: 9 ml per cup, pack: 0 l}] | 7:47: this pack is empty; expected a volume such as 2 l
          supplies: [{name: A, use: 1 per cup, pack: 9, price: 3 USD}] | 7:54: this price is in USD; expected EUR as on line 2
          supplies: [{name: A, use: 1 per cup, cup: 200 ml}] | 7:43: no group of these drinks from such a cup; expected one of 240 ml
          supplies: [{name: A, use: 1 per cup, groups: Miller}] | 7:46: no group is called 'Miller'; did you mean 'Millers'
          supplies: [{name: A, use: 1 per batch, brewer: Jug}] | 7:48: no brewer is called 'Jug'
          supplies: [{name: A, use: 1 per cup, brewer: Urn}] | 7:38: 'brewer' goes with what is used per batch
          supplies: [{name: A, use: all the ice, share: 5 %}] | 7:40: 'share' goes with what is used per cup or guest
          supplies: [{name: A, use: 1 per cup}, {name: a, use: 1 per cup}] | 7:46: a second supply is called 'a'
          costs: {tax: 5 %} | 7:9: this tax is on no price; expected a margin beside it
          costs: {margin: 100 %} | 7:17: 100 % is out of range
          costs: {others: [{name: Van, amount: 3 USD}]} | 7:38: this price is in USD
          bring: [] | 7:8: this list is empty
          margin: 5 % | 7:1: unknown key 'margin'; it belongs in costs
          """)
  void whatIsWrongIsSaid(String line, String problem) throws IOException {
    List<Problem> problems = read(line).problems();
    String all = problems.stream().map(Problem::toString).collect(Collectors.joining("\n"));
    assertEquals(1, problems.size(), all);
    assertTrue(all.contains("fair.yaml:" + problem), all);
  }
}
