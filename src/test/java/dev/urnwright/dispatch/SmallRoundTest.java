package dev.urnwright.dispatch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.event.Coffee;
import dev.urnwright.input.RoundFile;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Money;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A day of {@link Rounds#SMALL} by hand.
 *
 * <p>Extraction 1.40 % · 831 / 60 = 19.39 %; absorbed (960 − 831) / 60 = 2.15 g/g; at 1:13 a gram
 * of coffee gives 13 − 2.15 = 10.85 g at 19.39 / 10.85 = 1.78710 %. A litre of water weighs 974.84
 * g at 75 °C (IAPWS), so 2 l are 1949.7 g.
 *
 * <p>Medium: 1949.7 · 1.30 / 1.78710 = 1418.3 g of concentrate, rounded up 1420 g; that makes 1420
 * · 1.78710 / 1.30 = 1952.1 g, so 532 g of water, to the step 530 g, and 1950 g are enough.
 *
 * <p>Strong: 1949.7 · 1.40 / 1.78710 = 1527.4 g, up 1530 g; 1530 · 1.78710 / 1.40 = 1953.0 g, so
 * 423 g of water, to the step 420 g, and 1950 g are enough.
 *
 * <p>6 medium and 4 strong: 6 · 1420 + 4 · 1530 = 14 640 g of concentrate, 14 640 / 10.85 = 1349.3
 * g of coffee, up 1350 g, and 13 · 1350 = 17 550 g of water; one batch.
 *
 * <p>North has 6 carafes: 3 turns of two at a time, 3 min; the van leaves at 06:00 and is loaded
 * from 05:45, so filling is from 05:42 to 05:45. South has 4: 2 min, from 06:43 to 06:45. One batch
 * for both: ready at 05:42 at the latest, started 18 min before, 05:24.
 */
class SmallRoundTest {
  private static final String SITES =
      """
      site,floor,leg,stop,window,carafes,strength
      Mill House,3rd floor,North,2,07:00-07:30,2,medium
      Lock House,,North,1,06:30-07:00,4,medium
      Old Forge,,South,1,07:30-08:00,4,strong
      """;
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  @TempDir private Path folder;

  @Test
  void carafesAreFilledAsByHand() throws IOException {
    List<Brewing.Lot> lots = day().brewing().lots();

    assertEquals(2, lots.size());
    assertEquals(6, lots.get(0).count());
    assertEquals(1420, lots.get(0).each().concentrate().grams(), 1e-6);
    assertEquals(530, lots.get(0).each().water().grams(), 1e-6);
    // 1420 · 1.78710 / 1950
    assertEquals(1.3014, lots.get(0).each().strength().strength().percent(), 1e-3);
    assertEquals(4, lots.get(1).count());
    assertEquals(1530, lots.get(1).each().concentrate().grams(), 1e-6);
    assertEquals(420, lots.get(1).each().water().grams(), 1e-6);
  }

  @Test
  void oneBatchIsBrewedAsByHand() throws IOException {
    List<Brewing.BatchDay> batches = day().brewing().batches();

    assertEquals(1, batches.size());
    assertEquals(1350, batches.get(0).batch().brew().dose().grams(), 1e-6);
    assertEquals(17_550, batches.get(0).batch().brew().water().grams(), 1e-6);
    assertEquals(MONDAY.atTime(5, 24), batches.get(0).start());
    assertEquals(MONDAY.atTime(5, 42), batches.get(0).ready());
  }

  /**
   * Of the only tower: the house coffee is ready for North at 05:42, decaf for South at 06:43, so
   * the tower is rinsed clean of the house coffee before the decaf, and of decaf before nothing.
   */
  @Test
  void aTowerIsRinsedBeforeDecaf() throws IOException {
    String sites =
        """
      site,leg,stop,window,carafes,strength,coffee
      Lock House,North,1,06:30-07:00,4,medium,FIRST
      Old Forge,South,1,07:30-08:00,4,strong,SECOND
      """;
    assertEquals(
        List.of("house after nothing", "decaf after House"),
        rinsings(sites.replace("FIRST", "house").replace("SECOND", "decaf")));
    assertEquals(
        List.of("decaf after nothing", "house after nothing"),
        rinsings(sites.replace("FIRST", "decaf").replace("SECOND", "house")));
  }

  private List<String> rinsings(String sites) throws IOException {
    return Rounds.day(Rounds.good(folder, Rounds.WITH_DECAF, sites), MONDAY)
        .brewing()
        .batches()
        .stream()
        .map(
            batch ->
                batch.coffee().key()
                    + " after "
                    + batch.toRinse().map(Coffee::name).orElse("nothing"))
        .toList();
  }

  @Test
  void legsAreFilledJustBeforeTheyAreLoaded() throws IOException {
    LegDay north = day().legs().get(0);
    LegDay south = day().legs().get(1);

    assertEquals("North", north.leg().name());
    assertEquals(MONDAY.atTime(5, 42), north.times().from());
    assertEquals(MONDAY.atTime(5, 45), north.times().to());
    assertEquals("South", south.leg().name());
    assertEquals(MONDAY.atTime(6, 43), south.times().from());
    assertEquals(MONDAY.atTime(6, 45), south.times().to());
    // 1950 g and the carafe of 1 kg
    assertEquals(2950, north.heaviest().grams(), 1e-6);
    assertEquals(6 * 2950, north.weight().grams(), 1e-6);
  }

  @Test
  void stopsAreInTheOrderOfTheWay() throws IOException {
    List<LegDay.Stop> stops = day().legs().get(0).stops();

    assertEquals(
        List.of("Lock House", "Mill House"), stops.stream().map(LegDay.Stop::site).toList());
    assertEquals(List.of(4, 2), stops.stream().map(LegDay.Stop::carafes).toList());
    // ready at 05:42 and good for 4 h
    assertEquals(MONDAY.atTime(9, 42), stops.get(0).handed().get(0).useBy());
  }

  /**
   * Just filled: 1420 g of concentrate at 88 °C with 530 g of water and the rinsed carafe, which
   * takes as much heat as 0.08 · 2020 g = 162 g of water, both at 75 °C, are (1420 · 88 + 692 · 75)
   * / 2112 = 83.74 °C. Cooling by 5 °C in the first hour, 63.74 °C above the air, leaves 1 − 5 /
   * 63.74 = 0.9216 of that an hour: after 1.8 h, at 07:30, 20 + 63.74 · 0.8633 = 75.03 °C; after
   * 1.3 h, at 07:00, 20 + 63.74 · 0.8993 = 77.32 °C.
   */
  @Test
  void coffeeCoolsUntilItIsHandedOver() throws IOException {
    LegDay north = day().legs().get(0);
    LegDay.Warmth first = north.stops().get(0).warmth();
    LegDay.Warmth coolest = north.coolest().orElseThrow();

    assertEquals(MONDAY.atTime(7, 0), first.by());
    assertEquals(77.32, first.temperature().celsius(), 0.02);
    assertEquals("Mill House", coolest.site());
    assertEquals(MONDAY.atTime(7, 30), coolest.by());
    assertEquals(75.03, coolest.temperature().celsius(), 0.02);
  }

  @Test
  void aCarafeThatIsSaidToKeepItsHeatDoes() throws IOException {
    String keeps = Rounds.SMALL.replace("hold: 4 h}", "hold: 4 h, cooling: 0 °C per hour}");
    LegDay north = Rounds.day(Rounds.good(folder, keeps, SITES), MONDAY).legs().get(0);

    assertEquals(83.74, north.coolest().orElseThrow().temperature().celsius(), 0.02);
  }

  @Test
  void strengthsAreAsSureAsThePlans() throws IOException {
    Dispatch day = day();
    Brewing.BatchDay batch = day.brewing().batches().get(0);

    assertEquals(day.plan().certainty().of(batch.batch()), batch.strength());
    assertEquals(
        day.plan().certainty().of(day.plan().groups().get(0)).plusMinus().percent(),
        day.brewing().lots().get(0).each().strength().plusMinus().percent(),
        1e-9);
  }

  @Test
  void whatIsBoughtIsCounted() throws IOException {
    WeekShopping week = WeekShopping.of(List.of(WeekShopping.Day.of(day())), List.of());

    assertEquals(
        List.of("Reference coffee", "Labels"),
        week.lines().stream().map(ShoppingLine::item).toList());
    // 1350 g in bags of a kilogram at 20 EUR, and 10 labels out of a pack of 100 at 3 EUR
    assertEquals(2, week.lines().get(0).packs().orElseThrow().count());
    assertEquals(Money.parse("43.00 EUR"), week.cost().orElseThrow());
  }

  @Test
  void aWeekIsRoundedToPacksOnce() throws IOException {
    WeekShopping.Day one = WeekShopping.Day.of(day());

    // 5 · 1350 g = 6750 g are 7 bags; bought day by day they would be 10
    WeekShopping week = WeekShopping.of(List.of(one, one, one, one, one), List.of());

    assertEquals(6750, week.lines().get(0).amount().mass().grams(), 1e-6);
    assertEquals(7, week.lines().get(0).packs().orElseThrow().count());
  }

  private Dispatch day() throws IOException {
    RoundFile file = Rounds.good(folder, Rounds.SMALL, SITES);
    return Rounds.day(file, MONDAY);
  }
}
