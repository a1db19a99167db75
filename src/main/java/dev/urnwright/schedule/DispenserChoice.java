package dev.urnwright.schedule;

import dev.urnwright.event.Dispenser;
import dev.urnwright.quantity.Volume;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

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
   * @param fills how many times one is filled, a multiple of {@code taps}
   * @param taps how many stand open side by side, 1 or more
   */
  public record Chosen(Dispenser dispenser, int fills, int taps) {}

  /**
   * What a kind must do for a group. Side by side dispensers are filled, opened and emptied
   * together; so many rounds follow each other.
   *
   * @param rounds at the least, so that each fill is poured within its hold; 1 or more
   * @param taps that its guests need side by side, 1 or more
   * @param mostTaps side by side, {@code taps} or more where there are enough
   */
  public record Pace(int rounds, int taps, int mostTaps) {
    /** One after the other. */
    public static final Pace SINGLE = new Pace(1, 1, 1);

    /** Whether there are enough for the guests. */
    boolean isEnough() {
      return taps <= mostTaps;
    }
  }

  /** Takes dispensers for one coffee of one group, however long it is poured. */
  Optional<Chosen> take(Volume drawn, Volume slack, Optional<String> kind) {
    return take(drawn, slack, kind, dispenser -> Optional.of(Pace.SINGLE));
  }

  /**
   * Takes dispensers for one coffee of one group.
   *
   * @param drawn what is drawn from them, as warm as it is filled in, above 0
   * @param slack room kept free in each for rounding
   * @param kind the name of the kind that the user wants, when there is one
   * @param pace what each kind must do; empty where its hold is too short
   * @return empty when no dispenser is listed that serves
   */
  public Optional<Chosen> take(
      Volume drawn, Volume slack, Optional<String> kind, Function<Dispenser, Optional<Pace>> pace) {
    Optional<Chosen> chosen =
        free.keySet().stream()
            .filter(d -> kind.isEmpty() || kind.get().equals(d.name()))
            .flatMap(d -> pace.apply(d).flatMap(p -> offer(d, drawn, slack, p)).stream())
            .min(ORDER)
            .map(Offer::chosen);
    chosen.ifPresent(c -> free.merge(c.dispenser(), -c.fills(), Integer::sum));
    return chosen;
  }

  private static final Comparator<Offer> ORDER =
      Comparator.comparing((Offer offer) -> !offer.enough())
          .thenComparing(Offer::refill)
          .thenComparing(offer -> offer.chosen().fills())
          .thenComparing(offer -> offer.chosen().dispenser().capacity());

  private record Offer(Chosen chosen, boolean enough, boolean refill) {}

  private Optional<Offer> offer(Dispenser dispenser, Volume drawn, Volume slack, Pace pace) {
    return of(dispenser, drawn, slack, pace)
        .map(
            chosen ->
                new Offer(
                    chosen, pace.isEnough(), chosen.fills() > free.getOrDefault(dispenser, 0)));
  }

  /**
   * How one kind serves: the fewest fills that so many side by side empty together, with less than
   * twice as many side by side as are needed.
   *
   * @return empty when nothing can be drawn from one
   */
  public static Optional<Chosen> of(Dispenser dispenser, Volume drawn, Volume slack, Pace pace) {
    if (usable(dispenser, slack) <= NOISE_LITRES) {
      return Optional.empty();
    }
    int least = fills(dispenser, drawn, slack);
    int fewest = Math.min(pace.taps(), pace.mostTaps());
    return IntStream.rangeClosed(
            fewest, Math.max(fewest, Math.min(2 * fewest - 1, pace.mostTaps())))
        .mapToObj(
            taps -> {
              long rounds = Math.max(pace.rounds(), ((long) least + taps - 1) / taps);
              return new Chosen(dispenser, (int) Math.min(Integer.MAX_VALUE, rounds * taps), taps);
            })
        .min(Comparator.comparingInt(Chosen::fills).thenComparingInt(Chosen::taps));
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
