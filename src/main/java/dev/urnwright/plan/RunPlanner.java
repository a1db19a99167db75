package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.plan.FillRounding.Turn;
import dev.urnwright.quantity.Mass;
import dev.urnwright.schedule.BrewerQueue;
import dev.urnwright.schedule.RunProblem;
import dev.urnwright.schedule.RunSolution;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Turns drafts into a plan: on a clock when it is known when groups are served and brewers are
 * listed, otherwise in the order of serving.
 */
final class RunPlanner {
  private final Event event;
  private final Findings findings;
  private final int mostFills;
  private final Function<RunProblem, Optional<RunSolution>> scheduler;
  private Optional<ShortRun> late = Optional.empty();
  private List<DispenserShortage> shortOf = List.of();

  /**
   * A planner.
   *
   * @param mostFills that it puts on a clock
   * @param scheduler that does so
   */
  RunPlanner(
      Event event,
      Findings findings,
      int mostFills,
      Function<RunProblem, Optional<RunSolution>> scheduler) {
    this.event = event;
    this.findings = findings;
    this.mostFills = mostFills;
    this.scheduler = scheduler;
  }

  /** The run that can't be made in time, when that is why there is no plan. */
  Optional<ShortRun> late() {
    return late;
  }

  /** Dispensers of which more would be out at once than there are. */
  List<DispenserShortage> shortOf() {
    return shortOf;
  }

  /**
   * The plan, or nothing and the reasons among the findings' problems or in {@link #late}. A plan
   * with problems, or that is {@link #shortOf short of dispensers}, is not to be followed.
   */
  Optional<Plan> finish(List<CoffeeDraft> drafts) {
    int fills =
        drafts.stream()
            .flatMap(draft -> draft.shares().stream())
            .mapToInt(FillRounding.Share::fills)
            .sum();
    if (event.equipment().brewers().isEmpty() || !event.isTimed()) {
      findings.note(
          "no-run",
          Saying.of(
              event.equipment().brewers().isEmpty() ? "note.no-run.brewers" : "note.no-run.times"));
      return untimed(drafts);
    }
    if (fills > mostFills) {
      findings.note(
          "no-run", Saying.of("note.no-run.fills").with("fills", fills).with("most", mostFills));
      return untimed(drafts);
    }
    return timed(drafts);
  }

  private Optional<Plan> untimed(List<CoffeeDraft> drafts) {
    BrewerQueue queue = new BrewerQueue(event.equipment().brewers());
    List<CoffeePlan> coffees = new ArrayList<>();
    for (CoffeeDraft draft : drafts) {
      draft
          .orders(queue, findings)
          .map(orders -> draft.finish(orders, draft.inServiceOrder()))
          .ifPresent(coffees::add);
    }
    return coffees.size() == drafts.size()
        ? Optional.of(plan(drafts, coffees, Optional.empty()))
        : Optional.empty();
  }

  private Optional<Plan> timed(List<CoffeeDraft> drafts) {
    // A dose too small for every brewer is said as such, before any clock is asked.
    BrewerQueue queue = new BrewerQueue(event.equipment().brewers());
    if (drafts.stream().filter(draft -> draft.orders(queue, findings).isEmpty()).count() > 0) {
      return Optional.empty();
    }
    Timetable timetable = new Timetable(event);
    TimedDraft draft = TimedDraft.of(event, timetable, drafts);
    Optional<RunSolution> solution = scheduler.apply(draft.problem());
    if (solution.isEmpty()) {
      late = Optional.of(new ShortRun(event, drafts, draft));
      return Optional.empty();
    }
    TimedPlan timed = TimedPlan.of(event, timetable, drafts, draft, solution.get());
    shortOf = timed.shortOf();
    List<CoffeePlan> coffees = new ArrayList<>();
    for (int coffee = 0; coffee < drafts.size(); coffee++) {
      List<Turn> sequence = new ArrayList<>();
      for (int s = 0; s < draft.slots().get(coffee).size(); s++) {
        TimedDraft.Slot slot = draft.slots().get(coffee).get(s);
        sequence.add(
            new Turn(slot.share(), slot.number(), timed.filling().get(coffee).get(s).drawn()));
      }
      coffees.add(drafts.get(coffee).finish(timed.orders(event, coffee), sequence));
    }
    Run run = new RunAssembly(event, timetable, coffees, timed, findings).run();
    new RunRemarks(event, findings).on(run);
    new CrewRemarks(event, findings).on(run);
    return Optional.of(plan(drafts, coffees, Optional.of(run)));
  }

  private Plan plan(List<CoffeeDraft> drafts, List<CoffeePlan> coffees, Optional<Run> run) {
    for (int i = 0; i < drafts.size(); i++) {
      surplus(drafts.get(i), coffees.get(i));
    }
    new Remarks(event, findings).on(drafts.stream().map(CoffeeDraft::model).toList(), coffees);
    List<ShoppingLine> shopping = new Shopping(event, coffees, run).lines();
    new ShoppingRemarks(event, findings).on(coffees, shopping);
    return new Plan(event, coffees, run, shopping, findings.cautions(), findings.notes());
  }

  /** Says how much least doses add, beyond what rounding explains. */
  private void surplus(CoffeeDraft draft, CoffeePlan coffee) {
    Mass step = event.equipment().scaleStep();
    Mass rounded = draft.dose().plus(step.times(coffee.batches().size()));
    Mass dose = coffee.brewed().brew().dose();
    if (dose.compareTo(rounded) > 0) {
      findings.caution(
          "surplus",
          Saying.of("caution.surplus")
              .with("coffee", coffee.coffee().name())
              .with("more", findings.display().mass(dose.minus(draft.dose())))
              .with("over", findings.display().mass(coffee.brewed().leftOver())));
    }
  }
}
