package dev.urnwright.plan;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.Event;
import dev.urnwright.event.Note;
import java.util.List;
import java.util.Optional;

/**
 * Everything worked out for an event.
 *
 * @param event what was asked for
 * @param coffees one plan for each coffee, in the event's order
 * @param run the work on the clock; empty when it isn't known when groups are served, or no brewers
 *     are listed
 * @param shopping what to buy for it
 * @param cautions what can hurt someone or disappoint them
 * @param notes every assumption made and default used
 */
public record Plan(
    Event event,
    List<CoffeePlan> coffees,
    Optional<Run> run,
    List<ShoppingLine> shopping,
    List<Note> cautions,
    List<Note> notes) {
  /** Copies the lists. */
  public Plan {
    coffees = List.copyOf(coffees);
    shopping = List.copyOf(shopping);
    cautions = List.copyOf(cautions);
    notes = List.copyOf(notes);
  }

  /** How a coffee of this plan brews: its curve, its absorption, its steam. */
  public BrewModel brewing(CoffeePlan coffee) {
    return CoffeeModel.read(coffee.coffee(), new Findings(event)).orElseThrow().brewing();
  }

  /** How sure its strengths are. */
  public Certainty certainty() {
    return Certainty.of(this);
  }

  /**
   * The fewest fills of its dispenser that keep each from being held too long, side by side as
   * planned, for each of {@link #groups()}: 1 where no clock says otherwise.
   */
  public List<Integer> leastFills() {
    boolean onClock = event.isTimed() && !event.equipment().brewers().isEmpty();
    Timetable timetable = new Timetable(event);
    return groups().stream()
        .map(
            group ->
                onClock
                    ? group.taps()
                        * timetable
                            .roundsForHold(group.group(), group.fills().get(0).dispenser())
                            .orElse(1)
                    : 1)
        .toList();
  }

  /** What it costs; empty when no price at all is known. */
  public Optional<Costs> costs() {
    return Costs.of(event, coffees, shopping);
  }

  /** What to take along. */
  public List<PackingLine> packing() {
    return new Packing(this).lines();
  }

  /** The groups of all coffees: one row for each coffee of a group. */
  public List<GroupPlan> groups() {
    return coffees.stream().flatMap(coffee -> coffee.groups().stream()).toList();
  }

  /** The batches of all coffees. */
  public List<Batch> batches() {
    return coffees.stream().flatMap(coffee -> coffee.batches().stream()).toList();
  }

  /** The fills of all groups. */
  public List<Fill> fills() {
    return groups().stream().flatMap(group -> group.fills().stream()).toList();
  }
}
