package dev.urnwright.demand;

import org.apache.commons.math3.distribution.BinomialDistribution;

/**
 * The exact distribution of the cups that a group drinks.
 *
 * <p>Each of {@code n} guests drinks with probability {@code p}; a drinker takes {@code ⌊c⌋} cups,
 * and one more with probability {@code c − ⌊c⌋}. So the drinkers X are Binomial(n, p), and the cups
 * are {@code ⌊c⌋·X + Binomial(X, c − ⌊c⌋)}.
 */
final class CupsDrunk {
  /**
   * A level missed by less than this part of it, or of what it leaves to chance, is met: a half is
   * a half whichever way binary rounding has turned the sum.
   */
  private static final double LEVEL_NOISE = 1e-10;

  private final int guests;
  private final double drinkerProbability;
  private final int surelyEach;
  private final double oneMoreProbability;
  private final BinomialDistribution drinkers;

  /**
   * A group's cups.
   *
   * @param guests 1 or more
   * @param drinkerProbability from 0 to 1
   * @param cupsEach above 0, at most 1000
   */
  CupsDrunk(int guests, double drinkerProbability, double cupsEach) {
    this.guests = guests;
    this.drinkerProbability = drinkerProbability;
    this.surelyEach = (int) cupsEach;
    this.oneMoreProbability = cupsEach - surelyEach;
    this.drinkers = binomial(guests, drinkerProbability);
  }

  double mean() {
    return guests * drinkerProbability * (surelyEach + oneMoreProbability);
  }

  /** The probability that no more than {@code cups} are drunk. */
  double atMost(long cups) {
    if (cups < 0) {
      return 0;
    }
    if (surelyEach == 0) {
      return binomial(guests, drinkerProbability * oneMoreProbability)
          .cumulativeProbability(clamp(cups));
    }
    if (oneMoreProbability == 0) {
      return drinkers.cumulativeProbability(clamp(cups / surelyEach));
    }
    // Few enough drinkers: all of them may take one more. Above that it depends on how many do.
    int certain = clamp(cups / (surelyEach + 1));
    double sum = drinkers.cumulativeProbability(certain);
    int last = Math.min(clamp(cups / surelyEach), mostDrinkers());
    for (int x = Math.max(certain + 1, fewestDrinkers()); x <= last; x++) {
      int more = clamp(cups - (long) surelyEach * x);
      sum += drinkers.probability(x) * binomial(x, oneMoreProbability).cumulativeProbability(more);
    }
    return Math.min(1, sum);
  }

  /** The smallest number of cups that is enough with at least this probability, below 1. */
  int enoughWith(double wanted) {
    double level = wanted - LEVEL_NOISE * Math.min(wanted, 1 - wanted);
    long low = -1; // atMost(low) < level
    long high = (surelyEach + 1L) * guests; // surely enough
    while (high - low > 1) {
      long middle = (low + high) >>> 1;
      if (atMost(middle) >= level) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return Math.toIntExact(high);
  }

  /**
   * Numbers of drinkers further than this from their mean have, by Bernstein's inequality, a chance
   * below 1e-25 all together: less than a double can add to 1.
   */
  private double drinkerReach() {
    return 12 * Math.sqrt(guests * drinkerProbability * (1 - drinkerProbability)) + 40;
  }

  private int fewestDrinkers() {
    return (int) Math.max(0, Math.floor(guests * drinkerProbability - drinkerReach()));
  }

  private int mostDrinkers() {
    return (int) Math.min(guests, Math.ceil(guests * drinkerProbability + drinkerReach()));
  }

  private static BinomialDistribution binomial(int trials, double probability) {
    return new BinomialDistribution(null, trials, probability);
  }

  private static int clamp(long cups) {
    return (int) Math.min(Integer.MAX_VALUE, cups);
  }
}
