package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Purchases.Costing;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import dev.urnwright.wording.Saying;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What an event costs, in one currency. Every line is rounded to the smallest coin before it is
 * added, so the total is the sum of the lines as printed. What is on hand counts as paid for; a
 * pack that is opened counts whole.
 *
 * @param bought what is bought at a known price
 * @param others costs that don't come in packs
 * @param total of both
 * @param unpriced what has to be bought at a price that nobody told: not in the total
 * @param heads whom the total is shared among
 * @param quote what the client pays; empty without a margin, or while anything is left out
 */
public record Costs(
    List<Line> bought,
    List<Line> others,
    Money total,
    List<Saying> unpriced,
    Heads heads,
    Optional<Quote> quote) {
  /** Copies the lists. */
  public Costs {
    bought = List.copyOf(bought);
    others = List.copyOf(others);
    unpriced = List.copyOf(unpriced);
  }

  /** What has to be bought at a price that nobody told, in English. */
  public List<String> leftOut() {
    return unpriced.stream().map(Saying::toString).toList();
  }

  /** The costs of what is bought and of the rest; empty when no price at all is known. */
  static Optional<Costs> of(Event event, List<CoffeePlan> coffees, List<ShoppingLine> shopping) {
    List<Line> bought = new ArrayList<>();
    for (ShoppingLine line : shopping) {
      line.packs()
          .flatMap(ShoppingLine.Packs::cost)
          .ifPresent(cost -> bought.add(new Line(line.item(), cost)));
    }
    List<Line> others =
        event.purchases().costing().others().stream()
            .map(other -> new Line(other.name(), other.amount().rounded()))
            .toList();
    List<Saying> unpriced =
        shopping.stream().filter(ShoppingLine::isUnpriced).map(ShoppingLine::what).toList();
    Heads heads = Heads.of(event, coffees);
    return Stream.concat(bought.stream(), others.stream())
        .map(Line::cost)
        .reduce(Money::plus)
        .map(
            total ->
                new Costs(
                    bought,
                    others,
                    total,
                    unpriced,
                    heads,
                    unpriced.isEmpty()
                        ? Quote.of(total, event.purchases().costing(), heads)
                        : Optional.empty()));
  }

  /** The currency of all amounts. */
  public Currency currency() {
    return total.currency();
  }

  /** The total over the planned cups, to the smallest coin. */
  public Money perCup() {
    return total.dividedBy(BigDecimal.valueOf(heads.cups()));
  }

  /** The total over the guests, to the smallest coin. */
  public Money perGuest() {
    return total.dividedBy(BigDecimal.valueOf(heads.guests()));
  }

  /**
   * One cost.
   *
   * @param item what for
   * @param cost to the smallest coin
   */
  public record Line(String item, Money cost) {}

  /**
   * Whom a total is shared among.
   *
   * @param cups planned
   * @param guests who come
   */
  public record Heads(long cups, long guests) {
    private static Heads of(Event event, List<CoffeePlan> coffees) {
      return new Heads(
          coffees.stream()
              .flatMap(coffee -> coffee.groups().stream())
              .mapToLong(group -> group.demand().cups())
              .sum(),
          event.groups().stream()
              .map(GuestGroup::guests)
              .mapToLong(GuestGroup.Guests::headcount)
              .sum());
    }
  }

  /**
   * What the client pays.
   *
   * @param margin share of the price that is not cost
   * @param price cost / (1 − margin), to the smallest coin, a half up; before tax
   * @param profit price less cost
   * @param tax on the price, when there is any
   * @param total price and tax
   * @param perGuest total over the guests, for information: it is the total that is paid
   */
  public record Quote(
      Share margin, Money price, Money profit, Optional<Tax> tax, Money total, Money perGuest) {
    private static final int SHARE_DECIMALS = 10;

    private static Optional<Quote> of(Money cost, Costing costing, Heads heads) {
      return costing.margin().map(margin -> of(cost, margin, costing.tax(), heads));
    }

    private static Quote of(Money cost, Share margin, Optional<Share> rate, Heads heads) {
      Money price = cost.dividedBy(BigDecimal.ONE.subtract(fraction(margin)));
      Optional<Tax> tax = rate.map(each -> new Tax(each, price.times(fraction(each))));
      Money total = tax.map(each -> price.plus(each.amount())).orElse(price);
      return new Quote(
          margin,
          price,
          price.minus(cost),
          tax,
          total,
          total.dividedBy(BigDecimal.valueOf(heads.guests())));
    }

    /** A share is told in percent with a few decimals; money is to see it without binary noise. */
    private static BigDecimal fraction(Share share) {
      return BigDecimal.valueOf(share.fraction())
          .setScale(SHARE_DECIMALS, RoundingMode.HALF_UP)
          .stripTrailingZeros();
    }
  }

  /**
   * Tax on a price.
   *
   * @param rate of the price
   * @param amount to the smallest coin
   */
  public record Tax(Share rate, Money amount) {}
}
