package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup.CoffeeShare;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What holds for every plan, checked on the plans of many random events. */
class LawsTest {
  private static final int EVENTS = RandomEvents.count(500);

  /** Binary rounding of sums over groups and batches, relative. */
  private static final double NOISE = 1e-9;

  private static final Map<Long, Plan> PLANS = new TreeMap<>();

  @BeforeAll
  static void plan() {
    for (long seed = 0; seed < EVENTS; seed++) {
      long key = seed;
      new Planner().plan(RandomEvents.sane(seed)).value().ifPresent(p -> PLANS.put(key, p));
    }
    assertTrue(PLANS.size() > EVENTS / 3, "only " + PLANS.size() + " plans");
  }

  @Test
  void allKindsOfEventsAreAmongThem() {
    assumeTrue(EVENTS == 500, "fewer events are not of all kinds");
    long iced = count(p -> p.groups().stream().anyMatch(g -> g.group().ice().isPresent()));
    long split = count(p -> p.groups().stream().anyMatch(g -> g.group().coffees().size() > 1));
    long several = count(p -> p.coffees().stream().anyMatch(c -> c.batches().size() > 1));
    long filled = count(p -> p.fills().stream().anyMatch(f -> f.dispenser().isPresent()));
    long capped =
        count(
            p ->
                p.fills().stream()
                    .anyMatch(f -> f.blend().strength().percent() > 1.02 * wanted(p, f)));
    assertTrue(iced > 20 && split > 20 && several > 20 && filled > 20, "dull events");
    assertTrue(capped > 0, "none in which the dispenser is full before the strength is right");
  }

  @Test
  void exactMassIsConserved() {
    forEachCoffee(
        (seed, coffee) -> {
          BrewBalance brew = coffee.needed().brew();
          Blend all = coffee.needed().blend();
          double in = grams(brew.water()) + grams(all.bypass()) + grams(all.ice());
          double out = grams(brew.steam()) + grams(brew.absorbed());
          for (GroupPlan group : coffee.groups()) {
            out += grams(group.needed().finished());
          }
          near(in, out, seed);
          near(grams(brew.beverage()), grams(all.concentrate()), seed);
        });
  }

  @Test
  void exactSolidsAreConserved() {
    forEachCoffee(
        (seed, coffee) -> {
          BrewBalance brew = coffee.needed().brew();
          double wanted = 0;
          for (GroupPlan group : coffee.groups()) {
            wanted += grams(group.needed().finished()) * group.group().strength().fraction();
          }
          // Σ m·t = T·B = E·D
          near(brew.strength().fraction() * grams(brew.beverage()), wanted, seed);
          near(brew.extraction().fraction() * grams(brew.dose()), wanted, seed);
        });
  }

  @Test
  void bypassLeavesTheExtractionAsItWas() {
    forEachGroup(
        (seed, group) -> {
          Blend blend = group.needed();
          double ofConcentrate =
              grams(blend.concentrate()) * blend.concentrateStrength().fraction();
          near(ofConcentrate, grams(blend.finished()) * blend.strength().fraction(), seed);
          near(group.group().strength().fraction(), blend.strength().fraction(), seed);
          near(
              group.group().strength().fraction(), group.cup().blend().strength().fraction(), seed);
        });
  }

  @Test
  void roundedMassIsConserved() {
    forEachCoffee(
        (seed, coffee) -> {
          double in = 0;
          double out = grams(coffee.brewed().leftOver());
          for (Batch batch : coffee.batches()) {
            in += grams(batch.brew().water());
            out += grams(batch.brew().steam()) + grams(batch.brew().absorbed());
          }
          for (Fill fill : coffee.fills()) {
            in += grams(fill.blend().bypass()) + grams(fill.blend().ice());
            out += grams(fill.blend().finished());
          }
          near(in, out, seed);
          near(
              sum(coffee.fills().stream().map(f -> f.blend().concentrate()).toList()),
              grams(coffee.brewed().drawn()),
              seed);
        });
  }

  @Test
  void theGroundsKeepTheSameOfEveryGram() {
    forEachCoffee(
        (seed, coffee) -> {
          BrewBalance needed = coffee.needed().brew();
          double kept = grams(needed.absorbed()) / grams(needed.dose());
          for (Batch batch : coffee.batches()) {
            BrewBalance brew = batch.brew();
            near(kept, grams(brew.absorbed()) / grams(brew.dose()), seed);
            near(
                grams(brew.water()),
                grams(brew.steam()) + grams(brew.absorbed()) + grams(brew.beverage()),
                seed);
          }
        });
  }

