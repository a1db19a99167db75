package dev.urnwright.brew;

import dev.urnwright.brew.Budget.Input;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * How sure the strength of a concentrate is, and that of a cup made from it.
 *
 * <p>Strengths are fractions; the errors and their standard uncertainties are in the units of each
 * {@link Doubt}.
 */
public final class StrengthBudget {
  private static final Set<Doubt> OF_THE_CUP =
      EnumSet.of(Doubt.CONCENTRATE, Doubt.BYPASS, Doubt.CUP);
  private static final Set<Doubt> OF_THE_CONCENTRATE =
      EnumSet.complementOf(EnumSet.copyOf(OF_THE_CUP));

  private StrengthBudget() {}

  /**
   * The concentrate of one batch.
   *
   * @param evidence what its brew model rests on
   * @param dose to weigh in
   * @param water to fill in; enough that some leaves the grounds
   * @param uncertainties of each doubt
   */
  public static Budget<Doubt> ofConcentrate(
      Evidence evidence, Mass dose, Mass water, ToDoubleFunction<Doubt> uncertainties) {
    return budget(
        OF_THE_CONCENTRATE,
        uncertainties,
        errors -> concentrate(evidence, dose, water, errors).fraction());
  }

  /**
   * A cup.
   *
   * @param concentrate the budget of what it is made from
   * @param blend to weigh in
   * @param uncertainties of each doubt
   */
  public static Budget<Doubt> ofCup(
      Budget<Doubt> concentrate, Blend blend, ToDoubleFunction<Doubt> uncertainties) {
    // Water that isn't added isn't weighed either.
    Budget<Doubt> mixing =
        budget(
            OF_THE_CUP,
            doubt ->
                doubt == Doubt.BYPASS && blend.bypass().isZero()
                    ? 0
                    : uncertainties.applyAsDouble(doubt),
            errors -> cup(blend, blend.concentrateStrength(), errors).fraction());
    double diluted = mixing.value() / blend.concentrateStrength().fraction();
    return mixing.with(concentrate, diluted);
  }

  /** The strength of a concentrate, had these errors been made. */
  public static Strength concentrate(
      Evidence evidence, Mass dose, Mass water, ToDoubleFunction<Doubt> errors) {
    Mass weighed = moved(dose, errors.applyAsDouble(Doubt.DOSE));
    Mass filled = water.times(Math.max(0, 1 + errors.applyAsDouble(Doubt.BREW_WATER)));
    return evidence.model(errors).brew(weighed, filled).strength();
  }

  /**
   * The strength of a cup, had these errors been made. More in a cup over a portion of ice is the
   * same as less ice.
   */
  public static Strength cup(Blend blend, Strength concentrate, ToDoubleFunction<Doubt> errors) {
    return new Blend(
            moved(blend.concentrate(), errors.applyAsDouble(Doubt.CONCENTRATE)),
            moved(blend.bypass(), errors.applyAsDouble(Doubt.BYPASS)),
            blend.ice().times(1 / (1 + errors.applyAsDouble(Doubt.CUP))),
            concentrate)
        .strength();
  }

  private static Mass moved(Mass mass, double grams) {
    return Mass.ofGrams(Math.max(0, mass.grams() + grams));
  }

  private static Budget<Doubt> budget(
      Collection<Doubt> doubts,
      ToDoubleFunction<Doubt> uncertainties,
      ToDoubleFunction<ToDoubleFunction<Doubt>> model) {
    List<Doubt> order = List.copyOf(doubts);
    List<Input<Doubt>> inputs = new ArrayList<>();
    for (Doubt doubt : order) {
      inputs.add(new Input<>(doubt, 0, uncertainties.applyAsDouble(doubt)));
    }
    return Budget.of(
        values -> {
          Map<Doubt, Double> errors = new EnumMap<>(Doubt.class);
          for (int i = 0; i < values.length; i++) {
            errors.put(order.get(i), values[i]);
          }
          return model.applyAsDouble(doubt -> errors.getOrDefault(doubt, 0.0));
        },
        inputs);
  }
}
