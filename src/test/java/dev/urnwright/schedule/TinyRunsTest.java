package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.BackwardSearch.Found;
import dev.urnwright.schedule.ExhaustiveRun.Best;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import dev.urnwright.schedule.TinyRuns.PriceRows;
import dev.urnwright.schedule.TinyRuns.Tiny;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What the search finds is what trying everything finds; what it says of what it dropped holds. Few
 * and tiny problems, so that it is quick: {@link SizedOptimumTest} has larger ones.
 */
class TinyRunsTest {
  private static final int SEEDS = 300;
  private static final int WIDE = 1000;

  @Test
  void theBestIsFound() {
    int done = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      Tiny tiny = TinyRuns.of(seed);
      Optional<Best> best = ExhaustiveRun.best(tiny.problem(), tiny.services());
      compare(tiny, tiny.legs(), best, "seed " + seed);
      if (tiny.isOfSingleClasses()) {
        compare(tiny, tiny.fixedLegs(), best, "batch by batch, seed " + seed);
      }
      done += best.isPresent() ? 1 : 0;
    }
    assertTrue(done > SEEDS / 2, "too few that can be done: " + done);
  }

  private static void compare(Tiny tiny, List<Leg> legs, Optional<Best> best, String which) {
    BackwardSearch search = new BackwardSearch(tiny.problem(), legs, WIDE);
    Optional<Found> found = search.run(Double.NEGATIVE_INFINITY);
    assertEquals(best.isPresent(), found.isPresent(), which);
    if (best.isPresent()) {
      Found here = found.get();
      assertEquals(best.get().waited(), tiny.latest() - here.value(), 1e-6, which);
      assertEquals(best.get().firstStart(), here.firstStart(), which);
      assertEquals(
          here.firstStart(), here.batches().stream().mapToInt(TimedBatch::start).min().orElse(-1));
      assertEquals(Double.NEGATIVE_INFINITY, search.droppedBound(), which);
      assertEquals(List.of(), tiny.faults(here, here.value()), which);
    }
  }

  /** With few states kept, what is found may be worse or nothing; the bound still holds. */
  @Test
  void whatIsDroppedIsNoBetterThanItsBound() {
    int worse = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      Tiny tiny = TinyRuns.of(seed);
      Optional<Found> best = search(tiny, WIDE, Optional.empty(), Double.NEGATIVE_INFINITY);
      for (int width = 1; width <= 3 && best.isPresent(); width++) {
        BackwardSearch narrow = new BackwardSearch(tiny.problem(), tiny.legs(), width);
        Optional<Found> found = narrow.run(Double.NEGATIVE_INFINITY);
        double reached = found.map(Found::value).orElse(Double.NEGATIVE_INFINITY);
        double bound = Math.max(reached, narrow.droppedBound());
        assertTrue(reached <= best.get().value(), "seed " + seed);
        assertTrue(bound >= best.get().value(), "seed " + seed + ": " + bound);
        // One state at a time takes no more looks than there are batches.
        int batches = tiny.parts().stream().mapToInt(part -> part.sizing().count()).sum();
        assertTrue(narrow.expanded() <= (long) width * batches, "seed " + seed);
        if (found.isPresent()) {
          assertEquals(List.of(), tiny.faults(found.get(), bound), "seed " + seed);
        }
        worse += reached < best.get().value() ? 1 : 0;
      }
    }
    assertTrue(worse > 5, "too few that need more than a few states: " + worse);
  }

  /** With any prices, with good ones, and told beforehand how good the best is. */
  @Test
  void pricesAndFloorsMissNothing() {
    for (int seed = 1; seed <= SEEDS; seed++) {
      Tiny tiny = TinyRuns.of(seed);
      Optional<Found> best = search(tiny, WIDE, Optional.empty(), Double.NEGATIVE_INFINITY);
      if (best.isPresent()) {
        double value = best.get().value();
        String which = "seed " + seed;
        PriceBound good = Pricing.of(tiny.problem(), tiny.legs(), value, 100);
        PriceBound any = PriceRows.any(tiny.problem(), seed).bound(tiny.problem(), tiny.legs());
        for (Optional<PriceBound> prices :
            List.of(Optional.<PriceBound>empty(), Optional.of(good), Optional.of(any))) {
          prices.ifPresent(p -> assertTrue(p.ofAll() >= value - 1e-6, which));
          BackwardSearch narrow = new BackwardSearch(tiny.problem(), tiny.legs(), 1, prices);
          narrow.run(Double.NEGATIVE_INFINITY);
          double dropped = narrow.droppedBound(); // each state's, which is no more than that of all
          prices.ifPresent(p -> assertTrue(dropped <= p.ofAll() + 1e-6, which));
          Found same = search(tiny, WIDE, prices, value).orElseThrow();
          assertEquals(value, same.value(), 1e-6, which);
          assertEquals(best.get().firstStart(), same.firstStart(), which);
          assertTrue(search(tiny, WIDE, prices, value + 0.01).isEmpty(), which);
        }
      }
    }
  }

  private static Optional<Found> search(
      Tiny tiny, int width, Optional<PriceBound> prices, double floor) {
    return new BackwardSearch(tiny.problem(), tiny.legs(), width, prices).run(floor);
  }
}
