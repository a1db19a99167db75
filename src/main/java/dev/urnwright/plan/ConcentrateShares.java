package dev.urnwright.plan;

import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which batches of a coffee each fill is drawn from on the clock: in the order in which fills are
 * due, from the batches as they get ready. Nobody keeps a dispenser open for a dribble, so a trifle
 * is drawn from the batch that gives the rest, which is brewed that much larger where its brewer
 * takes it.
 */
final class ConcentrateShares {
  /** Less than this part of a fill is a trifle. */
  private static final double TRIFLE = 0.05;

  /** Less than this is rounding. */
  private static final double NOISE_GRAMS = 1e-3;

  private final CoffeeOrders coffee;
  private final List<TimedBatch> batches;
  private int batch;
  private double left; // of what the schedule draws from the batch; below 0 when a trifle was added
  private double given; // from the batch so far

  /**
   * Shares of one coffee.
   *
   * @param coffee with the doses that brewers take
   * @param batches in order of being ready, one at least
   */
  ConcentrateShares(CoffeeOrders coffee, List<TimedBatch> batches) {
    this.coffee = coffee;
    this.batches = batches;
    this.left = batches.get(0).drawnGrams();
  }

  /**
   * Grams of each batch, by its index, for each fill.
   *
   * @param fills grams of concentrate, in the order in which they are due
   */
  List<Map<Integer, Double>> of(List<Double> fills) {
    return new ArrayList<>(fills.stream().map(this::draw).toList());
  }

  private Map<Integer, Double> draw(double fill) {
    double trifle = TRIFLE * fill;
    double missing = fill;
    Map<Integer, Double> drawn = new LinkedHashMap<>();
    while (missing > NOISE_GRAMS) {
      boolean enough = batch == batches.size() - 1 || missing <= left;
      if (enough || (missing <= left + trifle && gives(batch, given + missing))) {
        give(missing, drawn);
        missing = 0;
      } else if (left <= NOISE_GRAMS || (left <= trifle && gives(batch + 1, next() + left))) {
        open(); // a trifle is left to the next batch, or taken from it
      } else {
        missing -= left;
        give(left, drawn);
      }
    }
    return drawn;
  }

  private void give(double grams, Map<Integer, Double> drawn) {
    drawn.merge(batch, grams, Double::sum);
    given += grams;
    left -= grams;
  }

  /** Turns to the next batch, which owes what the last one did not give. */
  private void open() {
    left += next();
    batch++;
    given = 0;
  }

  private double next() {
    return batches.get(batch + 1).drawnGrams();
  }

  /** Whether a batch can be brewed so large. */
  private boolean gives(int which, double grams) {
    long most = coffee.doses().get(batches.get(which).kind()).greatest();
    return grams <= most * coffee.gramsPerStep();
  }
}
