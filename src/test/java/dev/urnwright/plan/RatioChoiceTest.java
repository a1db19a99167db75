package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.ConcentrateWish;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Provision;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Which ratio the concentrate is brewed at. The reference is at 1:16, of 1.40 %. */
class RatioChoiceTest {
  /**
   * Against brute force: each tenth of the range, both its ends and the reference are planned as if
   * asked for; of those that can be, the fewest batches win, then the nearest to the reference.
   */
  @Test
  void aRangeTakesTheFewestBatchesAndThenTheNearestToTheReference() {
    SplittableRandom random = new SplittableRandom(41);
    int trials = RandomEvents.count(120);
    int chosen = 0;
    int away = 0;
    for (int trial = 0; trial < trials; trial++) {
      double from = Math.round(random.nextDouble(8, 13) * 100) / 100.0;
      double to = from + Math.round(random.nextDouble(0, 5) * 100) / 100.0;
      List<GuestGroup> groups = new ArrayList<>();
      for (int i = random.nextInt(1, 4); i > 0; i--) {
        groups.add(
            Events.group("Group " + i, random.nextInt(5, 200), 240, random.nextDouble(1.1, 1.8)));
      }
      double most = random.nextDouble(200, 1500);
      Brewer brewer =
          Events.brewer("Brewer", 2, most / 5, most, most * random.nextDouble(7, 16) / 1000);
      double step = new double[] {1, 5, 25}[random.nextInt(3)];
      Event event = event(range(from, to), groups, brewer, step);
      String instance = "trial " + trial;
      Optional<BrewRatio> best = bruteForce(from, to, groups, brewer, step);
      Optional<Plan> plan = new Planner().plan(event).value();
      assertEquals(best.isPresent(), plan.isPresent(), instance);
      if (best.isPresent()) {
        chosen++;
        double ratio = ratio(plan.get());
        assertEquals(best.get().gramsPerGram(), ratio, 1e-9, instance);
        if (ratio < Math.min(to, 16) - 1e-9) {
          away++;
        }
      }
    }
    assertTrue(
        chosen > trials / 3 && away >= trials / 10,
        chosen + " chosen, " + away + " not the nearest");
  }

  private static Optional<BrewRatio> bruteForce(
      double from, double to, List<GuestGroup> groups, Brewer brewer, double step) {
    List<Double> ratios = new ArrayList<>(List.of(from, to));
    if (from <= 16 && to >= 16) {
      ratios.add(16.0);
    }
    for (int tenth = 1; tenth < 1000; tenth++) {
      if (tenth / 10.0 >= from && tenth / 10.0 <= to) {
        ratios.add(tenth / 10.0);
      }
    }
    double best = Double.NaN;
    int fewest = Integer.MAX_VALUE;
    for (double ratio : ratios) {
      Optional<Plan> plan =
          new Planner().plan(event(Events.ratio(ratio), groups, brewer, step)).value();
      if (plan.isPresent()) {
        int batches = plan.get().batches().size();
        boolean nearer = Math.abs(ratio - 16) < Math.abs(best - 16) - 1e-12;
        if (batches < fewest || (batches == fewest && nearer)) {
          fewest = batches;
          best = ratio;
        }
      }
    }
    return fewest == Integer.MAX_VALUE
        ? Optional.empty()
        : Optional.of(BrewRatio.ofGramsPerGram(best));
  }

  @Test
  void leftOutItIsTheReferenceWhenThatIsStrongEnough() {
    assertEquals(16, ratio(plan(new ConcentrateWish.AsReference(), 1.40)), 1e-12);
  }

  @Test
  void orTheTenthThatJustServesTheStrongest() {
    // 19.39 % / 1.5 % + 2.15 g/g = 12.927 + 2.15 = 15.077
    Plan plan = plan(new ConcentrateWish.AsReference(), 1.50);
    assertEquals(15.0, ratio(plan), 1e-12);
    assertTrue(plan.notes().stream().anyMatch(note -> note.code().equals("ratio-default")));
  }

