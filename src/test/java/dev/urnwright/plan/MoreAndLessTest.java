package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.ConcentrateWish;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Equipment;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Provision;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/** More of one thing, and what becomes of the others. */
class MoreAndLessTest {
  /** Binary rounding, relative. */
  private static final double NOISE = 1e-9;

  private final SplittableRandom random = new SplittableRandom(29);

  @Test
  void moreGuestsNeverTakeLessCoffee() {
    rises(n -> event(group((int) n, 80, 1.3, 240, 20, 1.3), level(95), 2, 12), 1, 400, 7);
  }

  @Test
  void aStrongerCupTakesMoreCoffee() {
    rises(t -> event(group(90, 80, 1.3, 240, 20, t), level(95), 2, 12), 1.0, 1.7, 0.05);
  }

  @Test
  void largerCupsMoreSpillAndSurerServiceTakeMoreCoffee() {
    rises(ml -> event(group(90, 80, 1.3, ml, 20, 1.3), level(95), 2, 12), 100, 400, 25);
    rises(spill -> event(group(90, 80, 1.3, 240, 20, 1.3), level(95), spill, 12), 0, 20, 2);
    rises(q -> event(group(90, 80, 1.3, 240, 20, 1.3), level(q), 2, 12), 50, 99.9, 2);
    rises(p -> event(group(90, p, 1.3, 240, 20, 1.3), level(95), 2, 12), 5, 100, 5);
    rises(c -> event(group(90, 80, c, 240, 20, 1.3), level(95), 2, 12), 0.5, 4, 0.25);
    rises(room -> event(group(90, 80, 1.3, 240, 200 - room, 1.3), level(95), 2, 12), 0, 200, 20);
  }

  /** D = Σ m·t / E: what the solids take, whatever the ratio. Water follows the ratio. */
  @Test
  void theRatioChangesTheWaterAndNotTheDose() {
    Needed strong = needed(event(group(90, 80, 1.3, 240, 20, 1.3), level(95), 2, 11));
    for (double ratio = 11.5; ratio <= 14; ratio += 0.5) {
      Needed weaker = needed(event(group(90, 80, 1.3, 240, 20, 1.3), level(95), 2, ratio));
      near(strong.brew().dose().grams(), weaker.brew().dose().grams());
      near(ratio * strong.brew().dose().grams(), weaker.brew().water().grams());
      // and the guests' water, brewed or bypassed, is the same
      near(strong.totalWaterToCoffee(), weaker.totalWaterToCoffee());
    }
  }

  @Test
  void thirstierGroundsTakeMoreWaterAndNoMoreCoffee() {
    Needed dry = needed(brewing(20, 1.5, 1.6));
    Needed wet = needed(brewing(20, 2.5, 1.6));
    near(dry.brew().dose().grams(), wet.brew().dose().grams());
    near(dry.brew().water().grams() + dry.brew().dose().grams(), wet.brew().water().grams());
    near(dry.blend().bypass().grams(), wet.blend().bypass().grams());
  }

  @Test
  void betterExtractionTakesLessCoffee() {
    Needed poor = needed(brewing(18, 2.1, 1.6));
    Needed good = needed(brewing(22, 2.1, 1.6));
    near(poor.brew().dose().grams() * 18 / 22, good.brew().dose().grams());
  }

  /** Even head counts and whole means, so that rounding to whole cups has no part in it. */
  @Test
  void doublingTheGuestsDoublesTheMeanPlan() {
    for (int trial = 0; trial < RandomEvents.count(100); trial++) {
      int guests = 10 * random.nextInt(1, 60);
      double percent = 10 * random.nextInt(1, 11);
      double strength = random.nextDouble(1, 1.7);
      double spill = random.nextDouble(0, 5);
      Provision mean = new Provision.Mean();
      Plan one = plan(event(group(guests, percent, 1, 240, 0, strength), mean, spill, 12));
      Plan two = plan(event(group(2 * guests, percent, 1, 240, 0, strength), mean, spill, 12));
      assertEquals(2 * one.groups().get(0).demand().cups(), two.groups().get(0).demand().cups());
      Needed once = one.coffees().get(0).needed();
      Needed twice = two.coffees().get(0).needed();
      near(2 * once.brew().dose().grams(), twice.brew().dose().grams());
      near(2 * once.brew().water().grams(), twice.brew().water().grams());
      near(2 * once.blend().bypass().grams(), twice.blend().bypass().grams());
      near(once.totalWaterToCoffee(), twice.totalWaterToCoffee());
    }
  }

  /**
   * A world in which everything is four times as large — cups, scale, jug, brewers, dispensers —
   * has the same plan, four times as large, to the last rounding. Four, since a binary number keeps
   * all its digits.
   */
  @Test
  void aLargerWorldHasALargerPlan() {
    int planned = 0;
    int events = RandomEvents.count(150);
    for (long seed = 0; seed < events; seed++) {
      Event small = RandomEvents.sane(seed);
      Optional<Plan> one = new Planner().plan(small).value();
      Optional<Plan> four = new Planner().plan(larger(small)).value();
      assertEquals(one.isPresent(), four.isPresent(), "seed " + seed);
      if (one.isEmpty()) {
        continue;
      }
      planned++;
      List<Fill> fills = one.get().fills();
      List<Fill> largerFills = four.get().fills();
      assertEquals(fills.size(), largerFills.size(), "seed " + seed);
      for (int i = 0; i < fills.size(); i++) {
        near(
            4 * fills.get(i).blend().concentrate().grams(),
            largerFills.get(i).blend().concentrate().grams());
        near(
            4 * fills.get(i).blend().bypass().grams(), largerFills.get(i).blend().bypass().grams());
        near(
            fills.get(i).blend().strength().fraction(),
            largerFills.get(i).blend().strength().fraction());
      }
      List<Batch> batches = one.get().batches();
      for (int i = 0; i < batches.size(); i++) {
        Batch larger = four.get().batches().get(i);
        near(4 * batches.get(i).brew().dose().grams(), larger.brew().dose().grams());
        near(4 * batches.get(i).brew().water().grams(), larger.brew().water().grams());
        // Which of several alike brewers it is may differ: on a clock they are equally good.
        assertEquals(
            batches.get(i).unit().map(u -> u.brewer().name()),
            larger.unit().map(u -> u.brewer().name()));
      }
    }
    assertTrue(planned > events / 3);
  }

