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
      RunProblem problem = seed % 2 == 0 ? TinyRuns.open(seed) : TinyRuns.tight(seed);
      Optional<RunSolution> solution = RunScheduler.solve(problem);
      Optional<RunSolution> first = RunScheduler.look(problem, Effort.of(1_000_000));
      assertEquals(solution.isPresent(), first.isPresent(), "seed " + seed);
      if (first.isPresent()) {
        assertEquals(List.of(), RunAudit.faults(problem, first.get()), "seed " + seed);
        // equal ones come first, as they do when it is searched for long
        boolean isEqual =
            isEqual(problem, solution.get()) && solution.get().proof().fewestBatches();
        assertTrue(!isEqual || isEqual(problem, first.get()), "seed " + seed);
      }
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

        RunSolution narrow = RunScheduler.solve(problem, Patience.USUAL.withWide(1)).orElseThrow();
        if (services(problem, narrow).equals(services)) {
          assertTrue(narrow.proof().waitBound() <= best.waited() + 1e-3, "seed " + seed);
          assertTrue(!narrow.proof().leastWait() || narrow.waitGramMinutes() <= best.waited() + 1);
        }
      }
    }
    assertTrue(compared > SEEDS / 2, "too few compared: " + compared);
  }

  /**
   * Batches are equal unless no so many or fewer can be; and of all such ways the best is taken.
   */
  @Test
  void equalBatchesAreTakenWhereTheyAreInTime() {
    int unequal = 0;
    int more = 0;
    for (int seed = 1; seed <= 2 * SEEDS + TinyRuns.MORE.length; seed++) {
      RunProblem problem =
          seed <= SEEDS
              ? TinyRuns.open(seed)
              : TinyRuns.tight(seed <= 2 * SEEDS ? seed : TinyRuns.MORE[seed - 2 * SEEDS - 1]);
      Optional<RunSolution> solution = RunScheduler.solve(problem);
      int batches = solution.map(s -> s.batches().size()).orElse(MOST + 1);
      if (batches <= MOST) {
        boolean isEqual = isEqual(problem, solution.get());
        for (int count = 1; count < batches; count++) {
          assertTrue(equal(problem, count).isEmpty(), "seed " + seed + ", equal ones " + count);
        }
        OptionalDouble best = equal(problem, batches);
        if (isEqual) {
          double wait = solution.get().waitGramMinutes();
          assertEquals(best.orElseThrow(), wait, 1e-3, "seed " + seed);
        } else {
          assertTrue(best.isEmpty(), "seed " + seed + ", equal ones " + batches);
        }
        unequal += isEqual ? 0 : 1;
        more += isEqual && !solution.get().proof().fewestBatches() ? 1 : 0;
      }
    }
    assertTrue(unequal > 3, "too few unequal ones: " + unequal);
    assertTrue(more > 3, "too few with more than the fewest: " + more);
  }

  /** Unequal ones are levelled, so many for each kind, unless these can't be in time. */
  @Test
  void unequalBatchesAreLevelledWhereTheyAreInTime() {
    int levelled = 0;
    int asFound = 0;
    for (int seed = 1; seed <= 2 * SEEDS; seed++) {
      RunProblem problem = seed <= SEEDS ? TinyRuns.open(seed) : TinyRuns.tight(seed);
      Optional<RunSolution> solution = RunScheduler.solve(problem);
      int batches = solution.map(s -> s.batches().size()).orElse(MOST + 1);
      if (batches <= MOST && !isEqual(problem, solution.get())) {
        Optional<List<Service>> level = services(problem, solution.get(), this::levelled);
        OptionalDouble wait = OptionalDouble.empty();
        if (level.isPresent()) {
          wait = ExhaustiveRun.leastWait(problem, level.get());
        }
        if (wait.isPresent()) {
          assertEquals(wait.getAsDouble(), solution.get().waitGramMinutes(), 1e-3, "seed " + seed);
          levelled++;
        } else {
          assertEquals(
              asFound(problem, solution.get()),
              solution.get().waitGramMinutes(),
              1e-3,
              "seed " + seed);
          asFound++;
        }
      }
    }
    assertTrue(levelled > 5, "too few levelled ones: " + levelled);
    assertTrue(asFound > 5, "too few that stay as they were found: " + asFound);
  }

  /** The least wait of batches that serve just what these do. */
  private static double asFound(RunProblem problem, RunSolution solution) {
    List<Leg> legs = new ArrayList<>();
    services(
        problem,
        solution,
        (coffee, batches) -> {
          assertFull(coffee, batches);
          legs.add(
              new FixedLeg(
                  batches.get(0).coffee(),
                  OrderBook.of(coffee.orders()).runs().get(0),
                  batches.stream().map(TimedBatch::drawnGrams).toList(),
                  coffee.doses(),
                  coffee.gramsPerStep()));
          return Optional.of(List.of());
        });
    return RunInstances.latest(problem)
        - new BackwardSearch(problem, legs, 1000)
            .run(Double.NEGATIVE_INFINITY)
            .orElseThrow()
            .value();
  }

  /** Each batch is as large as a kind brews at the most, or begins with an order. */
  private static void assertFull(CoffeeOrders coffee, List<TimedBatch> batches) {
    List<Double> starts = new ArrayList<>(List.of(0.0));
    for (Order order : RunAudit.inDueOrder(coffee.orders())) {
      starts.add(starts.get(starts.size() - 1) + order.grams());
    }
    double from = 0;
    for (TimedBatch batch : batches) {
      double start = from;
      boolean begins = starts.stream().anyMatch(at -> Math.abs(at - start) < 1e-3);
      boolean isFull =
          coffee.doses().stream()
              .anyMatch(
                  range ->
                      Math.abs(range.greatest() * coffee.gramsPerStep() - batch.drawnGrams())
                          < 1e-3);
      assertTrue(begins || isFull, batch + " from " + start);
      from += batch.drawnGrams();
    }
  }

  /**
   * One coffee's 114 g by minute 8, when each kind has brewed once, of 8, 3 and 3 steps: all three.
   * Then its 71 g by 24, which are one batch of the first kind; and the other coffee's 30 g.
   */
  @Test
  void aBatchThatIsJustInTimeForOneRunIsNotOneOfTheNext() {
    RunSolution solution = RunScheduler.solve(TinyRuns.open(205)).orElseThrow();
    assertEquals(3 + 1 + 1, solution.batches().size());
    assertTrue(solution.proof().fewestBatches());
  }

  /** Not even where least doses force more to be brewed than is drunk: it is little. */
  @Test
  void noBatchIsBrewedForNothing() {
    for (int seed = 1; seed <= 800; seed++) {
      RunProblem problem = seed <= 400 ? TinyRuns.open(seed) : TinyRuns.tight(seed - 400);
      for (RunSolution solution : RunScheduler.solve(problem).stream().toList()) {
        assertTrue(
            solution.batches().stream().allMatch(batch -> batch.drawnGrams() > 0), "seed " + seed);
      }
    }
  }

  /**
   * One brewer of each kind, and time for one batch each: 6, 2 and 1 steps are just the 9 that are
   * ordered. Two of the largest would be fewer, but there is only one.
   */
  @Test
  void asManyBatchesAsThereIsTimeForAreTheFewest() {
    List<RunProblem.Kind> kinds =
        List.of(
            new RunProblem.Kind(1, 5, 1, 0, -1),
            new RunProblem.Kind(1, 5, 1, 0, -1),
            new RunProblem.Kind(1, 5, 1, 0, -1));
    List<DoseRange> ranges =
        List.of(RunInstances.range(1, 2), RunInstances.range(1, 6), RunInstances.range(1, 1));
    List<Order> orders = List.of(new Order("F", 90, 18, 20));
    RunProblem problem =
        new RunProblem(List.of(new CoffeeOrders(orders, 10, ranges)), kinds, List.of(), 0);
    RunSolution solution = RunScheduler.solve(problem).orElseThrow();
    assertEquals(3, solution.batches().size());
    assertTrue(solution.proof().fewestBatches());
    assertEquals(0, solution.waitGramMinutes());
  }

  private Optional<List<Group>> levelled(CoffeeOrders coffee, List<TimedBatch> batches) {
    long[] counts = new long[coffee.doses().size()];
    batches.forEach(batch -> counts[batch.kind()]++);
    return LongStream.of(counts).filter(count -> count > 0).count() > 2
        ? Optional.empty()
        : Sizing.levelled(steps(coffee.orders()), counts, coffee.doses())
            .map(sizing -> sizing.classes().stream().map(TinyRuns::group).toList());
  }

  static boolean isEqual(RunProblem problem, RunSolution solution) {
    return services(problem, solution, (coffee, batches) -> even(coffee, batches).map(List::of))
        .isPresent();
  }

  /** The least wait of so many batches that are equal within each run, given to the runs anyhow. */
  private static OptionalDouble equal(RunProblem problem, int count) {
    List<Service> runs = new ArrayList<>();
    for (int c = 0; c < problem.coffees().size(); c++) {
      for (List<Order> orders : ExhaustiveRun.cut(problem.coffees().get(c).orders())) {
        runs.add(new Service(c, orders, List.of()));
      }
    }
    return equal(problem, count, runs, List.of());
  }

  private static OptionalDouble equal(
      RunProblem problem, int count, List<Service> runs, List<Service> before) {
    if (before.size() == runs.size()) {
      return count > 0 ? OptionalDouble.empty() : ExhaustiveRun.leastWait(problem, before);
    }
    Service run = runs.get(before.size());
    OptionalDouble best = OptionalDouble.empty();
    for (int here = 1; here <= count; here++) {
      List<Long> doses = new ArrayList<>();
      long steps = steps(run.orders());
      for (int i = 0; i < here; i++) {
        doses.add(steps / here + (i < steps % here ? 1 : 0));
      }
      List<Integer> takers = takers(problem.coffees().get(run.coffee()), doses);
      if (!takers.isEmpty() && steps >= here) {
        List<Service> with = new ArrayList<>(before);
        with.add(new Service(run.coffee(), run.orders(), List.of(new Group(doses, takers))));
        OptionalDouble wait = equal(problem, count - here, runs, with);
        if (wait.isPresent() && (best.isEmpty() || wait.getAsDouble() < best.getAsDouble())) {
          best = wait;
        }
      }
    }
    return best;
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
        isDrawn(batches)
            && doses.equals(falling)
            && doses.stream().mapToLong(dose -> dose).sum() == steps(coffee.orders())
            && falling.get(0) - falling.get(falling.size() - 1) <= 1
            && batches.stream().allMatch(b -> takers(coffee, doses).contains(b.kind()));
    return isEven ? Optional.of(new Group(falling, takers(coffee, doses))) : Optional.empty();
  }

  /** Empty when a kind's batches are as large as they happen to be. */
  private static Optional<List<Group>> ofKinds(RunProblem problem, List<TimedBatch> batches) {
    if (!isDrawn(batches)) {
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

  /** Whether all but the last are drawn in full: what they serve isn't decided beforehand. */
  private static boolean isDrawn(List<TimedBatch> batches) {
    int last = batches.get(batches.size() - 1).ready();
    return batches.stream()
        .filter(batch -> batch.ready() < last)
        .allMatch(batch -> batch.drawnGrams() > batch.doseSteps() * TinyRuns.STEP - 1e-6);
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
