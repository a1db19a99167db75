package dev.urnwright.dispatch;

import dev.urnwright.brew.Estimate;
import dev.urnwright.event.Coffee;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Volume;
import dev.urnwright.round.Carafe;
import dev.urnwright.round.Drop;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * The brew room's day; all times are those on the wall.
 *
 * @param batches in order of start
 * @param lots in the order in which they are filled
 * @param heaters when they are switched on, in order of time
 */
public record Brewing(List<BatchDay> batches, List<Lot> lots, List<HeaterDay> heaters) {
  /** Copies the lists. */
  public Brewing {
    batches = List.copyOf(batches);
    lots = List.copyOf(lots);
    heaters = List.copyOf(heaters);
  }

  /**
   * One batch.
   *
   * @param coffee what
   * @param batch how much, on which brewer
   * @param start of brewing
   * @param ready the last drop
   * @param strength to expect, and how surely
   * @param toRinse what the brewer is to be rinsed clean of before, for decaf
   */
  public record BatchDay(
      Coffee coffee,
      Batch batch,
      LocalDateTime start,
      LocalDateTime ready,
      Estimate strength,
      Optional<Coffee> toRinse) {}

  /**
   * Carafes of one leg that are filled alike.
   *
   * @param leg its name
   * @param content what is in them
   * @param carafe their kind
   * @param coffee their coffee
   * @param count how many
   * @param each what is weighed into each
   * @param batches that the concentrate comes from, in order of brewing
   * @param times when
   * @param caffeine in each
   */
  public record Lot(
      String leg,
      Drop.Content content,
      Carafe carafe,
      Coffee coffee,
      int count,
      Each each,
      List<String> batches,
      Times times,
      GroupPlan.Caffeine caffeine) {
    /** Copies the list. */
    public Lot {
      batches = List.copyOf(batches);
    }
  }

  /**
   * What is weighed into one carafe.
   *
   * @param concentrate brewed
   * @param water bypass
   * @param waterByJug the same by volume
   * @param strength that this gives, and how surely
   */
  public record Each(Mass concentrate, Mass water, Volume waterByJug, Estimate strength) {
    /** What is in it. */
    public Mass finished() {
      return concentrate.plus(water);
    }
  }

  /**
   * When a lot is filled, and how long it is good.
   *
   * @param from the first carafe
   * @param to the last lid
   * @param brewed the oldest coffee in it
   * @param useBy when that has stood for as long as its carafe holds it
   */
  public record Times(
      LocalDateTime from, LocalDateTime to, LocalDateTime brewed, LocalDateTime useBy) {}

  /**
   * When a heater is switched on.
   *
   * @param name of the heater
   * @param on filled with tap water
   * @param hot when it is first needed
   */
  public record HeaterDay(String name, LocalDateTime on, LocalDateTime hot) {}
}
