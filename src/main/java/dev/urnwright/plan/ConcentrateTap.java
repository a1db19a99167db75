package dev.urnwright.plan;

import dev.urnwright.plan.Fill.Draw;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Draws concentrate out of batches, one batch after the other. */
final class ConcentrateTap {
  /** Less than this is binary noise of the sums, not a drop. */
  private static final double NOISE_GRAMS = 1e-6;

  private final List<Batch> batches;
  private int batch;
  private double leftGrams;

  /** A tap before all of these batches, one at least. */
  ConcentrateTap(List<Batch> batches) {
    this.batches = batches;
    this.leftGrams = batches.get(0).brew().beverage().grams();
  }

  /**
   * What was drawn at once.
   *
   * @param draws from which batches
   * @param strength of them mixed
   */
  record Drawn(List<Draw> draws, Strength strength) {}

  /** Draws certain amounts from certain batches, by their index. */
  Drawn draw(Map<Integer, Double> grams) {
    List<Draw> draws = new ArrayList<>();
    double all = 0;
    double solids = 0;
    for (Map.Entry<Integer, Double> share : grams.entrySet()) {
      Batch from = batches.get(share.getKey());
      draws.add(new Draw(from.id(), Mass.ofGrams(share.getValue())));
      all += share.getValue();
      solids += share.getValue() * from.brew().strength().fraction();
    }
    return new Drawn(draws, Strength.ofFraction(solids / all));
  }

  /** Draws so much from the batches in their order. */
  Drawn draw(Mass wanted) {
    List<Draw> draws = new ArrayList<>();
    double missing = wanted.grams();
    double solids = 0;
    while (missing > NOISE_GRAMS) {
      while (leftGrams <= NOISE_GRAMS && batch < batches.size() - 1) {
        batch++;
        leftGrams = batches.get(batch).brew().beverage().grams();
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
