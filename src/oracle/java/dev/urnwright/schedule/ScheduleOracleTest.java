package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.ortools.sat.CpSolverStatus;
import dev.urnwright.schedule.BackwardSearch.Found;
import dev.urnwright.schedule.RunInstances.Sized;
import dev.urnwright.schedule.SolverModel.Answer;
import dev.urnwright.schedule.SolverModel.Service;
import dev.urnwright.schedule.SolverModel.Size;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The search finds what CP-SAT finds, on batches of given sizes. */
class ScheduleOracleTest {
  private static final int INSTANCES = 300;

  @ParameterizedTest(name = "mixed: {0}")
  @ValueSource(booleans = {false, true})
  void sameOptimum(boolean mixed) {
    int done = 0;
    for (int seed = 1; seed <= INSTANCES; seed++) {
      Sized sized = RunInstances.sized(seed, mixed);
      Answer answer = SolverModel.solve(sized.problem(), services(sized), 60);
      Optional<Found> found = RunInstances.search(sized);
      assertEquals(answer.status() == CpSolverStatus.OPTIMAL, found.isPresent(), "seed " + seed);
      if (found.isPresent()) {
        double wait = RunInstances.latest(sized.problem()) - found.get().value();
        assertEquals(answer.leastWait(), wait, 1e-3, "seed " + seed);
        done++;
      }
    }
    assertTrue(done > INSTANCES / 3, "too few that can be done: " + done);
  }

  @Test
  void sameOptimumForADayOfEqualBatches() {
    int compared = 0;
    for (int seed = 1; seed <= 20; seed++) {
      RunProblem problem = RunInstances.equalThree(seed);
      RunSolution solution = RunScheduler.solve(problem).orElseThrow();
      if (SolverSizes.areWhole(problem, solution)) {
        Answer answer = SolverModel.solve(problem, SolverSizes.of(problem, solution), 60);
        assertEquals(CpSolverStatus.OPTIMAL, answer.status(), "seed " + seed);
        assertEquals(answer.leastWait(), solution.waitGramMinutes(), 1e-3, "seed " + seed);
        compared++;
      }
    }
    assertTrue(compared > 3, "too few compared: " + compared);
  }

  private static List<Service> services(Sized sized) {
    List<Service> services = new ArrayList<>();
    for (int coffee = 0; coffee < sized.sizings().size(); coffee++) {
      List<Size> sizes =
          sized.sizings().get(coffee).classes().stream()
              .map(c -> new Size(c.dose(0), c.count(), Arrays.stream(c.kinds()).boxed().toList()))
              .toList();
      List<Order> orders = RunAudit.inDueOrder(sized.problem().coffees().get(coffee).orders());
      services.add(new Service(coffee, orders, sizes, false));
    }
    return services;
  }
}
