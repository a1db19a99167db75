package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Supply;
import dev.urnwright.event.Supply.Use;
import dev.urnwright.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What to know of the things bought: allergens, milk that finds no room, what has no price. */
final class ShoppingRemarks {
  private static final double SLACK_LITRES = 1e-9;

  private final Event event;
  private final Findings findings;
  private final List<Supply> supplies;

  ShoppingRemarks(Event event, Findings findings) {
    this.event = event;
    this.findings = findings;
    this.supplies = event.purchases().supplies();
  }

  void on(List<CoffeePlan> coffees, List<ShoppingLine> shopping) {
    allergens();
    supplies.forEach(this::room);
    prices(coffees, shopping);
    counting();
  }

  private void allergens() {
    List<Supply> food = supplies.stream().filter(Supply::isFood).toList();
    if (!food.isEmpty()) {
      findings.caution(
          "allergens",
          "Allergens: milk is one; so are nuts, soya, and oats and other cereals with gluten, of"
              + " which alternatives to milk are made. Here: "
              + food.stream()
                  .map(s -> s.name() + ": " + s.allergens().orElse("not told, read its label"))
                  .collect(Collectors.joining("; "))
              + ". The product's label and local law have the last word. A jug and a spoon for"
              + " each, never shared, with its name on it. Keep milk cold and its time out of the"
              + " cold short, as your food authority says.");
    }
  }

  private void room(Supply supply) {
    Optional<Volume> poured = supply.pouredIntoCup();
    if (poured.isEmpty()) {
      return;
    }
    List<String> tight =
        event.groups().stream()
            .filter(supply.takers()::include)
            .filter(group -> poured.get().litres() > group.cup().room().litres() + SLACK_LITRES)
            .map(group -> group.name() + " " + findings.display().volume(group.cup().room()))
            .toList();
    if (!tight.isEmpty()) {
      findings.caution(
          "room",
          supply.name()
              + ": a cup takes "
              + findings.display().volume(poured.get())
              + ", which is more than the room left in it: "
              + String.join("; ", tight)
              + ". Give these groups more room, or a larger cup.");
    }
  }

  private void prices(List<CoffeePlan> coffees, List<ShoppingLine> shopping) {
    Optional<Costs> costs = Costs.of(event, coffees, shopping);
    if (event.purchases().costing().margin().isPresent() && costs.flatMap(Costs::quote).isEmpty()) {
      findings.caution(
          "no-quote",
          "There is no price for the client: "
              + costs
                  .map(known -> "no cost is known of " + String.join(", ", known.leftOut()))
                  .orElse("no cost at all is known")
              + ". Give its pack and price; 0 is a price too.");
    }
    if (costs.isPresent()) {
      findings.note(
          "costs",
          "Costs are those of whole packs to buy; what is on hand counts as paid for. Each line is"
              + " rounded to the smallest coin, and the total is their sum.");
    }
  }

  private void counting() {
    if (supplies.stream().anyMatch(s -> s.takers().share().fraction() < 1)) {
      findings.note(
          "shares-of-cups",
          "Where only a share of the cups or guests takes something, it is bought for that share of"
              + " the cups planned; who takes what is not certain, and spare is for that.");
    }
    if (supplies.stream().anyMatch(s -> s.use() instanceof Use.AllWater)) {
      findings.note(
          "water-bought",
          "Water to buy is that for brewing, bypass, rinsing and preheating; water to drink, to"
              + " clean and to fill heaters beyond that is not in it.");
    }
    List<String> uncupped =
        event.groups().stream().filter(group -> !isCupped(group)).map(GuestGroup::name).toList();
    if (supplies.stream().anyMatch(s -> s.takers().cup().isPresent()) && !uncupped.isEmpty()) {
      findings.note(
          "no-cups-listed",
          "Some supplies go by the size of the cup, and none does for the cups of: "
              + String.join("; ", uncupped)
              + ".");
    }
  }

  private boolean isCupped(GuestGroup group) {
    return supplies.stream()
        .map(Supply::takers)
        .anyMatch(takers -> takers.cup().isPresent() && takers.include(group));
  }
}
