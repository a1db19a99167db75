package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.plan.DispenserPlan.Limits;
import dev.urnwright.problem.Checked;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts an event to the clock. What can't be done as its guests would like is tried again before it
 * is refused: with other kinds of dispensers, or with fewer of them side by side.
 *
 * @param models one for each coffee
 * @param needs of all groups
 * @param findings so far
 * @param mostFills that are put on a clock
 */
record Trials(
    Event event,
    List<CoffeeModel> models,
    List<GroupNeed> needs,
    Findings findings,
    int mostFills) {
  /** Coffee may have to be ready so long before it must be: tried one after the other. */
  private static final List<Integer> EARLY = List.of(10, 20, 40);

  /** Above so many, the number of taps is halved until something works. */
  private static final int ONE_BY_ONE = 6;

  /** What came of one trial. */
  private record Trial(Findings findings, Optional<Plan> plan, RunPlanner planner, int taps) {
    boolean isDone() {
      return plan.isPresent() && findings.problems().isEmpty();
    }
  }

  /** The plan of the first trial that works, or why the last one doesn't. */
  Checked<Plan> plan() {
    Trial trial = trial(Limits.NONE);
    List<Limits> further = new ArrayList<>();
    if (trial.planner().late().isPresent()) {
      for (int taps = trial.taps(); taps > 1; further.add(new Limits(taps, 0))) {
        taps = taps > ONE_BY_ONE ? taps / 2 : taps - 1;
      }
    } else if (trial.planner().isShortOfDispensers()) {
      EARLY.forEach(early -> further.add(new Limits(Integer.MAX_VALUE, early)));
      further.add(new Limits(1, 0)); // what is missing even so is what can be told
    }
    for (int i = 0; i < further.size() && !trial.isDone(); i++) {
      trial = trial(further.get(i));
    }
    Findings told = trial.findings();
    trial.planner().late().ifPresent(run -> run.problems().forEach(told::refuse));
    return trial.isDone()
        ? Checked.of(trial.plan().orElseThrow())
        : Checked.refused(told.problems());
  }

  private Trial trial(Limits limits) {
    Findings own = findings.copy();
    Map<GroupNeed, Chosen> dispensers = new DispenserPlan(event, own, limits).choose(needs);
    List<CoffeeDraft> drafts = new ArrayList<>();
    for (CoffeeModel model : models) {
      List<GroupNeed> drinkers =
          needs.stream().filter(need -> need.coffee().equals(model.coffee())).toList();
      if (!drinkers.isEmpty()) {
        CoffeeDraft.of(event, model, drinkers, dispensers, own).ifPresent(drafts::add);
      }
    }
    RunPlanner planner = new RunPlanner(event, own, mostFills);
    Optional<Plan> plan = own.problems().isEmpty() ? planner.finish(drafts) : Optional.empty();
    int taps = dispensers.values().stream().mapToInt(Chosen::taps).max().orElse(1);
    return new Trial(own, plan, planner, taps);
  }
}