  private static Event larger(Event event) {
    Equipment there = event.equipment();
    Equipment equipment =
        new Equipment(
            there.brewers().stream()
                .map(
                    b ->
                        new Brewer(
                            b.name(),
                            b.count(),
                            b.leastDose().times(4),
                            b.greatestDose().times(4),
                            b.greatestWater().times(4),
                            b.vessel().map(v -> v.times(4)),
                            b.cycle(),
                            b.supply(),
                            b.location()))
                .toList(),
            there.circuits(),
            there.dispensers().stream()
                .map(
                    d ->
                        new Dispenser(
                            d.name(),
                            d.count(),
                            d.capacity().times(4),
                            d.heel().times(4),
                            d.hold(),
                            d.coolingKelvinsFirstHour(),
                            d.cupsPerMinute(),
                            d.location()))
                .toList(),
            there.scaleStep().times(4),
            there.jugMark().times(4),
            there.uncertainties());
    List<GuestGroup> groups =
        event.groups().stream()
            .map(
                g ->
                    with(
                        g,
                        new GuestGroup.Cup(
                            g.cup().size().times(4), g.cup().room().times(4), g.cup().servedAt())))
            .toList();
    return new Event(
        event.name(),
        event.date(),
        event.time(),
        event.print(),
        event.serving(),
        event.coffees(),
        groups,
        equipment,
        event.kitchen(),
        event.purchases(),
        event.defaults(),
        event.location());
  }

  private static GuestGroup with(GuestGroup group, GuestGroup.Cup cup) {
    return new GuestGroup(
        group.name(),
        group.guests(),
        cup,
        group.strength(),
        group.coffees(),
        group.ice(),
        group.service(),
        group.location());
  }

  private static void rises(DoubleFunction<Event> events, double from, double to, double step) {
    double before = 0;
    double first = 0;
    for (double x = from; x <= to; x += step) {
      double dose = needed(events.apply(x)).brew().dose().grams();
      assertTrue(dose >= before * (1 - NOISE), "at " + x);
      first = first == 0 ? dose : first;
      before = dose;
    }
    assertTrue(before > first, "it rises at all");
  }

  private static Event event(
      GuestGroup group, Provision provision, double spillPercent, double ratio) {
    // a second group, so that the first is not alone
    GuestGroup other = group(33, 60, 1, 200, 0, 1.2);
    GuestGroup named =
        new GuestGroup(
            "Other",
            other.guests(),
            other.cup(),
            other.strength(),
            other.coffees(),
            other.ice(),
            other.service(),
            other.location());
    return Events.event(
        Events.serving(provision, spillPercent),
        List.of(Events.coffee("house", Events.ratio(ratio))),
        provision instanceof Provision.Mean ? List.of(group) : List.of(group, named),
        Events.equipment(1, List.of(), List.of()));
  }

  private static GuestGroup group(
      int guests, double percent, double each, double ml, double room, double strength) {
    return new GuestGroup(
        "Crew",
        new GuestGroup.Guests(guests, Share.ofPercent(percent), each),
        new GuestGroup.Cup(
            Volume.ofMillilitres(ml), Volume.ofMillilitres(room), Temperature.ofCelsius(75)),
        Strength.ofPercent(strength),
        List.of(new GuestGroup.CoffeeShare("house", Share.ofPercent(100))),
        Optional.empty(),
        new GuestGroup.Service(
            Optional.empty(), GuestGroup.Arrivals.EVEN, Optional.empty(), Optional.empty()),
        Events.SOMEWHERE);
  }

  private static Event brewing(double extraction, double absorption, double concentrate) {
    BrewProfile profile =
        new BrewProfile(
            Method.PERCOLATION,
            Optional.empty(),
            Optional.of(Extraction.ofPercent(extraction)),
            Optional.of(Absorption.ofGramsPerGram(absorption)),
            List.of(),
            Share.ofPercent(0));
    Coffee coffee =
        Events.coffee(
            "house", new ConcentrateWish.ByStrength(Strength.ofPercent(concentrate)), profile);
    return Events.event(
        Events.serving(new Provision.Mean(), 0),
        List.of(coffee),
        List.of(group(50, 100, 1, 240, 0, 1.3)),
        Events.equipment(1, List.of(), List.of()));
  }

  private static Provision level(double percent) {
    return new Provision.ServiceLevel(Share.ofPercent(percent));
  }

  private static Plan plan(Event event) {
    return new Planner().plan(event).value().orElseThrow();
  }

  private static Needed needed(Event event) {
    return plan(event).coffees().get(0).needed();
  }

  private static void near(double expected, double actual) {
    assertEquals(expected, actual, NOISE * Math.abs(expected) + 1e-9);
  }
}
