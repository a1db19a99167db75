package dev.urnwright.sheet;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.plan.PrintedBalance;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Mass;
import java.util.Optional;

/**
 * Where the brew water went: {@code brew water = steam + absorbed + beverage}. The printed parts
 * add up to the printed total: what the grounds keep, the part that nobody weighs, takes what
 * rounding leaves.
 *
 * @param water all of it
 * @param steam lost as vapour, when there is any
 * @param absorbed kept by the grounds
 * @param beverage what left them
 * @param shares the same in percent of the water, for a bar
 */
record WaterWent(
    Figure water, Optional<Figure> steam, Figure absorbed, Figure beverage, Shares shares) {
  static WaterWent of(BrewBalance brew, Display display) {
    PrintedBalance printed =
        PrintedBalance.of(
            brew, new Blend(brew.beverage(), Mass.ZERO, Mass.ZERO, brew.strength()), display);
    return new WaterWent(
        display.mass(printed.water()),
        printed.steam().isZero() ? Optional.empty() : Optional.of(display.mass(printed.steam())),
        display.mass(printed.absorbed()),
        display.mass(printed.beverage()),
        Shares.of(printed.water(), printed.steam(), printed.absorbed()));
  }

  /**
   * Parts of the water, whole percent; they add up to 100.
   *
   * @param steam lost
   * @param absorbed kept
   * @param beverage gained
   */
  record Shares(int steam, int absorbed, int beverage) {
    static Shares of(Mass water, Mass steam, Mass absorbed) {
      int lost = (int) Math.round(100 * steam.grams() / water.grams());
      int kept = (int) Math.round(100 * absorbed.grams() / water.grams());
      return new Shares(lost, kept, Math.max(0, 100 - lost - kept));
    }
  }
}
