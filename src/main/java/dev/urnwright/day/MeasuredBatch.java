package dev.urnwright.day;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.plan.Batch;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;

/**
 * A batch of the plan as it came out.
 *
 * @param planned what it should have been
 * @param weighed what was weighed and read
 * @param beverage as weighed, else what the planned absorption leaves
 * @param strength as read, else what the planned extraction gives that beverage
 * @param absorption as weighed, else as planned
 * @param extraction as read, else as planned; for immersion, the solids in all the liquid
 */
public record MeasuredBatch(
    Batch planned,
    WeighedBatch weighed,
    Mass beverage,
    Strength strength,
    Absorption absorption,
    Extraction extraction) {
  /**
   * What a weighed batch was.
   *
   * @param brewing what the plan brewed by
   * @throws IllegalArgumentException if no beverage can have come of it
   */
  public static MeasuredBatch of(Batch planned, WeighedBatch weighed, BrewModel brewing) {
    Share steam = brewing.steamLoss();
    Absorption kept = weighed.absorption(steam).orElse(brewing.absorption());
    double left = weighed.brewWater().grams() * (1 - steam.fraction());
    Mass beverage =
        weighed
            .beverage()
            .orElseGet(() -> Mass.ofGrams(Math.max(0, left - kept.of(weighed.dose()).grams())));
    Extraction extraction =
        weighed
            .extraction(brewing.method(), kept, steam)
            .orElseGet(() -> brewing.curve().at(weighed.ratio()));
    Strength strength =
        weighed
            .readings()
            .strength()
            .orElseGet(
                () ->
                    new BrewModel(brewing.method(), brewing.curve(), kept, steam)
                        .strengthAt(weighed.ratio()));
    return new MeasuredBatch(planned, weighed, beverage, strength, kept, extraction);
  }

  /** The same, of another plan's batch. */
  MeasuredBatch of(Batch before) {
    return new MeasuredBatch(before, weighed, beverage, strength, absorption, extraction);
  }

  /** Whether its beverage was weighed. */
  public boolean isBeverageWeighed() {
    return weighed.beverage().isPresent();
  }

  /** Whether its strength was read, and the readings stand. */
  public boolean isRead() {
    return weighed.readings().stand();
  }
}
