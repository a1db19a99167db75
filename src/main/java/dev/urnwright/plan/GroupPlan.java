package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.demand.CupDemand;
import dev.urnwright.event.CaffeineContent;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Serving;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import java.util.List;

/**
 * One coffee of one group.
 *
 * @param group who
 * @param coffee which of their coffees
 * @param demand how many cups
 * @param cup what goes into one cup
 * @param needed the exact blend for all cups, spill and heels
 * @param fills the dispensers that serve it, rounded; all take the same concentrate
 * @param taps how many of them stand open side by side; the next so many follow when they are empty
 */
public record GroupPlan(
    GuestGroup group,
    Coffee coffee,
    CupDemand demand,
    CupFill cup,
    Blend needed,
    List<Fill> fills,
    int taps) {
  /** Copies the list. */
  public GroupPlan {
    fills = List.copyOf(fills);
  }

  /** The strength that the rounded fills give in the cup. */
  public Strength strengthReached() {
    double solids = fills.stream().mapToDouble(fill -> fill.blend().solids().grams()).sum();
    double finished = fills.stream().mapToDouble(fill -> fill.blend().finished().grams()).sum();
    return Strength.ofFraction(finished == 0 ? 0 : solids / finished);
  }

  /** The share of the finished beverage that is ice. */
  public Share iceShare() {
    return Share.ofFraction(cup.blend().ice().grams() / cup.blend().finished().grams());
  }

  /** How warm concentrate and water are when a dispenser is filled. */
  public Temperature filledAt(Serving serving) {
    return group.ice().map(GuestGroup.OverIce::pouredAt).orElse(serving.bypassTemperature());
  }

  /** Whole cups out of one dispenser that holds so much liquid, spill and heel taken off. */
  public int cupsOut(Fill fill, Mass liquid, Serving serving) {
    double heel =
        fill.dispenser()
            .map(Dispenser::heel)
            .map(h -> h.massOfWaterAt(filledAt(serving)).grams())
            .orElse(0.0);
    double eachCup = cup.blend().liquid().grams() * (1 + serving.spill().fraction());
    return (int) Math.floor(Math.max(0, liquid.grams() - heel) / eachCup + 1e-9);
  }

  /**
   * What goes into one cup.
   *
   * @param blend concentrate, bypass and ice of one cup, exact
   * @param caffeine in one cup
   * @param totalWaterToCoffee all water over dose in this cup, for comparison with ordinary brews
   */
  public record CupFill(Blend blend, Caffeine caffeine, BrewRatio totalWaterToCoffee) {}

  /**
   * Caffeine in one cup.
   *
   * @param lowMilligrams the least
   * @param highMilligrams the most
   */
  public record Caffeine(double lowMilligrams, double highMilligrams) {
    /** Drip coffee gives up between this share of its caffeine and all of it (from memory). */
    private static final double LEAST_EXTRACTED = 0.8;

    /** Dose × content × extracted share, the low and the high ends together. */
    static Caffeine of(Mass dose, CaffeineContent content) {
      double milligrams = dose.grams() * 1000;
      return new Caffeine(
          milligrams * content.low().fraction() * LEAST_EXTRACTED,
          milligrams * content.high().fraction());
    }
  }
}
