package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.BackwardSearch.Found;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunProblem.Kind;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import dev.urnwright.schedule.Sizing.SizeClass;
import dev.urnwright.schedule.TinyRuns.Tiny;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a search needn't look at, and what it keeps when it can't look at all. */
class BackwardSearchTest {
  private static final double ANY = Double.NEGATIVE_INFINITY;

  /** Batches of one coffee, the first due first; 10 g for each step. */
  private record Coffee(int steps, int[] kinds, int[] due) {}

  private static BackwardSearch search(
      int width, List<Kind> kinds, double watts, Coffee... coffees) {
    return search(width, kinds, watts, 0, 0, coffees);
  }

  /** With prices that were looked for in so many rounds; 0 for none. */
  private static BackwardSearch search(
      int width, List<Kind> kinds, double watts, int earliestStart, int rounds, Coffee... coffees) {
    List<CoffeeOrders> all = new ArrayList<>();
    List<Leg> legs = new ArrayList<>();
    for (Coffee coffee : coffees) {
      int grams = coffee.steps() * 10;
      List<Order> orders =
          IntStream.of(coffee.due()).mapToObj(due -> new Order("F", grams, -50, due)).toList();
      List<DoseRange> ranges = kinds.stream().map(kind -> RunInstances.range(1, 99)).toList();
      long[] doses = new long[orders.size()];
      Arrays.fill(doses, coffee.steps());
      Sizing sizing = new Sizing(List.of(new SizeClass(doses, coffee.kinds())));
      legs.add(new SizedLeg(all.size(), new OrderBook.Run(orders), sizing, 10));
      all.add(new CoffeeOrders(orders, 10, ranges));
    }
    RunProblem problem = new RunProblem(all, kinds, List.of(watts), earliestStart);
    return new BackwardSearch(
        problem,
        legs,
        width,
        rounds == 0 ? Optional.empty() : Optional.of(Pricing.of(problem, legs, 0, rounds)));
  }

  private static Kind kind(int units, int brewMinutes, int circuit) {
    return new Kind(units, brewMinutes, 1, 1000, circuit);
  }

  /** Nothing is to be decided, so each batch takes one look, even where each has to wait. */
  @Test
  void equalBatchesOnEqualBrewersTakeOneLookEach() {
    BackwardSearch search =
        search(
            99,
            List.of(kind(2, 5, -1)),
            0,
            new Coffee(5, new int[] {0}, new int[] {30, 31, 31, 32, 32}));
    assertTrue(search.run(ANY).isPresent());
    assertEquals(5, search.expanded());
  }

  /**
   * Each batch may go to either kind, but is over, with its brewer, before the one before it is
   * due: then it doesn't matter any more where it was.
   */
  @Test
  void whatIsOverIsForgotten() {
    BackwardSearch search =
        search(
            99,
            List.of(kind(1, 5, -1), kind(1, 5, -1)),
            0,
            new Coffee(5, new int[] {0, 1}, new int[] {10, 20, 30, 40}));
    assertEquals(50 * 100, search.run(ANY).orElseThrow().value());
    assertEquals(4, search.expanded());
  }

  /**
   * Two coffees with brewers of their own, at different minutes: the later one always goes first.
   */
  @Test
  void coffeesThatDontTouchTakeOneLookForEachBatch() {
    BackwardSearch search =
        search(
            99,
            List.of(kind(1, 5, -1), kind(1, 5, -1)),
            0,
            new Coffee(5, new int[] {0}, new int[] {11, 21, 31}),
            new Coffee(5, new int[] {1}, new int[] {14, 24, 34}));
    assertEquals(50 * (63 + 72), search.run(ANY).orElseThrow().value());
    assertEquals(6, search.expanded());
  }

  /** Its brewer isn't done by then, however the other coffee's three batches are placed. */
  @Test
  void aCoffeeThatCantBeBrewedEndsTheSearchAtOnce() {
    BackwardSearch search =
        search(
            99,
            List.of(kind(1, 5, -1), kind(1, 15, -1)),
            0,
            new Coffee(5, new int[] {0}, new int[] {30, 40, 50}),
            new Coffee(5, new int[] {1}, new int[] {14}));
    assertTrue(search.run(ANY).isEmpty());
    assertEquals(1, search.expanded());
  }

