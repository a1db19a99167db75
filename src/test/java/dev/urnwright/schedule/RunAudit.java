package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunProblem.Kind;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Goes through a schedule minute by minute and gram by gram, knowing nothing of how it was made.
 */
final class RunAudit {
  private static final double DROP = 1e-3;

  private final RunProblem problem;
  private final List<String> faults = new ArrayList<>();
  private double wait;

  private RunAudit(RunProblem problem) {
    this.problem = problem;
  }

  /** What is wrong with a schedule; empty when nothing is. */
  static List<String> faults(RunProblem problem, RunSolution solution) {
    RunAudit audit = new RunAudit(problem);
    for (TimedBatch batch : solution.batches()) {
      audit.single(batch);
    }
    audit.brewers(solution.batches());
    audit.circuits(solution.batches());
    for (int coffee = 0; coffee < problem.coffees().size(); coffee++) {
      int which = coffee;
      audit.orders(
          problem.coffees().get(coffee),
          solution.batches().stream().filter(b -> b.coffee() == which).toList());
    }
    audit.that(
        Math.abs(audit.wait - solution.waitGramMinutes()) <= 1 + 1e-6 * audit.wait,
        "it says the wait is " + solution.waitGramMinutes() + "; it is " + audit.wait);
    audit.that(
        solution.proof().waitBound() <= solution.waitGramMinutes() + 1,
        "the bound is above what was found: " + solution);
    return audit.faults;
  }

  private void that(boolean holds, String fault) {
    if (!holds) {
      faults.add(fault);
    }
  }

  private void single(TimedBatch batch) {
    Kind kind = problem.kinds().get(batch.kind());
    CoffeeOrders coffee = problem.coffees().get(batch.coffee());
    DoseRange range = coffee.doses().get(batch.kind());
    that(batch.ready() - batch.start() == kind.brewMinutes(), "brewing time: " + batch);
    that(batch.start() >= problem.earliestStart(), "too early: " + batch);
    that(batch.unit() >= 0 && batch.unit() < kind.units(), "no such brewer: " + batch);
    that(
        batch.doseSteps() >= Math.max(1, range.least()) && batch.doseSteps() <= range.greatest(),
        "dose out of range: " + batch);
    that(
        batch.drawnGrams() >= 0
            && batch.drawnGrams() <= batch.doseSteps() * coffee.gramsPerStep() + DROP,
        "more drawn than brewed: " + batch);
  }

  private void brewers(List<TimedBatch> batches) {
    for (TimedBatch a : batches) {
      for (TimedBatch b : batches) {
        if (a != b && a.kind() == b.kind() && a.unit() == b.unit()) {
          int turnaround = problem.kinds().get(a.kind()).turnaroundMinutes();
          boolean apart =
              a.ready() + turnaround <= b.start() || b.ready() + turnaround <= a.start();
          that(apart, "one brewer, two batches: " + a + " and " + b);
        }
      }
    }
  }

  private void circuits(List<TimedBatch> batches) {
    int first = batches.stream().mapToInt(TimedBatch::start).min().orElse(0);
    int last = batches.stream().mapToInt(TimedBatch::ready).max().orElse(0);
    for (int circuit = 0; circuit < problem.circuitWatts().size(); circuit++) {
      for (int minute = first; minute < last; minute++) {
        double load = 0;
        for (TimedBatch batch : batches) {
          Kind kind = problem.kinds().get(batch.kind());
          if (kind.circuit() == circuit && batch.start() <= minute && minute < batch.ready()) {
            load += kind.watts();
          }
        }
        that(
            load <= problem.circuitWatts().get(circuit) + 1e-6,
            "circuit " + circuit + " carries " + load + " W at minute " + minute);
      }
    }
  }

  /** Pours the batches, first ready first, into the orders, first due first. */
  private void orders(CoffeeOrders coffee, List<TimedBatch> batches) {
    List<TimedBatch> firstReady = new ArrayList<>(batches);
    firstReady.sort(Comparator.comparingInt(TimedBatch::ready));
    int next = 0;
    double left = 0;
    TimedBatch batch = null;
    for (Order order : inDueOrder(coffee.orders())) {
      double missing = order.grams();
      while (missing > DROP) {
        while (left <= DROP && next < firstReady.size()) {
          batch = firstReady.get(next++);
          left = batch.drawnGrams();
        }
        if (left <= DROP) {
          faults.add("nothing left for " + order);
          return;
        }
        that(
            order.earliestReady() <= batch.ready() && batch.ready() <= order.latestReady(),
            "not in time, or too old: " + batch + " for " + order);
        double part = Math.min(missing, left);
        wait += part * (order.latestReady() - batch.ready());
        missing -= part;
        left -= part;
      }
    }
  }

  static List<Order> inDueOrder(List<Order> orders) {
    List<Order> due = new ArrayList<>(orders);
    due.sort(Comparator.comparingInt(Order::latestReady).thenComparingInt(Order::earliestReady));
    return due;
  }
}
