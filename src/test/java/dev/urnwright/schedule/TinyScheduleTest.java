package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.ExhaustiveRun.Best;
import dev.urnwright.schedule.ExhaustiveRun.Group;
import dev.urnwright.schedule.ExhaustiveRun.Service;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Sizes and times of tiny problems, against trying everything: whether there is an answer, whether
 * fewer batches or equal ones would do, and whether they could wait less.
 */
class TinyScheduleTest {
  private static final int SEEDS = 200;
  private static final int MOST = 5; // batches that everything is tried with

  @Test
  void thereIsAnAnswerWhereTryingEverythingHasOne() {
    int none = 0;
    int more = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      RunProblem problem = TinyRuns.open(seed);
      Optional<RunSolution> solution = RunScheduler.solve(problem);
      boolean seen = RunScheduler.look(problem, Effort.unlimited()).isPresent();
      assertEquals(solution.isPresent(), seen, "seed " + seed);
      if (solution.isEmpty()) {
        assertTrue(ExhaustiveRun.fewest(problem, 2).isEmpty(), "seed " + seed);
        none++;
      } else {
        assertEquals(List.of(), RunAudit.faults(problem, solution.get()), "seed " + seed);
        int fewer = Math.min(2, solution.get().batches().size() - 1);
        if (solution.get().proof().fewestBatches()) {
          assertTrue(ExhaustiveRun.fewest(problem, fewer).isEmpty(), "seed " + seed);
        } else {
          more++;
        }
      }
    }
    assertTrue(none > SEEDS / 20, "too few that can't be done: " + none);
    assertTrue(more > 0, "too few that are not proven the fewest");
  }

  @Test
  void batchesOfTheseSizesWaitNoLongerThanTheyMust() {
    int compared = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      RunProblem problem = TinyRuns.open(seed);
      Optional<RunSolution> solution = RunScheduler.solve(problem);
      Optional<List<Service>> services = solution.flatMap(s -> services(problem, s));
      if (services.isPresent() && solution.orElseThrow().batches().size() <= MOST) {
        RunSolution here = solution.get();
        Best best = ExhaustiveRun.best(problem, services.get()).orElseThrow();
        assertEquals(best.waited(), here.waitGramMinutes(), 1e-3, "seed " + seed);
        assertTrue(here.proof().leastWait(), "seed " + seed);
        assertEquals(best.waited(), here.proof().waitBound(), 1e-3, "seed " + seed);
        int start = here.batches().stream().mapToInt(TimedBatch::start).min().orElseThrow();
        assertEquals(best.firstStart(), start, "seed " + seed);
        compared++;

        RunSolution narrow = RunScheduler.solve(problem, 1).orElseThrow();
        if (services(problem, narrow).equals(services)) {
          assertTrue(narrow.proof().waitBound() <= best.waited() + 1e-3, "seed " + seed);
          assertTrue(!narrow.proof().leastWait() || narrow.waitGramMinutes() <= best.waited() + 1);
        }
      }
    }
    assertTrue(compared > SEEDS / 2, "too few compared: " + compared);
  }

  /** One coffee without a break: batches are equal unless no so many or fewer can be. */
  @Test
  void equalBatchesAreTakenWhereTheyAreInTime() {
    int unequal = 0;
    int compared = 0;
    for (int seed = 1; seed <= 3 * SEEDS; seed++) {
      RunProblem problem = TinyRuns.open(seed);
      Optional<RunSolution> solution = RunScheduler.solve(problem);
      CoffeeOrders coffee = problem.coffees().get(0);
      if (solution.isPresent()
          && problem.coffees().size() == 1
          && ExhaustiveRun.cut(coffee.orders()).size() == 1) {
        List<TimedBatch> batches = solution.get().batches();
        boolean isEqual = even(coffee, batches).isPresent();
        int fewer = isEqual ? batches.size() - 1 : batches.size();
        for (int count = 1; count <= fewer; count++) {
          assertTrue(
              inTime(problem, coffee, count).isEmpty(), "seed " + seed + ", equal ones " + count);
        }
        unequal += isEqual ? 0 : 1;
        compared++;
      }
    }
    assertTrue(compared > SEEDS / 3, "too few compared: " + compared);
    assertTrue(unequal > 3, "too few unequal ones: " + unequal);
  }

  private static OptionalDouble inTime(RunProblem problem, CoffeeOrders coffee, int count) {
    long steps = steps(coffee.orders());
    List<Long> doses = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      doses.add(steps / count + (i < steps % count ? 1 : 0));
    }
    List<Integer> takers = takers(coffee, doses);
    Service service =
        new Service(0, RunAudit.inDueOrder(coffee.orders()), List.of(new Group(doses, takers)));
    return takers.isEmpty() || doses.contains(0L)
        ? OptionalDouble.empty()
        : ExhaustiveRun.leastWait(problem, List.of(service));
  }

  /** What all these batches are: equal ones for all that take them, or so many for each kind. */
  private static Optional<List<Service>> services(RunProblem problem, RunSolution solution) {
    return services(problem, solution, (coffee, batches) -> even(coffee, batches).map(List::of))
        .or(() -> services(problem, solution, (coffee, batches) -> ofKinds(problem, batches)));
  }

  private static Optional<List<Service>> services(
      RunProblem problem,
      RunSolution solution,
      BiFunction<CoffeeOrders, List<TimedBatch>, Optional<List<Group>>> grouped) {
    List<Service> services = new ArrayList<>();
    for (int c = 0; c < problem.coffees().size(); c++) {
      int coffee = c;
      int after = Integer.MIN_VALUE;
      CoffeeOrders of = problem.coffees().get(coffee);
      for (List<Order> orders : ExhaustiveRun.cut(of.orders())) {
        int from = after;
        int until = orders.get(orders.size() - 1).latestReady();
        List<TimedBatch> batches =
            solution.batches().stream()
                .filter(b -> b.coffee() == coffee && b.ready() > from && b.ready() <= until)
                .toList();
        after = until;
        Optional<List<Group>> groups =
            grouped.apply(new CoffeeOrders(orders, of.gramsPerStep(), of.doses()), batches);
        if (groups.isEmpty()) {
          return Optional.empty();
        }
        services.add(new Service(coffee, orders, groups.get()));
      }
    }
    return Optional.of(services);
  }

  private static Optional<Group> even(CoffeeOrders coffee, List<TimedBatch> batches) {
    List<Long> doses = inTime(batches);
    List<Long> falling = falling(doses);
    boolean isEven =
        doses.equals(falling)
            && doses.stream().mapToLong(dose -> dose).sum() == steps(coffee.orders())
            && falling.get(0) - falling.get(falling.size() - 1) <= 1
            && batches.stream().allMatch(b -> takers(coffee, doses).contains(b.kind()));
    return isEven ? Optional.of(new Group(falling, takers(coffee, doses))) : Optional.empty();
  }

  /** Empty when a kind's batches are as large as they happen to be. */
  private static Optional<List<Group>> ofKinds(RunProblem problem, List<TimedBatch> batches) {
    int last = batches.stream().mapToInt(TimedBatch::ready).max().orElseThrow();
    if (batches.stream().anyMatch(b -> b.ready() < last && !isDrawnInFull(b))) {
      return Optional.empty();
    }
    List<Group> groups = new ArrayList<>();
    for (int k = 0; k < problem.kinds().size(); k++) {
      int kind = k;
      List<Long> doses = inTime(batches.stream().filter(b -> b.kind() == kind).toList());
      if (!doses.isEmpty()) {
        boolean isLevel = doses.get(0) - doses.get(doses.size() - 1) <= 1;
        if (!isLevel || !falling(doses).equals(doses) || groups.size() == 2) {
          return Optional.empty();
        }
        groups.add(new Group(doses, List.of(kind)));
      }
    }
    return Optional.of(groups);
  }

  private static boolean isDrawnInFull(TimedBatch batch) {
    return batch.drawnGrams() > batch.doseSteps() * TinyRuns.STEP - 1e-6;
  }

  /** Doses in order of time, of several at one minute the larger first. */
  private static List<Long> inTime(List<TimedBatch> batches) {
    return batches.stream()
        .sorted(
            Comparator.comparingInt(TimedBatch::ready)
                .thenComparing(TimedBatch::doseSteps, Comparator.reverseOrder()))
        .map(TimedBatch::doseSteps)
        .toList();
  }

  private static List<Long> falling(List<Long> doses) {
    return doses.stream().sorted((a, b) -> Long.compare(b, a)).toList();
  }

  private static long steps(List<Order> orders) {
    return (long) Math.ceil(orders.stream().mapToDouble(Order::grams).sum() / TinyRuns.STEP - 1e-9);
  }

  private static List<Integer> takers(CoffeeOrders coffee, List<Long> doses) {
    long least = doses.stream().flatMapToLong(LongStream::of).min().orElseThrow();
    long greatest = doses.stream().flatMapToLong(LongStream::of).max().orElseThrow();
    return IntStream.range(0, coffee.doses().size())
        .filter(kind -> coffee.doses().get(kind).least() <= least)
        .filter(kind -> coffee.doses().get(kind).greatest() >= greatest)
        .boxed()
        .toList();
  }
}
