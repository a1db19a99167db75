package dev.urnwright.brew;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;

/**
 * Concentrate with bypass water and, for iced groups, the ice that melts into it. Water brings no
 * solids, so a blend has the extraction of its concentrate.
 *
 * @param concentrate undiluted beverage
 * @param bypass liquid water added after brewing
 * @param ice ice that melts into the cups; zero when served hot
 * @param concentrateStrength strength of the concentrate
 */
public record Blend(Mass concentrate, Mass bypass, Mass ice, Strength concentrateStrength) {
  /** Strengths this close, relatively, are the same: a ratio found for a strength gives it back. */
  private static final double SAME = 1e-9;

  /**
   * So much finished beverage of a strength, out of a concentrate: {@code concentrate = m·t / T},
   * the rest is water.
   *
   * @param finished m, with the ice melted
   * @param strength t, wanted in the cup
   * @param concentrate T, what there is to dilute
   * @param ice share of the finished beverage that is ice
   * @throws IllegalArgumentException if the concentrate is too weak, see {@link #reaches}
   */
  public static Blend of(Mass finished, Strength strength, Strength concentrate, Share ice) {
    if (!reaches(concentrate, strength, ice)) {
      throw new IllegalArgumentException(
          "a concentrate of "
              + concentrate
              + " with "
              + ice
              + " of ice is weaker than "
              + strength);
    }
    Mass melting = finished.times(ice.fraction());
    Mass liquid = finished.minus(melting);
    Mass taken = finished.times(strength.fraction() / concentrate.fraction()).min(liquid);
    return new Blend(taken, liquid.minus(taken), melting, concentrate);
  }

  /** Whether a concentrate, thinned by no more than the ice, is as strong as wanted. */
  public static boolean reaches(Strength concentrate, Strength wanted, Share ice) {
    return concentrate.fraction() * (1 - ice.fraction()) >= wanted.fraction() * (1 - SAME);
  }

  /** Everything together: what is in the cups once the ice has melted. */
  public Mass finished() {
    return concentrate.plus(bypass).plus(ice);
  }

  /** What stands in the dispenser: concentrate and liquid bypass. */
  public Mass liquid() {
    return concentrate.plus(bypass);
  }

  /** Dissolved solids, all of them from the concentrate. */
  public Mass solids() {
    return concentrate.times(concentrateStrength.fraction());
  }

  /** Strength of the finished beverage; zero when there is nothing of it. */
  public Strength strength() {
    double finished = finished().grams();
    return Strength.ofFraction(finished == 0 ? 0 : solids().grams() / finished);
  }

  /** Strength in the dispenser, before any ice; zero when there is nothing in it. */
  public Strength liquidStrength() {
    double liquid = liquid().grams();
    return Strength.ofFraction(liquid == 0 ? 0 : solids().grams() / liquid);
  }
}
