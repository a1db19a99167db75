package dev.urnwright.plan;

import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.List;

/** Works out an event: cups, one concentrate for each coffee, batches, fills, shopping. */
public final class Planner {
  /** Past this many fills an event's run is a logistics project; it is planned without a clock. */
  private static final int MOST_TIMED_FILLS = 1_200;

  private final int mostTimedFills;

  /** A planner for events. */
  public Planner() {
    this(MOST_TIMED_FILLS);
  }

  /**
   * A planner for days with many fills due at few times, which a clock finds easy.
   *
   * @param mostTimedFills past so many fills the plan is made without a clock
   */
  public Planner(int mostTimedFills) {
    this.mostTimedFills = mostTimedFills;
  }

  /**
   * Plans an event.
   *
   * @param event what was asked for
   * @return the plan, or every reason why the event can't be served as asked, each naming the group
   *     and what would work
   */
  public Checked<Plan> plan(Event event) {
    Findings findings = new Findings(event);
    List<CoffeeModel> models = new ArrayList<>();
    for (Coffee coffee : event.coffees()) {
      CoffeeModel.read(coffee, findings).ifPresent(models::add);
    }
    Questions questions = new Questions(event, findings);
    questions.ask();
    models.forEach(model -> questions.ask(model.coffee(), model.brewing()));
    List<GroupNeed> needs = needs(event, findings);
    for (CoffeeModel model : models) {
      if (needs.stream().noneMatch(need -> need.coffee().equals(model.coffee()))) {
        findings.refuse(undrunk(model.coffee()));
      }
    }
    return new Trials(event, models, needs, findings, mostTimedFills).plan();
  }

  /** Each coffee of each group that is drunk at all. */
  private static List<GroupNeed> needs(Event event, Findings findings) {
    List<GroupNeed> needs = new ArrayList<>();
    for (GuestGroup group : event.groups()) {
      for (GuestGroup.CoffeeShare share : group.coffees()) {
        GroupNeed need = GroupNeed.of(event, group, share);
        if (need.demand().cups() > 0) {
          needs.add(need);
        } else {
          findings.note(
              "no-cups",
              Saying.of("note.no-cups")
                  .with("coffee", need.coffee().name())
                  .with("group", group.name()));
        }
      }
    }
    return needs;
  }

  private static Problem undrunk(Coffee coffee) {
    return new Problem(
        coffee.location(),
        "no cup of " + coffee.name() + " is planned for any group",
        "a group that drinks it, or a higher service level, or an event without it");
  }
}
