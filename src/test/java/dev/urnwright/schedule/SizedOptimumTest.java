package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.BackwardSearch.Found;
import dev.urnwright.schedule.ExhaustiveRun.Group;
import dev.urnwright.schedule.ExhaustiveRun.Service;
import dev.urnwright.schedule.RunInstances.Sized;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Batches of given sizes wait no longer than they must. */
class SizedOptimumTest {
  private static final int SEEDS = 400;
  private static final int TRIED = 120; // by trying everything, which takes its time

  @ParameterizedTest(name = "mixed: {0}")
  @ValueSource(booleans = {false, true})
  void isThatOfTryingEverything(boolean mixed) {
    int done = 0;
    for (int seed = 1; seed <= TRIED; seed++) {
      Sized sized = RunInstances.sized(seed, mixed);
      OptionalDouble least = ExhaustiveRun.leastWait(sized.problem(), services(sized));
      BackwardSearch search = new BackwardSearch(sized.problem(), RunInstances.legs(sized), 2000);
      Optional<Found> found = search.run(Double.NEGATIVE_INFINITY);
      assertEquals(least.isPresent(), found.isPresent(), "seed " + seed);
      if (found.isPresent()) {
        assertTrue(search.droppedBound() <= found.get().value(), "seed " + seed);
        double wait = RunInstances.latest(sized.problem()) - found.get().value();
        assertEquals(least.getAsDouble(), wait, 1e-3, "seed " + seed);
        done++;
      }
    }
    assertTrue(done > TRIED / 3, "too few that can be done: " + done);
  }

  @Test
  void moreBrewersAreNeverWorse() {
    neverWorse(
        p ->
            new RunProblem(
                p.coffees(),
                p.kinds().stream()
                    .map(
                        k ->
                            new Kind(
                                k.units() + 1,
                                k.brewMinutes(),
                                k.turnaroundMinutes(),
                                k.watts(),
                                k.circuit()))
                    .toList(),
                p.circuitWatts(),
                p.earliestStart()));
  }

  @Test
  void noCircuitIsNeverWorse() {
    neverWorse(
        p ->
            new RunProblem(
                p.coffees(),
                p.kinds().stream()
                    .map(
                        k ->
                            new Kind(
                                k.units(), k.brewMinutes(), k.turnaroundMinutes(), k.watts(), -1))
                    .toList(),
                p.circuitWatts(),
                p.earliestStart()));
  }

  @Test
  void aLongerHoldIsNeverWorse() {
    neverWorse(
        p ->
            new RunProblem(
                p.coffees().stream()
                    .map(
                        c ->
                            new CoffeeOrders(
                                c.orders().stream()
                                    .map(
                                        o ->
                                            new Order(
                                                o.id(),
                                                o.grams(),
                                                o.earliestReady() - 6,
                                                o.latestReady()))
                                    .toList(),
                                c.gramsPerStep(),
                                c.doses()))
                    .toList(),
                p.kinds(),
                p.circuitWatts(),
                p.earliestStart()));
  }

  /** And better at least once, so that the change is one. */
  private static void neverWorse(UnaryOperator<RunProblem> change) {
    int better = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      Sized sized = RunInstances.sized(seed, seed % 2 == 0);
      Optional<Found> before = RunInstances.search(sized);
      Optional<Found> after =
          RunInstances.search(new Sized(change.apply(sized.problem()), sized.sizings()));
      double was = before.map(Found::value).orElse(Double.NEGATIVE_INFINITY);
      double is = after.map(Found::value).orElse(Double.NEGATIVE_INFINITY);
      assertTrue(is >= was, "seed " + seed + ": " + was + ", then " + is);
      better += is > was ? 1 : 0;
    }
    assertTrue(better > 0);
  }

  static List<Service> services(Sized sized) {
    List<Service> services = new ArrayList<>();
    for (int coffee = 0; coffee < sized.sizings().size(); coffee++) {
      List<Group> groups =
          sized.sizings().get(coffee).classes().stream()
              .map(
                  c ->
                      new Group(
                          LongStream.of(c.doses()).boxed().toList(),
                          Arrays.stream(c.kinds()).boxed().toList()))
              .toList();
      services.add(
          new Service(
              coffee, RunAudit.inDueOrder(sized.problem().coffees().get(coffee).orders()), groups));
    }
    return services;
  }
}
