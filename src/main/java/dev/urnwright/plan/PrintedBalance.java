package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The masses of a coffee as they are printed, rounded so that they add up: {@code water = steam +
 * absorbed + beverage} and {@code finished = concentrate + bypass + ice}. What nobody weighs, that
 * which the grounds keep, takes what rounding leaves of the one; the bypass that of the other. None
 * is further from the exact mass than the last printed digit.
 *
 * @param water brew water
 * @param steam of it, lost as vapour
 * @param absorbed of it, kept by the grounds
 * @param beverage of it, what left them
 * @param bypass added after brewing
 * @param ice that melts into the cups
 * @param finished all that is served
 */
public record PrintedBalance(
    Mass water, Mass steam, Mass absorbed, Mass beverage, Mass bypass, Mass ice, Mass finished) {
  /**
   * A brew and what is served of it.
   *
   * @param blend of that brew's beverage, or of a part of it
   * @param display tells the last digit
   */
  public static PrintedBalance of(BrewBalance brew, Blend blend, Display display) {
    Mass finest = display.finest(brew.water()).max(display.finest(blend.finished()));
    Mass water = brew.water().roundTo(finest);
    Mass steam = brew.steam().roundTo(finest);
    Mass beverage = brew.beverage().roundTo(finest);
    Mass finished = blend.finished().roundTo(finest);
    Mass concentrate = blend.concentrate().roundTo(finest);
    Mass ice = blend.ice().roundTo(finest);
    return new PrintedBalance(
        water,
        steam,
        rest(water, steam, beverage),
        beverage,
        rest(finished, concentrate, ice),
        ice,
        finished);
  }

  private static Mass rest(Mass all, Mass some, Mass others) {
    return Mass.ofGrams(Math.max(0, all.grams() - some.grams() - others.grams()));
  }

  /**
   * Parts rounded so that they add up to their rounded sum: each is rounded down, and those that
   * lost the most get a digit back (the method of the largest remainder).
   *
   * @param finest the last digit, above 0
   */
  static List<Mass> parts(List<Mass> exact, Mass finest) {
    double[] digits = exact.stream().mapToDouble(part -> part.grams() / finest.grams()).toArray();
    long missing = Math.round(IntStream.range(0, digits.length).mapToDouble(i -> digits[i]).sum());
    long[] whole = new long[digits.length];
    for (int i = 0; i < digits.length; i++) {
      whole[i] = (long) Math.floor(digits[i]);
      missing -= whole[i];
    }
    IntStream.range(0, digits.length)
        .boxed()
        .sorted(Comparator.comparing((Integer i) -> digits[i] - whole[i]).reversed())
        .limit(Math.max(0, missing))
        .forEach(i -> whole[i]++);
    List<Mass> parts = new ArrayList<>();
    for (long digit : whole) {
      parts.add(finest.times(digit));
    }
    return parts;
  }
}
