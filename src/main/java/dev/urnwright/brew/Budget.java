package dev.urnwright.brew;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * An uncertainty budget: how far each input can put a result off, and all of them together.
 *
 * <p>First-order propagation for independent inputs, {@code u² = Σ (cᵢ·uᵢ)²} with {@code cᵢ =
 * ∂f/∂xᵢ} (JCGM 100:2008, equation 10). Inputs that depend on one another are to be written as
 * functions of what doesn't.
 *
 * @param value the result where every input is as estimated
 * @param lines one for each input that isn't known exactly
 * @param <S> what an input is of
 */
public record Budget<S>(double value, List<Line<S>> lines) {
  /** Coverage factor of the intervals that are printed: they hold some 95 times out of 100. */
  public static final double COVERAGE = 2;

  /** Steps of the central difference, in standard uncertainties: the error goes with its square. */
  private static final double STEP = 1e-3;

  /** Copies the list. */
  public Budget {
    lines = List.copyOf(lines);
  }

  /**
   * One input.
   *
   * @param source what it is of
   * @param value as estimated
   * @param uncertainty u, its standard uncertainty, 0 or more, in the units of the value
   */
  public record Input<S>(S source, double value, double uncertainty) {
    /** Refuses an uncertainty below zero. */
    public Input {
      if (!(uncertainty >= 0) || Double.isInfinite(uncertainty)) {
        throw new IllegalArgumentException(
            "a standard uncertainty must be finite, 0 or more: " + uncertainty + ", " + source);
      }
    }
  }

  /**
   * One line.
   *
   * @param input which
   * @param sensitivity c, how much the result changes for each unit of the input
   */
  public record Line<S>(Input<S> input, double sensitivity) {
    /** {@code |c|·u}: the uncertainty of the result, were this input the only one. */
    public double contribution() {
      return Math.abs(sensitivity) * input.uncertainty();
    }
  }

  /**
   * The budget of a function's result.
   *
   * @param model takes the inputs' values in their order
   * @param inputs independent of one another
   */
  public static <S> Budget<S> of(ToDoubleFunction<double[]> model, List<Input<S>> inputs) {
    double[] at = inputs.stream().mapToDouble(Input::value).toArray();
    List<Line<S>> lines = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      double step = STEP * inputs.get(i).uncertainty();
      if (step > 0) {
        double estimate = at[i];
        at[i] = estimate + step;
        double above = model.applyAsDouble(at);
        at[i] = estimate - step;
        double below = model.applyAsDouble(at);
        at[i] = estimate;
        lines.add(new Line<>(inputs.get(i), (above - below) / (2 * step)));
      }
    }
    return new Budget<>(model.applyAsDouble(at), lines);
  }

  /**
   * This budget with the inputs of something that it is made of, {@code c·cᵢ} each.
   *
   * @param part a budget without any input of this one's
   * @param sensitivity c, how much this result changes for each unit of the part's
   */
  public Budget<S> with(Budget<S> part, double sensitivity) {
    return new Budget<>(
        value,
        Stream.concat(
                part.lines.stream()
                    .map(line -> new Line<>(line.input(), sensitivity * line.sensitivity())),
                lines.stream())
            .toList());
  }

  /** u, the standard uncertainty of the result. */
  public double uncertainty() {
    return Math.sqrt(variance());
  }

  /** The part of the result's variance that some lines make, from 0 to 1. */
  public double share(List<Line<S>> some) {
    double all = variance();
    return all == 0 ? 0 : Math.min(1, variance(some) / all);
  }

  /** What would be left of the uncertainty if the inputs of some lines were known exactly. */
  public double uncertaintyWithout(List<Line<S>> some) {
    return Math.sqrt(Math.max(0, variance() - variance(some)));
  }

  private double variance() {
    return variance(lines);
  }

  private static <S> double variance(List<Line<S>> lines) {
    return lines.stream().mapToDouble(line -> line.contribution() * line.contribution()).sum();
  }
}
