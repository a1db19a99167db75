package dev.urnwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Readings;
import dev.urnwright.brew.Readings.Reading;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.day.Adjustment.BatchChange;
import dev.urnwright.day.Adjustment.CoffeeDay;
import dev.urnwright.day.Adjustment.FillChange;
import dev.urnwright.day.Happened.Standing;
import dev.urnwright.input.EventReader;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.OnTheDay;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.plan.Run;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AdjusterTest {
  /** 20 % extracted, 2 g/g kept: 1:12 gives 10 g of concentrate of 2.00 % for each gram. */
  private static final String EVENT =
      """
      event: Choir supper
      coffee:
        name: House
        extraction: 20 %
        absorption: 2 g/g
        concentrate: {ratio: 12}
      groups:
        - {name: Early, headcount: 30, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30}
        - {name: Late, headcount: 30, cup: 200 ml, strength: 1.25 %, serve: 13:00-13:30}
      brewers: [{name: Tall, dose: 100 g to 400 g, water: 5 l, cycle: 12 min}]
      dispensers: [{name: Urn, count: 4, capacity: 8 l, hold: 60 min}]
      scale_step: 1 g
      """;

  @TempDir Path folder;

  private Plan plan(String event) throws IOException {
    Path file = Files.writeString(folder.resolve("supper.yaml"), event);
    return plan(file);
  }

  private static Plan plan(Path file) {
    return new Planner()
        .plan(new EventReader().read(file).value().orElseThrow())
        .value()
        .orElseThrow();
  }

  private static Readings read(double... percents) {
    Readings readings = Readings.NONE;
    for (double percent : percents) {
      readings = readings.and(new Reading(Strength.ofPercent(percent), Optional.empty()));
    }
    return readings;
  }

  private static Happened measured(Batch batch, double beverage, double... readings) {
    return new Happened(
        Map.of(
            batch.id(),
            new WeighedBatch(
                batch.brew().dose(),
                batch.brew().water(),
                Optional.of(Mass.ofGrams(beverage)),
                read(readings))),
        Set.of(),
        List.of());
  }

  private static CoffeeDay day(Plan plan, Happened happened) {
    return new Adjuster(plan).adjust(happened).coffees().get(0);
  }

  @Test
  void aBatchAsPlannedChangesNothing() throws IOException {
    Plan plan = plan(EVENT);
    Batch first = plan.batches().get(0);
    CoffeeDay day = day(plan, measured(first, first.brew().beverage().grams(), 2.0, 2.0, 2.0));
    assertTrue(day.fills().stream().noneMatch(FillChange::isChanged), () -> day.fills().toString());
    assertTrue(day.batches().stream().noneMatch(BatchChange::isChanged));
    assertEquals(0, day.cupsShort());
  }

  @Test
  void aStrongerConcentrateIsDilutedFurther() throws IOException {
    Plan plan = plan(EVENT);
    Batch first = plan.batches().get(0);
    Fill fill = plan.fills().get(0);
    double finished = fill.blend().finished().grams();
    CoffeeDay day = day(plan, measured(first, first.brew().beverage().grams(), 2.2, 2.2, 2.2));
    Fill now = day.fills().get(0).now();
    // concentrate = m·t/T = m × 1.25/2.20, up to the gram; the rest of m is water
    assertEquals(Math.ceil(finished * 1.25 / 2.2), now.blend().concentrate().grams(), 1.0001);
    assertEquals(1.25, now.blend().strength().percent(), 0.002);
    assertEquals(finished, now.blend().finished().grams(), 3);
    assertEquals(0, day.cupsShort());
  }

  @Test
  void aBatchThatGaveTooLittleLeavesNobodyOutAndTheNextMakesUpForItsGroup() throws IOException {
    Plan plan = plan(EVENT);
    Batch first = plan.batches().get(0);
    double gave = first.brew().beverage().grams() * 0.9;
    CoffeeDay day = day(plan, measured(first, gave, 2.0, 2.0, 2.0));
    FillChange early = day.fills().get(0);
    assertTrue(early.now().blend().concentrate().grams() <= gave);
    assertEquals(1.25, early.now().blend().strength().percent(), 0.003, "as strong as wanted");
    assertTrue(early.cupsShort() >= 2, "nine tenths of thirty cups: " + early.cupsShort());
    // kept more than planned: a = (W − B)/D, so the next batch needs more dose for its beverage
    BatchChange next = day.batches().get(0);
    assertTrue(next.now().brew().dose().compareTo(next.planned().brew().dose()) > 0);
    assertEquals(2.0, next.now().brew().strength().percent(), 0.01);
    assertTrue(
        next.now().brew().beverage().grams()
            >= day.fills().get(1).now().blend().concentrate().grams() - 1);
  }

  @Test
  void aWeakerExtractionAsksForMoreDoseAndLessWaterToIt() throws IOException {
    Plan plan = plan(EVENT);
    Batch first = plan.batches().get(0);
    CoffeeDay day = day(plan, measured(first, first.brew().beverage().grams(), 1.8, 1.8, 1.8));
    // 18 % extracted instead of 20 %: R = E/T + a = 18/2 + 2 = 11
    assertEquals(18, day.today().curve().at(first.brew().ratio()).percent(), 0.05);
    BatchChange next = day.batches().get(0);
    assertEquals(11, next.now().brew().ratio().gramsPerGram(), 0.05);
    assertEquals(2.0, next.now().brew().strength().percent(), 0.01);
  }

  @Test
  void concentrateWeakerThanTheGroupIsServedUndiluted() throws IOException {
    Plan plan = plan(EVENT);
    Batch first = plan.batches().get(0);
    CoffeeDay day = day(plan, measured(first, first.brew().beverage().grams(), 1.1, 1.1, 1.1));
    Fill now = day.fills().get(0).now();
    assertEquals(0, now.blend().bypass().grams(), 0);
    assertEquals(1.1, now.blend().strength().percent(), 1e-9);
  }

  @Test
  void readingsThatDoNotAgreeAreReadAgain() throws IOException {
    Plan plan = plan(EVENT);
    Batch first = plan.batches().get(0);
    Adjustment adjustment =
        new Adjuster(plan)
            .adjust(measured(first, first.brew().beverage().grams(), 1.80, 1.81, 1.83));
    assertFalse(adjustment.stands());
    assertTrue(adjustment.left().isEmpty());
    String remark = adjustment.coffees().get(0).readAgain().get(0).verdict().remarks().get(0);
    assertTrue(remark.startsWith("Read again: the last three are 0.03"), remark);
    assertTrue(remark.contains("distilled water"), remark);
  }

  @Test
  void aWarmSampleIsQuestionedAndNotCorrected() {
    Readings warm =
        new Readings(
            List.of(
                new Reading(Strength.ofPercent(1.8), Optional.of(Temperature.ofCelsius(45))),
                new Reading(Strength.ofPercent(1.8), Optional.of(Temperature.ofCelsius(44))),
                new Reading(Strength.ofPercent(1.8), Optional.of(Temperature.ofCelsius(43)))));
    Verdict verdict = Verdict.of(warm);
    assertTrue(verdict.stands());
    assertEquals(1, verdict.remarks().size());
    assertTrue(verdict.remarks().get(0).contains("Nothing was corrected"));
    assertEquals(1.8, warm.strength().orElseThrow().percent(), 1e-9);
  }

  @Test
  void aDispenserDilutedAlreadyIsPutRight() throws IOException {
    Plan plan = plan(EVENT);
    Fill fill = plan.fills().get(0);
    Happened happened =
        new Happened(
            Map.of(),
            Set.of(),
            List.of(
                new Standing(fill.id(), Mass.ofGrams(2000), Optional.of(Strength.ofPercent(1.4)))));
    Adjustment.Remedy remedy = day(plan, happened).standing().get(0);
    // 2000 × (1.40 − 1.25)/1.25 = 240 g of water
    assertEquals(240, remedy.dilution().orElseThrow().water().grams(), 1e-9);
  }

  /**
   * Whatever was measured: no batch gives more than it has, mass and solids add up, it all fits.
   */
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
    for (int trial = 0; trial < 40; trial++) {
      Map<String, WeighedBatch> weighed = new HashMap<>();
      for (Batch batch : plan.batches()) {
        if (random.nextInt(3) == 0) {
          double strength = batch.brew().strength().percent() * (0.85 + 0.3 * random.nextDouble());
          double beverage = batch.brew().beverage().grams() * (0.85 + 0.2 * random.nextDouble());
          weighed.put(
              batch.id(),
              new WeighedBatch(
                  batch.brew().dose(),
                  batch.brew().water(),
                  Optional.of(Mass.ofGrams(beverage)),
                  read(strength, strength, strength)));
        }
      }
      Set<String> gone = new HashSet<>();
      List<Standing> standing = new ArrayList<>();
      for (Fill fill : plan.fills()) {
        switch (random.nextInt(6)) {
          case 0 -> gone.add(fill.id());
          case 1 ->
              standing.add(
                  new Standing(
                      fill.id(),
                      fill.blend().liquid().times(0.5 + 0.5 * random.nextDouble()),
                      Optional.of(
                          Strength.ofPercent(
                              fill.blend().liquidStrength().percent()
                                  * (0.85 + 0.3 * random.nextDouble())))));
          default -> {}
        }
      }
      Adjustment adjustment = new Adjuster(plan).adjust(new Happened(weighed, gone, standing));
      checkConcentrate(plan, adjustment, weighed, gone, standing);
      for (CoffeeDay day : adjustment.coffees()) {
        day.fills().forEach(change -> check(plan, change));
        day.standing().forEach(AdjusterTest::check);
      }
    }
  }

  /** No batch gives more than it has: neither to what is made, nor put right, nor to be filled. */
  private static void checkConcentrate(
      Plan plan,
      Adjustment adjustment,
      Map<String, WeighedBatch> weighed,
      Set<String> gone,
      List<Standing> standing) {
    Map<String, Double> given = new HashMap<>();
    plan.batches().forEach(batch -> given.put(batch.id(), batch.brew().beverage().grams()));
    weighed.forEach((id, batch) -> given.put(id, batch.beverage().orElseThrow().grams()));
    List<Fill> taking = new ArrayList<>();
    Map<String, Double> made = new HashMap<>();
    for (Fill fill : plan.fills()) {
      if (gone.contains(fill.id())
          || standing.stream().anyMatch(each -> each.fillId().equals(fill.id()))) {
        fill.draws().forEach(d -> made.merge(d.batchId(), d.concentrate().grams(), Double::sum));
      }
    }
    for (CoffeeDay day : adjustment.coffees()) {
      for (BatchChange change : day.batches()) {
        String id = change.now().id();
        assertFalse(made.containsKey(id), () -> id + " is to be brewed, and was drawn from");
        given.put(id, change.now().brew().beverage().grams());
      }
      day.fills().forEach(change -> taking.add(change.now()));
      for (Adjustment.Remedy remedy : day.standing()) {
        remedy
            .batchId()
            .ifPresent(
                id ->
                    given.merge(
                        id, -remedy.dilution().orElseThrow().concentrate().grams(), Double::sum));
      }
    }
    // What was made by the plan may have overdrawn a batch that gave less; that is nobody's fault.
    made.forEach((id, grams) -> given.merge(id, -grams, (has, less) -> Math.max(0, has + less)));
    taking.stream()
        .flatMap(fill -> fill.draws().stream())
        .forEach(d -> given.merge(d.batchId(), -d.concentrate().grams(), Double::sum));
    given.forEach((id, left) -> assertTrue(left > -1e-6, () -> id + " gave too much: " + left));
  }

  private static void check(Adjustment.Remedy remedy) {
    remedy
        .dilution()
        .ifPresent(
            dilution -> {
              Mass all =
                  remedy
                      .holds()
                      .minus(dilution.drawOff())
                      .plus(dilution.water())
                      .plus(dilution.concentrate());
              remedy
                  .fill()
                  .dispenser()
                  .ifPresent(
                      d -> assertTrue(all.grams() <= d.capacity().litres() * 1000, d.name()));
            });
    assertEquals(
        remedy.dilution().map(d -> !d.concentrate().isZero()).orElse(false),
        remedy.batchId().isPresent() && !remedy.dilution().orElseThrow().concentrate().isZero());
  }

  private static void check(Plan plan, FillChange change) {
    Fill now = change.now();
    double drawn = 0;
    for (Fill.Draw draw : now.draws()) {
      drawn += draw.concentrate().grams();
    }
    assertEquals(now.blend().concentrate().grams(), drawn, 1e-6);
    assertTrue(
        now.blend().strength().compareTo(Strength.ofFraction(0)) >= 0
            && now.level().full().map(full -> full.fraction() <= 1 + 1e-9).orElse(true));
    double step = plan.event().equipment().scaleStep().grams();
    if (now.blend().concentrate().grams() > 20 * step && now.blend().bypass().grams() > 0) {
      assertEquals(
          change.wanted().percent(), now.blend().strength().percent(), 0.04, change::toString);
    }
  }

  /** A brewer that is full of water already makes up by a stronger concentrate. */
  @Test
  void aBrewerWithoutRoomForMoreWaterBrewsStronger() throws IOException {
    Plan plan = plan(EVENT.replace("water: 5 l", "water: 4.4 l"));
    Batch first = plan.batches().get(0);
    Batch second = plan.batches().get(1);
    // As planned each takes about 366 g and 4390 g of water. A twentieth of the beverage stayed in
    // the grounds: a = 2.5 g/g, and 4390 − 2.5·366 = 3475 g at 2.00 % are too little. With D g of
    // coffee in 4390 g of water the solids are 0.20·D: 366 g have them already, at 2.11 %.
    CoffeeDay day =
        day(plan, measured(first, first.brew().beverage().grams() * 0.95, 2.105, 2.105, 2.105));
    BatchChange next = day.batches().get(0);
    assertEquals(second.id(), next.now().id());
    assertTrue(next.now().brew().water().grams() <= 4400);
    assertTrue(next.now().brew().strength().percent() > 2.05, next::toString);
    FillChange late = day.fills().get(1);
    assertEquals(0, late.cupsShort(), late::toString);
    assertEquals(1.25, late.now().blend().strength().percent(), 0.003);
    assertEquals(Optional.empty(), next.limit());
  }

  @Test
  void whatIsMadeHasDrawnAndItsBatchIsBrewed() {
    Plan plan = plan(Path.of("samples/harvest-supper.yaml"));
    Fill first = plan.fills().get(0);
    Happened happened = new Happened(Map.of(), Set.of(first.id()), List.of());
    Plan left = new Adjuster(plan).adjust(happened).left().orElseThrow();
    Set<String> drawn = first.draws().stream().map(Fill.Draw::batchId).collect(Collectors.toSet());
    assertTrue(left.batches().stream().noneMatch(batch -> drawn.contains(batch.id())));
    for (Fill fill : left.fills()) {
      Fill was =
          plan.fills().stream().filter(f -> f.id().equals(fill.id())).findFirst().orElseThrow();
      // Where two batches share a fill, each draw is a whole step now: one step less, or more.
      assertEquals(
          was.blend().concentrate().grams(), fill.blend().concentrate().grams(), 5 + 1e-9, was::id);
      assertEquals(was.blend().ice().grams(), fill.blend().ice().grams(), 1e-6);
    }
  }

  @Test
  void whatPutsRightIsTakenFromTheBatch() {
    Plan plan = plan(Path.of("samples/harvest-supper.yaml"));
    Fill first = plan.fills().get(0);
    String batch = first.draws().get(0).batchId();
    Standing weak =
        new Standing(first.id(), Mass.ofGrams(4000), Optional.of(Strength.ofPercent(1.35)));
    CoffeeDay day = day(plan, new Happened(Map.of(), Set.of(), List.of(weak)));
    Adjustment.Remedy remedy = day.standing().get(0);
    // x = 4000 × (1.45 − 1.35) / (1.6412 − 1.45) = 2092 g is more than what the first batch has
    // left, 5919 − 4770 = 1149 g
    assertTrue(remedy.dilution().isEmpty(), remedy::toString);
    Standing nearly =
        new Standing(first.id(), Mass.ofGrams(4000), Optional.of(Strength.ofPercent(1.42)));
    CoffeeDay other = day(plan, new Happened(Map.of(), Set.of(), List.of(nearly)));
    Adjustment.Remedy small = other.standing().get(0);
    // x = 4000 × 0.03 / (1.6412 − 1.45) = 628 g
    assertEquals(628, small.dilution().orElseThrow().concentrate().grams(), 5);
    assertEquals(Optional.of(batch), small.batchId());
    double leftForOthers =
        other.fills().stream()
            .flatMap(change -> change.now().draws().stream())
            .filter(draw -> draw.batchId().equals(batch))
            .mapToDouble(draw -> draw.concentrate().grams())
            .sum();
    assertTrue(leftForOthers <= 1149 - 628 + 5, "left: " + leftForOthers);
  }

  @Test
  void whatIsLeftHasTheRestAndCanBePrinted() throws IOException {
    Plan plan = plan(EVENT);
    Batch first = plan.batches().get(0);
    Happened happened =
        new Happened(
            measured(first, first.brew().beverage().grams(), 2.1, 2.1, 2.1).batches(),
            Set.of(plan.fills().get(0).id()),
            List.of());
    Plan left = new Adjuster(plan).adjust(happened).left().orElseThrow();
    assertEquals(plan.batches().size() - 1, left.batches().size());
    assertEquals(plan.fills().size() - 1, left.fills().size());
    Run run = left.run().orElseThrow();
    assertTrue(run.actions().stream().noneMatch(action -> action.what().equals(first.id())));
    // The one brewer has brewed, so it is on.
    assertTrue(run.actions().stream().noneMatch(action -> action.kind() == ActionKind.SWITCH_ON));
    assertEquals(left.batches().get(0).brew().water(), run.water().brewing());
    assertEquals(left.fills().get(0).blend().bypass(), run.water().bypass());
    assertEquals(2, run.water().preheating().litres(), 1e-9); // a quarter of one urn of 8 l
  }

  @Test
  void aGroupHasTheCupsThatAreStillToServe() {
    Plan plan = plan(Path.of("samples/harvest-supper.yaml"));
    Fill first = plan.fills().get(0);
    GroupPlan group = plan.groups().get(0);
    assertEquals(first.groupName(), group.group().name());
    assertEquals(2, group.fills().size());
    assertEquals(48, group.demand().cups());
    Happened happened = new Happened(Map.of(), Set.of(first.id()), List.of());
    Plan left = new Adjuster(plan).adjust(happened).left().orElseThrow();
    assertEquals(24, left.groups().get(0).demand().cups());
    assertEquals(plan.groups().get(1).demand(), left.groups().get(1).demand());
  }

  @Test
  void everyRowOfTheCorrectionsGivesWhatItsReadingSays() {
    Plan plan = plan(Path.of("samples/harvest-supper.yaml"));
    Map<String, WeighedBatch> brewed = new HashMap<>();
    brewed.putAll(measured(plan.batches().get(0), 5900, 1.70, 1.70, 1.70).batches());
    brewed.putAll(measured(plan.batches().get(1), 12600, 1.60, 1.60, 1.60).batches());
    Plan left =
        new Adjuster(plan).adjust(new Happened(brewed, Set.of(), List.of())).left().orElseThrow();
    for (CoffeePlan coffee : left.coffees()) {
      for (OnTheDay.Correction row : coffee.onTheDay().corrections()) {
        for (OnTheDay.Pour pour : row.pours()) {
          double liquid = pour.concentrate().plus(pour.bypass()).grams();
          double made = pour.concentrate().grams() * row.reading().percent() / liquid;
          boolean iced = coffee.groups().get(row.pours().indexOf(pour)).group().ice().isPresent();
          // Readings are told to a hundredth, so half of one may be between.
          assertTrue(
              iced || Math.abs(made - pour.strength().percent()) < 0.005,
              () -> coffee.coffee().key() + " " + row + ": " + made);
        }
      }
    }
  }
}
