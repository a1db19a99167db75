package dev.urnwright.schedule;

import dev.urnwright.schedule.BackwardSearch.Found;
import dev.urnwright.schedule.FullLeg.Leeway;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunSolution.Proof;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Puts batches on a clock. In this order: no guest unserved; fewest batches, as equal as can be;
 * least waiting, which is least total age at pouring, since when cups are poured is given; latest
 * start.
 *
 * <p>Two questions are asked in turn. What are the fewest batches, each as large as its brewer
 * takes or its orders stay fresh? And, with so many or fewer, are equal ones in time? Equal ones
 * are taken where they are; otherwise each kind brews as many as the first answer says, levelled.
 */
public final class RunScheduler {
  /**
   * States kept when batches are as large as can be: many sizes, so few states outdo each other.
   */
  private static final int FULL = 150;

  /** Ways to give extra batches to runs that are tried for each number of batches. */
  private static final int MOST_WAYS = 30;

  /** More batches than the fewest for which equal ones are tried. */
  private static final int MOST_EXTRA = 24;

  /** What is searched at the most, far more than days take that people have: some 8 seconds. */
  private static final long MOST_EFFORT = 70_000_000;

  private final RunProblem problem;
  private final Patience patience;
  private final Effort effort;
  private final List<RunOfCoffee> runs;
  private long spent;

  /**
   * A run with what it needs.
   *
   * @param after the minute by which the coffee's run before is served; its own batches are ready
   *     later, or its first order's coffee would be too old
   * @param steps of dose
   * @param fewest batches that can brew so many steps in the time there is for it
   */
  private record RunOfCoffee(
      int coffee, OrderBook.Run run, int after, long steps, int fewest, CoffeeOrders orders) {
    /**
     * So many equal batches, the fewest or more: the largest brewers take them, unless even their
     * least doses are more than is needed.
     */
    Sizing equal(int count) {
      return Sizing.even(steps, count, orders.doses())
          .or(() -> Sizing.least(steps, count, orders.doses()))
          .orElseThrow();
    }

    Leg leg(Sizing sizing) {
      return new SizedLeg(coffee, run, sizing, orders.gramsPerStep());
    }

    boolean isServedBy(TimedBatch batch) {
      return batch.coffee() == coffee
          && batch.ready() > after
          && batch.ready() <= run.latestReady();
    }
  }

  private RunScheduler(
      RunProblem problem, Patience patience, Effort effort, List<RunOfCoffee> runs) {
    this.problem = problem;
    this.patience = patience;
    this.effort = effort;
    this.runs = runs;
  }

  /**
   * The best schedule.
   *
   * @return empty when none was found that leaves no guest unserved
   */
  public static Optional<RunSolution> solve(RunProblem problem) {
    return solve(problem, Patience.USUAL);
  }

  /**
   * A schedule that leaves no guest unserved, found at a first look: not the best one.
   *
   * @param effort that is left for it
   * @return empty when it finds none, or the effort is spent before it does
   */
  public static Optional<RunSolution> look(RunProblem problem, Effort effort) {
    return of(problem, Patience.USUAL, effort).flatMap(RunScheduler::look);
  }

  static Optional<RunSolution> solve(RunProblem problem, Patience patience) {
    return solve(problem, patience, Effort.of(MOST_EFFORT));
  }

  /** The best schedule; where too much would have to be searched, one that a first look finds. */
  static Optional<RunSolution> solve(RunProblem problem, Patience patience, Effort effort) {
    Optional<RunSolution> best = of(problem, patience, effort).flatMap(RunScheduler::solve);
    return best.isEmpty() && effort.isSpent() ? look(problem, Effort.unlimited()) : best;
  }

  /** A scheduler; empty when a run's amount can't be brewed in the time there is for it. */
  private static Optional<RunScheduler> of(RunProblem problem, Patience patience, Effort effort) {
    List<RunOfCoffee> runs = new ArrayList<>();
    for (int coffee = 0; coffee < problem.coffees().size(); coffee++) {
      int after = Integer.MIN_VALUE;
      for (OrderBook.Run run : OrderBook.of(problem.coffees().get(coffee).orders()).runs()) {
        Optional<RunOfCoffee> needs = needs(problem, coffee, run, after);
        after = run.latestReady();
        if (needs.isEmpty()) {
          return Optional.empty();
        }
        runs.add(needs.get());
      }
    }
    return Optional.of(new RunScheduler(problem, patience, effort, runs));
  }

