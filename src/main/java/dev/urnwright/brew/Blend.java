package dev.urnwright.brew;

import dev.urnwright.quantity.Mass;
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
