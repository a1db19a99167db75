package dev.urnwright.event;

import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import java.util.List;
import java.util.Optional;

/**
 * What is bought besides the coffee, what the event costs, and what is brought along.
 *
 * @param supplies of distinct names
 * @param costing what goes into the price
 * @param bring what the packing list has besides the equipment, in the user's words
 */
public record Purchases(List<Supply> supplies, Costing costing, List<String> bring) {
  /** Nothing. */
  public static final Purchases NONE =
      new Purchases(
          List.of(), new Costing(Optional.empty(), Optional.empty(), List.of()), List.of());

  /** Copies the lists. */
  public Purchases {
    supplies = List.copyOf(supplies);
    bring = List.copyOf(bring);
  }

  /**
   * What goes into the price.
   *
   * @param margin the share of the price before tax that is not cost, below 100 %; no price is
   *     worked out without it
   * @param tax on the price, when there is any
   * @param others costs that don't come in packs
   */
  public record Costing(Optional<Share> margin, Optional<Share> tax, List<Charge> others) {
    /** Copies the list; refuses a price that is all margin. */
    public Costing {
      others = List.copyOf(others);
      if (margin.isPresent() && margin.get().fraction() >= 1) {
        throw new IllegalArgumentException("a margin is below 100 % of the price");
      }
    }
  }

  /**
   * A cost that doesn't come in packs: labour, hire, a van.
   *
   * @param name what for
   * @param amount of money
   */
  public record Charge(String name, Money amount) {}
}
