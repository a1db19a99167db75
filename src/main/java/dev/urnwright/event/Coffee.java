package dev.urnwright.event;

import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Money;
import java.util.Optional;

/**
 * One coffee of the event.
 *
 * @param key its short name in the file; {@code coffee} when the event has only one
 * @param name what sheets and labels call it
 * @param decaf whether it is decaffeinated; never to be mistaken for one that isn't
 * @param profile what is known of brewing it
 * @param concentrate how strong it is to be brewed
 * @param caffeine how much caffeine is in the ground coffee
 * @param bag how it is bought, when given
 * @param journal what it is called in the journal, if it is planned by that
 * @param location where it stands
 */
public record Coffee(
    String key,
    String name,
    boolean decaf,
    BrewProfile profile,
    ConcentrateWish concentrate,
    CaffeineContent caffeine,
    Optional<Bag> bag,
    Optional<JournalName> journal,
    Location location) {
  /** A coffee that is planned by what the event says of it alone. */
  public Coffee(
      String key,
      String name,
      boolean decaf,
      BrewProfile profile,
      ConcentrateWish concentrate,
      CaffeineContent caffeine,
      Optional<Bag> bag,
      Location location) {
    this(key, name, decaf, profile, concentrate, caffeine, bag, Optional.empty(), location);
  }

  /**
   * A bag of coffee.
   *
   * @param size what is in it, above 0
   * @param price what it costs, when given
   * @param onHand of this coffee, that needn't be bought
   */
  public record Bag(Mass size, Optional<Money> price, Mass onHand) {}

  /** The same coffee, brewed otherwise. */
  public Coffee with(BrewProfile other) {
    return new Coffee(key, name, decaf, other, concentrate, caffeine, bag, journal, location);
  }

  /** What its entries in a journal are headed by: its name there, or else its own. */
  public String nameInJournal() {
    return journal.map(JournalName::coffee).orElse(name);
  }
}
