package dev.urnwright.input;

import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Money;
import java.util.Currency;
import java.util.Optional;

/** Prices of one event add up, so they are all in the currency of the first. */
final class Currencies {
  private Optional<Currency> currency = Optional.empty();
  private Optional<Location> first = Optional.empty();

  /** A price, with its place kept. */
  static Kind<Located<Money>> price() {
    return Located.of(Numbers.money());
  }

  /** Takes up a price, with a problem when it is in another currency than the first. */
  Money check(Located<Money> price, Problems problems) {
    Currency its = price.value().currency();
    if (currency.isEmpty()) {
      currency = Optional.of(its);
      first = Optional.of(price.location());
    } else if (!currency.get().equals(its)) {
      problems.at(
          price.location(),
          "this price is in " + its.getCurrencyCode(),
          "expected "
              + currency.get().getCurrencyCode()
              + " as on line "
              + first.orElseThrow().line()
              + ": all prices of an event are in one currency");
    }
    return price.value();
  }
}
