package dev.urnwright.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.problem.Checked;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanWorkbookTest {
  @Test
  void everyCellShowsWhatItsFormulaGives() {
    int planned = 0;
    for (long seed = 1; seed <= 12; seed++) {
      Checked<Plan> plan = new Planner().plan(new RandomEvents(seed, seed, false).next());
      if (plan.value().isEmpty()) {
        continue;
      }
      planned++;
      // Between two degrees the table of densities is straight: 2e-6 of a mass at most.
      List<String> differences = Recalculation.of(plan.value().get()).differences(1e-5, 1e-7);
      assertEquals(List.of(), differences.stream().limit(8).toList(), "seed " + seed);
    }
    assertTrue(planned >= 8, "only " + planned + " of the random events could be planned");
  }
}
