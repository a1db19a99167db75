package dev.urnwright.sheet;

import dev.urnwright.event.Supply;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Display;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Optional;

/**
 * Something to buy.
 *
 * @param item what
 * @param allergens in the user's words, when told
 * @param amount needed
 * @param onHand what there is of it, when there is any
 * @param enough whether nothing needs to be bought
 * @param packs what to buy in packs, when it comes in packs
 */
record ShoppingRow(
    Name item,
    Optional<String> allergens,
    String amount,
    Optional<String> onHand,
    boolean enough,
    Optional<PackText> packs) {
  static List<ShoppingRow> of(Plan plan, Display display, Words words) {
    return plan.shopping().stream().map(line -> of(line, display, words)).toList();
  }

  static ShoppingRow of(ShoppingLine line, Display display, Words words) {
    return new ShoppingRow(
        new Name(words.text(line.what())),
        line.supply().flatMap(Supply::allergens),
        display.amount(line.amount()),
        Optional.of(line.onHand()).filter(there -> !there.isNothing()).map(display::amount),
        line.missing().isNothing(),
        line.packs().map(packs -> PackText.of(packs, display)));
  }

  /**
   * So many packs.
   *
   * @param count how many
   * @param size of one
   */
  record PackText(long count, String size) {
    static PackText of(ShoppingLine.Packs packs, Display display) {
      return new PackText(packs.count(), display.amount(packs.size()));
    }
  }
}
