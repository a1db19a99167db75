package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What searching costs, by hand; and who goes without, against trying all sets of orders. */
class EffortTest {
  @Test
  void anEffortIsSpentDownToNothing() {
    Effort effort = Effort.of(5);
    effort.spend(4);
    assertFalse(effort.isSpent());
    effort.spend(1);
    assertTrue(effort.isSpent());
    effort.spend(7);
    assertTrue(effort.isSpent());
    assertThrows(IllegalArgumentException.class, () -> Effort.of(0));
    assertFalse(Effort.unlimited().isSpent());
  }

  /**
   * Three batches of one coffee, each counted once for itself and once for what it takes; three
   * brewers of two kinds, and two numbers for the leg: 6 · 2 · (3 + 2) = 60 for each state.
   */
  @Test
  void aSearchKeepsSoManyStatesAsItCanAfford() {
    List<Kind> kinds = List.of(new Kind(2, 5, 1, 0, -1), new Kind(1, 5, 1, 0, -1));
    List<Order> orders = List.of(new Order("F", 150, 0, 60));
    List<DoseRange> ranges = List.of(RunInstances.range(1, 10), RunInstances.range(1, 20));
    CoffeeOrders coffee = new CoffeeOrders(orders, 10, ranges);
    RunProblem problem = new RunProblem(List.of(coffee), kinds, List.of(), 0);
    OrderBook.Run run = new OrderBook.Run(orders);
    Leg sized = new SizedLeg(0, run, Sizing.even(15, 3, ranges).orElseThrow(), 10);
    assertEquals(50_000, Effort.width(problem, List.of(sized), 1_000_000));
    assertEquals(70, Effort.width(problem, List.of(sized), 70));
    // one order of 150 g, at least 0.75 of a batch of kind 1: 1.75 · 2 · 5 = 17.5
    Leg full = FullLeg.of(0, run, coffee, FullLeg.Leeway.NONE);
    assertEquals(171_428, Effort.width(problem, List.of(full), 1_000_000));
    // ever so many legs
    assertEquals(1, Effort.width(problem, Collections.nCopies(1000, sized), 70));
    assertEquals(1_000_000, Effort.width(problem, List.of(), 1_000_000));
  }

  @Test
  void aLookThatCostsTooMuchFindsNothing() {
    int found = 0;
    for (int seed = 1; seed <= 100; seed++) {
      RunProblem problem = TinyRuns.open(seed);
      Effort much = Effort.of(1_000_000);
      Optional<RunSolution> look = RunScheduler.look(problem, much);
      assertFalse(much.isSpent());
      Effort little = Effort.of(1);
      assertTrue(RunScheduler.look(problem, little).isEmpty(), "seed " + seed);
      assertTrue(look.isEmpty() || little.isSpent(), "seed " + seed);
      found += look.isPresent() ? 1 : 0;
    }
    assertTrue(found > 50, "too few found: " + found);
  }

  /** One brewer is done once by minute 10: the largest order is served, the others go without. */
  @Test
  void theLeastGoesWithout() {
    List<Order> orders =
        List.of(new Order("a", 30, 9, 10), new Order("b", 40, 8, 9), new Order("c", 20, 9, 10));
    CoffeeOrders coffee = new CoffeeOrders(orders, 10, List.of(RunInstances.range(1, 5)));
    List<Kind> kinds = List.of(new Kind(1, 5, 1, 0, -1));
    RunProblem problem = new RunProblem(List.of(coffee), kinds, List.of(), 0);
    // a and c together are just one batch, ready at 9 or 10, so b's 40 g are less than their 50
    assertEquals(List.of(List.of(orders.get(1))), Rationing.of(problem));
    assertEquals(List.of(List.of()), Rationing.of(without(problem, List.of(orders.get(1)))));
  }

  @Test
  void whoIsNotLeftOutIsServed() {
    int rationed = 0;
    double least = 0;
    double leftOutInAll = 0;
    for (int seed = 1; seed <= 150; seed++) {
      RunProblem problem = seed % 2 == 0 ? TinyRuns.open(seed) : TinyRuns.tight(seed);
      List<Order> leftOut = Rationing.of(problem).stream().flatMap(List::stream).toList();
      if (RunScheduler.solve(problem).isPresent()) {
        assertEquals(List.of(), leftOut, "seed " + seed);
      } else {
        RunProblem kept = without(problem, leftOut);
        assertTrue(isServed(kept), "seed " + seed);
        double without = leastWithout(problem);
        assertTrue(grams(leftOut) >= without, "seed " + seed);
        least += without;
        leftOutInAll += grams(leftOut);
        rationed++;
      }
    }
    assertTrue(rationed > 15, "too few that can't be served: " + rationed);
    assertTrue(leftOutInAll <= 1.1 * least, leftOutInAll + " g, and the least is " + least);
  }

  private static double grams(List<Order> orders) {
    return orders.stream().mapToDouble(Order::grams).sum();
  }

  private static boolean isServed(RunProblem problem) {
    return problem.coffees().stream().allMatch(coffee -> coffee.orders().isEmpty())
        || RunScheduler.solve(problem).isPresent();
  }

  private static double leastWithout(RunProblem problem) {
    List<Order> all = problem.coffees().stream().flatMap(c -> c.orders().stream()).toList();
    double least = grams(all);
    for (int set = 1; set < 1 << all.size(); set++) {
      List<Order> out = new ArrayList<>();
      for (int i = 0; i < all.size(); i++) {
        if ((set >> i) % 2 == 1) {
          out.add(all.get(i));
        }
      }
      if (grams(out) < least && isServed(without(problem, out))) {
        least = grams(out);
      }
    }
    return least;
  }

  /** Without just these, not without others that look like them. */
  @SuppressWarnings("ReferenceEquality")
  private static RunProblem without(RunProblem problem, List<Order> out) {
    return new RunProblem(
        problem.coffees().stream()
            .map(
                c ->
                    new CoffeeOrders(
                        c.orders().stream()
                            .filter(o -> out.stream().noneMatch(x -> x == o))
                            .toList(),
                        c.gramsPerStep(),
                        c.doses()))
            .toList(),
        problem.kinds(),
        problem.circuitWatts(),
        problem.earliestStart());
  }
}
