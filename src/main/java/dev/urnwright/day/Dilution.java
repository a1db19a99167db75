package dev.urnwright.day;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.Optional;

/**
 * How to put right a liquid that is diluted already. With {@code M} of it at {@code T}, wanted at
 * {@code t}, and concentrate of {@code Tc}:
 *
 * <pre>
 * too strong: water        x = M(T − t) / t
 * too weak:   concentrate  x = M(t − T) / (Tc − t)
 * </pre>
 *
 * Both follow from conserving solids. A vessel that can hold only {@code F} gets {@code r} drawn
 * off first, so that what is left comes to {@code F} with what is added: {@code r = M − F·t/T}
 * before water, {@code r = M − F(Tc − t)/(Tc − T)} before concentrate.
 *
 * @param drawOff first, as it is
 * @param water to add
 * @param concentrate to add
 * @param strength that it has then
 */
public record Dilution(Mass drawOff, Mass water, Mass concentrate, Strength strength) {
  /** Strengths this close are the same, in percent: half of what a refractometer shows. */
  private static final double SAME_PERCENT = 0.005;

  /**
   * What to add, exact.
   *
   * @param holds M, above 0
   * @param strength T
   * @param wanted t, above 0
   * @param concentrate Tc, what there is to add
   * @param full F, what the vessel takes, when that is known; at least M
   * @return empty when it is too weak and so is the concentrate: {@code Tc ≤ t}
   */
  public static Optional<Dilution> of(
      Mass holds, Strength strength, Strength wanted, Strength concentrate, Optional<Mass> full) {
    double m = holds.grams();
    double is = strength.fraction();
    double t = wanted.fraction();
    double room = full.map(Mass::grams).orElse(Double.POSITIVE_INFINITY);
    if (Math.abs(strength.percent() - wanted.percent()) < SAME_PERCENT) {
      return Optional.of(new Dilution(Mass.ZERO, Mass.ZERO, Mass.ZERO, strength));
    }
    if (is > t) {
      double kept = Math.min(m, room * t / is);
      return Optional.of(
          new Dilution(
              Mass.ofGrams(m - kept), Mass.ofGrams(kept * (is - t) / t), Mass.ZERO, wanted));
    }
    double added = concentrate.fraction();
    if (added <= t) {
      return Optional.empty();
    }
    double kept = Math.min(m, room * (added - t) / (added - is));
    return Optional.of(
        new Dilution(
            Mass.ofGrams(m - kept),
            Mass.ZERO,
            Mass.ofGrams(kept * (t - is) / (added - t)),
            wanted));
  }

  /**
   * The same, as it can be weighed: what is drawn off rounded up, and what is added to the nearest
   * step that fits.
   *
   * @param holds M, as before
   * @param is T, as before
   * @param of Tc, as before
   * @param full F, as before
   * @param step what the scale can tell apart
   */
  public Dilution rounded(Mass holds, Strength is, Strength of, Optional<Mass> full, Mass step) {
    Mass off = drawOff.roundUpTo(step).min(holds);
    double share =
        holds.minus(drawOff).isZero() ? 0 : holds.minus(off).grams() / holds.minus(drawOff).grams();
    Mass kept = holds.minus(off);
    Mass in = fitting(water.times(share), kept, full, step);
    Mass stronger = fitting(concentrate.times(share), kept, full, step);
    double solids = kept.grams() * is.fraction() + stronger.grams() * of.fraction();
    double all = kept.grams() + in.grams() + stronger.grams();
    return new Dilution(off, in, stronger, Strength.ofFraction(all == 0 ? 0 : solids / all));
  }

  private static Mass fitting(Mass added, Mass kept, Optional<Mass> full, Mass step) {
    Mass nearest = added.roundTo(step);
    return full.map(all -> nearest.min(all.minus(kept.min(all)).roundDownTo(step))).orElse(nearest);
  }
}
