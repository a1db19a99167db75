package dev.urnwright.round;

import dev.urnwright.quantity.Volume;
import dev.urnwright.round.DayOfRound.Delivery;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What leftovers teach of tomorrow's carafes, row by row.
 *
 * <p>Of the last days of the same weekday with a leftover entered, {@code m} is the mean leftover
 * and {@code p} the most that was poured on any of them (delivered less left over). With a par of
 * {@code n} carafes of volume {@code V} the row gets the fewest carafes that hold
 *
 * <pre>max(n·V − m, p·(1 + margin))</pre>
 *
 * <p>so never less than was ever poured on these days, and a margin. A carafe that came back empty
 * says only that at least so much was wanted; the margin then adds to it. It is our own rule,
 * simple enough to be followed by hand.
 */
public final class ParTuner {
  private final Round round;
  private final Rules.Tuning tuning;
  private final Map<Drop, List<Return>> returns = new IdentityHashMap<>();
  private final Map<LocalDate, Map<Drop, Integer>> asked = new HashMap<>();

  /** A tuner that knows these returns. */
  public ParTuner(Round round, List<Return> returns) {
    this.round = round;
    this.tuning = round.rules().tuning();
    for (Return entry : returns) {
      if (entry.leftover().isPresent()) {
        this.returns.computeIfAbsent(entry.drop(), drop -> new ArrayList<>()).add(entry);
      }
    }
  }

  /**
   * How many carafes a row should get, and why.
   *
   * @param delivery as the table has it
   * @param carafes by the rule
   * @param days that it follows from, the latest first
   * @param meanLeft mean leftover of these days
   * @param mostPoured on any of them
   */
  public record Move(
      Delivery delivery, int carafes, List<LocalDate> days, Volume meanLeft, Volume mostPoured) {
    /** Copies the list. */
    public Move {
      days = List.copyOf(days);
    }

    /** How many more than the table has; fewer are below 0. */
    public int by() {
      return carafes - delivery.carafes();
    }
  }

  /** What to change about a day's deliveries; those of days that aren't ordinary stay. */
  public List<Move> moves(DayOfRound day) {
    return day.deliveries().stream()
        .filter(delivery -> delivery.change().isEmpty())
        .flatMap(delivery -> move(delivery, day.date()).stream())
        .filter(move -> move.by() != 0)
        .toList();
  }

  private Optional<Move> move(Delivery delivery, LocalDate date) {
    List<Known> known =
        returns.getOrDefault(delivery.drop(), List.of()).stream()
            .filter(entry -> entry.date().isBefore(date))
            .filter(entry -> entry.date().getDayOfWeek() == date.getDayOfWeek())
            .sorted(Comparator.comparing(Return::date).reversed())
            .flatMap(entry -> known(entry).stream())
            .limit(tuning.days())
            .toList();
    if (known.size() < tuning.least()) {
      return Optional.empty();
    }
    Carafe carafe = round.carafe(delivery.drop().content().carafe());
    double left = known.stream().mapToDouble(day -> day.left().litres()).average().orElse(0);
    double poured = known.stream().mapToDouble(day -> day.poured().litres()).max().orElse(0);
    double usual = carafe.fill().litres() * delivery.carafes() - left;
    double wanted = Math.max(usual, poured * (1 + tuning.margin().fraction()));
    return Optional.of(
        new Move(
            delivery,
            Math.max(1, carafe.holding(Volume.ofLitres(Math.max(0, wanted)))),
            known.stream().map(Known::date).toList(),
            Volume.ofLitres(left),
            Volume.ofLitres(poured)));
  }

  /**
   * A day of which the leftover is known.
   *
   * @param date when
   * @param left over
   * @param poured delivered less left over
   */
  private record Known(LocalDate date, Volume left, Volume poured) {}

  private Optional<Known> known(Return entry) {
    int delivered = entry.delivered().orElseGet(() -> askedFor(entry));
    if (delivered == 0) {
      return Optional.empty();
    }
    Volume all = round.carafe(entry.drop().content().carafe()).fill().times(delivered);
    Volume left = entry.leftover().orElseThrow();
    return left.compareTo(all) > 0
        ? Optional.empty()
        : Optional.of(new Known(entry.date(), left, all.minus(left)));
  }

  private int askedFor(Return entry) {
    return asked.computeIfAbsent(entry.date(), this::askedOn).getOrDefault(entry.drop(), 0);
  }

  private Map<Drop, Integer> askedOn(LocalDate date) {
    Map<Drop, Integer> carafes = new IdentityHashMap<>();
    DayOfRound.of(round, date)
        .deliveries()
        .forEach(delivery -> carafes.put(delivery.drop(), delivery.carafes()));
    return carafes;
  }

  /** The day with the rule followed. */
  public static DayOfRound tuned(DayOfRound day, List<Move> moves) {
    Map<Drop, Integer> carafes = new IdentityHashMap<>();
    moves.forEach(move -> carafes.put(move.delivery().drop(), move.carafes()));
    return new DayOfRound(
        day.date(),
        day.deliveries().stream()
            .map(
                delivery ->
                    new Delivery(
                        delivery.drop(),
                        carafes.getOrDefault(delivery.drop(), delivery.carafes()),
                        delivery.change()))
            .toList(),
        day.missed());
  }
}
