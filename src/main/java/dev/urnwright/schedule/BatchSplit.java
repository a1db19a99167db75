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
import java.util.stream.LongStream;

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
   * @param equipment one kind of brewer at least
   * @param beverageTemperature how warm the beverage is in the vessels
   * @return empty when even one batch of the least dose is more than the dose, or when at this
   *     ratio no brewer holds the water for its least dose
   */
  public static Optional<BatchSplit> of(
      Mass dose,
      BrewRatio ratio,
      double beveragePerDose,
      Equipment equipment,
      Temperature beverageTemperature) {
    Mass step = equipment.scaleStep();
    List<DoseRange> ranges =
        equipment.brewers().stream()
            .map(
                brewer ->
                    DoseRange.of(
                        brewer,
                        ratio,
                        beveragePerDose,
                        brewer.vessel().map(v -> v.massOfWaterAt(beverageTemperature)),
                        step))
            .toList();
    return of(dose, ranges, step);
  }

  /**
   * Shares a dose among ranges.
   *
   * <p>Equal batches are tried first; on brewers of several kinds, each number of batches of every
   * kind is. Where the least doses leave no way to brew just the dose, the smallest that can be
   * brewed in the fewest batches is taken, and the difference is {@link #surplus}.
   *
   * @param dose above 0
   * @param ranges what the brewers take at the planned ratio
   * @param step of the scale
   * @return empty when even one batch of the least dose is more than the dose, or no brewer is
   *     usable
   */
  static Optional<BatchSplit> of(Mass dose, List<DoseRange> ranges, Mass step) {
    List<DoseRange> usable = ranges.stream().filter(DoseRange::usable).toList();
    long steps = Math.round(dose.roundUpTo(step).steps(step));
    if (usable.stream().noneMatch(range -> range.least() <= steps)) {
      return Optional.empty();
    }
    long largest = usable.stream().mapToLong(DoseRange::greatest).max().orElseThrow();
    long fewest = ceilDiv(steps, largest);
    // Twice the fewest batches is far enough to look for a split without surplus; a caterer would
    // rather pour a little away than brew twice as often.
    for (long count = fewest; count <= 2 * fewest; count++) {
      Optional<List<Share>> shares = exactly(steps, count, usable, step);
      if (shares.isPresent()) {
        return Optional.of(new BatchSplit(shares.get(), Mass.ZERO));
      }
    }
    return Optional.of(withSurplus(steps, usable, step));
  }

  /** The number of batches. */
  public int count() {
    return batches.size();
  }

  private static Optional<List<Share>> exactly(
      long steps, long count, List<DoseRange> ranges, Mass step) {
    List<Share> equal = new ArrayList<>();
    for (long dose : spread(steps, count)) {
      List<Brewer> brewers =
          ranges.stream().filter(range -> range.takes(dose)).map(DoseRange::brewer).toList();
      if (brewers.isEmpty()) {
        return ranges.size() == 1 ? Optional.empty() : unequal(steps, count, ranges, step);
      }
      equal.add(new Share(step.times(dose), brewers));
    }
    return Optional.of(equal);
  }

  /** The most equal of all ways to give some batches to each kind. */
  private static Optional<List<Share>> unequal(
      long steps, long count, List<DoseRange> ranges, Mass step) {
    return KindCounts.all(count, ranges.size(), steps, ranges).stream()
        .map(counts -> Levelled.of(steps, counts, ranges))
        .min(Comparator.comparingLong(Levelled::spread))
        .map(levelled -> levelled.shares(step));
  }

  private static BatchSplit withSurplus(long steps, List<DoseRange> ranges, Mass step) {
    // Some kinds' least doses are too large and the other kinds' greatest too small: brew the least
    // doses of the kind that wastes least.
    DoseRange range =
        ranges.stream()
            .min(
                Comparator.comparingLong((DoseRange r) -> ceilDiv(steps, r.greatest()) * r.least())
                    .thenComparingLong(r -> ceilDiv(steps, r.greatest())))
            .orElseThrow();
    long batches = Math.max(1, ceilDiv(steps, range.greatest()));
    long each = Math.max(range.least(), ceilDiv(steps, batches));
    List<Share> shares = new ArrayList<>();
    for (long i = 0; i < batches; i++) {
      shares.add(new Share(step.times(each), List.of(range.brewer())));
    }
    return new BatchSplit(shares, step.times(batches * each - steps));
  }

  /** So many steps in so many parts that differ by one at most, larger ones first. */
  private static long[] spread(long steps, long parts) {
    return LongStream.range(0, parts)
        .map(i -> steps / parts + (i < steps % parts ? 1 : 0))
        .toArray();
  }

  private static long ceilDiv(long dividend, long divisor) {
    return (dividend + divisor - 1) / divisor;
  }
}
