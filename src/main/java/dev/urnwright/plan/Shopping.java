package dev.urnwright.plan;

import dev.urnwright.event.Coffee;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Supply;
import dev.urnwright.event.Supply.Takers;
import dev.urnwright.event.Supply.Use;
import dev.urnwright.plan.ShoppingLine.Packs;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Volume;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What to buy: the coffee of all batches, the ice that melts into cups, and the user's supplies.
 *
 * <p>A supply takes {@code each · number · share · (1 + spare)}, with the planned cups, the guests,
 * batches or fills as the number: cups are planned for the event's service level, and the share of
 * them is the mean. Pieces are whole.
 */
record Shopping(Event event, List<CoffeePlan> coffees, Optional<Run> run) {
  List<ShoppingLine> lines() {
    List<ShoppingLine> lines = new ArrayList<>();
    for (CoffeePlan coffee : coffees) {
      lines.add(coffee(coffee));
    }
    Mass ice = ice();
    boolean iceListed =
        event.purchases().supplies().stream().anyMatch(s -> s.use() instanceof Use.AllIce);
    if (!ice.isZero() && !iceListed) {
      lines.add(
          new ShoppingLine(
              Saying.of("shopping.ice"),
              1,
              Amount.of(ice),
              Amount.nothing(Amount.Kind.MASS),
              Optional.empty(),
              Optional.empty()));
    }
    event.purchases().supplies().forEach(supply -> lines.add(supply(supply)));
    return lines;
  }

  private static ShoppingLine coffee(CoffeePlan coffee) {
    Optional<Coffee.Bag> bag = coffee.coffee().bag();
    return line(
        Saying.verbatim(coffee.coffee().name()),
        1,
        Amount.of(coffee.brewed().brew().dose()),
        Amount.of(bag.map(Coffee.Bag::onHand).orElse(Mass.ZERO)),
        bag.map(b -> new Supply.Pack(Amount.of(b.size()), b.price())),
        Optional.empty());
  }

  private ShoppingLine supply(Supply supply) {
    long times = supply.use() instanceof Use.Each each ? number(each.per(), supply.takers()) : 1;
    return line(
        Saying.verbatim(supply.name()),
        times,
        needed(supply, times).times(1 + supply.takers().spare()).whole(),
        supply.stock().onHand(),
        supply.stock().pack(),
        Optional.of(supply));
  }

  private static ShoppingLine line(
      Saying what,
      long times,
      Amount needed,
      Amount onHand,
      Optional<Supply.Pack> pack,
      Optional<Supply> supply) {
    Amount missing = needed.beyond(onHand);
    return new ShoppingLine(
        what,
        times,
        needed,
        onHand,
        pack.map(p -> new Packs(missing.packsOf(p.size()), p.size(), p.price())),
        supply);
  }

  private Amount needed(Supply supply, long times) {
    if (supply.use() instanceof Use.AllWater) {
      return Amount.of(water());
    }
    if (supply.use() instanceof Use.Each each) {
      return each.amount().times(times * supply.takers().share().fraction());
    }
    return Amount.of(ice());
  }

  private long number(Supply.Per per, Takers takers) {
    return switch (per) {
      case CUP -> groups(takers).stream().mapToLong(group -> group.demand().cups()).sum();
      case GUEST ->
          event.groups().stream()
              .filter(takers::include)
              .map(GuestGroup::guests)
              .mapToLong(GuestGroup.Guests::headcount)
              .sum();
      case FILL -> groups(takers).stream().mapToLong(group -> group.fills().size()).sum();
      case BATCH ->
          coffees.stream()
              .flatMap(coffee -> coffee.batches().stream())
              .filter(batch -> takers.brewer().isEmpty() || isOn(batch, takers.brewer().get()))
              .count();
      case EVENT -> 1;
    };
  }

  private static boolean isOn(Batch batch, String brewer) {
    return batch.unit().filter(unit -> unit.brewer().name().equals(brewer)).isPresent();
  }

  private List<GroupPlan> groups(Takers takers) {
    return coffees.stream()
        .flatMap(coffee -> coffee.groups().stream())
        .filter(group -> takers.include(group.group()))
        .toList();
  }

  /** All ice that melts into cups. */
  Mass ice() {
    return coffees.stream()
        .map(coffee -> coffee.needed().blend().ice())
        .reduce(Mass.ZERO, Mass::plus);
  }

  /** Brew water and bypass as they are filled in, and what rinses filters and dispensers. */
  private Volume water() {
    Mass weighed = Mass.ZERO;
    int batches = 0;
    for (CoffeePlan coffee : coffees) {
      weighed = weighed.plus(coffee.brewed().brew().water()).plus(coffee.filled().bypass());
      batches += coffee.batches().size();
    }
    Volume rinsing =
        run.map(timed -> timed.water().rinsing().plus(timed.water().preheating()))
            .orElse(event.kitchen().water().rinse().times(batches));
    return Volume.ofWater(weighed, event.serving().fillingTemperature()).plus(rinsing);
  }
}
