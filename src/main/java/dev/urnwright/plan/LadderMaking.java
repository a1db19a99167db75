package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.plan.OnTheDay.Rung;
import dev.urnwright.plan.OnTheDay.TasteLadder;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnitSystem;
import java.util.List;
import java.util.stream.IntStream;

/** Makes taste ladders: equal steps of water, and what each of them means for a full dispenser. */
public final class LadderMaking {
  private static final int MOST_RUNGS = 20;

  /** The last rung is weaker than this much of what the weakest group wants: one rung beyond it. */
  private static final double BEYOND_WEAKEST = 0.93;

  private final List<GroupPlan> groups;
  private final Mass scaleStep;

  /**
   * Ladders for these groups.
   *
   * @param groups of one coffee, one at least
   * @param scaleStep to which the water for a dispenser is rounded
   */
  public LadderMaking(List<GroupPlan> groups, Mass scaleStep) {
    this.groups = List.copyOf(groups);
    this.scaleStep = scaleStep;
  }

  /** Concentrate that a ladder begins with: 100 g, or 4 oz. */
  public static Mass usualSample(UnitSystem units) {
    return units == UnitSystem.METRIC ? Mass.ofGrams(100) : Mass.ofOunces(4);
  }

  /** Water of one step: 10 g, or 0.4 oz. */
  public static Mass usualStep(UnitSystem units) {
    return units == UnitSystem.METRIC ? Mass.ofGrams(10) : Mass.ofOunces(0.4);
  }

  /**
   * So many rungs.
   *
   * @param sample concentrate to begin with, above 0
   * @param step water for each rung, above 0
   * @param concentrate its strength, from which the others are expected
   * @param rungs 1 or more
   */
  public TasteLadder ladder(Mass sample, Mass step, Strength concentrate, int rungs) {
    return new TasteLadder(
        sample,
        step,
        IntStream.rangeClosed(1, rungs)
            .mapToObj(n -> rung(sample, step.times(n), concentrate))
            .toList());
  }

  /** How many rungs reach beyond the weakest group; at most 20. */
  public int enough(Mass sample, Mass step, Strength concentrate) {
    double weakest =
        groups.stream().mapToDouble(g -> g.group().strength().fraction()).min().orElseThrow();
    return IntStream.rangeClosed(1, MOST_RUNGS)
        .filter(
            n ->
                rung(sample, step.times(n), concentrate).strength().fraction()
                    < weakest * BEYOND_WEAKEST)
        .findFirst()
        .orElse(MOST_RUNGS);
  }

  private Rung rung(Mass sample, Mass water, Strength concentrate) {
    return new Rung(
        water,
        new Blend(sample, water, Mass.ZERO, concentrate).strength(),
        groups.stream()
            .map(group -> bypass(group.fills().get(0).blend(), water.grams() / sample.grams()))
            .toList());
  }

  private Mass bypass(Blend fill, double waterPerConcentrate) {
    return Mass.ofGrams(
            Math.max(0, fill.concentrate().grams() * waterPerConcentrate - fill.ice().grams()))
        .roundTo(scaleStep);
  }
}