  @Test
  void drawsAddUpAndNoBatchGivesMoreThanItHas() {
    forEachCoffee(
        (seed, coffee) -> {
          Map<String, Batch> batches = new HashMap<>();
          coffee.batches().forEach(batch -> batches.put(batch.id(), batch));
          Map<String, Double> taken = new HashMap<>();
          for (Fill fill : coffee.fills()) {
            double concentrate = 0;
            double solids = 0;
            for (Fill.Draw draw : fill.draws()) {
              double drawn = grams(draw.concentrate());
              assertTrue(drawn > 0, "seed " + seed);
              concentrate += drawn;
              solids += drawn * batches.get(draw.batchId()).brew().strength().fraction();
              taken.merge(draw.batchId(), drawn, Double::sum);
            }
            near(grams(fill.blend().concentrate()), concentrate, seed);
            near(grams(fill.blend().solids()), solids, seed);
          }
          taken.forEach(
              (id, drawn) -> {
                double there = grams(batches.get(id).brew().beverage());
                assertTrue(drawn <= there * (1 + NOISE) + 1e-6, "seed " + seed + ": " + id);
              });
        });
  }

  @Test
  void nobodyIsShort() {
    forEachGroup(
        (seed, group) -> {
          double share = grams(group.needed().finished()) / group.fills().size();
          double concentrate = grams(group.needed().concentrate()) / group.fills().size();
          double step = step(seed);
          double drawable = 0;
          for (Fill fill : group.fills()) {
            assertTrue(grams(fill.blend().finished()) >= share - slack(step), "seed " + seed);
            assertTrue(
                grams(fill.blend().concentrate()) >= concentrate - slack(step), "seed " + seed);
            drawable += (grams(fill.blend().liquid()) - heel(fill, group, seed)) / (1 - ice(group));
          }
          double spill = PLANS.get(seed).event().serving().spill().fraction();
          double drunk = group.demand().cups() * cupGrams(group) * (1 + spill);
          assertTrue(
              drawable >= drunk * (1 - NOISE) - group.fills().size() * slack(step), "seed " + seed);
        });
  }

  @Test
  void aCupHoldsWhatIsPouredIntoIt() {
    forEachGroup(
        (seed, group) -> near(cupGrams(group), grams(group.cup().blend().finished()), seed));
  }

  @Test
  void whatIsWeighedIsInWholeSteps() {
    forEachCoffee(
        (seed, coffee) -> {
          double step = step(seed);
          for (Batch batch : coffee.batches()) {
            whole(batch.brew().dose(), step, seed);
            whole(batch.brew().water(), step, seed);
          }
          double mark = PLANS.get(seed).event().equipment().jugMark().litres();
          for (Fill fill : coffee.fills()) {
            whole(fill.blend().concentrate(), step, seed);
            whole(fill.blend().bypass(), step, seed);
            double marks = fill.byJug().bypass().litres() / mark;
            assertEquals(Math.rint(marks), marks, 1e-6, "seed " + seed);
          }
        });
  }

  @Test
  void batchesFitTheirBrewers() {
    forEachCoffee(
        (seed, coffee) -> {
          Temperature warm = PLANS.get(seed).event().serving().bypassTemperature();
          for (Batch batch : coffee.batches()) {
            if (batch.unit().isEmpty()) {
              assertEquals(1, coffee.batches().size(), "seed " + seed);
              continue;
            }
            var brewer = batch.unit().get().brewer();
            int number = batch.unit().get().number();
            assertTrue(number >= 1 && number <= brewer.count(), "seed " + seed);
            double dose = grams(batch.brew().dose());
            assertTrue(dose >= grams(brewer.leastDose()) - 1e-6, "seed " + seed);
            assertTrue(dose <= grams(brewer.greatestDose()) + 1e-6, "seed " + seed);
            double water = grams(batch.brew().water());
            assertTrue(water <= grams(brewer.greatestWater()) + 1e-6, "seed " + seed);
            brewer
                .vessel()
                .ifPresent(
                    vessel ->
                        assertTrue(
                            Volume.ofWater(batch.brew().beverage(), warm).litres()
                                <= vessel.litres() + 1e-9,
                            "seed " + seed));
          }
        });
  }

