package dev.urnwright.text;

import dev.urnwright.plan.Costs;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Money;
import java.util.List;
import java.util.Optional;

/** What to buy and what it costs, on a terminal. */
final class ShoppingText {
  private final Screen screen;
  private final Display display;

  ShoppingText(Screen screen, Display display) {
    this.screen = screen;
    this.display = display;
  }

  void write(Plan plan) {
    if (plan.shopping().isEmpty()) {
      return;
    }
    screen.gap();
    screen.title("Shopping");
    Table table = new Table(List.of("item", "needed", "on hand", "buy", "cost"));
    plan.shopping().forEach(line -> row(line, plan.costs().isPresent(), display, table));
    plan.costs().ifPresent(costs -> sums(costs, table));
    table.print(screen);
    plan.costs().ifPresent(this::perHead);
  }

  /** What to buy, without what else it costs. */
  static void write(List<ShoppingLine> lines, Display display, Screen screen) {
    Table table = new Table(List.of("item", "needed", "on hand", "buy", "cost"));
    Optional<Money> cost =
        lines.stream()
            .flatMap(line -> line.packs().flatMap(ShoppingLine.Packs::cost).stream())
            .reduce(Money::plus);
    lines.forEach(line -> row(line, cost.isPresent(), display, table));
    cost.ifPresent(
        money ->
            table.sum(
                List.of(
                    lines.stream().anyMatch(ShoppingLine::isUnpriced)
                        ? "Cost of what has a price"
                        : "Cost",
                    "",
                    "",
                    "",
                    display.money(money).toString())));
    table.print(screen);
  }

  private static void row(ShoppingLine line, boolean costed, Display display, Table table) {
    table.row(
        List.of(
            line.item(),
            display.amount(line.amount()),
            line.onHand().isNothing() ? "" : display.amount(line.onHand()),
            line.packs()
                .map(packs -> packs.count() + " × " + display.amount(packs.size()))
                .orElse(""),
            line.packs()
                .flatMap(ShoppingLine.Packs::cost)
                .map(cost -> display.money(cost).toString())
                .orElse(costed && line.isUnpriced() ? "unknown" : "")),
        "");
  }

  private void sums(Costs costs, Table table) {
    costs.others().forEach(other -> sum(other.item(), display.money(other.cost()), table));
    table.sum(
        List.of(
            costs.leftOut().isEmpty()
                ? "Cost"
                : "Cost without " + String.join(", ", costs.leftOut()),
            "",
            "",
            "",
            display.money(costs.total()).toString()));
    costs
        .quote()
        .ifPresent(
            quote -> {
              sum(
                  "Margin, " + display.share(quote.margin()) + " of the price",
                  display.money(quote.profit()),
                  table);
              quote
                  .tax()
                  .ifPresent(
                      tax -> {
                        sum("Price before tax", display.money(quote.price()), table);
                        sum(
                            "Tax, " + display.share(tax.rate()),
                            display.money(tax.amount()),
                            table);
                      });
              table.sum(List.of("Price", "", "", "", display.money(quote.total()).toString()));
            });
  }

  private static void sum(String what, Object money, Table table) {
    table.row(List.of(what, "", "", "", money.toString()), "");
  }

  private void perHead(Costs costs) {
    screen.gap();
    screen.remark(
        "Cost per cup "
            + display.money(costs.perCup())
            + " ("
            + PlanText.counted(Math.toIntExact(costs.heads().cups()), "cup", "cups")
            + "), per guest "
            + display.money(costs.perGuest())
            + costs.quote().map(q -> "; price per guest " + display.money(q.perGuest())).orElse("")
            + ".");
  }
}
