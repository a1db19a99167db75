package dev.urnwright.plan;

import dev.urnwright.plan.Fill.Draw;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Draws concentrate out of batches, one batch after the other. */
final class ConcentrateTap {
  /** Less than this is binary noise of the sums, not a drop. */
  private static final double NOISE_GRAMS = 1e-6;

  private final List<Batch> batches;
  private final double[] available; // grams of each
  private int batch;
  private double leftGrams;

  /**
   * A tap.
   *
   * @param batches one for each order
   * @param orders that may say how much is to be drawn of each
   */
  ConcentrateTap(List<Batch> batches, List<BrewOrder> orders) {
    this.batches = batches;
    this.available =
        IntStream.range(0, batches.size())
            .mapToDouble(
                i -> orders.get(i).drawn().orElse(batches.get(i).brew().beverage()).grams())
            .toArray();
    this.leftGrams = available[0];
  }

  /**
   * What was drawn at once.
   *
   * @param draws from which batches
   * @param strength of them mixed
   */
  record Drawn(List<Draw> draws, Strength strength) {}

  Drawn draw(Mass wanted) {
    List<Draw> draws = new ArrayList<>();
    double missing = wanted.grams();
    double solids = 0;
    while (missing > NOISE_GRAMS) {
      while (leftGrams <= NOISE_GRAMS && batch < batches.size() - 1) {
        batch++;
        leftGrams = available[batch];
      }
      // The last batch gives what noise has kept from the sums.
      double part = batch == batches.size() - 1 ? missing : Math.min(missing, leftGrams);
      draws.add(new Draw(batches.get(batch).id(), Mass.ofGrams(part)));
      solids += part * batches.get(batch).brew().strength().fraction();
      leftGrams -= part;
      missing -= part;
    }
    return new Drawn(draws, Strength.ofFraction(solids / wanted.grams()));
  }
}
