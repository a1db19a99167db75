package dev.urnwright.schedule;

import dev.urnwright.schedule.BackwardSearch.Found;
import dev.urnwright.schedule.FullLeg.Leeway;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Who goes without where not all can be served: as few grams as two searches find, so that all
 * other orders are ready in time. One lets go of what it comes to and can't serve, which is quick
 * to look far; the other of whatever it may, which finds the least where there is little to choose.
 */
public final class Rationing {
  private static final int STATES = 60;

  private Rationing() {}

  /**
   * The orders that are left out.
   *
   * @return for each coffee, those due first before the others
   */
  public static List<List<Order>> of(RunProblem problem) {
    Found found =
        Stream.of(Leeway.LET_GO, Leeway.LET_GO_FREELY)
            .map(leeway -> search(problem, leeway))
            .max(Comparator.comparingDouble(Found::value))
            .orElseThrow();
    // Two orders may be alike; it is these very ones that are left out.
    Set<Order> leftOut = Collections.newSetFromMap(new IdentityHashMap<>());
    leftOut.addAll(found.leftOut());
    return problem.coffees().stream()
        .map(
            coffee -> coffee.orders().stream().filter(leftOut::contains).sorted(Order.DUE).toList())
        .toList();
  }

  /** A search that always ends somewhere, if only with nobody served. */
  private static Found search(RunProblem problem, Leeway leeway) {
    List<Leg> legs = new ArrayList<>();
    for (int coffee = 0; coffee < problem.coffees().size(); coffee++) {
      RunProblem.CoffeeOrders orders = problem.coffees().get(coffee);
      for (OrderBook.Run run : OrderBook.of(orders.orders()).runs()) {
        legs.add(FullLeg.of(coffee, run, orders, leeway));
      }
    }
    int states = Effort.width(problem, legs, STATES);
    return new BackwardSearch(problem, legs, states, Effort.unlimited())
        .run(Double.NEGATIVE_INFINITY)
        .orElseThrow();
  }
}