  /** 1000 W on a circuit of 999 W, at whatever time. */
  @Test
  void aBrewerTooStrongForItsCircuitIsNoBrewer() {
    Coffee coffee = new Coffee(5, new int[] {0}, new int[] {30});
    List<Kind> one = List.of(kind(1, 5, 0));
    assertTrue(search(99, one, 999, -2_000_000, 0, coffee).run(ANY).isEmpty());
    assertTrue(search(99, one, 1000, -2_000_000, 0, coffee).run(ANY).isPresent());
  }

  /** What can't exceed the floor isn't looked at: 50 g at 10, 20 and 30 are 3000 gram-minutes. */
  @Test
  void whatCantExceedTheFloorIsLeftOut() {
    Coffee coffee = new Coffee(5, new int[] {0}, new int[] {10, 20, 30});
    BackwardSearch high = search(99, List.of(kind(1, 5, -1)), 0, coffee);
    assertTrue(high.run(3001).isEmpty());
    assertEquals(1, high.expanded());
    assertTrue(search(99, List.of(kind(1, 5, -1)), 0, coffee).run(3000).isPresent());
  }

  /**
   * One brewer for two batches, so the second is ready 6 minutes before the first. Of 40 g due at
   * 20 and 50 g due at 18, the former first can't exceed 20 and 18, the latter first 18 and 18. So
   * that is dropped, though it is worth more so far, whichever coffee is named first.
   */
  @Test
  void ofFewTheMostPromisingIsKept() {
    Coffee late = new Coffee(4, new int[] {0}, new int[] {20});
    Coffee early = new Coffee(5, new int[] {0}, new int[] {18});
    for (Coffee[] coffees : new Coffee[][] {{late, early}, {early, late}}) {
      BackwardSearch search = search(1, List.of(kind(1, 5, -1)), 0, coffees);
      Found found = search.run(ANY).orElseThrow();
      assertEquals(40 * 20 + 50 * 14, found.value());
      assertEquals(90 * 18, search.droppedBound());
    }
  }

  /** Both due at 20, both can't exceed 20: the one with more grams is worth more. */
  @Test
  void ofEqualPromiseWhatIsWorthMoreIsKept() {
    Coffee heavy = new Coffee(6, new int[] {0}, new int[] {20});
    Coffee light = new Coffee(5, new int[] {0}, new int[] {20});
    for (Coffee[] coffees : new Coffee[][] {{heavy, light}, {light, heavy}}) {
      BackwardSearch search = search(1, List.of(kind(1, 5, -1)), 0, coffees);
      assertEquals(60 * 20 + 50 * 14, search.run(ANY).orElseThrow().value());
      assertEquals(110 * 20, search.droppedBound());
    }
  }

  /** Of equal worth too, the one that starts later: the circuit is free again for it sooner. */
  @Test
  void ofEqualWorthTheLaterStartIsKept() {
    Coffee quick = new Coffee(5, new int[] {0}, new int[] {20});
    Coffee slow = new Coffee(5, new int[] {1}, new int[] {20});
    List<Kind> kinds = List.of(kind(1, 3, 0), kind(1, 6, 0));
    for (Coffee[] coffees : new Coffee[][] {{quick, slow}, {slow, quick}}) {
      Found found = search(1, kinds, 1000, coffees).run(ANY).orElseThrow();
      assertEquals(50 * (20 + 17), found.value());
      assertEquals(11, found.firstStart());
    }
  }

  /** As many as are kept: none is dropped. */
  @Test
  void whatFitsIsKept() {
    Coffee late = new Coffee(5, new int[] {0}, new int[] {20});
    Coffee early = new Coffee(5, new int[] {0}, new int[] {18});
    BackwardSearch search = search(2, List.of(kind(1, 5, -1)), 0, late, early);
    assertTrue(search.run(ANY).isPresent());
    assertEquals(ANY, search.droppedBound());
    assertEquals(3, search.expanded());
  }

  /** Where prices prove the best, a search for what is better stops at the first batch. */
  @Test
  void goodPricesEndASearchForMoreAtOnce() {
    int told = 0;
    long without = 0;
    for (int seed = 1; seed <= 60; seed++) {
      Tiny tiny = TinyRuns.of(seed);
      Optional<Found> best = new BackwardSearch(tiny.problem(), tiny.legs(), 1000).run(ANY);
      if (best.isPresent()) {
        double value = best.get().value();
        PriceBound good = Pricing.of(tiny.problem(), tiny.legs(), value, 400);
        if (good.ofAll() < value + 0.9) {
          BackwardSearch more =
              new BackwardSearch(tiny.problem(), tiny.legs(), 1000, Optional.of(good));
          assertTrue(more.run(value + 1).isEmpty());
          assertEquals(1, more.expanded(), "seed " + seed);
          BackwardSearch plain = new BackwardSearch(tiny.problem(), tiny.legs(), 1000);
          plain.run(value + 1);
          without += plain.expanded();
          told++;
        }
      }
    }
    assertTrue(told > 20 && without > told, told + ", without prices " + without);
  }

