package dev.urnwright.plan;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.List;

/**
 * What to do when the concentrate isn't as planned, worked out beforehand so that no computer is
 * needed by the brewers.
 *
 * @param corrections for each likely reading of the concentrate, weakest first
 * @param ladder for those without a refractometer
 */
public record OnTheDay(List<Correction> corrections, TasteLadder ladder) {
  /** Copies the list. */
  public OnTheDay {
    corrections = List.copyOf(corrections);
  }

  /**
   * What one reading means. A stronger concentrate is diluted further, to the planned total; of a
   * weaker one the planned amount is taken, with less water, which makes fewer cups.
   *
   * @param reading of the concentrate
   * @param planned whether this is the reading that the plan expects
   * @param pours for each group of the coffee plan, in its order, what one of its fills takes
   */
  public record Correction(Strength reading, boolean planned, List<Pour> pours) {
    /** Copies the list. */
    public Correction {
      pours = List.copyOf(pours);
    }
  }

  /**
   * One dispenser, corrected.
   *
   * @param concentrate to weigh in
   * @param bypass to weigh in
   * @param strength what that gives in the cup; below the target when even undiluted it is too weak
   * @param cupsShort cups fewer than planned from one such dispenser, 0 or more
   */
  public record Pour(Mass concentrate, Mass bypass, Strength strength, int cupsShort) {}

  /**
   * Water added to a sample in equal small steps, tasted each time.
   *
   * @param sample concentrate to start from
   * @param step water for each rung
   * @param rungs from one step on
   */
  public record TasteLadder(Mass sample, Mass step, List<Rung> rungs) {
    /** Copies the list. */
    public TasteLadder {
      rungs = List.copyOf(rungs);
    }
  }

  /**
   * One rung of the ladder.
   *
   * @param water in the sample so far
   * @param strength to expect, from the planned concentrate
   * @param bypass for each group of the coffee plan, in its order, the water for one fill that
   *     tastes like this sample; iced groups count their ice in it
   */
  public record Rung(Mass water, Strength strength, List<Mass> bypass) {
    /** Copies the list. */
    public Rung {
      bypass = List.copyOf(bypass);
    }
  }
}
