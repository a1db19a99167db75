package dev.urnwright.json;

import dev.urnwright.event.Supply;
import dev.urnwright.plan.Costs;
import dev.urnwright.plan.PackingLine;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Amount;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/** What to buy, what it costs, what to take along. */
final class ShoppingJson {
  private final JsonFields fields;

  ShoppingJson(JsonFields fields) {
    this.fields = fields;
  }

  void line(ShoppingLine line) throws IOException {
    fields.text("item", line.item());
    amount(line.amount());
    fields.number("on_hand", line.onHand().value());
    fields.number("missing", line.missing().value());
    if (line.packs().isPresent()) {
      packs(line.packs().get());
    }
    Optional<String> allergens = line.supply().flatMap(Supply::allergens);
    if (allergens.isPresent()) {
      fields.text("allergens", allergens.get());
    }
  }

  private void amount(Amount amount) throws IOException {
    fields.number("amount", amount.value());
    fields.text("unit", amount.kind().unit());
  }

  private void packs(ShoppingLine.Packs packs) throws IOException {
    fields.number("packs", packs.count());
    fields.number("pack", packs.size().value());
    if (packs.size().kind() == Amount.Kind.MASS) {
      fields.grams("pack_g", packs.size().mass());
    }
    if (packs.cost().isPresent()) {
      fields.money("price", packs.price().get());
      fields.money("cost", packs.cost().get());
      fields.text("currency", packs.cost().get().currency().getCurrencyCode());
    }
  }

  void costs(Costs costs) throws IOException {
    fields.text("currency", costs.currency().getCurrencyCode());
    fields.array(
        "others",
        costs.others(),
        other -> {
          fields.text("item", other.item());
          fields.money("cost", other.cost());
        });
    fields.money("total", costs.total());
    fields.texts("left_out", costs.leftOut());
    fields.number("cups", costs.heads().cups());
    fields.number("guests", costs.heads().guests());
    fields.money("per_cup", costs.perCup());
    fields.money("per_guest", costs.perGuest());
    if (costs.quote().isPresent()) {
      fields.object("quote", costs.quote().get(), this::quote);
    }
  }

  private void quote(Costs.Quote quote) throws IOException {
    fields.number("margin", quote.margin().percent());
    fields.money("profit", quote.profit());
    fields.money("price", quote.price());
    if (quote.tax().isPresent()) {
      fields.number("tax_rate", quote.tax().get().rate().percent());
      fields.money("tax", quote.tax().get().amount());
    }
    fields.money("total", quote.total());
    fields.money("per_guest", quote.perGuest());
  }

  void packing(PackingLine line) throws IOException {
    fields.text("part", line.part().name().toLowerCase(Locale.ROOT));
    fields.text("item", line.item());
    if (line.amount().isPresent()) {
      amount(line.amount().get());
    }
    if (!line.detail().isEmpty()) {
      fields.text("detail", line.detail());
    }
  }
}
