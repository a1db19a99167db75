package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Estimate;
import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.Equipment;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Provision;
import dev.urnwright.event.Uncertainties;
import dev.urnwright.event.Uncertainties.Scales;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CertaintyTest {
  private static final Uncertainties EXACT =
      new Uncertainties(
          new Scales(Mass.ZERO, Mass.ZERO),
          Strength.ofPercent(0),
          Share.ofPercent(0),
          Absorption.ofGramsPerGram(0),
          Extraction.ofPercent(0),
          Share.ofPercent(0));

  private static final GuestGroup EVERYBODY = Events.group("Everybody", 100, 200, 1.25);
  private static final GuestGroup STRONG = Events.group("Strong", 20, 200, 1.45);
  private static final GuestGroup ICED = Events.iced(Events.group("Iced", 30, 300, 1.2), 25, 5);

  @Test
  void whatIsKnownExactlyHasNoWidth() {
    Plan plan = plan(EXACT, Events.REFERENCE, EVERYBODY, STRONG, ICED);
    Certainty certainty = plan.certainty();
    for (GroupPlan group : plan.groups()) {
      assertEquals(group.strengthReached(), certainty.of(group).low());
      assertEquals(group.strengthReached(), certainty.of(group).high());
    }
    assertEquals(0, certainty.of(plan.batches().get(0)).uncertainty());
    assertEquals(List.of(), certainty.of(plan.coffees().get(0)).entries());
    assertEquals("", certainty.of(plan.coffees().get(0)).advice());
    assertEquals(1, certainty.chanceInWindow(plan.groups().get(0)));
  }

  /**
   * By hand, with nothing unsure but the refractometer: T = T0·831/651 at 1:13, and the cup is as
   * many times T as it is weaker, so u = 0.03 % · t/T0 = 0.03 % · 1.25/1.40 = 0.0268 %.
   */
  @Test
  void anErrorOfTheReadingGoesOnInProportion() {
    Plan plan =
        plan(
            new Uncertainties(
                EXACT.scales(),
                Strength.ofPercent(0.03),
                EXACT.brewWater(),
                EXACT.absorption(),
                EXACT.extraction(),
                EXACT.cup()),
            Events.REFERENCE,
            EVERYBODY);
    Estimate cup = plan.certainty().of(plan.groups().get(0));
    // Rounding to the gram moves the strength by less than a hundred-thousandth.
    assertEquals(0.000267857, cup.uncertainty(), 1e-8);
    StrengthAccount account = plan.certainty().of(plan.coffees().get(0));
    assertEquals(1, account.entries().size());
    assertEquals(100, account.entries().get(0).share().percent(), 1e-9);
    assertEquals(0, account.entries().get(0).without().uncertainty());
    assertEquals(Unit.PERCENT, account.entries().get(0).source().unit());
    assertEquals(0.03, account.entries().get(0).amount(), 1e-12);
    // Read on the day with the same refractometer: 0.03 % · t/T = 0.03 % · 1.25/1.787.
    assertEquals(0.0003 * 1.25 / 1.78710, account.afterReading().uncertainty(), 1e-8);
  }

  /** The group's strength is in the middle, so half the chance of the window's edge is above it. */
  @Test
  void aCupWantedAtTheWindowsEdgeIsAsLikelyOutsideOfIt() {
    Plan plan = plan(Uncertainties.usual(Mass.ofGrams(1)), Events.REFERENCE, EVERYBODY, STRONG);
    Certainty certainty = plan.certainty();
    assertEquals(0.5, certainty.chanceInWindow(plan.groups().get(1)), 0.01);
    assertTrue(certainty.chanceInWindow(plan.groups().get(0)) > 0.95);
  }

  @Test
  void theBudgetsPartsAddUpAndTheLargestIsNamedFirst() {
    Plan plan = plan(Uncertainties.usual(Mass.ofGrams(1)), Events.REFERENCE, EVERYBODY, STRONG);
    StrengthAccount account = plan.certainty().of(plan.coffees().get(0));
    assertEquals("Everybody", account.group().group().name());
    assertEquals(100, account.entries().stream().mapToDouble(e -> e.share().percent()).sum(), 1e-9);
    double squares = 0;
    double before = 100;
    for (StrengthAccount.Entry entry : account.entries()) {
      squares += Math.pow(entry.contribution().fraction(), 2);
      assertTrue(entry.share().percent() <= before);
      before = entry.share().percent();
      assertTrue(entry.without().uncertainty() < account.cup().uncertainty());
    }
    assertEquals(account.cup().uncertainty(), Math.sqrt(squares), 1e-12);
    assertTrue(account.advice().contains(account.entries().get(0).source().words()));
  }

  /** Whoever drinks the most is told of, wherever they stand in the list. */
  @Test
  void theAccountIsTheLargestGroups() {
    Plan plan = plan(Uncertainties.usual(Mass.ofGrams(1)), Events.REFERENCE, STRONG, EVERYBODY);
    StrengthAccount account = plan.certainty().of(plan.coffees().get(0));
    assertEquals("Everybody", account.group().group().name());
    assertEquals(plan.certainty().of(plan.batches().get(0)), account.concentrate());
  }

  /**
   * With a scale alone unsure, by 2 g, {@code T = E·D/(W − a·D)} gives {@code u(T) = T·W/(W −
   * a·D)·2/D}: the smaller the batch, the less sure it is. A cup of {@code T·c/(c + b)}, of {@code
   * c} and {@code b} grams to weigh in, adds {@code T·b/(c + b)²·2} and {@code T·c/(c + b)²·2}. The
   * fill draws on three batches, and is as sure as one of them.
   */
  @Test
  void aFillIsAsSureAsItsSmallestBatch() {
    Uncertainties unsure =
        new Uncertainties(
            new Scales(Mass.ofGrams(2), Mass.ZERO),
            EXACT.refractometer(),
            EXACT.brewWater(),
            EXACT.absorption(),
            EXACT.extraction(),
            EXACT.cup());
    Event event =
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(Events.coffee("house", Events.ratio(13))),
            List.of(EVERYBODY),
            Events.equipment(1, List.of(Events.brewer("Tall", 3, 100, 500, 30)), List.of()));
    Plan plan = new Planner().plan(with(event, unsure)).value().orElseThrow();
    assertEquals(3, plan.batches().size());
    Certainty certainty = plan.certainty();
    double smallest = 0;
    for (Batch batch : plan.batches()) {
      double dose = batch.brew().dose().grams();
      double strength = batch.brew().strength().fraction();
      double water = batch.brew().water().grams();
      double expected = strength * water / (water - 2.15 * dose) * 2 / dose;
      assertEquals(expected, certainty.of(batch).uncertainty(), 1e-8);
      assertEquals(batch.brew().strength(), certainty.of(batch).strength());
      smallest = Math.max(smallest, expected);
    }
    Fill fill = plan.fills().get(0);
    double c = fill.blend().concentrate().grams();
    double b = fill.blend().bypass().grams();
    double t = fill.blend().concentrateStrength().fraction();
    double all = Math.pow(c + b, 2);
    double cup = Math.hypot(smallest * c / (c + b), Math.hypot(t * b / all * 2, t * c / all * 2));
    assertEquals(cup, certainty.of(fill).uncertainty(), 1e-8);
    assertEquals(fill.blend().strength(), certainty.of(fill).strength());
    StrengthAccount account = certainty.of(plan.coffees().get(0));
    assertEquals(Unit.GRAM, account.entries().get(0).source().unit());
    assertEquals(2, account.entries().get(0).amount(), 1e-12);
    // a reading of the batches, here an exact one, leaves what is weighed after it
    assertEquals(
        Math.hypot(t * b / all * 2, t * c / all * 2), account.afterReading().uncertainty(), 1e-8);
  }

  @Test
  void whatIsOfAnotherPlanIsRefused() {
    Plan plan = plan(EXACT, Events.REFERENCE, EVERYBODY);
    Certainty certainty = plan.certainty();
    GroupPlan other = plan(EXACT, Events.REFERENCE, STRONG).groups().get(0);
    assertEquals(
        "not of this plan: GroupKey[group=Strong, coffee=house]",
        assertThrows(IllegalArgumentException.class, () -> certainty.of(other)).getMessage());
  }

  /** The concentrate is brewed far from the reference, so what the grounds keep matters. */
  @Test
  void weighingTheBeverageIsWorthWhatTheBudgetSays() {
    ReferenceBrew unweighed =
        new ReferenceBrew(
            Mass.ofGrams(60), Mass.ofGrams(960), Optional.empty(), Strength.ofPercent(1.40));
    Uncertainties usual = Uncertainties.usual(Mass.ofGrams(1));
    GuestGroup group = Events.group("Everybody", 100, 200, 1.25);
    Plan before = plan(8, usual, unweighed, group);
    // What it would have weighed, had the grounds kept the 2.1 g/g that are assumed.
    ReferenceBrew asAssumed =
        new ReferenceBrew(
            Mass.ofGrams(60),
            Mass.ofGrams(960),
            Optional.of(Mass.ofGrams(834)),
            Strength.ofPercent(1.40));
    Plan after = plan(8, usual, asAssumed, group);
    StrengthAccount account = before.certainty().of(before.coffees().get(0));
    StrengthAccount.Entry assumed =
        account.entries().stream()
            .filter(entry -> entry.source() == Source.ABSORPTION_ASSUMED)
            .findFirst()
            .orElseThrow();
    StrengthAccount weighed = after.certainty().of(after.coffees().get(0));
    assertTrue(weighed.cup().uncertainty() < account.cup().uncertainty());
    // Not quite all: the beverage was weighed, like the dose, to 0.4 g.
    assertEquals(assumed.without().uncertainty(), weighed.cup().uncertainty(), 5e-6);
    assertFalse(weighed.entries().stream().anyMatch(e -> e.source() == Source.ABSORPTION_ASSUMED));
  }

  @Test
  void whereNothingWasMeasuredTheAssumedExtractionIsNamedFirst() {
    Coffee coffee =
        Events.coffee(
            "house",
            Events.ratio(13),
            new BrewProfile(
                Method.PERCOLATION,
                Optional.empty(),
                Optional.of(Extraction.ofPercent(20)),
                Optional.empty(),
                List.of(),
                Share.ofPercent(0)));
    Plan plan = plan(coffee, Uncertainties.usual(Mass.ofGrams(1)), EVERYBODY);
    StrengthAccount account = plan.certainty().of(plan.coffees().get(0));
    assertEquals(Source.EXTRACTION_ASSUMED, account.entries().get(0).source());
    assertTrue(account.advice().contains("Weighing and reading one batch would narrow it"));
    assertFalse(account.entries().stream().anyMatch(e -> e.source() == Source.REFRACTOMETER));
  }

  /**
   * Whatever is made surer, no cup becomes less sure; nor does it ever become surer than before.
   */
  @Test
  void nothingMadeSurerMakesACupLessSure() {
    int planned = 0;
    for (long seed = 0; seed < RandomEvents.count(40); seed++) {
      Event event = RandomEvents.sane(seed);
      Optional<Plan> plan = new Planner().plan(event).value();
      if (plan.isEmpty()) {
        continue;
      }
      planned++;
      Certainty asIs = plan.get().certainty();
      for (Uncertainties surer : halves(event.equipment().uncertainties())) {
        Plan with =
            new Plan(
                with(event, surer),
                plan.get().coffees(),
                plan.get().run(),
                plan.get().shopping(),
                List.of(),
                List.of());
        Certainty certainty = with.certainty();
        for (GroupPlan group : with.groups()) {
          double was = asIs.of(group).uncertainty();
          double is = certainty.of(group).uncertainty();
          assertTrue(is <= was * (1 + 1e-6), "seed " + seed + ": " + is + " of " + was);
          assertTrue(is >= was / 2 * (1 - 1e-6), "seed " + seed + ": " + is + " of " + was);
        }
      }
    }
    assertTrue(planned > RandomEvents.count(40) / 3, planned + " planned");
  }

  /** Each uncertainty halved, the others as they are. */
  private static List<Uncertainties> halves(Uncertainties u) {
    Scales scales = new Scales(u.scales().kitchen().times(0.5), u.scales().reference());
    Scales reference = new Scales(u.scales().kitchen(), u.scales().reference().times(0.5));
    Strength read = Strength.ofFraction(u.refractometer().fraction() / 2);
    Share water = Share.ofFraction(u.brewWater().fraction() / 2);
    Absorption kept = Absorption.ofGramsPerGram(u.absorption().gramsPerGram() / 2);
    Extraction given = Extraction.ofFraction(u.extraction().fraction() / 2);
    Share cup = Share.ofFraction(u.cup().fraction() / 2);
    return List.of(
        new Uncertainties(
            scales, u.refractometer(), u.brewWater(), u.absorption(), u.extraction(), u.cup()),
        new Uncertainties(
            reference, u.refractometer(), u.brewWater(), u.absorption(), u.extraction(), u.cup()),
        new Uncertainties(u.scales(), read, u.brewWater(), u.absorption(), u.extraction(), u.cup()),
        new Uncertainties(
            u.scales(), u.refractometer(), water, u.absorption(), u.extraction(), u.cup()),
        new Uncertainties(
            u.scales(), u.refractometer(), u.brewWater(), kept, u.extraction(), u.cup()),
        new Uncertainties(
            u.scales(), u.refractometer(), u.brewWater(), u.absorption(), given, u.cup()),
        new Uncertainties(
            u.scales(), u.refractometer(), u.brewWater(), u.absorption(), u.extraction(), cup));
  }

  private static Plan plan(Uncertainties u, ReferenceBrew reference, GuestGroup... groups) {
    return plan(13, u, reference, groups);
  }

  private static Plan plan(
      double ratio, Uncertainties u, ReferenceBrew reference, GuestGroup... groups) {
    return plan(
        Events.coffee("house", Events.ratio(ratio), Events.profile(Method.PERCOLATION, reference)),
        u,
        groups);
  }

  private static Plan plan(Coffee coffee, Uncertainties u, GuestGroup... groups) {
    Event event =
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(coffee),
            List.of(groups),
            Events.equipment(1, List.of(), List.of()));
    return new Planner().plan(with(event, u)).value().orElseThrow();
  }

  private static Event with(Event event, Uncertainties u) {
    Equipment there = event.equipment();
    return new Event(
        event.name(),
        event.date(),
        event.time(),
        event.print(),
        event.serving(),
        event.coffees(),
        event.groups(),
        new Equipment(
            there.brewers(),
            there.circuits(),
            there.dispensers(),
            there.scaleStep(),
            there.jugMark(),
            u),
        event.kitchen(),
        event.purchases(),
        event.defaults(),
        event.location());
  }
}
