package dev.urnwright.schedule;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Equipment;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Temperature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a dose is shared among batches: as few as possible, then as equal as the scale allows, two of
 * 6 kg rather than 10 and 2.
 *
 * <p>Everything is counted in steps of the scale, so that equal means equal on the scale.
 *
 * @param batches in falling order of dose
 * @param surplus what least doses force beyond the dose asked for
 */
public record BatchSplit(List<Share> batches, Mass surplus) {
  /** Nobody brews more batches of one coffee for one event. */
  public static final int MOST_BATCHES = 10_000;

  private static final int MANY_MORE = 20;

  /** Copies the list. */
  public BatchSplit {
    batches = List.copyOf(batches);
  }

  /**
   * One batch.
   *
   * @param dose in whole steps of the scale
   * @param brewers the kinds that can brew it
   */
  public record Share(Mass dose, List<Brewer> brewers) {
    /** Copies the list. */
    public Share {
      brewers = List.copyOf(brewers);
    }
  }

  /**
   * Shares a dose among the event's brewers.
   *
   * @param dose above 0
   * @param ratio of the brew
   * @param beveragePerDose grams of beverage for each gram of dose at that ratio, above 0
   * @param equipment the brewers and the scale
   * @param beverageTemperature how warm the beverage is in the vessels
   * @return empty when even one batch of the least dose is more than the dose, when at this ratio
   *     no brewer, if there are any, holds the water or the beverage of its least dose, or when it
   *     would take more than {@link #MOST_BATCHES}
   */
  public static Optional<BatchSplit> of(
      Mass dose,
      BrewRatio ratio,
      double beveragePerDose,
      Equipment equipment,
      Temperature beverageTemperature) {
    return of(
        dose,
        ranges(ratio, beveragePerDose, equipment, beverageTemperature),
        equipment.scaleStep());
  }

  /** What each of the brewers takes at a ratio, in their order. */
  public static List<DoseRange> ranges(
      BrewRatio ratio,
      double beveragePerDose,
      Equipment equipment,
      Temperature beverageTemperature) {
    return equipment.brewers().stream()
        .map(
            brewer ->
                DoseRange.of(
                    brewer,
                    ratio,
                    beveragePerDose,
                    brewer.vessel().map(v -> v.massOfWaterAt(beverageTemperature)),
                    equipment.scaleStep()))
        .toList();
  }

  /**
   * Shares a dose among ranges.
   *
   * <p>Equal batches are tried first; on brewers of several kinds, each number of batches of every
   * kind is. A brewer whose least dose is more than the whole dose is left cold. Where the least
   * doses leave no way to brew just the dose, the smallest that can be brewed in the fewest batches
   * is taken, and the difference is {@link #surplus}.
   *
   * @param dose above 0
   * @param ranges what the brewers take at the planned ratio
   * @param step of the scale
   * @return empty when even one batch of the least dose is more than the dose, no brewer is usable,
   *     or it would take more than {@link #MOST_BATCHES}
   */
  static Optional<BatchSplit> of(Mass dose, List<DoseRange> ranges, Mass step) {
    long steps = Math.round(dose.roundUpTo(step).steps(step));
    List<DoseRange> usable =
        ranges.stream().filter(DoseRange::usable).filter(range -> range.least() <= steps).toList();
    if (usable.isEmpty()) {
      return Optional.empty();
    }
    long largest = usable.stream().mapToLong(DoseRange::greatest).max().orElseThrow();
    long fewest = ceilDiv(steps, largest);
    if (fewest > MOST_BATCHES) {
      return Optional.empty();
    }
    // Twice the fewest batches, or many more, is far enough to look for a split without surplus; a
    // caterer would rather pour a little away than brew twice as often.
    for (long count = fewest; count <= Math.min(2 * fewest, fewest + MANY_MORE); count++) {
      Optional<List<Share>> shares = exactly(steps, count, usable, step);
      if (shares.isPresent()) {
        return Optional.of(new BatchSplit(shares.get(), Mass.ZERO));
      }
    }
    return Optional.of(withSurplus(steps, fewest, usable, step));
  }

  /** The number of batches. */
  public int count() {
    return batches.size();
  }

  private static Optional<List<Share>> exactly(
      long steps, long count, List<DoseRange> ranges, Mass step) {
    List<Brewer> forLess = takers(steps / count, ranges);
    List<Brewer> forMore = takers(steps / count + 1, ranges);
    long more = steps % count;
    if (forLess.isEmpty() || (more > 0 && forMore.isEmpty())) {
      return unequal(steps, count, ranges, step);
    }
    List<Share> equal = new ArrayList<>();
    long each = steps / count;
    for (long i = 0; i < count; i++) {
      equal.add(
          i < more
              ? new Share(step.times(each + 1), forMore)
              : new Share(step.times(each), forLess));
    }
    return Optional.of(equal);
  }

  private static List<Brewer> takers(long dose, List<DoseRange> ranges) {
    return ranges.stream().filter(range -> range.takes(dose)).map(DoseRange::brewer).toList();
  }

  /** The most equal of all ways to give some batches to each kind. */
  private static Optional<List<Share>> unequal(
      long steps, long count, List<DoseRange> ranges, Mass step) {
    return KindCounts.all(count, ranges, steps, steps).stream()
        .map(counts -> Levelled.of(steps, counts, ranges))
        .min(Comparator.comparingLong(Levelled::spread))
        .map(levelled -> levelled.shares(step));
  }

  /** The least that so many batches can brew beyond the dose, as equal as that can be. */
  private static BatchSplit withSurplus(long steps, long count, List<DoseRange> ranges, Mass step) {
    Levelled least =
        KindCounts.all(count, ranges, steps, Long.MAX_VALUE).stream()
            .map(
                counts ->
                    Levelled.of(
                        Math.max(steps, KindCounts.leastOf(counts, ranges)), counts, ranges))
            .min(Comparator.comparingLong(Levelled::total).thenComparingLong(Levelled::spread))
            .orElseThrow();
    return new BatchSplit(least.shares(step), step.times(least.total() - steps));
  }

  private static long ceilDiv(long dividend, long divisor) {
    return (dividend + divisor - 1) / divisor;
  }
}
