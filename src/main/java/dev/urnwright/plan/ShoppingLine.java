package dev.urnwright.plan;

import dev.urnwright.event.Supply;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.Money;
import dev.urnwright.wording.Saying;
import java.util.Optional;

/**
 * Something to buy.
 *
 * @param what to buy
 * @param times how many cups, guests, batches or fills a supply is used for, before its share and
 *     spare are counted; 1 where it isn't used by number
 * @param amount how much of it is needed
 * @param onHand how much of it there is; what is bought is the rest
 * @param packs in packs, when it comes in packs
 * @param supply as the user listed it; empty for coffee, and for ice that nobody listed
 */
public record ShoppingLine(
    Saying what,
    long times,
    Amount amount,
    Amount onHand,
    Optional<Packs> packs,
    Optional<Supply> supply) {
  /** What, in English. */
  public String item() {
    return what.toString();
  }

  /** What is needed beyond what there is. */
  public Amount missing() {
    return amount.beyond(onHand);
  }

  /** Whether it has to be bought at a price that nobody told. */
  public boolean isUnpriced() {
    return !missing().isNothing() && packs.flatMap(Packs::cost).isEmpty();
  }

  /**
   * So many packs.
   *
   * @param count the fewest whole ones that hold what is missing, 0 or more
   * @param size of one
   * @param price of one, when known
   */
  public record Packs(long count, Amount size, Optional<Money> price) {
    /** What all of them cost, to the smallest coin. */
    public Optional<Money> cost() {
      return price.map(each -> each.times(count).rounded());
    }
  }
}
