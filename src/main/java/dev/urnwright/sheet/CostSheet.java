package dev.urnwright.sheet;

import static java.util.stream.Collectors.joining;

import dev.urnwright.plan.Costs;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Optional;

/**
 * What the event costs; for the firm alone.
 *
 * @param bought what is bought at a known price
 * @param others costs that don't come in packs
 * @param total of both, and who shares it
 * @param leftOut what has no known price, when there is any
 * @param price the way from the cost to the price, when there is one
 */
record CostSheet(
    List<Row> bought,
    List<Row> others,
    Total total,
    Optional<String> leftOut,
    Optional<PriceText> price) {
  static Optional<CostSheet> of(Plan plan, Display display, Words words) {
    return plan.costs().map(costs -> of(plan, costs, display, words));
  }

  private static CostSheet of(Plan plan, Costs costs, Display display, Words words) {
    return new CostSheet(
        plan.shopping().stream()
            .flatMap(
                line -> line.packs().flatMap(packs -> row(line, packs, display, words)).stream())
            .toList(),
        costs.others().stream()
            .map(other -> new Row(new Name(other.item()), "", "", display.money(other.cost())))
            .toList(),
        new Total(
            display.money(costs.total()),
            display.money(costs.perCup()),
            costs.heads().cups(),
            display.money(costs.perGuest()),
            costs.heads().guests()),
        Optional.of(costs.unpriced().stream().map(words::text).collect(joining(", ")))
            .filter(names -> !names.isEmpty()),
        costs.quote().map(quote -> PriceText.of(quote, display)));
  }

  private static Optional<Row> row(
      ShoppingLine line, ShoppingLine.Packs packs, Display display, Words words) {
    return packs
        .cost()
        .map(
            cost ->
                new Row(
                    new Name(words.text(line.what())),
                    packs.count() + " × " + display.amount(packs.size()),
                    display.money(packs.price().orElseThrow()).toString(),
                    display.money(cost)));
  }

  /**
   * One cost.
   *
   * @param item what for
   * @param packs how many of which size; may be empty
   * @param each the price of one; may be empty
   * @param cost of all
   */
  record Row(Name item, String packs, String each, Figure cost) {}

  /**
   * The sum, and who shares it.
   *
   * @param cost all costs
   * @param perCup over the planned cups
   * @param cups planned
   * @param perGuest over the guests
   * @param guests who come
   */
  record Total(Figure cost, Figure perCup, long cups, Figure perGuest, long guests) {}
}
