package dev.urnwright.cli;

import dev.urnwright.event.Event;
import dev.urnwright.input.EventReader;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.problem.Checked;
import java.nio.file.Path;

/** From a file to its plan. */
final class Planning {
  private Planning() {}

  /** The plan of the event in the file, or all that is wrong with either. */
  static Checked<Plan> plan(Path file) {
    Checked<Event> event = new EventReader().read(file);
    return event.value().isPresent()
        ? new Planner().plan(event.value().get())
        : Checked.refused(event.problems());
  }
}
