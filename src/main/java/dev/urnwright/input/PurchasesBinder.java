package dev.urnwright.input;

import dev.urnwright.event.Purchases;
import dev.urnwright.event.Purchases.Charge;
import dev.urnwright.event.Purchases.Costing;
import dev.urnwright.event.Supply;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds what is bought besides coffee, what goes into the price, and what is brought along. */
final class PurchasesBinder {
  private static final Field<String> OTHER_NAME =
      Field.required("name", Words.name("Two people for five hours"), "what it is for");
  private static final Field<Located<Money>> OTHER_AMOUNT =
      Field.required("amount", Currencies.price(), "what it costs");
  private static final Fields OTHER_FIELDS = Fields.of("other cost", OTHER_NAME, OTHER_AMOUNT);

  private static final Field<Share> MARGIN =
      Field.optional(
          "margin",
          Amounts.share("30 %", "0 %", "95 %"),
          "the share of the price before tax that is not cost");
  private static final Field<Share> TAX =
      Field.optional("tax", Amounts.share("10 %", "0 %", "100 %"), "tax on the price");
  private static final Field<List<Node>> OTHERS =
      Field.optional("others", Part.list(OTHER_FIELDS), "labour, hire, the van");
  private static final Fields COST_FIELDS = Fields.of("costs", MARGIN, TAX, OTHERS);

  static final Field<List<Node>> SUPPLIES =
      Field.optional("supplies", Part.list(SupplyBinder.FIELDS), "what else is used up and bought");
  static final Field<Node> COSTS =
      Field.optional("costs", Part.mapping(COST_FIELDS), "what goes into the price");
  static final Field<List<String>> BRING =
      Field.optional(
          "bring",
          new Several<>(
              Words.name("First-aid kit"),
              "expected one thing to bring, or several as [First-aid kit, Two tables]"),
          "what else goes on the packing list");

  private final Binding binding;

  PurchasesBinder(Binding binding) {
    this.binding = binding;
  }

  Purchases bind(MapReader event, SupplyBinder.Known known) {
    SupplyBinder binder = new SupplyBinder(binding, known);
    Names names = new Names("supply", binding.problems());
    List<Supply> supplies = new ArrayList<>();
    for (Node node : event.read(SUPPLIES).orElse(List.of())) {
      binder.bind(node, names).ifPresent(supplies::add);
    }
    Costing costing =
        event
            .read(COSTS)
            .flatMap(node -> MapReader.of(node, COST_FIELDS, binding.problems()))
            .map(this::costing)
            .orElse(Purchases.NONE.costing());
    return new Purchases(supplies, costing, event.read(BRING).orElse(List.of()));
  }

  private Costing costing(MapReader map) {
    if (map.has(TAX) && !map.has(MARGIN) && !map.meant(MARGIN)) {
      binding
          .problems()
          .at(
              map.keyOf(TAX),
              "this tax is on no price",
              "expected a margin beside it, such as margin: 30 %");
    }
    List<Charge> others = new ArrayList<>();
    for (Node node : map.read(OTHERS).orElse(List.of())) {
      MapReader.of(node, OTHER_FIELDS, binding.problems())
          .flatMap(this::charge)
          .ifPresent(others::add);
    }
    return new Costing(map.read(MARGIN), map.read(TAX), others);
  }

  private Optional<Charge> charge(MapReader map) {
    Optional<String> name = map.read(OTHER_NAME);
    Optional<Money> amount =
        map.read(OTHER_AMOUNT).map(given -> binding.currencies().check(given, binding.problems()));
    return name.isPresent() && amount.isPresent()
        ? Optional.of(new Charge(name.get(), amount.get()))
        : Optional.empty();
  }
}
