package dev.urnwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Readings;
import dev.urnwright.brew.Readings.Reading;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.day.Adjustment.BatchChange;
import dev.urnwright.day.Adjustment.CoffeeDay;
import dev.urnwright.day.Adjustment.FillChange;
import dev.urnwright.day.Tasting.TastedGroup;
import dev.urnwright.input.EventReader;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.OnTheDay.Rung;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The taste ladder, and a plan corrected by it. */
class LadderTest {
  /** 20 % extracted, 2 g/g kept: 1:12 gives 10 g of concentrate of 2.00 % for each gram. */
  private static final String EVENT =
      """
      event: Choir supper
      coffee: {name: House, extraction: 20 %, absorption: 2 g/g, concentrate: {ratio: 12}}
      groups:
        - {name: Early, headcount: 30, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30}
        - {name: Late, headcount: 30, cup: 200 ml, strength: 1.60 %, serve: 13:00-13:30}
        - {name: Iced, headcount: 10, cup: 200 ml, strength: 1.25 %, serve: 15:00-15:30,
           over_ice: {poured_at: 25 °C, served_at: 5 °C}}
      brewers: [{name: Tall, dose: 100 g to 600 g, water: 7 l, cycle: 12 min}]
      dispensers: [{name: Urn, count: 4, capacity: 6.5 l, hold: 60 min}]
      scale_step: 1 g
      """;

