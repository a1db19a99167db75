package dev.urnwright.plan;

import dev.urnwright.event.Coffee;
import dev.urnwright.plan.ShoppingLine.Packs;
import dev.urnwright.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to buy: the coffee of all batches, and the ice that melts into cups. */
final class Shopping {
  private Shopping() {}

  static List<ShoppingLine> of(List<CoffeePlan> coffees) {
    List<ShoppingLine> lines = new ArrayList<>();
    Mass ice = Mass.ZERO;
    for (CoffeePlan coffee : coffees) {
      Mass dose = coffee.brewed().brew().dose();
      lines.add(
          new ShoppingLine(
              coffee.coffee().name(), dose, coffee.coffee().bag().map(bag -> packs(dose, bag))));
      ice = ice.plus(coffee.needed().blend().ice());
    }
    if (!ice.isZero()) {
      lines.add(new ShoppingLine("Ice, of drinking water", ice, Optional.empty()));
    }
    return lines;
  }

  private static Packs packs(Mass dose, Coffee.Bag bag) {
    int count = (int) Math.ceil(dose.grams() / bag.size().grams() - 1e-9);
    return new Packs(count, bag.size(), bag.price().map(price -> price.times(count)));
  }
}
