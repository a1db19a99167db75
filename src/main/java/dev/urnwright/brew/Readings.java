package dev.urnwright.brew;

import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Refractometer readings of one liquid, in the order taken. They stand when the last three agree;
 * one reading alone tells nothing of the prism, the sample or the hand.
 *
 * @param taken none or more, the latest last
 */
public record Readings(List<Reading> taken) {
  /** So many of the latest have to agree. */
  public static final int AGREEING = 3;

  /** Points of strength, in percent, between the highest and the lowest that still agree. */
  public static final double WITHIN_PERCENT = 0.01;

  /** Two readings written 1.80 and 1.81 differ by a rounding error more than 0.01. */
  private static final double NOISE = 1e-9;

  /** No reading yet. */
  public static final Readings NONE = new Readings(List.of());

  /** Copies the list. */
  public Readings {
    taken = List.copyOf(taken);
  }

  /**
   * One reading.
   *
   * @param strength as read
   * @param sample temperature of the sample, when it was noted
   */
  public record Reading(Strength strength, Optional<Temperature> sample) {}

  /** These and one more. */
  public Readings and(Reading next) {
    return new Readings(Stream.concat(taken.stream(), Stream.of(next)).toList());
  }

  /** Whether there are three, and the last three lie within 0.01 % of strength. */
  public boolean stand() {
    return taken.size() >= AGREEING && spreadPercent() <= WITHIN_PERCENT + NOISE;
  }

  /** The mean of the last three; empty until the readings {@link #stand()}. */
  public Optional<Strength> strength() {
    return stand()
        ? Optional.of(
            Strength.ofPercent(
                latest().stream()
                    .mapToDouble(reading -> reading.strength().percent())
                    .average()
                    .orElseThrow()))
        : Optional.empty();
  }

  /** The highest less the lowest of the last three, in points of percent; 0 for fewer than two. */
  public double spreadPercent() {
    var statistics =
        latest().stream().mapToDouble(reading -> reading.strength().percent()).summaryStatistics();
    return statistics.getCount() < 2 ? 0 : statistics.getMax() - statistics.getMin();
  }

  private List<Reading> latest() {
    return taken.subList(Math.max(0, taken.size() - AGREEING), taken.size());
  }
}
