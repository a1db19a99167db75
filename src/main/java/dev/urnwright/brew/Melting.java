package dev.urnwright.brew;

import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Water;

/**
 * Ice at 0 °C that melts into a beverage and cools it. The melted ice is water that has not touched
 * the grounds: bypass.
 */
public final class Melting {
  private static final double MELT = Water.MELTING_HEAT_JOULES_PER_GRAM;
  private static final double HEAT = Water.SPECIFIC_HEAT_JOULES_PER_GRAM_KELVIN;

  private Melting() {}

  /**
   * The share of the finished beverage that was ice.
   *
   * <p>What the ice takes, {@code ice·(L + c·θf)}, is what the beverage gives, {@code liquid·c·(θ0
   * − θf)}; with {@code ice + liquid = 1} that is {@code ice = c(θ0 − θf) / (L + c·θ0)}.
   *
   * @param pouredAt θ0, the beverage before, above 0 °C
   * @param servedAt θf, both together, from 0 °C to {@code pouredAt}
   * @throws IllegalArgumentException if the beverage would not cool
   */
  public static Share iceShare(Temperature pouredAt, Temperature servedAt) {
    if (servedAt.celsius() < 0 || servedAt.compareTo(pouredAt) > 0) {
      throw new IllegalArgumentException(
          "ice cools from " + pouredAt + " to between 0 °C and that: " + servedAt);
    }
    return Share.ofFraction(
        HEAT * pouredAt.kelvinsAbove(servedAt) / (MELT + HEAT * pouredAt.celsius()));
  }

  /**
   * How warm the beverage may be poured so that this share of ice cools it: the inverse of {@link
   * #iceShare}, {@code θ0 = (c·θf + ice·L) / (c(1 − ice))}.
   *
   * @param ice below 100 %
   * @param servedAt θf
   */
  public static Temperature pouringTemperature(Share ice, Temperature servedAt) {
    double share = ice.fraction();
    return Temperature.ofCelsius((HEAT * servedAt.celsius() + share * MELT) / (HEAT * (1 - share)));
  }
}
