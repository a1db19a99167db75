package dev.urnwright.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.problem.Checked;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every event file that we ship can be read and planned. */
class SamplesTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "samples/autumn-conference.yaml",
        "samples/harvest-supper.yaml",
        "samples/corner-cafe.yaml",
        "samples/office-carafes.yaml",
        "templates/event.yaml"
      })
  void canBePlanned(String file) {
    Checked<Event> event = new EventReader().read(Path.of(file));
    assertEquals(List.of(), event.problems());
    Checked<Plan> plan = new Planner().plan(event.value().orElseThrow());
    assertEquals(List.of(), plan.problems());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "samples/harvest-supper.yaml",
        "samples/corner-cafe.yaml",
        "samples/office-carafes.yaml",
        "templates/event.yaml"
      })
  void hasEnoughDispensersAndSafeCircuits(String file) {
    Event event = new EventReader().read(Path.of(file)).value().orElseThrow();
    Plan plan = new Planner().plan(event).value().orElseThrow();
    assertTrue(
        plan.cautions().stream()
            .noneMatch(caution -> List.of("refill", "circuit").contains(caution.code())),
        plan.cautions()::toString);
  }

  @Test
  void theOneTooTightCanBeReadAllTheSame() {
    assertEquals(List.of(), new EventReader().read(Path.of("samples/too-tight.yaml")).problems());
  }
}
