package dev.urnwright.cli;

import dev.urnwright.event.Event;
import dev.urnwright.input.EventFile;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.problem.Checked;
import java.nio.file.Path;
import java.util.Set;

/** From a file to its plan. */
final class Planning {
  private Planning() {}

  /**
   * The plan of the event in the file, or all that is wrong with either.
   *
   * @param learning which journal it is planned by, where it names one
   */
  static Checked<Plan> plan(Path file, LearningOptions learning) throws RefusedException {
    return plan(EventFiles.open(file), learning);
  }

  /**
   * The same, where sheets are made of it.
   *
   * @param languages those that sheets can be written in
   */
  static Checked<Plan> plan(Path file, Set<String> languages, LearningOptions learning)
      throws RefusedException {
    return plan(EventFiles.open(file, languages), learning);
  }

  /** The plan of an event that was opened, by what it says alone. */
  static Checked<Plan> plan(Checked<EventFile> event) {
    return event.value().isPresent()
        ? new Planner().plan(event.value().get().event())
        : Checked.refused(event.problems());
  }

  /** The plan of an event that was opened, or all that is wrong with either. */
  static Checked<Plan> plan(Checked<EventFile> event, LearningOptions learning)
      throws RefusedException {
    if (event.value().isEmpty()) {
      return Checked.refused(event.problems());
    }
    Checked<Event> taught = learning.taught(event.value().get().event());
    return taught.value().isPresent()
        ? new Planner().plan(taught.value().get())
        : Checked.refused(taught.problems());
  }
}
