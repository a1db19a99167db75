package dev.urnwright.day;

import dev.urnwright.brew.Blend;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.LadderMaking;
import dev.urnwright.plan.OnTheDay.Rung;
import dev.urnwright.plan.OnTheDay.TasteLadder;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;

/**
 * Water added to concentrate in equal steps, and tasted each time: the way to the right strength
 * for those without a refractometer. A sample of mass {@code S} and strength {@code Tc} with {@code
 * k} steps of {@code s} has {@code Tc·S / (S + k·s)}.
 *
 * @param coffee whose concentrate
 * @param from what is known of it
 * @param dispenser the fill whose concentrate is all in its dispenser already, and is diluted
 *     there; empty for a sample
 * @param groups for which the steps are scaled: all of the coffee, or the dispenser's own
 * @param table the steps
 */
public record Ladder(
    CoffeePlan coffee,
    Concentrate from,
    Optional<Fill> dispenser,
    List<GroupPlan> groups,
    TasteLadder table) {
  /** A ladder in a dispenser has about this many steps to the bottom of its concentrate. */
  private static final int STEPS_OF_A_DISPENSER = 15;

  /** Nobody tastes more often. */
  public static final int MOST_STEPS = 40;

  private static final double LEAST_PERCENT = 0.3;

  /** Copies the list. */
  public Ladder {
    groups = List.copyOf(groups);
  }

  /**
   * What the expected strengths start from.
   *
   * @param strength of the concentrate
   * @param read whether it was read; else it is what the plan expects
   */
  public record Concentrate(Strength strength, boolean read) {}

  /**
   * How to go about it; what is left out is usual.
   *
   * @param sample concentrate to begin with, above 0; a dispenser has its own
   * @param step water for each step, above 0
   * @param steps how many, from 1 to 40
   * @param read the concentrate's strength, when it was read
   */
  public record Wish(
      Optional<Mass> sample,
      Optional<Mass> step,
      Optional<Integer> steps,
      Optional<Strength> read) {}

  /** From a sample, for all groups of a coffee. */
  public static Ladder ofSample(Plan plan, CoffeePlan coffee, Wish wish) {
    UnitSystem units = plan.event().print().units();
    Mass sample = wish.sample().orElse(LadderMaking.usualSample(units));
    Mass step = wish.step().orElse(LadderMaking.usualStep(units));
    return ladder(plan, coffee, Optional.empty(), coffee.groups(), wish, new Portion(sample, step));
  }

  /**
   * In a dispenser that has its concentrate, and no water yet.
   *
   * @throws IllegalArgumentException if the coffee has no such fill, or it is poured over ice,
   *     which no tongue can taste before it melts
   */
  public static Ladder inDispenser(Plan plan, CoffeePlan coffee, Fill fill, Wish wish) {
    GroupPlan group =
        coffee.groups().stream()
            .filter(each -> each.fills().contains(fill))
            .findFirst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        fill.id() + " has no " + coffee.coffee().name() + " in it"));
    if (group.group().ice().isPresent()) {
      throw new IllegalArgumentException(
          fill.id() + " is poured over ice, which waters it too; expected a sample instead");
    }
    Mass sample = fill.blend().concentrate();
    Mass step =
        wish.step()
            .orElse(
                sample
                    .times(1.0 / STEPS_OF_A_DISPENSER)
                    .roundUpTo(plan.event().equipment().scaleStep()));
    return ladder(plan, coffee, Optional.of(fill), List.of(group), wish, new Portion(sample, step));
  }

  private record Portion(Mass sample, Mass step) {}

  private static Ladder ladder(
      Plan plan,
      CoffeePlan coffee,
      Optional<Fill> dispenser,
      List<GroupPlan> groups,
      Wish wish,
      Portion portion) {
    Concentrate from =
        new Concentrate(
            wish.read().orElse(coffee.brewed().brew().strength()), wish.read().isPresent());
    LadderMaking making = new LadderMaking(groups, plan.event().equipment().scaleStep());
    int steps =
        wish.steps()
            .orElseGet(() -> making.enough(portion.sample(), portion.step(), from.strength()));
    if (steps < 1 || steps > MOST_STEPS) {
      throw new IllegalArgumentException(
          steps + " steps are no ladder; expected 1 to " + MOST_STEPS);
    }
    Ladder ladder =
        new Ladder(
            coffee,
            from,
            dispenser,
            groups,
            making.ladder(portion.sample(), portion.step(), from.strength(), steps));
    if (ladder.after(steps).percent() < LEAST_PERCENT) {
      throw new IllegalArgumentException(
          "after " + steps + " such steps it is water; expected smaller steps, or a larger sample");
    }
    return ladder;
  }

  /** Water for each gram of concentrate after so many steps, which may be half ones. */
  public double waterPerGram(double steps) {
    return steps * table.step().grams() / table.sample().grams();
  }

  /** The strength to expect after so many steps. */
  public Strength after(double steps) {
    return Strength.ofFraction(from.strength().fraction() / (1 + waterPerGram(steps)));
  }

  /**
   * After how many steps a group's wanted strength is expected: {@code (Tc/t − 1)·S/s}; 0 when the
   * concentrate is no stronger than that.
   */
  public double expectedSteps(GroupPlan group) {
    double times = from.strength().fraction() / group.group().strength().fraction();
    return Math.max(0, times - 1) * table.sample().grams() / table.step().grams();
  }

  /** Whether the ice of a group alone is more water than that. */
  public boolean isLessThanItsIce(GroupPlan group, Rung rung) {
    Blend fill = group.fills().get(0).blend();
    return fill.concentrate().grams() * rung.water().grams() / table.sample().grams()
        < fill.ice().grams();
  }

  /** The steps whose water still fits the dispenser; all of them for a sample. */
  public int stepsThatFit(Plan plan) {
    return (int)
        table.rungs().stream()
            .filter(rung -> dispenser.map(fill -> fits(plan, fill, rung.water())).orElse(true))
            .count();
  }

  private boolean fits(Plan plan, Fill fill, Mass water) {
    return fill.dispenser()
        .map(kind -> kind.capacity().massOfWaterAt(groups.get(0).filledAt(plan.event().serving())))
        .map(full -> table.sample().plus(water).compareTo(full) <= 0)
        .orElse(true);
  }
}
