package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import dev.urnwright.schedule.SolverModel.Service;
import dev.urnwright.schedule.SolverModel.Size;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The sizes of a schedule's batches, as the solver is told them. */
final class SolverSizes {
  private SolverSizes() {}

  /**
   * Whether all that is brewed is drawn, but for what is left of a coffee's last batch. The solver
   * knows no batches that are drawn in part and followed by others.
   */
  static boolean areWhole(RunProblem problem, RunSolution solution) {
    double left = 0;
    for (TimedBatch batch : solution.batches()) {
      double gramsPerStep = problem.coffees().get(batch.coffee()).gramsPerStep();
      left += batch.doseSteps() * gramsPerStep - batch.drawnGrams();
    }
    for (CoffeeOrders coffee : problem.coffees()) {
      for (List<Order> part : ExhaustiveRun.cut(coffee.orders())) {
        double grams = part.stream().mapToDouble(Order::grams).sum();
        left -= Math.ceil(grams / coffee.gramsPerStep()) * coffee.gramsPerStep() - grams;
      }
    }
    return left < 1;
  }

  static List<Service> of(RunProblem problem, RunSolution solution) {
    List<Service> services = new ArrayList<>();
    for (int coffee = 0; coffee < problem.coffees().size(); coffee++) {
      CoffeeOrders orders = problem.coffees().get(coffee);
      for (List<Order> part : ExhaustiveRun.cut(orders.orders())) {
        int which = coffee;
        int first = part.get(0).earliestReady();
        int last = part.get(part.size() - 1).latestReady();
        List<TimedBatch> batches =
            solution.batches().stream()
                .filter(b -> b.coffee() == which && first <= b.ready() && b.ready() <= last)
                .toList();
        boolean even = isEven(orders, batches);
        services.add(new Service(coffee, part, sizes(orders, batches, even), even));
      }
    }
    return services;
  }

  /**
   * Equal batches may go to any kind that takes them, those a step larger first; unequal ones stay
   * with their kinds.
   */
  private static List<Size> sizes(CoffeeOrders orders, List<TimedBatch> batches, boolean even) {
    List<Size> sizes = new ArrayList<>();
    if (even) {
      List<Integer> kinds =
          IntStream.range(0, orders.doses().size())
              .filter(kind -> batches.stream().allMatch(b -> takes(orders, kind, b)))
              .boxed()
              .toList();
      counts(batches).forEach((dose, count) -> sizes.add(new Size(dose, count, kinds)));
    } else {
      for (int kind = 0; kind < orders.doses().size(); kind++) {
        int which = kind;
        counts(batches.stream().filter(b -> b.kind() == which).toList())
            .forEach((dose, count) -> sizes.add(new Size(dose, count, List.of(which))));
      }
    }
    return sizes;
  }

  private static boolean isEven(CoffeeOrders orders, List<TimedBatch> batches) {
    Map<Long, Integer> counts = counts(batches);
    long least = counts.keySet().stream().mapToLong(d -> d).min().orElseThrow();
    long greatest = counts.keySet().stream().mapToLong(d -> d).max().orElseThrow();
    return greatest - least <= 1
        && batches.stream()
            .mapToInt(TimedBatch::kind)
            .allMatch(kind -> batches.stream().allMatch(b -> takes(orders, kind, b)));
  }

  private static boolean takes(CoffeeOrders orders, int kind, TimedBatch batch) {
    DoseRange range = orders.doses().get(kind);
    return range.least() <= batch.doseSteps() && batch.doseSteps() <= range.greatest();
  }

  private static Map<Long, Integer> counts(List<TimedBatch> batches) {
    return batches.stream()
        .collect(
            Collectors.groupingBy(
                TimedBatch::doseSteps,
                () -> new TreeMap<>(Comparator.reverseOrder()),
                Collectors.summingInt(b -> 1)));
  }
}