  /**
   * Without brewers each ratio takes one batch, so the nearest to the reference's 1:16 wins: itself
   * when it is in the range, its ends included; else the nearer end, on either side, if that is no
   * tenth either. It is told.
   */
  @Test
  void theNearestToTheReferenceWins() {
    assertEquals(16, ratio(plan(range(12, 18), 1.2)), 1e-12);
    assertEquals(16, ratio(plan(range(16, 18), 1.2)), 1e-12);
    assertEquals(16, ratio(plan(range(12, 16), 1.2)), 1e-12);
    assertEquals(14.05, ratio(plan(range(12, 14.05), 1.2)), 1e-12);
    assertEquals(16.33, ratio(plan(range(16.33, 17), 1.1)), 1e-12);
    Plan plan = plan(range(12, 18), 1.2);
    assertTrue(plan.notes().stream().anyMatch(note -> note.code().equals("ratio-chosen")));
    // too weak for 1.5 % is all above 19.39 / 1.5 + 2.15 = 15.077, so the last tenth below it
    assertEquals(15.0, ratio(plan(range(12, 18), 1.5)), 1e-12);
    // and a range from 15.03, of which only its end is strong enough
    assertEquals(15.03, ratio(plan(range(15.03, 18), 1.5)), 1e-12);
  }

  /** 961 g on 60 g are 1:16.0167, which is no tenth, and the reference all the same. */
  @Test
  void aReferenceBetweenTenthsIsTakenAsItIs() {
    ReferenceBrew odd =
        new ReferenceBrew(
            Mass.ofGrams(60),
            Mass.ofGrams(961),
            Optional.of(Mass.ofGrams(832)),
            Strength.ofPercent(1.40));
    Coffee coffee = Events.coffee("house", range(12, 18), Events.profile(Method.PERCOLATION, odd));
    Event event =
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(coffee),
            List.of(Events.group("Crew", 40, 240, 1.2)),
            Events.equipment(1, List.of(), List.of()));
    assertEquals(961.0 / 60, ratio(new Planner().plan(event).value().orElseThrow()), 1e-12);
  }

  /** Nothing brews below 1:2.65 and nothing is as strong as asked: refused, and no plan is made. */
  @Test
  void aRangeOfNothingIsRefused() {
    assertTrue(refused(range(1.5, 2.5), 1.2));
    assertTrue(refused(range(15.1, 18), 1.5));
    assertTrue(!refused(range(1.5, 3), 1.2));
  }

  private static boolean refused(ConcentrateWish wish, double percent) {
    return new Planner()
        .plan(Events.simple(wish, Events.group("Crew", 40, 240, percent)))
        .value()
        .isEmpty();
  }

  @Test
  void aStrengthIsBrewedAsStrong() {
    // 19.39 / 1.75 + 2.15 = 13.230
    Plan plan = plan(new ConcentrateWish.ByStrength(Strength.ofPercent(1.75)), 1.3);
    assertEquals(1.75, plan.coffees().get(0).needed().brew().strength().percent(), 1e-9);
    assertEquals(13.23, ratio(plan), 0.005);
  }

  @Test
  void theConcentrateItselfCanBeServed() {
    Plan plan = plan(new ConcentrateWish.ByStrength(Strength.ofPercent(1.75)), 1.75);
    GroupPlan group = plan.groups().get(0);
    assertEquals(0, group.needed().bypass().grams(), 1e-6);
    assertEquals(0, group.fills().get(0).blend().bypass().grams(), 1e-6);
  }

  private static Plan plan(ConcentrateWish wish, double percent) {
    return new Planner()
        .plan(Events.simple(wish, Events.group("Crew", 40, 240, percent)))
        .value()
        .orElseThrow();
  }

  private static Event event(
      ConcentrateWish wish, List<GuestGroup> groups, Brewer brewer, double step) {
    Coffee coffee = Events.coffee("house", wish);
    return Events.event(
        Events.serving(new Provision.Mean(), 2),
        List.of(coffee),
        groups,
        Events.equipment(step, List.of(brewer), List.of(Events.dispenser("Airpot", 99, 2.2, 40))));
  }

  private static ConcentrateWish range(double from, double to) {
    return new ConcentrateWish.Between(
        BrewRatio.ofGramsPerGram(from), BrewRatio.ofGramsPerGram(to));
  }

  private static double ratio(Plan plan) {
    return plan.coffees().get(0).needed().brew().ratio().gramsPerGram();
  }
}