  @Test
  void dispensersAreNotOverfull() {
    forEachGroup(
        (seed, group) -> {
          for (Fill fill : group.fills()) {
            fill.dispenser()
                .ifPresent(
                    d ->
                        assertTrue(
                            Volume.ofWater(fill.blend().liquid(), warm(group, seed)).litres()
                                <= d.capacity().litres() * (1 + NOISE),
                            "seed " + seed + ": " + fill));
          }
        });
  }

  /**
   * The strength of a fill is off its target by no more than rounding explains. With F the exact
   * share, f what is filled, c its concentrate of strength T' (batches' water is rounded up, so T'
   * is at most the exact T), s one step:
   *
   * <ul>
   *   <li>water to the nearest step: {@code |f − cT'/t| ≤ s/2}, hence {@code |T − t| ≤ t·s/(2f)};
   *   <li>more water, so that nobody is short: {@code f < F + s} and {@code c ≥ F·t/T}, hence at
   *       least {@code t·(T'/T)·F/(F + s)};
   *   <li>less water, so that the dispenser holds it: {@code f ≥ F} and {@code c < F·t/T + s},
   *       hence less than {@code t + s·T'/F}.
   * </ul>
   */
  @Test
  void strengthsAreRightWithinRounding() {
    forEachGroup(
        (seed, group) -> {
          double s = step(seed);
          double wanted = group.group().strength().fraction();
          double exact = group.needed().concentrateStrength().fraction();
          double share = grams(group.needed().finished()) / group.fills().size();
          for (Fill fill : group.fills()) {
            double brewed = fill.blend().concentrateStrength().fraction();
            double filled = grams(fill.blend().finished());
            double reached = fill.blend().strength().fraction();
            double half = wanted * s / (2 * filled);
            double least =
                Math.min(wanted - half, wanted * Math.min(1, brewed / exact) * share / (share + s));
            double most = wanted + Math.max(half, s * brewed / share);
            assertTrue(
                reached >= least * (1 - NOISE) && reached <= most * (1 + NOISE),
                "seed " + seed + ": " + least + " ≤ " + reached + " ≤ " + most);
          }
        });
  }

  /** And a batch's strength is off by what its last step of water does. */
  @Test
  void batchesAreAsStrongAsTheirRatio() {
    forEachCoffee(
        (seed, coffee) -> {
          double ratio = coffee.needed().brew().ratio().gramsPerGram();
          for (Batch batch : coffee.batches()) {
            double exact = ratio * grams(batch.brew().dose());
            double water = grams(batch.brew().water());
            assertTrue(water >= exact * (1 - NOISE) - slack(step(seed)), "seed " + seed);
            assertTrue(water < exact + step(seed), "seed " + seed);
          }
        });
  }

  @Test
  void caffeineIsDoseTimesContent() {
    forEachGroup(
        (seed, group) -> {
          // solids of the cup over the extraction is its dose; 1.2 % of it, 80 to 100 % extracted
          var coffee =
              PLANS.get(seed).coffees().stream()
                  .filter(c -> c.coffee().equals(group.coffee()))
                  .findFirst()
                  .orElseThrow();
          double dose =
              grams(group.cup().blend().solids()) / coffee.needed().brew().extraction().fraction();
          near(dose * 1000 * 0.012 * 0.8, group.cup().caffeine().lowMilligrams(), seed);
          near(dose * 1000 * 0.012, group.cup().caffeine().highMilligrams(), seed);
        });
  }

  @Test
  void bothRatiosAreWhatTheirNamesSay() {
    forEachCoffee(
        (seed, coffee) -> {
          BrewBalance brew = coffee.needed().brew();
          Blend all = coffee.needed().blend();
          near(
              (grams(brew.water()) + grams(all.bypass()) + grams(all.ice())) / grams(brew.dose()),
              coffee.needed().totalWaterToCoffee(),
              seed);
          double wanted =
              coffee.groups().stream().mapToDouble(g -> grams(g.needed().finished())).sum();
          near(wanted / grams(brew.dose()), coffee.needed().cupToCoffee(), seed);
          // a group's own cup, at the same extraction: (R·D + water)/D
          for (GroupPlan group : coffee.groups()) {
            Blend cup = group.cup().blend();
            double dose = grams(cup.solids()) / brew.extraction().fraction();
            near(
                brew.ratio().gramsPerGram() + (grams(cup.bypass()) + grams(cup.ice())) / dose,
                group.cup().totalWaterToCoffee().gramsPerGram(),
                seed);
          }
        });
  }

