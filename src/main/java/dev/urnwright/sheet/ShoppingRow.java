package dev.urnwright.sheet;

import dev.urnwright.plan.Plan;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Money;
import java.util.List;
import java.util.Optional;

/**
 * Something to buy.
 *
 * @param item what
 * @param amount needed
 * @param packs what that is in packs, when it comes in packs
 */
record ShoppingRow(Name item, Figure amount, Optional<PackText> packs) {
  static List<ShoppingRow> of(Plan plan, Display display) {
    return plan.shopping().stream()
        .map(
            line ->
                new ShoppingRow(
                    new Name(line.item()),
                    display.mass(line.amount()),
                    line.packs().map(packs -> PackText.of(packs, display))))
        .toList();
  }

  /**
   * So many packs.
   *
   * @param count how many
   * @param size of one
   * @param cost of all, when the price is known
   */
  record PackText(int count, Figure size, Optional<String> cost) {
    static PackText of(ShoppingLine.Packs packs, Display display) {
      return new PackText(
          packs.count(), display.mass(packs.size()), packs.cost().map(Money::toString));
    }
  }
}