  /**
   * Counts batches, the largest brewers first, each for as many as it has time for; and no fewer
   * than keep every order fresh.
   */
  private static Optional<RunOfCoffee> needs(
      RunProblem problem, int coffee, OrderBook.Run run, int after) {
    CoffeeOrders orders = problem.coffees().get(coffee);
    long steps = (long) Math.ceil(run.grams() / orders.gramsPerStep() - 1e-9);
    List<Integer> largestFirst =
        IntStream.range(0, problem.kinds().size())
            .filter(kind -> orders.doses().get(kind).usable())
            .boxed()
            .sorted(Comparator.comparing(kind -> -orders.doses().get(kind).greatest()))
            .toList();
    long left = steps;
    long count = 0;
    for (int kind : largestFirst) {
      long greatest = orders.doses().get(kind).greatest();
      long room = run.room(problem.kinds().get(kind), problem.earliestStart());
      long here = Math.min(room, (left + greatest - 1) / greatest);
      count += here;
      left -= here * greatest;
      if (left <= 0) {
        double largest = orders.doses().get(largestFirst.get(0)).greatest() * orders.gramsPerStep();
        int fewest = (int) Math.max(count, run.freshBatches(largest));
        return Optional.of(new RunOfCoffee(coffee, run, after, steps, fewest, orders));
      }
    }
    return Optional.empty();
  }

  private Optional<RunSolution> look() {
    Attempt attempt = new Attempt();
    List<Leg> equal = legs(runs.stream().map(run -> run.equal(run.fewest())).toList());
    look(equal, Effort.width(problem, equal, patience.narrow())).ifPresent(attempt::offer);
    for (Leeway leeway : List.of(Leeway.NONE, Leeway.STOP_SHORT)) {
      if (attempt.best.isEmpty()) {
        List<Leg> legs = legs(leeway);
        look(legs, Effort.width(problem, legs, FULL)).ifPresent(attempt::offer);
      }
    }
    return attempt.best.map(found -> solution(attempt, false));
  }

  private Optional<Found> look(List<Leg> legs, int states) {
    return new BackwardSearch(problem, legs, states, effort).run(Double.NEGATIVE_INFINITY);
  }

  private Optional<RunSolution> solve() {
    int fewest = runs.stream().mapToInt(RunOfCoffee::fewest).sum();
    Optional<Attempt> equal = equal(0);
    if (equal.isPresent()) {
      return equal.map(attempt -> solution(attempt, true));
    }
    Optional<Found> full = full();
    if (full.isEmpty()) {
      return Optional.empty();
    }
    int most = full.get().batches().size();
    for (int extra = 1;
        extra <= Math.min(MOST_EXTRA, most - fewest) && !patience.isSpent(spent);
        extra++) {
      Optional<Attempt> attempt = equal(extra);
      if (attempt.isPresent()) {
        return attempt.map(a -> solution(a, false));
      }
    }
    Attempt mixed = new Attempt();
    levelled(full.get()).ifPresent(sizings -> search(sizings, mixed));
    if (mixed.best.isEmpty()) {
      mixed.offer(full.get());
      search(asFound(full.get()), most, mixed);
    }
    return Optional.of(solution(mixed, most == fewest));
  }

  /** What was found with one number of batches. */
  private static final class Attempt {
    Optional<Found> best = Optional.empty();
    double bound = Double.NEGATIVE_INFINITY; // of what the searches dropped
    Optional<List<Sizing>> sizings = Optional.empty();
    int ways;

    double floor() {
      return best.map(Found::value).orElse(Double.NEGATIVE_INFINITY);
    }

    boolean isProven() {
      return bound <= floor() + BackwardSearch.SAME;
    }

    /** Takes what was searched for: as good as the best so far, or better. */
    void offer(Found found) {
      if (found.value() > floor() + BackwardSearch.SAME
          || found.firstStart() > best.map(Found::firstStart).orElse(Integer.MIN_VALUE)) {
        best = Optional.of(found);
      }
    }
  }

  /** Equal batches within each run, so many more than the fewest. */
  private Optional<Attempt> equal(int extra) {
    Attempt attempt = new Attempt();
    spread(extra, 0, new int[runs.size()], attempt);
    // A first look has found where the extra batches go; now look hard there.
    attempt.sizings.ifPresent(sizings -> search(sizings, attempt));
    return attempt.best.isPresent() ? Optional.of(attempt) : Optional.empty();
  }

