package dev.urnwright.plan;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Money;
import java.util.Optional;

/**
 * Something to buy.
 *
 * @param item what
 * @param amount how much of it is needed
 * @param packs in packs, when it comes in packs
 */
public record ShoppingLine(String item, Mass amount, Optional<Packs> packs) {
  /**
   * So many packs.
   *
   * @param count 0 or more
   * @param size of one
   * @param cost of all of them, when the price is known
   */
  public record Packs(int count, Mass size, Optional<Money> cost) {}
}
