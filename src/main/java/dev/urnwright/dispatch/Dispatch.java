package dev.urnwright.dispatch;

import dev.urnwright.event.Note;
import dev.urnwright.plan.Plan;
import dev.urnwright.round.CarafeLedger;
import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.ParTuner;
import dev.urnwright.round.Round;
import java.util.List;

/**
 * Everything worked out for a day of the round.
 *
 * @param round what was asked for
 * @param day who gets how many carafes, as delivered
 * @param plan of the brewing; its times are of {@link NightClock}'s even day
 * @param brewing what is brewed and filled, and when
 * @param legs in the order in which they leave
 * @param stock carafes of each kind
 * @param ledger carafes at the sites before this delivery
 * @param moves what leftovers teach
 * @param moved whether the day follows the moves
 * @param cautions what can hurt someone or disappoint them
 * @param notes every assumption made and default used
 */
public record Dispatch(
    Round round,
    DayOfRound day,
    Plan plan,
    Brewing brewing,
    List<LegDay> legs,
    List<Stock> stock,
    CarafeLedger ledger,
    List<ParTuner.Move> moves,
    boolean moved,
    List<Note> cautions,
    List<Note> notes) {
  /** Copies the lists. */
  public Dispatch {
    legs = List.copyOf(legs);
    stock = List.copyOf(stock);
    moves = List.copyOf(moves);
    cautions = List.copyOf(cautions);
    notes = List.copyOf(notes);
  }

  /** All carafes of the day. */
  public int carafes() {
    return legs.stream().mapToInt(LegDay::carafes).sum();
  }

  /** How many sites are served. */
  public int sites() {
    return legs.stream().mapToInt(leg -> leg.stops().size()).sum();
  }

  /**
   * Carafes of one kind.
   *
   * @param carafe its name
   * @param owned by the service
   * @param out at the sites
   * @param needed this day
   */
  public record Stock(String carafe, int owned, int out, int needed) {
    /** What is left in the brew room; below 0 when there are too few. */
    public int left() {
      return owned - out - needed;
    }
  }
}
