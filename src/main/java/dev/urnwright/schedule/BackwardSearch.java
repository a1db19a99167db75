package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.Kind;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The best places on the clock for batches whose sizes are decided: least waiting, then latest
 * start.
 *
 * <p>Time runs backward. Batches are placed in the order of falling ready times, and each is made
 * ready as late as its orders, a free brewer and its circuit allow; a batch that could be later
 * without moving another could be so without harm, so nothing better is missed. What is left to
 * decide is which coffee and which kind of brewer comes next. That is searched layer by layer, one
 * batch a layer, as a dynamic programme: of two states with the same batches placed, the one whose
 * brewers are free no later and whose waiting is no less is dropped.
 *
 * <p>For equal batches on equal brewers there is nothing to decide and the search is the plain
 * backward pass. States beyond {@link #width} in a layer are dropped, the least promising first;
 * the best bound among them then stands for what might have been missed. Where brewers and power
 * are much wanted at once, a {@link PriceBound} sees further than the due times do.
 */
final class BackwardSearch {
  static final int FREE = Integer.MAX_VALUE / 4;
  static final double SAME = 1e-6;

  /** What a gram that nobody brews counts, in minutes of waiting: more than any that is brewed. */
  private static final double MISSED = 10 * 24 * 60;

  private final RunProblem problem;
  private final List<Leg> legs;
  private final int[] offsets; // of each leg's numbers in a state's progress
  private final int numbers;
  private final int[][] legsOfCoffee; // in time order
  private final int[] firstUnit; // of each kind in a state's free
  private final int units;
  private final int width;
  private final Contention contention;
  private final BrewerNames names;
  private final Optional<PriceBound> prices;
  private final Effort effort;

  private static final Comparator<SearchState> BETTER =
      Comparator.comparingDouble((SearchState state) -> state.value)
          .thenComparingInt(state -> state.firstStart);

  private double incumbent = Double.NEGATIVE_INFINITY;
  private double dropped = Double.NEGATIVE_INFINITY;
  private long expanded;

  /**
   * What a search found.
   *
   * @param batches on the clock
   * @param value gram-minutes of ready times; the more, the less waiting
   * @param firstStart minute
   * @param leftOut orders that no batch serves, where legs let go of some
   */
  record Found(List<TimedBatch> batches, double value, int firstStart, List<Order> leftOut) {}

  BackwardSearch(RunProblem problem, List<Leg> legs, int width) {
    this(problem, legs, width, Optional.empty(), Effort.unlimited());
  }

  BackwardSearch(RunProblem problem, List<Leg> legs, int width, Effort effort) {
    this(problem, legs, width, Optional.empty(), effort);
  }

  BackwardSearch(RunProblem problem, List<Leg> legs, int width, Optional<PriceBound> prices) {
    this(problem, legs, width, prices, Effort.unlimited());
  }

  /**
   * A search.
   *
   * @param width states kept in a layer
   * @param prices by which states are bounded, besides by when their orders are due
   * @param effort that is left for it; once that is spent, it finds nothing
   */
  BackwardSearch(
      RunProblem problem, List<Leg> legs, int width, Optional<PriceBound> prices, Effort effort) {
    this.prices = prices;
    this.effort = effort;
    this.problem = problem;
    this.legs = legs;
    this.width = width;
    this.offsets = new int[legs.size()];
    int offset = 0;
    for (int leg = 0; leg < legs.size(); leg++) {
      offsets[leg] = offset;
      offset += legs.get(leg).numbers();
    }
    this.numbers = offset;
    this.legsOfCoffee = new int[problem.coffees().size()][];
    for (int coffee = 0; coffee < legsOfCoffee.length; coffee++) {
      int which = coffee;
      legsOfCoffee[coffee] =
          IntStream.range(0, legs.size()).filter(leg -> legs.get(leg).coffee() == which).toArray();
    }
    this.firstUnit = new int[problem.kinds().size() + 1];
    for (int kind = 0; kind < problem.kinds().size(); kind++) {
      firstUnit[kind + 1] = firstUnit[kind] + problem.kinds().get(kind).units();
    }
    this.units = firstUnit[problem.kinds().size()];
    this.contention = new Contention(problem);
    this.names = new BrewerNames(problem);
  }

  /**
   * Searches.
   *
   * @param floor gram-minutes that a schedule must exceed to be of interest
   */
  Optional<Found> run(double floor) {
    incumbent = floor;
    boolean maySkip = legs.stream().anyMatch(Leg::letsGo);
    Optional<SearchState> best = Optional.empty();
    List<SearchState> layer = List.of(root());
    while (!layer.isEmpty() && !effort.isSpent()) {
      best = Stream.concat(best.stream(), layer.stream().filter(this::isDone)).max(BETTER);
      if (best.isPresent() && !maySkip) {
        break;
      }
      // Where orders may be let go, those who let go of more are done first.
      best.ifPresent(state -> incumbent = Math.max(incumbent, state.value));
      Map<SearchState.Progress, List<SearchState>> next = new HashMap<>();
      expanded += layer.size();
      layer.forEach(state -> expand(state, next));
      layer = narrowed(next.values());
    }
    if (best.isEmpty() && effort.isSpent()) {
      dropped = Double.POSITIVE_INFINITY; // nobody knows what was missed
    }
    return best.map(this::found);
  }

  private Found found(SearchState state) {
    return new Found(
        names.of(state.placements),
        state.value,
        state.firstStart,
        SearchState.LeftOut.orders(state.leftOut));
  }

  private boolean isDone(SearchState state) {
    return Arrays.stream(legsOfCoffee).allMatch(ofCoffee -> current(state, ofCoffee) < 0);
  }

  /** How many states were looked at. */
  long expanded() {
    return expanded;
  }

  /** The best value that a dropped state might have reached; minus infinity when none was. */
  double droppedBound() {
    return dropped;
  }

  private SearchState root() {
    SearchState root = new SearchState(new long[numbers], new int[units]);
    Arrays.fill(root.free, FREE);
    root.last = FREE;
    return root;
  }

  private void expand(SearchState state, Map<SearchState.Progress, List<SearchState>> next) {
    List<SearchState> children = new ArrayList<>();
    for (int[] ofCoffee : legsOfCoffee) {
      int leg = current(state, ofCoffee);
      if (leg >= 0) {
        int before = children.size();
        children(state, leg, children);
        boolean stuck = children.size() == before; // its next batch can't be placed, now or later
        if (stuck || legs.get(leg).letsGoFreely()) {
          letGo(state, leg, next);
        }
        if (stuck) {
          return;
        }
      }
    }
    effort.spend((long) children.size() * (numbers + units + legs.size()));
    contention.settle(children);
    for (SearchState child : children) {
      settle(child);
      if (child.most >= incumbent - SAME) {
        child.joins(next.computeIfAbsent(child.key(), key -> new ArrayList<>()));
      }
    }
  }

  /** Goes on without the next order, where the leg lets go of it. */
  private void letGo(
      SearchState state, int leg, Map<SearchState.Progress, List<SearchState>> next) {
    legs.get(leg)
        .release(state.progress, offsets[leg])
        .ifPresent(
            released -> {
              SearchState child = state.without(released.order(), MISSED);
              child.progress[offsets[leg]] += released.by();
              settle(child);
              child.joins(next.computeIfAbsent(child.key(), key -> new ArrayList<>()));
            });
  }

  /** The last leg of a coffee that still has batches to place, or -1. */
  private int current(SearchState state, int[] ofCoffee) {
    for (int i = ofCoffee.length - 1; i >= 0; i--) {
      int leg = ofCoffee[i];
      if (!legs.get(leg).isDone(state.progress, offsets[leg])) {
        return leg;
      }
    }
    return -1;
  }

  private void children(SearchState state, int index, List<SearchState> children) {
    Leg leg = legs.get(index);
    for (Leg.Choice choice : leg.choices(state.progress, offsets[index])) {
      for (int kind : choice.kinds()) {
        int ready = latestReady(state, kind, Math.min(choice.latestReady(), state.last));
        int start = ready - problem.kinds().get(kind).brewMinutes();
        if (ready >= choice.earliestReady() && start >= problem.earliestStart()) {
          SearchState child = child(state, kind, start, ready);
          child.progress[offsets[index] + choice.number()] += choice.by();
          child.value = state.value + choice.grams() * ready;
          child.placements = new Placement(state.placements, leg, choice, kind, start, ready);
          children.add(child);
        }
      }
    }
  }

  /** The latest minute up to a limit at which a brewer of the kind and its circuit are free. */
  private int latestReady(SearchState state, int kind, int limit) {
    Kind brewer = problem.kinds().get(kind);
    int ready = Math.min(limit, state.free[firstUnit[kind]]);
    if (brewer.circuit() < 0) {
      return ready;
    }
    double spare = problem.circuitWatts().get(brewer.circuit()) - brewer.watts();
    if (spare < 0) {
      return Integer.MIN_VALUE / 2;
    }
    while (true) {
      // Brewers placed so far are ready at this minute or later: those that have started before it
      // draw most just before it, so that is the moment to look at.
      double load = 0;
      int nextStart = Integer.MIN_VALUE / 2;
      for (int k = 0; k < problem.kinds().size(); k++) {
        Kind other = problem.kinds().get(k);
        if (other.circuit() == brewer.circuit()) {
          for (int unit = firstUnit[k]; unit < firstUnit[k + 1]; unit++) {
            int start = state.free[unit] + other.turnaroundMinutes();
            if (start < ready) {
              load += other.watts();
              nextStart = Math.max(nextStart, start);
            }
          }
        }
      }
      if (load <= spare + SAME) {
        return ready;
      }
      ready = nextStart;
    }
  }

  private SearchState child(SearchState state, int kind, int start, int ready) {
    SearchState child = new SearchState(state.progress.clone(), state.free.clone());
    child.last = ready;
    child.firstStart = Math.min(state.firstStart, start);
    child.leftOut = state.leftOut;
    int from = firstUnit[kind];
    int to = firstUnit[kind + 1];
    int unit = to - 1; // the tightest fit keeps the freest brewers free
    while (child.free[unit] < ready) {
      unit--;
    }
    int free = start - problem.kinds().get(kind).turnaroundMinutes();
    while (unit + 1 < to && child.free[unit + 1] > free) {
      child.free[unit] = child.free[unit + 1];
      unit++;
    }
    child.free[Math.max(unit, from)] = free;
    return child;
  }

  /** Forgets what can't matter any more, and bounds what can still come of the state. */
  private void settle(SearchState state) {
    int due = Integer.MIN_VALUE;
    double bound = state.value;
    for (int[] ofCoffee : legsOfCoffee) {
      int current = current(state, ofCoffee);
      for (int leg : ofCoffee) {
        if (leg <= current) {
          bound += legs.get(leg).bound(state.progress, offsets[leg], state.last);
        }
      }
      if (current >= 0) {
        due = Math.max(due, legs.get(current).due(state.progress, offsets[current]));
      }
    }
    state.bound = bound;
    if (due > Integer.MIN_VALUE) {
      state.last = Math.min(state.last, due);
    }
    for (int unit = 0; unit < units; unit++) {
      state.free[unit] = Math.min(state.free[unit], state.last);
    }
    prices.ifPresent(by -> state.bound = Math.min(state.bound, bound(state, by)));
    state.most = prices.isPresent() ? reachable(state) : state.bound;
  }

  /** The bound, lowered to what batches of these grams can reach at whole minutes. */
  private double reachable(SearchState state) {
    double measure = 0;
    for (int leg = 0; leg < legs.size(); leg++) {
      if (!legs.get(leg).isDone(state.progress, offsets[leg])) {
        double here = legs.get(leg).measure(state.progress, offsets[leg]);
        if (here == 0 || (measure != 0 && measure != here)) {
          return state.bound;
        }
        measure = here;
      }
    }
    if (measure == 0) {
      return state.bound;
    }
    double more = Math.floor((state.bound - state.value) / measure + 1e-6) * measure;
    return Math.min(state.bound, state.value + more);
  }

  private double bound(SearchState state, PriceBound by) {
    double bound = state.value + by.ofCapacity(state.free, state.last);
    for (int[] ofCoffee : legsOfCoffee) {
      int current = current(state, ofCoffee);
      for (int leg : ofCoffee) {
        if (leg <= current) {
          double pieces = legs.get(leg).piecesLeft(state.progress, offsets[leg]);
          bound += by.ofLeg(leg, pieces, state.last);
        }
      }
    }
    return bound;
  }

  private List<SearchState> narrowed(Collection<List<SearchState>> groups) {
    List<SearchState> states = new ArrayList<>();
    groups.forEach(states::addAll);
    if (states.size() > width) {
      states.sort(
          Comparator.comparingDouble((SearchState s) -> s.bound)
              .thenComparingDouble(s -> s.value)
              .thenComparingInt(s -> s.firstStart)
              .reversed());
      states.stream().skip(width).forEach(state -> dropped = Math.max(dropped, state.most));
      return new ArrayList<>(states.subList(0, width));
    }
    return states;
  }
}
