package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.plan.DispenserPlan.Limits;
import dev.urnwright.problem.Checked;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import dev.urnwright.schedule.Effort;
import dev.urnwright.schedule.RunProblem;
import dev.urnwright.schedule.RunScheduler;
import dev.urnwright.schedule.RunSolution;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

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

  /** For looking whether other dispensers, or fewer of them side by side, help: some seconds. */
  private static final long LOOKS = 20_000_000;

  /** For trying cures: some seconds. */
  private static final long CURES = 40_000_000;

  /** What a look takes besides searching. */
  private static final long ONE_LOOK = 100_000;

  /** What came of one trial. */
  private record Trial(
      Limits limits, Findings findings, Optional<Plan> plan, RunPlanner planner, int taps) {
    boolean isDone() {
      return plan.isPresent() && findings.problems().isEmpty() && planner.shortOf().isEmpty();
    }
  }

  /** The plan of the first trial that works, or why the last one doesn't. */
  Checked<Plan> plan() {
    Trial trial = trial(Limits.NONE, RunScheduler::solve);
    Effort looks = Effort.of(LOOKS);
    if (trial.planner().late().isPresent()) {
      trial = fewerTaps(trial, looks);
    } else if (!trial.planner().shortOf().isEmpty()) {
      List<Limits> further = new ArrayList<>();
      EARLY.forEach(early -> further.add(new Limits(Integer.MAX_VALUE, early)));
      further.add(new Limits(1, 0)); // what is missing even so is what can be told
      for (int i = 0; i < further.size() && !trial.isDone(); i++) {
        trial = trial(further.get(i), problem -> solvedIfSeen(problem, looks));
      }
    }
    return trial.isDone() ? Checked.of(trial.plan().orElseThrow()) : refused(trial);
  }

  /**
   * With as many side by side as work at a first look; where none do, what came of a single one.
   */
  private Trial fewerTaps(Trial late, Effort looks) {
    Trial best = late;
    int enough = 0;
    int tooMany = late.taps();
    while (tooMany - enough > 1) {
      int taps = (enough + tooMany) / 2;
      Trial trial = trial(new Limits(taps, 0), problem -> RunScheduler.look(problem, looks));
      if (trial.isDone()) {
        enough = taps;
        best = trial;
      } else {
        tooMany = taps;
        best = best.isDone() ? best : trial;
      }
    }
    if (!best.isDone()) {
      return best;
    }
    Limits limits = new Limits(best.taps(), 0, cures(Limits.NONE, looks).alone());
    return trial(limits, RunScheduler::solve);
  }

  private static Optional<RunSolution> solvedIfSeen(RunProblem problem, Effort effort) {
    Optional<RunSolution> seen = RunScheduler.look(problem, effort);
    return seen.flatMap(first -> RunScheduler.solve(problem).or(() -> seen));
  }

  private Checked<Plan> refused(Trial trial) {
    Findings told = trial.findings();
    Effort effort = Effort.of(CURES);
    Cures cures = cures(trial.limits(), effort);
    trial.planner().late().ifPresent(run -> run.problems(cures).forEach(told::refuse));
    List<DispenserShortage> shortOf = trial.planner().shortOf();
    shortOf.forEach(shortage -> told.refuse(shortage.problem(cures.of(shortage, shortOf))));
    return Checked.refused(told.problems());
  }

  private Cures cures(Limits limits, Effort effort) {
    return new Cures(event, effort, changed -> works(changed, limits, effort));
  }

  /** Whether an event with other equipment is seen to work at a first look. */
  private boolean works(Event changed, Limits limits, Effort effort) {
    effort.spend(ONE_LOOK);
    return new Trials(changed, models, needs, findings, mostFills)
        .trial(limits, problem -> RunScheduler.look(problem, effort))
        .isDone();
  }

  private Trial trial(Limits limits, Function<RunProblem, Optional<RunSolution>> scheduler) {
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
    RunPlanner planner = new RunPlanner(event, own, mostFills, scheduler);
    Optional<Plan> plan = own.problems().isEmpty() ? planner.finish(drafts) : Optional.empty();
    int taps = dispensers.values().stream().mapToInt(Chosen::taps).max().orElse(1);
    return new Trial(limits, own, plan, planner, taps);
  }
}