  /** Gives the extra batches to the runs in every way, as far as is reasonable. */
  private void spread(int left, int run, int[] extra, Attempt attempt) {
    if (attempt.ways >= MOST_WAYS) {
      return;
    }
    if (run < extra.length - 1) {
      for (int n = 0; n <= left; n++) {
        extra[run] = n;
        spread(left - n, run + 1, extra, attempt);
      }
      return;
    }
    extra[run] = left;
    attempt.ways++;
    List<Sizing> sizings = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      sizings.add(runs.get(i).equal(runs.get(i).fewest() + extra[i]));
    }
    boolean only = Arrays.stream(extra).sum() == 0;
    if (lookAt(sizings, attempt) || only) {
      attempt.sizings = Optional.of(sizings);
    }
  }

  /** A first look at one way to size all batches; whether it found something better. */
  private boolean lookAt(List<Sizing> sizings, Attempt attempt) {
    attempt.bound = Double.POSITIVE_INFINITY; // of these batches from here on
    return search(legs(sizings), patience.narrow(), 0, attempt, Optional.empty());
  }

  private void search(List<Sizing> sizings, Attempt attempt) {
    search(legs(sizings), sizings.stream().mapToInt(Sizing::count).sum(), attempt);
  }

  private List<Leg> legs(List<Sizing> sizings) {
    List<Leg> legs = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      legs.add(runs.get(i).leg(sizings.get(i)));
    }
    return legs;
  }

  private void search(List<Leg> legs, int batches, Attempt attempt) {
    int states = patience.width(batches, spent);
    boolean open = attempt.best.isPresent() && !attempt.isProven() && !effort.isSpent();
    attempt.bound = Double.POSITIVE_INFINITY; // of these batches from here on
    if (open && states > patience.narrow()) {
      searchPriced(legs, states, attempt);
    } else {
      search(legs, states, 0, attempt, Optional.empty());
    }
  }

  /** Prices are worth their while where a first look has found but not proven something. */
  private void searchPriced(List<Leg> legs, int states, Attempt attempt) {
    int rounds = patience.rounds(legs.stream().mapToInt(leg -> leg.pieces().size()).sum());
    PriceBound first = Pricing.of(problem, legs, attempt.floor(), patience.firstRounds());
    if (rounds <= patience.firstRounds()) {
      search(legs, states, 0, attempt, Optional.of(first));
      return;
    }
    // What a quick search finds better lets the prices be better too.
    search(legs, Math.min(states, patience.quick()), 0, attempt, Optional.of(first));
    if (!attempt.isProven()) {
      Optional<PriceBound> good = Optional.of(Pricing.of(problem, legs, attempt.floor(), rounds));
      search(legs, states, 0, attempt, good);
      if (!attempt.isProven()) {
        // What is only as good, but starts later, may be in the way of a proof.
        search(legs, states, 2 * BackwardSearch.SAME, attempt, good);
      }
    }
  }

  /** Searches for what exceeds the best so far by some gram-minutes; 0 for as good or better. */
  private boolean search(
      List<Leg> legs, int states, double by, Attempt attempt, Optional<PriceBound> prices) {
    BackwardSearch search = new BackwardSearch(problem, legs, states, prices, effort);
    Optional<Found> found = search.run(attempt.floor() + by);
    found.ifPresent(attempt::offer);
    attempt.bound = Math.min(attempt.bound, search.droppedBound());
    spent += search.expanded();
    return found.isPresent();
  }

  private Optional<Found> full() {
    return full(Leeway.NONE).or(() -> full(Leeway.STOP_SHORT));
  }

  private Optional<Found> full(Leeway leeway) {
    return new BackwardSearch(problem, legs(leeway), FULL, effort).run(Double.NEGATIVE_INFINITY);
  }

  private List<Leg> legs(Leeway leeway) {
    List<Leg> legs = new ArrayList<>();
    runs.forEach(run -> legs.add(FullLeg.of(run.coffee(), run.run(), run.orders(), leeway)));
    return legs;
  }

  /** As many batches of each kind as were found for each run, levelled. */
  private Optional<List<Sizing>> levelled(Found full) {
    List<Sizing> sizings = new ArrayList<>();
    for (RunOfCoffee run : runs) {
      long[] counts = new long[problem.kinds().size()];
      for (TimedBatch batch : full.batches()) {
        if (run.isServedBy(batch)) {
          counts[batch.kind()]++;
        }
      }
      Sizing.levelled(run.steps(), counts, run.orders().doses()).ifPresent(sizings::add);
    }
    return sizings.size() == runs.size() ? Optional.of(sizings) : Optional.empty();
  }

  /** Each run's batches as they were found: what each serves stays. */
  private List<Leg> asFound(Found full) {
    List<Leg> legs = new ArrayList<>();
    for (RunOfCoffee run : runs) {
      List<Double> grams =
          full.batches().stream()
              .filter(batch -> run.isServedBy(batch))
              .sorted(Comparator.comparingInt(TimedBatch::ready))
              .map(TimedBatch::drawnGrams)
              .toList();
      legs.add(
          new FixedLeg(
              run.coffee(), run.run(), grams, run.orders().doses(), run.orders().gramsPerStep()));
    }
    return legs;
  }

  private RunSolution solution(Attempt attempt, boolean fewest) {
    Found found = attempt.best.orElseThrow();
    double latest = 0;
    for (RunOfCoffee run : runs) {
      for (Order order : run.run().orders()) {
        latest += order.grams() * order.latestReady();
      }
    }
    double bound = Math.max(found.value(), attempt.bound);
    boolean proven = bound <= found.value() + 1e-6 * Math.max(1, Math.abs(found.value()));
    return new RunSolution(
        found.batches(),
        latest - found.value(),
        new Proof(fewest, proven, Math.max(0, latest - bound)));
  }
}
