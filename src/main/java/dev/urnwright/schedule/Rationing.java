package dev.urnwright.schedule;

import dev.urnwright.schedule.BackwardSearch.Found;
import dev.urnwright.schedule.FullLeg.Leeway;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/**
 * Who goes without where not all can be served: as few grams as a search finds, so that all other
 * orders are ready in time.
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
    List<Leg> legs = new ArrayList<>();
    for (int coffee = 0; coffee < problem.coffees().size(); coffee++) {
      RunProblem.CoffeeOrders orders = problem.coffees().get(coffee);
      for (OrderBook.Run run : OrderBook.of(orders.orders()).runs()) {
        legs.add(FullLeg.of(coffee, run, orders, Leeway.LET_GO));
      }
    }
    int states = Effort.width(problem, legs, STATES);
    Found found =
        new BackwardSearch(problem, legs, states, Effort.unlimited())
            .run(Double.NEGATIVE_INFINITY)
            .orElseThrow();
    // Two orders may be alike; it is these very ones that are left out.
    Set<Order> leftOut = Collections.newSetFromMap(new IdentityHashMap<>());
    leftOut.addAll(found.leftOut());
    return problem.coffees().stream()
        .map(
            coffee -> coffee.orders().stream().filter(leftOut::contains).sorted(Order.DUE).toList())
        .toList();
  }
}
