package dev.urnwright.brew;

import dev.urnwright.quantity.Strength;
import org.apache.commons.math3.special.Erf;

/**
 * A strength and how sure it is.
 *
 * @param strength to expect
 * @param uncertainty u, its standard uncertainty as a fraction, 0 or more
 */
public record Estimate(Strength strength, double uncertainty) {
  /** Refuses an uncertainty below zero. */
  public Estimate {
    if (!(uncertainty >= 0) || Double.isInfinite(uncertainty)) {
      throw new IllegalArgumentException(
          "a standard uncertainty must be finite, 0 or more: " + uncertainty);
    }
  }

  /** The lower end of the interval at k = 2; never below none. */
  public Strength low() {
    return Strength.ofFraction(Math.max(0, strength.fraction() - expanded()));
  }

  /** The upper end of the interval at k = 2; never above all. */
  public Strength high() {
    return Strength.ofFraction(Math.min(1, strength.fraction() + expanded()));
  }

  /** Half the width of that interval. */
  public Strength plusMinus() {
    return Strength.ofFraction(Math.min(1, expanded()));
  }

  /**
   * The probability that the truth lies between two strengths, both included, for a normal
   * distribution with this mean and standard deviation.
   *
   * @return from 0 to 1
   */
  public double chanceBetween(Strength least, Strength greatest) {
    if (uncertainty == 0) {
      return strength.compareTo(least) >= 0 && strength.compareTo(greatest) <= 0 ? 1 : 0;
    }
    double scale = uncertainty * Math.sqrt(2);
    return Erf.erf(
            (least.fraction() - strength.fraction()) / scale,
            (greatest.fraction() - strength.fraction()) / scale)
        / 2;
  }

  private double expanded() {
    return Budget.COVERAGE * uncertainty;
  }
}
