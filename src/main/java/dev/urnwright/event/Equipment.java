package dev.urnwright.event;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Volume;
import java.util.List;

/**
 * What there is to work with.
 *
 * @param brewers kinds of brewer; none when the user listed none, and then one batch a coffee
 * @param circuits electrical circuits that brewers name
 * @param dispensers kinds of dispenser; none when the user listed none
 * @param scaleStep what the scale can tell apart, above 0
 * @param jugMark what the measuring jug can tell apart, above 0
 * @param uncertainties how far off what is done with it may be
 */
public record Equipment(
    List<Brewer> brewers,
    List<Circuit> circuits,
    List<Dispenser> dispensers,
    Mass scaleStep,
    Volume jugMark,
    Uncertainties uncertainties) {
  /** Copies the lists; refuses steps of nothing. */
  public Equipment {
    brewers = List.copyOf(brewers);
    circuits = List.copyOf(circuits);
    dispensers = List.copyOf(dispensers);
    if (scaleStep.isZero() || jugMark.litres() == 0) {
      throw new IllegalArgumentException("a scale and a jug tell something apart");
    }
  }

  /** The same with other brewers and dispensers. */
  public Equipment with(List<Brewer> otherBrewers, List<Dispenser> otherDispensers) {
    return new Equipment(
        otherBrewers, circuits, otherDispensers, scaleStep, jugMark, uncertainties);
  }
}
