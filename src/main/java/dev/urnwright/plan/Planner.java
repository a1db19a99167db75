package dev.urnwright.plan;

import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.BrewerQueue;
import dev.urnwright.schedule.DispenserChoice;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Works out an event: cups, one concentrate for each coffee, batches, fills, shopping. */
public final class Planner {
  /** Rounding adds at most a step of concentrate and one of water to a dispenser. */
  private static final int ROUNDING_STEPS = 2;

  /** Nobody fills more dispensers for one group. */
  private static final int MOST_FILLS = 10_000;

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
    List<GroupNeed> needs = needs(event, findings);
    Map<GroupNeed, Chosen> dispensers = dispensers(event, needs, findings);

    BrewerQueue queue = new BrewerQueue(event.equipment().brewers());
    List<CoffeePlan> coffees = new ArrayList<>();
    for (CoffeeModel model : models) {
      List<GroupNeed> drinkers =
          needs.stream().filter(need -> need.coffee().equals(model.coffee())).toList();
      if (drinkers.isEmpty()) {
        findings.refuse(undrunk(model.coffee()));
      } else {
        new CoffeePlanner(event, model, drinkers, dispensers)
            .plan(queue, findings)
            .ifPresent(coffees::add);
      }
    }
    if (!findings.problems().isEmpty()) {
      return Checked.refused(findings.problems());
    }
    new Remarks(event, findings).on(models, coffees);
    return Checked.of(
        new Plan(
            event,
            coffees,
            Optional.empty(),
            Shopping.of(coffees),
            findings.cautions(),
            findings.notes()));
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
              "No cup of "
                  + need.coffee().name()
                  + " is planned for "
                  + group.name()
                  + ": so few are expected that none meets the service level.");
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

  private static Map<GroupNeed, Chosen> dispensers(
      Event event, List<GroupNeed> needs, Findings findings) {
    Map<GroupNeed, Chosen> chosen = new IdentityHashMap<>();
    if (event.equipment().dispensers().isEmpty()) {
      findings.note(
          "no-dispensers",
          "No dispensers are listed: each coffee of a group is mixed in one vessel of your own.");
      return chosen;
    }
    DispenserChoice choice = new DispenserChoice(event.equipment().dispensers());
    List<GroupNeed> largestFirst =
        needs.stream().sorted(Comparator.comparing(GroupNeed::drawn).reversed()).toList();
    for (GroupNeed need : largestFirst) {
      Volume slack =
          Volume.ofWater(event.equipment().scaleStep().times(ROUNDING_STEPS), need.filledAt());
      Optional<Chosen> taken = choice.take(need.drawn(), slack, need.group().service().dispenser());
      if (taken.isEmpty()) {
        findings.refuse(undispensed(event, need, slack, findings));
      } else if (taken.get().fills() > MOST_FILLS) {
        findings.refuse(tooManyFills(need, taken.get(), slack, findings));
      } else {
        chosen.put(need, taken.get());
      }
    }
    new AtOnce(event, needs).problem().ifPresent(findings::refuse);
    choice
        .refilled()
        .forEach(
            (dispenser, fills) ->
                findings.caution(
                    "refill",
                    dispenser.name()
                        + ": "
                        + fills
                        + " fills for "
                        + dispenser.count()
                        + " of them. They must come back, be emptied and rinsed, and be filled again; "
                        + "never with another coffee unrinsed."));
    return chosen;
  }

  private static Problem tooManyFills(
      GroupNeed need, Chosen chosen, Volume slack, Findings findings) {
    Volume each = need.drawn().times(1.0 / MOST_FILLS);
    return new Problem(
        need.group().location(),
        "group '"
            + need.group().name()
            + "' would take more than "
            + MOST_FILLS
            + " fills of "
            + chosen.dispenser().name(),
        "dispensers of more than "
            + findings.display().volumeUp(each.plus(chosen.dispenser().heel()).plus(slack)));
  }

  private static Problem undispensed(Event event, GroupNeed need, Volume slack, Findings findings) {
    Volume least =
        event.equipment().dispensers().stream()
            .filter(d -> need.group().service().dispenser().map(d.name()::equals).orElse(true))
            .map(d -> d.heel().plus(slack))
            .max(Comparator.naturalOrder())
            .orElse(slack);
    return new Problem(
        need.group().location(),
        "no dispenser listed can serve group '" + need.group().name() + "'",
        "a dispenser of more than "
            + findings.display().volumeUp(least)
            + ", which its heel and the scale step take up");
  }
}