  @Test
  void whatIsBoughtIsWhatIsBrewed() {
    PLANS.forEach(
        (seed, plan) -> {
          for (int i = 0; i < plan.coffees().size(); i++) {
            near(
                sum(plan.coffees().get(i).batches().stream().map(b -> b.brew().dose()).toList()),
                grams(plan.shopping().get(i).amount().mass()),
                seed);
          }
        });
  }

  @Test
  void everyNameIsUsedOnce() {
    PLANS.forEach(
        (seed, plan) -> {
          Set<String> ids = new HashSet<>();
          plan.batches().forEach(b -> assertTrue(ids.add(b.id()), "seed " + seed + b.id()));
          plan.fills().forEach(f -> assertTrue(ids.add(f.id()), "seed " + seed + f.id()));
        });
  }

  @Test
  void everyCoffeeOfEveryGroupIsThereOrToldOf() {
    PLANS.forEach(
        (seed, plan) -> {
          long wanted = plan.event().groups().stream().mapToLong(g -> g.coffees().size()).sum();
          long none = plan.notes().stream().filter(n -> n.code().equals("no-cups")).count();
          assertEquals(wanted, plan.groups().size() + none, "seed " + seed);
          for (GroupPlan group : plan.groups()) {
            List<String> keys = group.group().coffees().stream().map(CoffeeShare::coffee).toList();
            assertTrue(keys.contains(group.coffee().key()), "seed " + seed);
            assertTrue(group.demand().cups() >= 1, "seed " + seed);
          }
        });
  }

  @Test
  void thePlanOfAnEventIsAlwaysTheSame() {
    for (long seed = 0; seed < EVENTS; seed += 5) {
      Event event = RandomEvents.sane(seed);
      assertEquals(new Planner().plan(event), new Planner().plan(RandomEvents.sane(seed)));
    }
  }

  private static void forEachCoffee(BiConsumer<Long, CoffeePlan> check) {
    PLANS.forEach((seed, plan) -> plan.coffees().forEach(coffee -> check.accept(seed, coffee)));
  }

  private static void forEachGroup(BiConsumer<Long, GroupPlan> check) {
    PLANS.forEach((seed, plan) -> plan.groups().forEach(group -> check.accept(seed, group)));
  }

  private static long count(Predicate<Plan> what) {
    return PLANS.values().stream().filter(what).count();
  }

  private static double wanted(Plan plan, Fill fill) {
    return plan.groups().stream()
        .filter(group -> group.fills().contains(fill))
        .findFirst()
        .orElseThrow()
        .group()
        .strength()
        .percent();
  }

  private static double cupGrams(GroupPlan group) {
    var cup = group.group().cup();
    return grams(
        Volume.ofLitres(cup.size().litres() - cup.room().litres()).massOfWaterAt(cup.servedAt()));
  }

  private static double ice(GroupPlan group) {
    return grams(group.needed().ice()) / grams(group.needed().finished());
  }

  private static Temperature warm(GroupPlan group, long seed) {
    return group
        .group()
        .ice()
        .map(ice -> ice.pouredAt())
        .orElse(PLANS.get(seed).event().serving().bypassTemperature());
  }

  private static double heel(Fill fill, GroupPlan group, long seed) {
    return fill.dispenser()
        .map(Dispenser::heel)
        .map(heel -> grams(heel.massOfWaterAt(warm(group, seed))))
        .orElse(0.0);
  }

  private static double step(long seed) {
    return grams(PLANS.get(seed).event().equipment().scaleStep());
  }

  /** What rounding up to whole steps forgives. */
  private static double slack(double step) {
    return step * 1e-8;
  }

  private static void whole(Mass mass, double step, long seed) {
    double steps = mass.grams() / step;
    assertEquals(Math.rint(steps), steps, 1e-6, "seed " + seed + ": " + mass);
  }

  private static double grams(Mass mass) {
    return mass.grams();
  }

  private static double sum(List<Mass> masses) {
    return masses.stream().mapToDouble(Mass::grams).sum();
  }

  private static void near(double expected, double actual, long seed) {
    assertEquals(expected, actual, NOISE * Math.abs(expected) + 1e-9, "seed " + seed);
  }
}
