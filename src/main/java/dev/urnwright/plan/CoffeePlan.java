package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.event.Coffee;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.List;

/**
 * The plan for one coffee.
 *
 * @param coffee which
 * @param needed the exact concentrate and what it takes
 * @param brewed what the batches, rounded, give together
 * @param groups who drinks it, in the event's order
 * @param batches how it is brewed, in order of brewing
 * @param onTheDay what to do when the concentrate isn't as planned
 */
public record CoffeePlan(
    Coffee coffee,
    Needed needed,
    Brewed brewed,
    List<GroupPlan> groups,
    List<Batch> batches,
    OnTheDay onTheDay) {
  /** Copies the lists. */
  public CoffeePlan {
    groups = List.copyOf(groups);
    batches = List.copyOf(batches);
  }

  /** The fills of its groups. */
  public List<Fill> fills() {
    return groups.stream().flatMap(group -> group.fills().stream()).toList();
  }

  /** What each batch is expected to give, rounded so that the printed sum is that of all. */
  public List<Mass> printedBeverages(Display display) {
    return PrintedBalance.parts(
        batches.stream().map(batch -> batch.brew().beverage()).toList(),
        display.finest(brewed.brew().beverage()));
  }

  /** What the fills take together, as rounded. */
  public Blend filled() {
    Mass concentrate = Mass.ZERO;
    Mass bypass = Mass.ZERO;
    Mass ice = Mass.ZERO;
    Mass solids = Mass.ZERO;
    for (Fill fill : fills()) {
      concentrate = concentrate.plus(fill.blend().concentrate());
      bypass = bypass.plus(fill.blend().bypass());
      ice = ice.plus(fill.blend().ice());
      solids = solids.plus(fill.blend().solids());
    }
    return new Blend(
        concentrate,
        bypass,
        ice,
        Strength.ofFraction(concentrate.isZero() ? 0 : solids.grams() / concentrate.grams()));
  }
}
