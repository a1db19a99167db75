package dev.urnwright.event;

import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Share;
import java.util.List;
import java.util.Optional;

/**
 * What a journal taught an event, whose coffees and groups have it in them already.
 *
 * @param brewing of the coffees that it taught something of, in the event's order
 * @param drinking of the groups, likewise
 */
public record Taught(List<Brewing> brewing, List<Drinking> drinking) {
  /** Nothing at all. */
  public static final Taught NOTHING = new Taught(List.of(), List.of());

  /** Copies the lists. */
  public Taught {
    brewing = List.copyOf(brewing);
    drinking = List.copyOf(drinking);
  }

  /**
   * How a coffee brews.
   *
   * @param coffee its key
   * @param absorption what its grounds keep, when batches were weighed
   * @param extraction at ratios that were brewed, rising; none when no batches were read
   */
  public record Brewing(
      String coffee, Optional<Learned<Absorption>> absorption, List<Extracted> extraction) {
    /** Copies the list. */
    public Brewing {
      extraction = List.copyOf(extraction);
    }
  }

  /**
   * The extraction at a ratio.
   *
   * @param ratio brew water over dose
   * @param extraction there
   */
  public record Extracted(BrewRatio ratio, Learned<Extraction> extraction) {}

  /**
   * How much a group drinks.
   *
   * @param group its name
   * @param cupsPerGuest cups for each guest, drinker or not
   * @param drinkers the share of the guests who drink coffee
   */
  public record Drinking(String group, Learned<Double> cupsPerGuest, Learned<Share> drinkers) {}

  /** What it taught of brewing a coffee; empty where that is nothing. */
  public Optional<Brewing> of(Coffee coffee) {
    return brewing.stream().filter(each -> each.coffee().equals(coffee.key())).findFirst();
  }

  /** Whether it taught nothing. */
  public boolean isEmpty() {
    return brewing.isEmpty() && drinking.isEmpty();
  }
}
