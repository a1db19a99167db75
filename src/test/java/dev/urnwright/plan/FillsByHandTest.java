package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.GuestGroup.CoffeeShare;
import dev.urnwright.event.Provision;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Needs, fills and what they are drawn from, by hand. Water weighs 974.84 g/l at 75 °C, 963.95 at
 * 92 °C, 997.05 at 25 °C (IAPWS-IF97, to the last digit written).
 */
class FillsByHandTest {
  private static final double AT_75 = 0.97484; // g/ml
  private static final double AT_92 = 0.96395;
  private static final double AT_25 = 0.99705;

  private final FillMaking making = new FillMaking(Events.equipment(5, List.of(), List.of()));

  /** The published cup of 1.36 %; a group of whose fills none is left has none. */
  @Test
  void theStrengthOfAllFills() {
    GroupPlan group = new Planner().plan(Events.oneCup()).value().orElseThrow().groups().get(0);
    assertEquals(1.36, group.strengthReached().percent(), 0.005);
    GroupPlan served =
        new GroupPlan(
            group.group(),
            group.coffee(),
            group.demand(),
            group.cup(),
            group.needed(),
            List.of(),
            1);
    assertEquals(Strength.ofPercent(0), served.strengthReached());
  }

  /** 1000 g of 2 % are 1600 g of 1.25 %: 600 g of water, if the dispenser and the guests agree. */
  @Test
  void theWaterOfAFill() {
    assertEquals(600, water(1500, 1000, 2.0, 0, Optional.empty()));
    // 100 g of it melt in the cups
    assertEquals(500, water(1500, 1000, 2.0, 100, Optional.empty()));
    // the dispenser takes 1552 g: 552, so 550 g
    assertEquals(550, water(1500, 1000, 2.0, 0, Optional.of(1552.0)));
    assertEquals(600, water(1500, 1000, 2.0, 0, Optional.of(1900.0)));
    // the guests need 1603 g, 603 of water, so 605
    assertEquals(605, water(1603, 1000, 2.0, 0, Optional.empty()));
    // of which 100 melt
    assertEquals(505, water(1603, 1000, 2.0, 100, Optional.empty()));
    // the guests come before the dispenser's mark
    assertEquals(500, water(1500, 1000, 2.0, 0, Optional.of(1450.0)));
    // 1002 g of 2 % are 1603.2 g: 601.2 of water, so 600; of 2.02 %, 1619.2: 617.2, so 615
    assertEquals(600, water(1500, 1002, 2.0, 0, Optional.empty()));
    assertEquals(615, water(1500, 1002, 2.02, 0, Optional.empty()));
    // too weak, and enough already: no water
    assertEquals(0, water(900, 1000, 1.2, 0, Optional.empty()));
    // fuller than full: no water
    assertEquals(0, water(900, 1000, 2.0, 0, Optional.of(990.0)));
  }

  private double water(
      double finished, double concentrate, double percent, double ice, Optional<Double> full) {
    return making
        .bypass(
            new FillMaking.Wanted(Strength.ofPercent(1.25), grams(finished)),
            grams(concentrate),
            Strength.ofPercent(percent),
            grams(ice),
            full.map(Mass::ofGrams))
        .grams();
  }

