package dev.urnwright.cli;

import dev.urnwright.input.EventFile;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.problem.Checked;
import java.nio.file.Path;

/** From a file to its plan. */
final class Planning {
  private Planning() {}

  /** The plan of the event in the file, or all that is wrong with either. */
  static Checked<Plan> plan(Path file) {
    return plan(EventFiles.open(file));
  }

  /** The plan of an event that was opened. */
  static Checked<Plan> plan(Checked<EventFile> event) {
    return event.value().isPresent()
        ? new Planner().plan(event.value().get().event())
        : Checked.refused(event.problems());
  }
}
