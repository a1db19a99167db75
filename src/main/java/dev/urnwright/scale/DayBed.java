package dev.urnwright.scale;

import dev.urnwright.quantity.Length;
import dev.urnwright.quantity.Mass;
import java.util.Optional;

/**
 * How deep one of the day's batches lies.
 *
 * @param depth dry
 * @param verdict against the guide
 */
public record DayBed(Length depth, Recipe.Bed.Verdict verdict) {
  /** The bed of a dose on the brewer that was scaled to; empty when its basket isn't known. */
  public static Optional<DayBed> of(Scaled scaled, Mass dose) {
    ScaleRequest request = scaled.request();
    return request
        .target()
        .basket()
        .map(
            basket -> {
              Length depth = basket.depthOf(dose, request.brewing().bulkGramsPerMillilitre());
              return new DayBed(depth, RecipeMaker.verdict(basket, depth));
            });
  }
}