  private static final Ladder.Wish USUAL =
      new Ladder.Wish(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  @TempDir Path folder;

  private Plan plan() throws IOException {
    return plan(Files.writeString(folder.resolve("supper.yaml"), EVENT));
  }

  private static Plan plan(Path file) {
    return new Planner()
        .plan(new EventReader().read(file).value().orElseThrow())
        .value()
        .orElseThrow();
  }

  private static Ladder.Wish wish(double sample, double step, int steps, double read) {
    return new Ladder.Wish(
        Optional.of(Mass.ofGrams(sample)),
        Optional.of(Mass.ofGrams(step)),
        Optional.of(steps),
        Optional.of(Strength.ofPercent(read)));
  }

  /**
   * Common practice, no source: 169 g at 1.81 % from 16 g, water in steps of 10 g. By hand: 169 ×
   * 1.81 / 219 = 1.39676, 169 × 1.81 / 229 = 1.33576.
   */
  @ParameterizedTest
  @CsvSource({"5, 219, 1.397", "6, 229, 1.336"})
  void commonPracticeNoSource(int step, double together, double percent) throws IOException {
    Plan plan = plan();
    Ladder ladder = Ladder.ofSample(plan, plan.coffees().get(0), wish(169, 10, 8, 1.81));
    Rung rung = ladder.table().rungs().get(step - 1);
    assertEquals(together, ladder.table().sample().plus(rung.water()).grams(), 1e-9);
    assertEquals(percent, rung.strength().percent(), 5e-4);
    assertEquals(percent, ladder.after(step).percent(), 5e-4);
    // The same common practice: 1.81 % of 169 g out of 16 g is 19.12 % extracted.
    assertEquals(19.12, 1.81 * 169 / 16, 5e-3);
  }

  @Test
  void scalesEachStepToADispenserAndTellsWhereThePlanIs() throws IOException {
    Plan plan = plan();
    CoffeePlan coffee = plan.coffees().get(0);
    Ladder ladder = Ladder.ofSample(plan, coffee, USUAL);
    assertFalse(ladder.from().read());
    assertEquals(2.0, ladder.from().strength().percent(), 0.002); // batches are rounded up
    // (2.00/1.25 − 1)·100/10 = 6 steps, (2.00/1.60 − 1)·100/10 = 2.5 steps
    assertEquals(6, ladder.expectedSteps(coffee.groups().get(0)), 0.02);
    assertEquals(2.5, ladder.expectedSteps(coffee.groups().get(1)), 0.02);
    double concentrate = coffee.groups().get(0).fills().get(0).blend().concentrate().grams();
    for (int n = 1; n <= ladder.table().rungs().size(); n++) {
      assertEquals(
          concentrate * n / 10, ladder.table().rungs().get(n - 1).bypass().get(0).grams(), 0.5001);
    }
  }

  @Test
  void theStepThatTastedRightIsTheRatioOfItsGroupAndTheOthersFollow() throws IOException {
    Plan plan = plan();
    Tasting.Outcome outcome = tasted(plan, USUAL, Map.of("Early", 8.0));
    // 80 g of water to 100 g; a concentrate of 1.25 × 1.8 = 2.25 % would be right like that
    assertEquals(2.25, outcome.asIfRead().percent(), 1e-9);
    TastedGroup early = outcome.groups().get(0);
    TastedGroup late = outcome.groups().get(1);
    assertEquals(0.8, early.waterPerGram(), 1e-9);
    // 2.25 / 1.60 − 1 = 0.40625 g to each gram
    assertEquals(0.40625, late.waterPerGram(), 1e-9);
    assertTrue(late.steps().isEmpty());
    assertEquals(OptionalDouble.of(8), early.steps());
    CoffeeDay day = outcome.adjustment().coffees().get(0);
    Fill planned = plan.fills().get(0);
    Fill now = day.fills().get(0).now();
    assertEquals(planned, day.fills().get(0).planned());
    // as much together: five parts of nine are concentrate
    assertEquals(
        planned.blend().finished().grams() / 1.8, now.blend().concentrate().grams(), 1.0001);
    assertEquals(0.8, now.blend().bypass().grams() / now.blend().concentrate().grams(), 1e-3);
    // Less concentrate of the same kind is brewed for the others, at the same ratio.
    BatchChange next = day.batches().get(0);
    assertEquals(
        next.planned().brew().ratio().gramsPerGram(),
        next.now().brew().ratio().gramsPerGram(),
        0.01);
    assertTrue(next.now().brew().dose().compareTo(next.planned().brew().dose()) < 0);
  }

  @Test
  void aBatchThatIsBrewedGivesNoMoreThanItHas() throws IOException {
    Plan plan = plan();
    CoffeeDay day = tasted(plan, USUAL, Map.of("Early", 5.0)).adjustment().coffees().get(0);
    FillChange early = day.fills().get(0);
    // 366 g at 10 g each are 3660 g; two parts of three, so 5490 g instead of 5849 g: 28 cups of
    // 194.97 g instead of 30
    assertEquals(3660, early.now().blend().concentrate().grams(), 1e-9);
    assertEquals(0.5, early.now().blend().bypass().grams() / 3660, 1e-3);
    assertEquals(2, early.cupsShort());
  }

  @Test
  void anIcedGroupCountsItsIceAsWater() throws IOException {
    Plan plan = plan();
    Tasting.Outcome outcome = tasted(plan, USUAL, Map.of("Early", 7.0, "Late", 3.0, "Iced", 7.0));
    Fill iced =
        outcome.adjustment().coffees().get(0).fills().stream()
            .map(FillChange::now)
            .filter(fill -> fill.groupName().equals("Iced"))
            .findFirst()
            .orElseThrow();
    double water = iced.blend().bypass().grams() + iced.blend().ice().grams();
    assertEquals(0.7, water / iced.blend().concentrate().grams(), 2e-3);
  }

  @Test
  void whatTastedAsExpectedChangesNothing() throws IOException {
    Plan plan = plan();
    Ladder ladder = Ladder.ofSample(plan, plan.coffees().get(0), USUAL);
    Map<String, Double> expected = new HashMap<>();
    plan.groups().forEach(g -> expected.put(g.group().name(), ladder.expectedSteps(g)));
    CoffeeDay day = tasted(plan, USUAL, expected).adjustment().coffees().get(0);
    for (FillChange change : day.fills()) {
      assertEquals(
          change.planned().blend().concentrate().grams(),
          change.now().blend().concentrate().grams(),
          1.0001);
      assertEquals(
          change.planned().blend().bypass().grams(), change.now().blend().bypass().grams(), 2.0001);
      assertEquals(0, change.cupsShort());
    }
  }

  /** Tasting one group tells as much as reading the concentrate that it stands for. */
  @Test
  void correctsAsThatReadingWould() throws IOException {
    Plan plan = plan();
    Batch first = plan.batches().get(0);
    double percent = 1.25 * 1.7; // right after 7 steps of 10 g to 100 g: 2.125 %
    Reading reading = new Reading(Strength.ofPercent(percent), Optional.empty());
    Readings three = new Readings(List.of(reading, reading, reading));
    Adjustment read =
        new Adjuster(plan)
            .adjust(
                new Happened(
                    Map.of(
                        first.id(),
                        new WeighedBatch(
                            first.brew().dose(), first.brew().water(), Optional.empty(), three)),
                    Set.of(),
                    List.of()));
    Adjustment tasted = tasted(plan, USUAL, Map.of("Early", 7.0)).adjustment();
    Fill byReading = read.coffees().get(0).fills().get(0).now();
    Fill byTaste = tasted.coffees().get(0).fills().get(0).now();
    assertEquals(
        byReading.blend().concentrate().grams(), byTaste.blend().concentrate().grams(), 1.0001);
    assertEquals(byReading.blend().bypass().grams(), byTaste.blend().bypass().grams(), 2.0001);
  }

  @Test
  void aReadConcentrateLeavesTheOthersTheirStrength() throws IOException {
    Plan plan = plan();
    Ladder.Wish read = wish(100, 10, 10, 2.1);
    Tasting.Outcome outcome = tasted(plan, read, Map.of("Early", 5.0));
    assertEquals(1.4, outcome.groups().get(0).strength().percent(), 1e-9); // 2.1 / 1.5
    assertEquals(1.6, outcome.groups().get(1).strength().percent(), 1e-9);
    FillChange early = outcome.adjustment().coffees().get(0).fills().get(0);
    assertEquals(1.4, early.now().blend().strength().percent(), 2e-3);
  }

  @Test
  void aDispenserIsDilutedWhereItStandsUntilItIsFull() throws IOException {
    Plan plan = plan();
    Fill fill = plan.fills().get(0);
    Ladder ladder =
        Ladder.inDispenser(
            plan,
            plan.coffees().get(0),
            fill,
            new Ladder.Wish(
                Optional.empty(),
                Optional.of(Mass.ofGrams(500)),
                Optional.of(10),
                Optional.empty()));
    assertEquals(fill.blend().concentrate(), ladder.table().sample());
    // 30 cups of 200 ml at 75 °C weigh 5849 g, 5849 × 1.25/2.00 = 3656 g of it concentrate. The urn
    // takes 6.5 l at 92 °C (963.97 g/l), 6265.8 g: 2609 g of water, five steps.
    assertEquals(3656, ladder.table().sample().grams(), 2);
    assertEquals(5, ladder.stepsThatFit(plan));
    assertEquals(1, ladder.groups().size());
    Tasting.Outcome outcome =
        new Tasting(plan, ladder, Map.of("Early", 4.0))
            .correct(new Happened(brewed(plan, ladder), Set.of(fill.id()), List.of()));
    assertTrue(
        outcome.adjustment().coffees().get(0).fills().stream()
            .noneMatch(change -> change.now().id().equals(fill.id())));
  }

  @Test
  void refusesWhatIsNoLadder() throws IOException {
    Plan plan = plan();
    CoffeePlan coffee = plan.coffees().get(0);
    assertThrows(
        IllegalArgumentException.class,
        () -> Ladder.ofSample(plan, coffee, wish(100, 10, Ladder.MOST_STEPS + 1, 2)));
    assertThrows(
        IllegalArgumentException.class, () -> Ladder.ofSample(plan, coffee, wish(5, 10, 8, 2)));
    Fill iced = coffee.groups().get(2).fills().get(0);
    assertThrows(
        IllegalArgumentException.class, () -> Ladder.inDispenser(plan, coffee, iced, USUAL));
    Ladder ladder = Ladder.ofSample(plan, coffee, USUAL);
    assertThrows(IllegalArgumentException.class, () -> new Tasting(plan, ladder, Map.of()));
    assertThrows(
        IllegalArgumentException.class, () -> new Tasting(plan, ladder, Map.of("Nobody", 5.0)));
  }

  /** Whatever tasted right: no batch gives more than it has, and the ratio is the tasted one. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "samples/harvest-supper.yaml",
        "samples/autumn-conference.yaml",
        "samples/corner-cafe.yaml",
        "samples/office-carafes.yaml"
      })
  void holdsItsLawsOnEverySample(String sample) {
    Plan plan = plan(Path.of(sample));
    Random random = new Random(sample.hashCode());
    int checked = 0;
    for (CoffeePlan coffee : plan.coffees()) {
      for (int trial = 0; trial < 20; trial++) {
        Ladder ladder = Ladder.ofSample(plan, coffee, USUAL);
        Map<String, Double> steps = new HashMap<>();
        for (GroupPlan group : coffee.groups()) {
          steps.put(
              group.group().name(),
              ladder.expectedSteps(group) * (0.8 + 0.4 * random.nextDouble()));
        }
        Tasting.Outcome outcome =
            new Tasting(plan, ladder, steps)
                .correct(new Happened(brewed(plan, ladder), Set.of(), List.of()));
        checked += check(plan, outcome);
      }
    }
    assertTrue(checked > 20, "fills checked: " + checked);
  }

  private static int check(Plan plan, Tasting.Outcome outcome) {
    CoffeeDay day =
        outcome.adjustment().coffees().stream()
            .filter(each -> each.coffee().equals(outcome.ladder().coffee().coffee()))
            .findFirst()
            .orElseThrow();
    Map<String, Double> given = new HashMap<>();
    day.measured().forEach(j -> given.put(j.batch().planned().id(), j.batch().beverage().grams()));
    day.batches().forEach(b -> given.put(b.now().id(), b.now().brew().beverage().grams()));
    Map<String, Double> ratios = new HashMap<>();
    outcome.groups().forEach(g -> ratios.put(g.group().group().name(), g.waterPerGram()));
    double step = plan.event().equipment().scaleStep().grams();
    int checked = 0;
    for (FillChange change : day.fills()) {
      Fill now = change.now();
      now.draws()
          .forEach(draw -> given.merge(draw.batchId(), -draw.concentrate().grams(), Double::sum));
      double concentrate = now.blend().concentrate().grams();
      double water = now.blend().bypass().grams() + now.blend().ice().grams();
      boolean isFull = now.level().full().map(full -> full.fraction() > 0.98).orElse(false);
      // One step of each by rounding: water off by s/2, and r·s for concentrate that is off by s.
      // Where concentrate is rounded up by more, the least for the guests adds another step.
      if (!isFull && concentrate > 20 * step) {
        // A batch that has to be brewed stronger, to be enough, is diluted as much further.
        double stronger =
            now.blend().concentrateStrength().fraction()
                / outcome.ladder().from().strength().fraction();
        double ratio = (1 + ratios.getOrDefault(now.groupName(), 0.0)) * stronger - 1;
        assertEquals(ratio, water / concentrate, 2.5 * step / concentrate * (1 + ratio), now::id);
        checked++;
      }
    }
    given.forEach((id, left) -> assertTrue(left > -1e-6, () -> id + " gave more than it had"));
    return checked;
  }

  private static Tasting.Outcome tasted(Plan plan, Ladder.Wish wish, Map<String, Double> steps) {
    Ladder ladder = Ladder.ofSample(plan, plan.coffees().get(0), wish);
    return new Tasting(plan, ladder, steps)
        .correct(new Happened(brewed(plan, ladder), Set.of(), List.of()));
  }

  /** The first batch of the ladder's coffee, as planned; with readings where it was read. */
  private static Map<String, WeighedBatch> brewed(Plan plan, Ladder ladder) {
    Batch first = ladder.coffee().batches().get(0);
    Reading reading = new Reading(ladder.from().strength(), Optional.empty());
    assertTrue(plan.batches().contains(first));
    return Map.of(
        first.id(),
        new WeighedBatch(
            first.brew().dose(),
            first.brew().water(),
            Optional.empty(),
            ladder.from().read()
                ? new Readings(List.of(reading, reading, reading))
                : Readings.NONE));
  }
}
