package dev.urnwright.sheet;

import dev.urnwright.plan.Costs;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import java.util.Optional;

/**
 * What the client pays.
 *
 * @param margin share of the price that is not cost
 * @param profit that share in money
 * @param price before tax
 * @param tax on it, when there is any
 * @param total price and tax
 * @param perGuest the total over the guests
 */
record PriceText(
    Figure margin,
    Figure profit,
    Figure price,
    Optional<TaxText> tax,
    Figure total,
    Figure perGuest) {
  static PriceText of(Costs.Quote quote, Display display) {
    return new PriceText(
        display.share(quote.margin()),
        display.money(quote.profit()),
        display.money(quote.price()),
        quote.tax().map(tax -> new TaxText(display.share(tax.rate()), display.money(tax.amount()))),
        display.money(quote.total()),
        display.money(quote.perGuest()));
  }

  /**
   * Tax.
   *
   * @param rate of the price
   * @param amount in money
   */
  record TaxText(Figure rate, Figure amount) {}
}