  /**
   * Nine cups of 240 ml, 2105.7 g of 0.60 %, take 707 g of 1.787 %, 750 on a scale of 50 g. These
   * ask for 1483.9 g of water, so 1500, but an airpot of 2.3 l takes 2217 g: 1467, so 1450.
   */
  @Test
  void noFillIsFullerThanItsDispenser() {
    Event event =
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(Events.coffee("house", Events.ratio(13))),
            List.of(Events.group("Crew", 9, 240, 0.60)),
            Events.equipment(50, List.of(), List.of(Events.dispenser("Airpot", 1, 2.3, 0))));
    Blend blend = new Planner().plan(event).value().orElseThrow().fills().get(0).blend();
    assertEquals(750, blend.concentrate().grams(), 1e-9);
    assertEquals(1450, blend.bypass().grams(), 1e-9);
  }

  /** 1000 g and 600 g at 75 °C are 1641.3 ml; 600 g are 615.5 ml, by the jug 620, 604.4 g. */
  @Test
  void howFullAFillLooksAndWhatTheJugGives() {
    Blend blend = new Blend(grams(1000), grams(600), Mass.ZERO, Strength.ofPercent(2));
    Fill fill =
        making.fill(
            new FillMaking.Label("house-F1", "Crew", Optional.of(Events.dispenser("Pot", 1, 2, 0))),
            List.of(),
            blend,
            Temperature.ofCelsius(75));
    assertEquals(1600 / AT_75 / 1000, fill.level().volume().litres(), 1e-4);
    assertEquals(1600 / AT_75 / 2000, fill.level().full().orElseThrow().fraction(), 1e-4);
    assertEquals(620, fill.byJug().bypass().millilitres(), 1e-9);
    assertEquals(20 / (1000 + 620 * AT_75), fill.byJug().strength().fraction(), 1e-6);
    assertEquals(
        1, Fill.fullness(Volume.ofLitres(2.1), Events.dispenser("Pot", 1, 2, 0)).fraction());
    assertEquals(
        0.75, Fill.fullness(Volume.ofLitres(1.5), Events.dispenser("Pot", 1, 2, 0)).fraction());
  }

  /** 1000 g of 2.0 %, 500 g of 1.8 %, 400 g of 1.5 %: one batch is emptied before the next. */
  @Test
  void concentrateIsDrawnBatchByBatch() {
    ConcentrateTap tap = tap();
    assertDrawn(tap.draw(grams(600)), 2.0, Map.of("house-1", 600.0));
    // (400 · 2.0 + 200 · 1.8) / 600
    assertDrawn(tap.draw(grams(600)), 1.93333333, Map.of("house-1", 400.0, "house-2", 200.0));
    // it ends just where a batch ends, and the next one begins with the next
    assertDrawn(tap.draw(grams(300)), 1.8, Map.of("house-2", 300.0));
    assertDrawn(tap.draw(grams(100)), 1.5, Map.of("house-3", 100.0));
    // a hair more than the last one has is noise of the sums
    assertDrawn(tap.draw(grams(300.0000001)), 1.5, Map.of("house-3", 300.0000001));
    // one that takes all there is
    // (1000 · 2.0 + 500 · 1.8 + 400 · 1.5) / 1900 = 35/19
    assertDrawn(
        tap().draw(grams(1900)),
        35.0 / 19,
        Map.of("house-1", 1000.0, "house-2", 500.0, "house-3", 400.0));
    // and as the clock says: (100 · 2.0 + 300 · 1.5) / 400
    assertDrawn(
        tap().draw(Map.of(0, 100.0, 2, 300.0)), 1.625, Map.of("house-1", 100.0, "house-3", 300.0));
  }

  private static ConcentrateTap tap() {
    return new ConcentrateTap(List.of(batch(1, 1000, 2.0), batch(2, 500, 1.8), batch(3, 400, 1.5)));
  }

  private static Batch batch(int number, double grams, double percent) {
    return new Batch(
        "house-" + number,
        number,
        Optional.empty(),
        new BrewBalance(
            grams(100),
            grams(grams + 200),
            Mass.ZERO,
            grams(200),
            grams(grams),
            Strength.ofPercent(percent)),
        Volume.ofLitres(1));
  }

  private static void assertDrawn(
      ConcentrateTap.Drawn drawn, double percent, Map<String, Double> grams) {
    assertEquals(percent, drawn.strength().percent(), 1e-7);
    assertEquals(grams.size(), drawn.draws().size(), drawn.toString());
    drawn
        .draws()
        .forEach(draw -> assertEquals(grams.get(draw.batchId()), draw.concentrate().grams(), 1e-9));
  }

  /** 10 cups of 200 ml at 75 °C are 1949.7 g, with 3 % spilt 2008.2 g; three heels of 40 ml. */
  @Test
  void whatAGroupNeeds() {
    GroupNeed need = need(Events.group("Crew", 10, 200, 1.3));
    assertEquals(200 * AT_75, need.cupMass().grams(), 0.01);
    assertEquals(2000 * AT_75 * 1.03, need.drinks().grams(), 0.1);
    assertEquals(2000 * AT_75 * 1.03 / AT_92 / 1000, need.drawn().litres(), 1e-4);
    assertEquals(2000 * AT_75 * 1.03, need.finished(Optional.empty()).grams(), 0.1);
    assertEquals(2000 * AT_75 * 1.03 + 120 * AT_92, need.finished(pots(3)).grams(), 0.1);
    assertEquals(1.3, need.leastConcentrate().percent(), 1e-12);
    assertTrue(need.isReachedBy(Strength.ofPercent(1.3)));
    assertTrue(!need.isReachedBy(Strength.ofPercent(1.29)));
  }

  /**
   * Poured at 25 and served at 5 °C, where a litre weighs 999.97 g, 19.105 % is ice. The heels are
   * of what has not met its ice, and would have made 1/0.80895 of themselves.
   */
  @Test
  void whatAnIcedGroupNeeds() {
    GroupNeed need = need(Events.iced(Events.group("Iced", 10, 300, 1.2), 25, 5));
    double ice = 83.72 / (83.72 + 354.48); // heat of 1 g from 25 to 5 °C, of ice from 0 to 5 °C
    double drinks = 3000 * 0.99997 * 1.03;
    assertEquals(ice, need.ice().fraction(), 1e-5);
    assertEquals(drinks * (1 - ice) / AT_25 / 1000, need.drawn().litres(), 1e-4);
    assertEquals(drinks + 120 * AT_25 / (1 - ice), need.finished(pots(3)).grams(), 0.1);
    assertEquals(1.2 / (1 - ice), need.leastConcentrate().percent(), 1e-4);
    assertTrue(!need.isReachedBy(Strength.ofPercent(1.4)));
    assertTrue(need.isReachedBy(Strength.ofPercent(1.49)));
  }

  private static Optional<Chosen> pots(int fills) {
    return Optional.of(new Chosen(Events.dispenser("Pot", 9, 2, 40), fills, 1));
  }

  private static GroupNeed need(GuestGroup group) {
    return GroupNeed.of(event(group), group, new CoffeeShare("house", Share.ofPercent(100)));
  }

  private static Event event(GuestGroup... groups) {
    return Events.event(
        Events.serving(new Provision.Mean(), 3),
        List.of(Events.coffee("house", Events.ratio(13))),
        List.of(groups),
        Events.equipment(5, List.of(), List.of(Events.dispenser("Pot", 9, 2, 40))));
  }

  /**
   * A cup of 194.97 g takes 200.82 g with what is spilt, and 40 ml at 92 °C, 38.6 g, stay behind: 5
   * cups out of 1042.7 g, and 4 out of a gram less.
   */
  @Test
  void wholeCupsOutOfADispenser() {
    Event event = event(Events.group("Crew", 20, 200, 1.3));
    GroupPlan group = plan(event).groups().get(0);
    Fill fill = group.fills().get(0);
    double five = 5 * group.cup().blend().liquid().grams() * 1.03 + 40 * AT_92;
    assertEquals(1042.7, five, 0.1);
    assertEquals(5, group.cupsOut(fill, grams(five + 0.1), event.serving()));
    assertEquals(4, group.cupsOut(fill, grams(five - 1), event.serving()));
    assertEquals(0, group.cupsOut(fill, grams(30), event.serving()));
    // five without a heel, to the last bit
    Fill bare =
        new Fill(
            fill.id(),
            fill.groupName(),
            Optional.empty(),
            fill.draws(),
            fill.blend(),
            fill.level(),
            fill.byJug());
    double each = group.cup().blend().liquid().grams() * 1.03;
    assertEquals(7, group.cupsOut(bare, grams(7 * each), event.serving()));
    assertEquals(6, group.cupsOut(bare, grams(7 * each - 0.01), event.serving()));
  }

  /**
   * 7210 g of two batches, on a scale that tells 5 g: 3120 of the 3121.6 that the first one has,
   * and 4090 of the second. Of 2 g a step is taken. Of a single batch it is all.
   */
  @Test
  void drawsCanBeWeighed() {
    Event event = event(Events.group("Crew", 20, 200, 1.3));
    Fill fill = plan(event).groups().get(0).fills().get(0);
    assertEquals(List.of(3120.0, 4090.0), weighed(fill, 3121.6, 4088.4));
    assertEquals(List.of(5.0, 7205.0), weighed(fill, 2, 7208));
    assertEquals(List.of(7210.0), weighed(fill, 7210));
  }

  private static List<Double> weighed(Fill like, double... grams) {
    List<Fill.Draw> draws =
        IntStream.range(0, grams.length)
            .mapToObj(i -> new Fill.Draw("house-" + (i + 1), Mass.ofGrams(grams[i])))
            .toList();
    Blend blend =
        new Blend(
            Mass.ofGrams(7210), Mass.ofGrams(1885), Mass.ZERO, like.blend().concentrateStrength());
    return new Fill(
            like.id(), like.groupName(), Optional.empty(), draws, blend, like.level(), like.byJug())
        .drawsByScale(Mass.ofGrams(5)).stream().map(draw -> draw.concentrate().grams()).toList();
  }

  /** Batches and fills are numbered from one, in the order of serving. */
  @Test
  void batchesAndFillsAreNumberedFromOne() {
    Event event =
        Events.event(
            Events.serving(new Provision.Mean(), 3),
            List.of(Events.coffee("house", Events.ratio(13))),
            List.of(Events.group("Crew", 40, 200, 1.3)),
            Events.equipment(
                5,
                List.of(Events.brewer("Tall", 1, 50, 200, 4)),
                List.of(Events.dispenser("Pot", 9, 3, 40))));
    Plan plan = plan(event);
    // 40 cups, 8033 g with spill, and heels: 5838 g of concentrate, 538 g of dose, three batches
    assertEquals(
        List.of("house-1", "house-2", "house-3"), plan.batches().stream().map(Batch::id).toList());
    assertEquals(List.of(1, 2, 3), plan.batches().stream().map(Batch::number).toList());
    assertEquals(
        List.of("house-F1", "house-F2", "house-F3"), plan.fills().stream().map(Fill::id).toList());
  }

  /**
   * For any cup, iced or not, all water over dose is what the finished cup and its grounds hold:
   * E/t + a, with E = 19.39 % and a = 2.15 g/g. And its dose is t·m/E, of which 0.96 to 1.2 % is
   * caffeine.
   */
  @Test
  void theWaterAndTheCaffeineOfACup() {
    Event event =
        event(
            Events.group("Crew", 20, 200, 1.25),
            Events.iced(Events.group("Iced", 20, 300, 1.2), 25, 5));
    for (GroupPlan group : plan(event).groups()) {
      double t = group.group().strength().percent();
      assertEquals(19.39 / t + 2.15, group.cup().totalWaterToCoffee().gramsPerGram(), 1e-6);
      double dose = t / 19.39 * group.cup().blend().finished().grams();
      assertEquals(dose * 9.6, group.cup().caffeine().lowMilligrams(), 1e-6);
      assertEquals(dose * 12, group.cup().caffeine().highMilligrams(), 1e-6);
    }
  }

  /** A dispenser of 2 l at 92 °C takes 1928 g: what is weighed in stays below. */
  @Test
  void aFillStaysBelowTheBrim() {
    // 20 cups in two fills, each 2008.2/… : the least water that serves is put in where more won't
    // fit
    for (int guests = 8; guests <= 9; guests++) {
      Event event =
          Events.event(
              Events.serving(new Provision.Mean(), 0),
              List.of(Events.coffee("house", Events.ratio(13))),
              List.of(Events.group("Crew", guests, 200, 1.3)),
              Events.equipment(
                  50, List.of(), List.of(Events.dispenser("Pot", 9, guests * 0.2 * 1.077, 0))));
      Fill fill = plan(event).fills().get(0);
      // concentrate is rounded up to 50 g, which asks for more water than there is room for
      double room = guests * 200 * 1.077 * AT_92;
      assertTrue(fill.blend().liquid().grams() <= room, fill.toString());
    }
  }

  /** 1400 g with brew water, 500 g of bypass and 100 g of ice on a dose of 100 g: 20 to one. */
  @Test
  void theRatiosOfWhatIsNeeded() {
    Needed needed =
        new Needed(
            new BrewBalance(
                grams(100),
                grams(1400),
                Mass.ZERO,
                grams(200),
                grams(1200),
                Strength.ofPercent(1.6)),
            new Blend(grams(1200), grams(500), grams(100), Strength.ofPercent(1.6)));
    assertEquals(20, needed.totalWaterToCoffee(), 1e-12);
    assertEquals(18, needed.cupToCoffee(), 1e-12);
    // 19.2 g of solids of 100 g, whatever water comes to them
    assertEquals(19.2, needed.extractionAfterBypass().percent(), 1e-12);
  }

  /** What all fills take together: masses add, and the solids of each. */
  @Test
  void allFillsTogether() {
    CoffeePlan coffee =
        plan(event(Events.group("Crew", 20, 200, 1.3), Events.group("Band", 10, 200, 1.1)))
            .coffees()
            .get(0);
    Blend all = coffee.filled();
    double concentrate = 0;
    double solids = 0;
    for (Fill fill : coffee.fills()) {
      concentrate += fill.blend().concentrate().grams();
      solids += fill.blend().concentrate().grams() * fill.blend().concentrateStrength().fraction();
    }
    assertTrue(solids > 0);
    assertEquals(concentrate, all.concentrate().grams(), 1e-9);
    assertEquals(solids / concentrate, all.concentrateStrength().fraction(), 1e-12);
  }

  /**
   * 1000 g of concentrate at 85 °C and 500 g of water at 92: the kitchen's usual figures. A pot of
   * 2 l stands for 160 g of water at the air's temperature or, rinsed hot, at the water's.
   */
  @Test
  void howWarmAFillIs() {
    Event event = event(Events.group("Crew", 20, 200, 1.3));
    GroupPlan group = plan(event).groups().get(0);
    Fill fill =
        making.fill(
            new FillMaking.Label("house-F1", "Crew", Optional.of(Events.dispenser("Pot", 1, 2, 0))),
            List.of(),
            new Blend(grams(1000), grams(500), Mass.ZERO, Strength.ofPercent(2)),
            Temperature.ofCelsius(92));
    FillHeat heat = new FillHeat(event, group, fill);
    var care = event.kitchen().water();
    double liquids = 1000 * care.concentrate().celsius() + 500 * 92;
    double air = care.air().celsius();
    assertEquals(
        (liquids + 160 * air) / 1660, heat.mixed(Temperature.ofCelsius(92), false).celsius(), 1e-9);
    assertEquals(
        (liquids + 160 * 92) / 1660, heat.mixed(Temperature.ofCelsius(92), true).celsius(), 1e-9);
    // bypass of another temperature leaves the rinsing water's
    assertEquals(
        (liquids - 500 * 12 + 160 * 92) / 1660,
        heat.mixed(Temperature.ofCelsius(80), true).celsius(),
        1e-9);
    assertEquals(care.preheat(), heat.isPreheated());
    // 5 K in the first hour where nothing is said; never more than 99 % of what there is to lose
    var hour = Duration.ofHours(1);
    assertEquals(80, heat.after(Temperature.ofCelsius(85), hour).celsius(), 1e-9);
    assertEquals(air + 0.02, heat.after(Temperature.ofCelsius(air + 2), hour).celsius(), 1e-9);
    assertEquals(air - 1, heat.after(Temperature.ofCelsius(air - 1), hour).celsius(), 1e-9);
  }

  private static Plan plan(Event event) {
    return new Planner().plan(event).value().orElseThrow();
  }

  private static Mass grams(double grams) {
    return Mass.ofGrams(grams);
  }
}
