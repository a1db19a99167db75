package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.RunInstances.Named;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The whole scheduler: sizes and times. */
class RunSchedulerTest {
  @Test
  void everyScheduleIsValid() {
    int done = 0;
    for (int seed = 1; seed <= 3000; seed++) {
      RunProblem problem = RunInstances.small(seed);
      Optional<RunSolution> solution = RunScheduler.solve(problem);
      if (solution.isPresent()) {
        assertEquals(List.of(), RunAudit.faults(problem, solution.get()), "seed " + seed);
        done++;
      }
    }
    assertTrue(done > 1000, "too few that can be done: " + done);
  }

  @Test
  void everyDayIsValid() {
    for (Named day : RunInstances.days(1)) {
      RunSolution solution =
          RunScheduler.solve(day.problem(), Patience.USUAL.withWide(50)).orElseThrow();
      assertEquals(List.of(), RunAudit.faults(day.problem(), solution), day.name());
    }
  }

  @Test
  void whatItCantDoCantBeDone() {
    int none = 0;
    for (int seed = 1; seed <= 1500; seed++) {
      RunProblem problem = RunInstances.small(seed);
      if (RunScheduler.solve(problem).isEmpty()) {
        assertTrue(ExhaustiveRun.fewest(problem, 4).isEmpty(), "seed " + seed);
        none++;
      }
    }
    assertTrue(none > 100, "too few that can't be done: " + none);
  }

  @Test
  void fewestBatchesAreTheFewest() {
    int proven = 0;
    for (int seed = 1; seed <= 1000; seed++) {
      RunProblem problem = RunInstances.small(seed);
      Optional<RunSolution> solution = RunScheduler.solve(problem);
      if (solution.filter(s -> s.proof().fewestBatches() && s.batches().size() <= 4).isPresent()) {
        int fewer = solution.get().batches().size() - 1;
        assertTrue(ExhaustiveRun.fewest(problem, fewer).isEmpty(), "seed " + seed);
        proven++;
      }
    }
    assertTrue(proven > 300, "too few proven: " + proven);
  }

  /** One coffee, equal brewers, no circuit: nothing is to be decided. */
  @Test
  void equalBatchesAreThoseOfThePlainBackwardPass() {
    int compared = 0;
    for (int seed = 1; seed <= 40; seed++) {
      RunProblem problem = RunInstances.equalThree(seed);
      CoffeeOrders coffee = problem.coffees().get(0);
      Optional<RunSolution> solution = RunScheduler.solve(problem);
      if (solution.filter(s -> s.batches().size() == 20).isPresent()
          && ExhaustiveRun.cut(coffee.orders()).size() == 1) {
        assertTrue(solution.get().proof().leastWait());
        assertEquals(backwardWait(coffee), solution.get().waitGramMinutes(), 1e-3, "seed " + seed);
        compared++;
      }
    }
    assertTrue(compared > 10, "too few compared: " + compared);
  }

  /** Three brewers, 11 minutes and 2 between; batches of 96 steps of 54 g. */
  private static double backwardWait(CoffeeOrders coffee) {
    List<Order> due = RunAudit.inDueOrder(coffee.orders());
    double total = due.stream().mapToDouble(Order::grams).sum();
    int[] free = new int[3];
    Arrays.fill(free, Integer.MAX_VALUE);
    int ready = Integer.MAX_VALUE;
    double wait = due.stream().mapToDouble(o -> o.grams() * o.latestReady()).sum();
    for (int batch = 19; batch >= 0; batch--) {
      double from = batch * 96.0 * 54;
      double end = 0;
      int i = -1;
      while (end <= from) {
        end += due.get(++i).grams();
      }
      Arrays.sort(free);
      ready = Math.min(ready, Math.min(due.get(i).latestReady(), free[2]));
      free[2] = ready - 13;
      wait -= (Math.min(total, from + 96 * 54) - from) * ready;
    }
    return wait;
  }

  @Test
  void anHourLaterIsTheSameAnHourLater() {
    for (int seed = 1; seed <= 300; seed++) {
      RunProblem problem = RunInstances.small(seed);
      List<TimedBatch> later = new ArrayList<>();
      Optional<RunSolution> solution = RunScheduler.solve(problem);
      for (TimedBatch b : solution.map(RunSolution::batches).orElse(List.of())) {
        later.add(
            new TimedBatch(
                b.coffee(),
                b.kind(),
                b.unit(),
                b.doseSteps(),
                b.start() + 60,
                b.ready() + 60,
                b.drawnGrams()));
      }
      Optional<RunSolution> shifted = RunScheduler.solve(anHourLater(problem));
      assertEquals(later, shifted.map(RunSolution::batches).orElse(List.of()), "seed " + seed);
      assertEquals(
          solution.map(RunSolution::waitGramMinutes), shifted.map(RunSolution::waitGramMinutes));
    }
  }

  private static RunProblem anHourLater(RunProblem problem) {
    return new RunProblem(
        problem.coffees().stream()
            .map(
                c ->
                    new CoffeeOrders(
                        c.orders().stream()
                            .map(
                                o ->
                                    new Order(
                                        o.id(),
                                        o.grams(),
                                        o.earliestReady() + 60,
                                        o.latestReady() + 60))
                            .toList(),
                        c.gramsPerStep(),
                        c.doses()))
            .toList(),
        problem.kinds(),
        problem.circuitWatts(),
        problem.earliestStart() + 60);
  }
}
