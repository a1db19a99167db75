package dev.urnwright.schedule;

import dev.urnwright.event.Dispenser;
import dev.urnwright.quantity.Volume;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * Which kind of dispenser serves a group, and how many of it: the fewest fills, then the least left
 * empty. Kinds of which enough are still free come first; a kind that must come back for a refill
 * is taken only when none is free.
 */
public final class DispenserChoice {
  /** Less than this is binary noise: 50 − 40 − 10 ml leave nothing to draw. */
  private static final double NOISE_LITRES = 1e-9;

  private final Map<Dispenser, Integer> free = new LinkedHashMap<>();

  /** A choice among these kinds, all of them free. */
  public DispenserChoice(List<Dispenser> dispensers) {
    dispensers.forEach(dispenser -> free.put(dispenser, dispenser.count()));
  }

  /**
   * So many fills of one kind.
   *
   * @param dispenser the kind
   * @param fills how many times one is filled, 1 or more
   */
  public record Chosen(Dispenser dispenser, int fills) {}

  /** Takes dispensers for one coffee of one group, however long it is poured. */
  Optional<Chosen> take(Volume drawn, Volume slack, Optional<String> kind) {
    return take(drawn, slack, kind, dispenser -> OptionalInt.of(1));
  }

  /**
   * Takes dispensers for one coffee of one group.
   *
   * @param drawn what is drawn from them, as warm as it is filled in, above 0
   * @param slack room kept free in each for rounding
   * @param kind the name of the kind that the user wants, when there is one
   * @param leastFills how many fills of a kind its hold asks for at least; empty where it is too
   *     short
   * @return empty when no dispenser is listed that serves
   */
  public Optional<Chosen> take(
      Volume drawn,
      Volume slack,
      Optional<String> kind,
      Function<Dispenser, OptionalInt> leastFills) {
    Optional<Chosen> chosen =
        free.keySet().stream()
            .filter(d -> kind.isEmpty() || kind.get().equals(d.name()))
            .filter(d -> usable(d, slack) > NOISE_LITRES)
            .flatMap(
                d ->
                    leastFills.apply(d).stream()
                        .mapToObj(least -> new Chosen(d, Math.max(least, fills(d, drawn, slack)))))
            .min(
                Comparator.comparing((Chosen c) -> c.fills() > free.getOrDefault(c.dispenser(), 0))
                    .thenComparing(Chosen::fills)
                    .thenComparing(c -> c.dispenser().capacity()));
    chosen.ifPresent(c -> free.merge(c.dispenser(), -c.fills(), Integer::sum));
    return chosen;
  }

  /** Kinds of which more fills were taken than there are dispensers, with the number of fills. */
  public Map<Dispenser, Integer> refilled() {
    Map<Dispenser, Integer> over = new LinkedHashMap<>();
    free.forEach(
        (dispenser, left) -> {
          if (left < 0) {
            over.put(dispenser, dispenser.count() - left);
          }
        });
    return over;
  }

  private static int fills(Dispenser dispenser, Volume drawn, Volume slack) {
    return (int) Math.ceil(drawn.litres() / usable(dispenser, slack) - 1e-9);
  }

  /** Litres that can be drawn from one fill. */
  private static double usable(Dispenser dispenser, Volume slack) {
    return dispenser.capacity().litres() - dispenser.heel().litres() - slack.litres();
  }
}
