package dev.urnwright.day;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.day.Adjustment.BatchChange;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Event;
import dev.urnwright.plan.Batch;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.BrewerUnit;
import java.util.Optional;

/**
 * A batch still to brew, made to give its concentrate as strong as planned, and enough of it, by
 * what is known of the coffee today. Where its brewer has no room for that, the concentrate is
 * brewed stronger, so that it goes further.
 *
 * @param event for its scale and brewers
 * @param today how the coffee brews
 * @param display for the reasons
 */
record BatchCorrection(Event event, BrewModel today, Display display) {
  /** Less than this is noise of the sums. */
  private static final double NOISE_GRAMS = 1e-6;

  /** Solids short by less than this are as good as enough: a cup in two hundred. */
  private static final double ENOUGH = 0.995;

  /**
   * The batch that gives so much.
   *
   * @param grams of concentrate that fills take from it
   * @param fills how many; each may take a scale step more, by rounding
   */
  BatchChange giving(Batch planned, double grams, int fills) {
    Mass step = event.equipment().scaleStep();
    Strength wanted = planned.brew().strength();
    BrewRatio ratio = today.reaches(wanted) ? today.ratioFor(wanted) : planned.brew().ratio();
    Mass dose = today.doseFor(Mass.ofGrams(Math.max(0, grams - NOISE_GRAMS)), ratio);
    Limits limits = limits(planned, ratio);
    Mass taken = dose.roundUpTo(step).max(limits.least()).min(limits.greatest());
    Mass water = ratio.waterFor(taken).roundUpTo(step).min(limits.water());
    Batch now = batch(planned, taken, water);
    if (isEnough(now, grams)) {
      return new BatchChange(planned, now, Optional.empty());
    }
    Batch stronger =
        stronger(now, wanted.fraction() * (grams + fills * event.equipment().scaleStep().grams()));
    boolean carries = stronger.brew().solids().grams() >= wanted.fraction() * grams * ENOUGH;
    return new BatchChange(
        planned, stronger, carries ? Optional.empty() : Optional.of(why(planned, stronger)));
  }

  private boolean isEnough(Batch now, double grams) {
    return now.brew().beverage().grams() >= grams - event.equipment().scaleStep().grams();
  }

  /**
   * With as much water, and as much more coffee as it takes for the solids or else gives the most
   * of them.
   */
  private Batch stronger(Batch now, double solids) {
    Mass step = event.equipment().scaleStep();
    Mass most = now.unit().map(unit -> unit.brewer().greatestDose()).orElse(now.brew().dose());
    Batch best = now;
    for (Mass dose = now.brew().dose().plus(step);
        best.brew().solids().grams() < solids && dose.compareTo(most) <= 0;
        dose = dose.plus(step)) {
      Batch next = batch(now, dose, now.brew().water());
      if (next.brew().solids().compareTo(best.brew().solids()) <= 0) {
        return best;
      }
      best = next;
    }
    return best;
  }

  private Batch batch(Batch planned, Mass dose, Mass water) {
    return new Batch(
        planned.id(),
        planned.number(),
        planned.unit(),
        today.brew(dose, water),
        Volume.ofWater(water, event.serving().fillingTemperature()));
  }

  private String why(Batch planned, Batch now) {
    return planned.unit().map(BrewerUnit::label).orElse("The brewer")
        + " takes no more than "
        + display.mass(now.brew().dose())
        + " with "
        + display.mass(now.brew().water())
        + " of water, so "
        + planned.id()
        + " can't make up for all that is missing; one more batch would.";
  }

  /**
   * What a brewer takes.
   *
   * @param least dose, in whole steps
   * @param greatest dose that its water allows, in whole steps
   * @param water the most of it
   */
  private record Limits(Mass least, Mass greatest, Mass water) {}

  private Limits limits(Batch planned, BrewRatio ratio) {
    Mass step = event.equipment().scaleStep();
    Optional<Brewer> brewer = planned.unit().map(BrewerUnit::brewer);
    Mass water =
        brewer
            .map(Brewer::greatestWater)
            .orElse(Mass.ofGrams(Double.MAX_VALUE / 4))
            .max(planned.brew().water());
    Mass greatest =
        brewer
            .map(b -> b.greatestDose().min(Mass.ofGrams(water.grams() / ratio.gramsPerGram())))
            .map(dose -> dose.roundDownTo(step))
            .orElse(Mass.ofGrams(Double.MAX_VALUE / 4));
    Mass vessel =
        brewer
            .flatMap(Brewer::vessel)
            .map(v -> v.massOfWaterAt(event.serving().bypassTemperature()))
            .map(full -> today.doseFor(full, ratio).roundDownTo(step))
            .orElse(greatest);
    Mass most = greatest.min(vessel);
    return new Limits(
        brewer.map(b -> b.leastDose().roundUpTo(step)).orElse(Mass.ZERO).min(most), most, water);
  }
}
