package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who goes without, and what a first look sees. */
class RationingTest {
  @Test
  void nobodyGoesWithoutWhereAllCanBeServed() {
    int served = 0;
    for (int seed = 1; seed <= 1500; seed++) {
      RunProblem problem = RunInstances.small(seed);
      if (RunScheduler.solve(problem).isPresent()) {
        assertEquals(0, grams(Rationing.of(problem)), "seed " + seed);
        served++;
      }
    }
    assertTrue(served > 500, "too few that can be served: " + served);
  }

  /** And where not all can be served, the others can, and little more could be. */
  @Test
  void whoIsNotLeftOutIsServed() {
    int rationed = 0;
    double least = 0;
    double leftOutInAll = 0;
    for (int seed = 1; seed <= 1500; seed++) {
      RunProblem problem = RunInstances.small(seed);
      if (RunScheduler.solve(problem).isEmpty()) {
        List<List<Order>> leftOut = Rationing.of(problem);
        assertTrue(grams(leftOut) > 0, "seed " + seed);
        RunProblem kept = without(problem, leftOut);
        if (kept.coffees().stream().anyMatch(coffee -> !coffee.orders().isEmpty())) {
          RunSolution solution = RunScheduler.solve(kept).orElseThrow();
          assertEquals(List.of(), RunAudit.faults(kept, solution), "seed " + seed);
        }
        rationed++;
        least += leastWithout(problem);
        leftOutInAll += grams(leftOut);
      }
    }
    assertTrue(rationed > 100, "too few that can't be served: " + rationed);
    assertTrue(leftOutInAll <= 1.02 * least, leftOutInAll + " g, and the least is " + least);
  }

  @Test
  void whatALookSeesIsThere() {
    int seen = 0;
    int solved = 0;
    for (int seed = 1; seed <= 1500; seed++) {
      RunProblem problem = RunInstances.small(seed);
      Optional<RunSolution> look = RunScheduler.look(problem, Effort.unlimited());
      look.ifPresent(run -> assertEquals(List.of(), RunAudit.faults(problem, run)));
      boolean can = RunScheduler.solve(problem).isPresent();
      assertTrue(can || look.isEmpty(), "seed " + seed);
      solved += can ? 1 : 0;
      seen += look.isPresent() ? 1 : 0;
    }
    assertEquals(solved, seen, "of small problems a look sees all");
  }

  @Test
  void aLookEndsWhenItsEffortIsSpent() {
    for (RunInstances.Named day : RunInstances.days(1)) {
      Effort much = Effort.of(Long.MAX_VALUE);
      assertTrue(RunScheduler.look(day.problem(), much).isPresent(), day.name());
      assertFalse(much.isSpent());
      Effort little = Effort.of(50);
      assertTrue(RunScheduler.look(day.problem(), little).isEmpty(), day.name());
      assertTrue(little.isSpent(), day.name());
    }
  }

  /** Twelve coffees at once on four kinds of brewers, far too much: looks stay narrow. */
  @Test
  void aLookAtACrowdIsAFewSearches() {
    List<CoffeeOrders> coffees = new ArrayList<>();
    List<RunProblem.Kind> kinds = new ArrayList<>();
    for (int kind = 0; kind < 4; kind++) {
      kinds.add(new RunProblem.Kind(3, 10 + kind, 2, 0, -1));
    }
    for (int coffee = 0; coffee < 12; coffee++) {
      List<Order> orders = new ArrayList<>();
      for (int order = 0; order < 50; order++) {
        orders.add(new Order(coffee + "/" + order, 2000, 430 + order, 480 + order));
      }
      List<DoseRange> doses = kinds.stream().map(kind -> RunInstances.range(10, 96)).toList();
      coffees.add(new CoffeeOrders(orders, 54, doses));
    }
    RunProblem problem = new RunProblem(coffees, kinds, List.of(), 0);
    Effort effort = Effort.of(20_000_000); // three searches of some 3 million, or a little over
    assertTrue(RunScheduler.look(problem, effort).isEmpty());
    assertFalse(effort.isSpent());
    // 600 orders of 2 kg; within 99 min each of 12 brewers has time for 9 batches of 5.2 kg at most
    assertTrue(grams(Rationing.of(problem)) >= 600 * 2000 - 12 * 9 * 96 * 54);
  }

  /** Grams of the least set of orders without which the others can be served, by trying all. */
  private static double leastWithout(RunProblem problem) {
    List<Order> all = new ArrayList<>();
    problem.coffees().forEach(coffee -> all.addAll(coffee.orders()));
    double least = Double.POSITIVE_INFINITY;
    for (int set = 1; set < 1 << all.size(); set++) {
      List<List<Order>> leftOut = new ArrayList<>();
      for (CoffeeOrders coffee : problem.coffees()) {
        List<Order> these = new ArrayList<>();
        for (Order order : coffee.orders()) {
          if ((set & (1 << indexOf(all, order))) != 0) {
            these.add(order);
          }
        }
        leftOut.add(these);
      }
      if (grams(leftOut) < least) {
        RunProblem kept = without(problem, leftOut);
        boolean none = kept.coffees().stream().allMatch(coffee -> coffee.orders().isEmpty());
        least = none || RunScheduler.solve(kept).isPresent() ? grams(leftOut) : least;
      }
    }
    return least;
  }

  private static int indexOf(List<Order> all, Order order) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i) == order) {
        return i;
      }
    }
    throw new IllegalArgumentException("no order " + order);
  }

  private static RunProblem without(RunProblem problem, List<List<Order>> leftOut) {
    List<CoffeeOrders> coffees = new ArrayList<>();
    for (int i = 0; i < problem.coffees().size(); i++) {
      CoffeeOrders coffee = problem.coffees().get(i);
      List<Order> out = leftOut.get(i);
      coffees.add(
          new CoffeeOrders(
              coffee.orders().stream().filter(order -> !out.contains(order)).toList(),
              coffee.gramsPerStep(),
              coffee.doses()));
    }
    return new RunProblem(
        coffees, problem.kinds(), problem.circuitWatts(), problem.earliestStart());
  }

  private static double grams(List<List<Order>> orders) {
    return orders.stream().flatMap(List::stream).mapToDouble(Order::grams).sum();
  }
}
