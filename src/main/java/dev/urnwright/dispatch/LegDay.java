package dev.urnwright.dispatch;

import dev.urnwright.event.TimeWindow;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.round.DayOfRound.Delivery;
import dev.urnwright.round.Drop;
import dev.urnwright.round.Leg;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One leg's day; all times are those on the wall.
 *
 * @param leg which
 * @param times when its carafes are filled
 * @param loads what is taken along, by what is in it
 * @param stops in the order of the way
 */
public record LegDay(Leg leg, Times times, List<Load> loads, List<Stop> stops) {
  /** Copies the lists. */
  public LegDay {
    loads = List.copyOf(loads);
    stops = List.copyOf(stops);
  }

  /**
   * When.
   *
   * @param ready when the last of its batches is
   * @param from the first carafe is filled
   * @param to the last one is closed
   * @param leave the van leaves
   */
  public record Times(
      LocalDateTime ready, LocalDateTime from, LocalDateTime to, LocalDateTime leave) {}

  /**
   * Carafes with the same in them.
   *
   * @param content what
   * @param coffee its name
   * @param count how many
   * @param each how heavy one is at the most, with the carafe where its tare is known
   * @param tared whether the carafe is in that weight
   */
  public record Load(Drop.Content content, String coffee, int count, Mass each, boolean tared) {
    /** All of them. */
    public Mass weight() {
      return each.times(count);
    }
  }

  /**
   * One site.
   *
   * @param number its place on the way
   * @param site its name
   * @param address when given
   * @param window when it is expected, when given
   * @param handed what each of its floors gets
   * @param warmth of the coolest carafe that it gets
   */
  public record Stop(
      int number,
      String site,
      Optional<String> address,
      Optional<TimeWindow> window,
      List<Handed> handed,
      Warmth warmth) {
    /** Copies the list. */
    public Stop {
      handed = List.copyOf(handed);
    }

    /** All carafes that it gets. */
    public int carafes() {
      return handed.stream().mapToInt(row -> row.delivery().carafes()).sum();
    }
  }

  /**
   * How warm coffee is when it is handed over.
   *
   * @param site where
   * @param by when at the latest: the end of the window, or when the van leaves where there is none
   * @param temperature then
   */
  public record Warmth(String site, LocalDateTime by, Temperature temperature) {}

  /** The coolest that any of its sites gets. */
  public Optional<Warmth> coolest() {
    return stops.stream().map(Stop::warmth).min(Comparator.comparing(Warmth::temperature));
  }

  /**
   * What one row gets.
   *
   * @param delivery how many
   * @param coffee its name
   * @param decaf whether it is
   * @param brewed the oldest coffee in it
   * @param useBy of the oldest
   * @param batches that it comes from
   * @param cup caffeine in one cup
   */
  public record Handed(
      Delivery delivery,
      String coffee,
      boolean decaf,
      LocalDateTime brewed,
      LocalDateTime useBy,
      List<String> batches,
      GroupPlan.Caffeine cup) {
    /** Copies the list. */
    public Handed {
      batches = List.copyOf(batches);
    }
  }

  /** All its carafes. */
  public int carafes() {
    return loads.stream().mapToInt(Load::count).sum();
  }

  /** All its carafes together. */
  public Mass weight() {
    return loads.stream().map(Load::weight).reduce(Mass.ZERO, Mass::plus);
  }

  /** The heaviest of its carafes. */
  public Mass heaviest() {
    return loads.stream().map(Load::each).max(Comparator.naturalOrder()).orElse(Mass.ZERO);
  }
}