  /**
   * All batches are of 50 g, so whatever comes is a multiple of 50 gram-minutes; and so are bounds
   * by prices, though these are worth fractions of a gram.
   */
  @Test
  void boundsAreLoweredToWhatBatchesCanReach() {
    int dropped = 0;
    for (int seed = 1; seed <= 10; seed++) {
      List<Kind> kinds = List.of(kind(1, 5, 0), kind(2, 7, 0));
      Coffee[] coffees = {
        new Coffee(5, new int[] {0, 1}, new int[] {17, 20, 24}),
        new Coffee(5, new int[] {0, 1}, new int[] {18, 19, 25})
      };
      int rounds = 10 * seed;
      double best = search(9999, kinds, 2000, coffees).run(ANY).orElseThrow().value();
      BackwardSearch narrow = search(1, kinds, 2000, 0, rounds, coffees);
      double reached = narrow.run(ANY).map(Found::value).orElse(ANY);
      double bound = narrow.droppedBound();
      assertTrue(Math.max(reached, bound) >= best, "seed " + seed);
      assertEquals(Math.rint(bound / 50) * 50, bound, 1e-6, "seed " + seed);
      dropped += bound < 50 * 123 ? 1 : 0;
    }
    assertTrue(dropped > 2, "too few below the due times: " + dropped);
  }

  /** 40 g and 60 g have no measure in common but 20, which isn't looked for: bounds stay. */
  @Test
  void batchesOfDifferentMeasuresLeaveBoundsAsTheyAre() {
    int odd = 0;
    for (int seed = 1; seed <= 10; seed++) {
      List<Kind> kinds = List.of(kind(1, 5, 0), kind(2, 7, 0));
      Coffee[] coffees = {
        new Coffee(4, new int[] {0, 1}, new int[] {17, 20, 24}),
        new Coffee(6, new int[] {0, 1}, new int[] {18, 19, 25})
      };
      int rounds = 10 * seed;
      double best = search(9999, kinds, 2000, coffees).run(ANY).orElseThrow().value();
      assertEquals(
          best, search(9999, kinds, 2000, 0, rounds, coffees).run(best).orElseThrow().value());
      BackwardSearch narrow = search(1, kinds, 2000, 0, rounds, coffees);
      double reached = narrow.run(ANY).map(Found::value).orElse(ANY);
      assertTrue(Math.max(reached, narrow.droppedBound()) >= best, "seed " + seed);
      odd += narrow.droppedBound() % 20 == 0 ? 0 : 1;
    }
    assertTrue(odd > 2, "bounds are whole all the same: " + odd);
  }

  /** One batch to be tried: one number of one leg, and one brewer. That costs 1 + 1 + 1. */
  @Test
  void aSearchEndsWhenItsEffortIsSpent() {
    List<Order> orders = List.of(new Order("F", 50, 0, 30));
    List<DoseRange> ranges = List.of(RunInstances.range(1, 9));
    RunProblem problem =
        new RunProblem(
            List.of(new CoffeeOrders(orders, 10, ranges)), List.of(kind(1, 5, -1)), List.of(), 0);
    List<Leg> legs = List.of(new FixedLeg(0, new OrderBook.Run(orders), List.of(50.0), ranges, 10));
    assertTrue(new BackwardSearch(problem, legs, 9, Effort.of(4)).run(ANY).isPresent());
    assertTrue(new BackwardSearch(problem, legs, 9, Effort.of(3)).run(ANY).isEmpty());
  }

  /** Two brewers: the third batch goes to the one that is done first, 6 minutes before. */
  @Test
  void batchesAreNamedAndTimed() {
    Found found =
        search(9, List.of(kind(2, 5, -1)), 0, new Coffee(5, new int[] {0}, new int[] {30, 30, 30}))
            .run(ANY)
            .orElseThrow();
    assertEquals(List.of(19, 25, 25), found.batches().stream().map(TimedBatch::start).toList());
    assertEquals(List.of(24, 30, 30), found.batches().stream().map(TimedBatch::ready).toList());
    assertEquals(19, found.firstStart());
    assertEquals(50 * 84, found.value());
  }
}
