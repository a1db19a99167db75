package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Supply;
import dev.urnwright.event.Supply.Use;
import dev.urnwright.quantity.Volume;
import dev.urnwright.wording.Saying;
import java.util.List;
import java.util.Optional;

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
          Saying.of("caution.allergens.listed")
              .with("food", food.stream().map(ShoppingRemarks::allergens).toList()));
    }
  }

  private static Saying allergens(Supply food) {
    return food.allergens()
        .map(told -> Saying.of("caution.allergens.of").with("told", told))
        .orElse(Saying.of("caution.allergens.untold"))
        .with("food", food.name());
  }

  private void room(Supply supply) {
    Optional<Volume> poured = supply.pouredIntoCup();
    if (poured.isEmpty()) {
      return;
    }
    List<Saying> tight =
        event.groups().stream()
            .filter(supply.takers()::include)
            .filter(group -> poured.get().litres() > group.cup().room().litres() + SLACK_LITRES)
            .map(
                group ->
                    Saying.of("caution.room.of")
                        .with("group", group.name())
                        .with("room", findings.display().volume(group.cup().room())))
            .toList();
    if (!tight.isEmpty()) {
      findings.caution(
          "room",
          Saying.of("caution.room")
              .with("supply", supply.name())
              .with("poured", findings.display().volume(poured.get()))
              .with("tight", tight));
    }
  }

  private void prices(List<CoffeePlan> coffees, List<ShoppingLine> shopping) {
    Optional<Costs> costs = Costs.of(event, coffees, shopping);
    if (event.purchases().costing().margin().isPresent() && costs.flatMap(Costs::quote).isEmpty()) {
      findings.caution(
          "no-quote",
          costs
              .map(known -> Saying.of("caution.no-quote.of").with("items", known.unpriced()))
              .orElse(Saying.of("caution.no-quote")));
    }
    if (costs.isPresent()) {
      findings.note("costs", Saying.of("note.costs"));
    }
  }

  private void counting() {
    if (supplies.stream().anyMatch(s -> s.takers().share().fraction() < 1)) {
      findings.note("shares-of-cups", Saying.of("note.shares-of-cups"));
    }
    if (supplies.stream().anyMatch(s -> s.use() instanceof Use.AllWater)) {
      findings.note("water-bought", Saying.of("note.water-bought"));
    }
    List<String> uncupped =
        event.groups().stream().filter(group -> !isCupped(group)).map(GuestGroup::name).toList();
    if (supplies.stream().anyMatch(s -> s.takers().cup().isPresent()) && !uncupped.isEmpty()) {
      findings.note("no-cups-listed", Saying.of("note.no-cups-listed").with("groups", uncupped));
    }
  }

  private boolean isCupped(GuestGroup group) {
    return supplies.stream()
        .map(Supply::takers)
        .anyMatch(takers -> takers.cup().isPresent() && takers.include(group));
  }
}
