package dev.urnwright.schedule;

import java.util.List;

/**
 * Batches to be put on a clock. Minutes are counted from any fixed moment.
 *
 * @param coffees what is ordered of each coffee
 * @param kinds of brewers
 * @param circuitWatts what each circuit carries for hours; brewers name it by index
 * @param earliestStart no batch starts before this minute
 */
public record RunProblem(
    List<CoffeeOrders> coffees, List<Kind> kinds, List<Double> circuitWatts, int earliestStart) {
  /** Copies the lists. */
  public RunProblem {
    coffees = List.copyOf(coffees);
    kinds = List.copyOf(kinds);
    circuitWatts = List.copyOf(circuitWatts);
  }

  /**
   * One coffee.
   *
   * @param orders one for each dispenser fill, in any order, one at least
   * @param gramsPerStep beverage from one scale step of dose, g
   * @param doses what each kind of brewer takes, in scale steps, in the order of {@link #kinds}
   */
  public record CoffeeOrders(List<Order> orders, double gramsPerStep, List<DoseRange> doses) {
    /** Copies the lists. */
    public CoffeeOrders {
      orders = List.copyOf(orders);
      doses = List.copyOf(doses);
    }
  }

  /**
   * A kind of brewer.
   *
   * @param units how many, 1 or more
   * @param brewMinutes from start to ready
   * @param turnaroundMinutes from ready until it can start again
   * @param watts that each draws while brewing
   * @param circuit index of its circuit, or -1 when it names none
   */
  public record Kind(
      int units, int brewMinutes, int turnaroundMinutes, double watts, int circuit) {}
}
