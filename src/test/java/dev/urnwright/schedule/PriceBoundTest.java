package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.BackwardSearch.Found;
import dev.urnwright.schedule.RunInstances.Sized;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the prices say can't be reached isn't, and what they leave out isn't missed. */
class PriceBoundTest {
  private static final int SEEDS = 400;
  private static final int TRIED = 120; // by trying everything, which takes its time

  @ParameterizedTest(name = "mixed: {0}")
  @ValueSource(booleans = {false, true})
  void noPricesPromiseLessThanTryingEverythingFinds(boolean mixed) {
    int done = 0;
    int closer = 0;
    for (int seed = 1; seed <= TRIED; seed++) {
      Sized sized = RunInstances.sized(seed, mixed);
      RunProblem problem = sized.problem();
      OptionalDouble wait = ExhaustiveRun.leastWait(problem, SizedOptimumTest.services(sized));
      if (wait.isPresent()) {
        double latest = RunInstances.latest(problem);
        double value = latest - wait.getAsDouble();
        List<Leg> legs = RunInstances.legs(sized);
        double good = Pricing.of(problem, legs, value, 400).ofAll();
        assertTrue(good >= value - 1e-3, "seed " + seed + ": " + good + " < " + value);
        for (int i = 0; i < 5; i++) {
          double any = new PriceBound(problem, legs, anyPrices(problem, seed * 10 + i)).ofAll();
          assertTrue(any >= value - 1e-3, "seed " + seed + ": " + any + " < " + value);
        }
        PriceBound prices = Pricing.of(problem, legs, value, 4000);
        assertEquals(value, search(problem, legs, prices, value - 60).orElseThrow().value(), 1e-3);
        assertTrue(search(problem, legs, prices, value + 0.5).isEmpty(), "seed " + seed);
        done++;
        closer += good < latest - 1 ? 1 : 0;
      }
    }
    assertTrue(done > TRIED / 3, "too few that can be done: " + done);
    assertTrue(closer > TRIED / 10, "too few where prices say anything: " + closer);
  }

  /** With good prices and with bad ones, and told beforehand how good the best is. */
  @ParameterizedTest(name = "mixed: {0}")
  @ValueSource(booleans = {false, true})
  void aSearchWithPricesFindsTheSame(boolean mixed) {
    int fewer = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      Sized sized = RunInstances.sized(seed, mixed);
      Optional<Found> plain = RunInstances.search(sized);
      if (plain.isPresent()) {
        double value = plain.get().value();
        List<Leg> legs = RunInstances.legs(sized);
        PriceBound good = Pricing.of(sized.problem(), legs, value, 400);
        PriceBound any = new PriceBound(sized.problem(), legs, anyPrices(sized.problem(), seed));
        for (PriceBound bound : List.of(good, any)) {
          BackwardSearch search =
              new BackwardSearch(sized.problem(), legs, 2000, Optional.of(bound));
          Found found = search.run(value).orElseThrow();
          assertEquals(value, found.value(), 1e-3, "seed " + seed);
          assertEquals(plain.get().firstStart(), found.firstStart(), "seed " + seed);
        }
        fewer +=
            states(sized, Optional.of(good), value) < states(sized, Optional.empty(), value)
                ? 1
                : 0;
      }
    }
    assertTrue(fewer > SEEDS / 20, "too few that prices shorten: " + fewer);
  }

  private static Optional<Found> search(
      RunProblem problem, List<Leg> legs, PriceBound prices, double floor) {
    return new BackwardSearch(problem, legs, 2000, Optional.of(prices)).run(floor);
  }

  /** Bounds are lowered to multiples of the measure, so every batch must be one. */
  @ParameterizedTest(name = "mixed: {0}")
  @ValueSource(booleans = {false, true})
  void eachBatchToComeIsAMultipleOfTheMeasure(boolean mixed) {
    int measured = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      for (Leg leg : RunInstances.legs(RunInstances.sized(seed, mixed))) {
        long[] progress = new long[leg.numbers()];
        List<Double> measures = new ArrayList<>();
        while (!leg.isDone(progress, 0)) {
          measures.add(leg.measure(progress, 0));
          Leg.Choice choice = leg.choices(progress, 0).get(0);
          for (double measure : measures) {
            double times = measure == 0 ? 0 : choice.grams() / measure;
            assertEquals(Math.rint(times), times, 1e-9, "seed " + seed);
            measured += measure > 0 ? 1 : 0;
          }
          progress[choice.number()] += choice.by();
        }
      }
    }
    assertTrue(measured > SEEDS || mixed, "too few with a measure: " + measured);
  }

  private static long states(Sized sized, Optional<PriceBound> prices, double floor) {
    BackwardSearch search =
        new BackwardSearch(sized.problem(), RunInstances.legs(sized), 2000, prices);
    search.run(floor);
    return search.expanded();
  }

  private static Prices anyPrices(RunProblem problem, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int minutes = 50 - problem.earliestStart(); // all is due by 45, and two minutes' turnaround
    double[][] unit = new double[problem.kinds().size()][minutes];
    double[][] power = new double[problem.kinds().size()][minutes];
    for (int kind = 0; kind < unit.length; kind++) {
      int which = kind;
      boolean isLimited =
          CircuitLoads.of(problem).stream()
              .anyMatch(circuit -> IntStream.of(circuit.kinds()).anyMatch(k -> k == which));
      for (int i = 0; i < minutes; i++) {
        unit[kind][i] = random.nextInt(3) * random.nextInt(60);
        power[kind][i] = isLimited ? random.nextInt(3) * random.nextInt(60) : 0;
      }
    }
    return new Prices(problem, problem.earliestStart(), unit, power);
  }
}
