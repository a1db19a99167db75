package dev.urnwright.learn;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.Learned;
import dev.urnwright.journal.BrewEntry;
import dev.urnwright.learn.Fit.Point;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Strength;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;

/**
 * Learns from weighed batches.
 *
 * <p>Absorption: {@link MeanFit} about what was believed, which is trusted to 0.25 g/g (one
 * standard deviation; published figures for drip go from 1.5 to 2.35 g/g). Batches of one coffee on
 * one brewer usually scatter by 0.1 g/g. Extraction: a {@link LineFit} of what was read less what
 * the curve expects at the same ratio; the curve is trusted to 1.5 points of extraction and 0.3
 * points for each 1 g/g of ratio, and batches usually scatter by 0.5 points.
 */
public final class BrewFitter {
  private static final double ABSORPTION_TRUST = 0.25;
  private static final double ABSORPTION_SCATTER = 0.1;
  private static final LineFit.Trust CURVE_TRUST = new LineFit.Trust(0.015, 0.003, 0.005);

  /** 20 to 31 % of roasted coffee is soluble (Trigg in Ukers, 1922); far more is a slip. */
  private static final double MOST_EXTRACTED = 0.35;

  private static final double MOST_KEPT = 20;

  private final Display display;

  /** A fitter that writes its reasons so. */
  public BrewFitter(Display display) {
    this.display = display;
  }

  /** One entry that counts. */
  private record Seen(BrewEntry entry, double x, double value) {}

  /**
   * Learns.
   *
   * @param entries of one coffee and one kind of brewer; those brewed another way are named and
   *     left out
   */
  public Fit fit(Starting starting, List<BrewEntry> entries) {
    List<Oddity> odd = new ArrayList<>();
    List<BrewEntry> alike = alike(starting, entries, odd);
    List<Seen> kept = kept(starting, alike, odd);
    Optional<Learned<Absorption>> absorption = absorption(starting, kept, odd);
    double mean = absorption.map(Learned::value).orElse(starting.absorption()).gramsPerGram();
    List<Seen> lifted = lifted(starting, alike, kept, mean, odd);
    return new Fit(starting, entries.size(), absorption, curve(starting, lifted, odd), odd);
  }

  private static List<BrewEntry> alike(
      Starting starting, List<BrewEntry> entries, List<Oddity> odd) {
    entries.stream()
        .filter(entry -> entry.method() != starting.method())
        .forEach(
            entry ->
                odd.add(
                    leftOut(
                        entry,
                        entry.method() == BrewMethod.IMMERSION
                            ? Saying.of("odd.steeped")
                            : Saying.of("odd.not-steeped"))));
    return entries.stream().filter(entry -> entry.method() == starting.method()).toList();
  }

  private List<Seen> kept(Starting starting, List<BrewEntry> entries, List<Oddity> odd) {
    List<Seen> kept = new ArrayList<>();
    for (BrewEntry entry : entries) {
      if (entry.weighed().beverage().isPresent()) {
        double each =
            left(starting, entry)
                - entry.weighed().beverage().get().grams() / entry.weighed().dose().grams();
        if (each < 0) {
          odd.add(leftOut(entry, Saying.of("odd.too-much")));
        } else if (each > MOST_KEPT) {
          odd.add(leftOut(entry, Saying.of("odd.too-little")));
        } else {
          kept.add(new Seen(entry, entry.weighed().ratio().gramsPerGram(), each));
        }
      }
    }
    return kept;
  }

  private Optional<Learned<Absorption>> absorption(
      Starting starting, List<Seen> kept, List<Oddity> odd) {
    if (kept.isEmpty()) {
      return Optional.empty();
    }
    name(
        kept,
        ABSORPTION_SCATTER,
        value ->
            Saying.of("odd.kept")
                .with("kept", display.absorption(Absorption.ofGramsPerGram(value))),
        odd);
    MeanFit mean =
        MeanFit.of(
            starting.absorption().gramsPerGram(),
            ABSORPTION_TRUST,
            ABSORPTION_SCATTER,
            values(kept));
    DoubleFunction<Absorption> typed =
        value -> Absorption.ofGramsPerGram(Math.max(0, Math.min(MOST_KEPT, value)));
    return Optional.of(
        new Learned<>(
            starting.absorption(),
            typed.apply(mean.value()),
            typed.apply(mean.value() - mean.reach()),
            typed.apply(mean.value() + mean.reach()),
            kept.size()));
  }

  /** What each reading says of the curve: so much above it at that ratio, as a fraction. */
  private List<Seen> lifted(
      Starting starting,
      List<BrewEntry> entries,
      List<Seen> kept,
      double meanKept,
      List<Oddity> odd) {
    List<Seen> lifted = new ArrayList<>();
    for (BrewEntry entry : entries) {
      Optional<Strength> strength = entry.weighed().readings().strength();
      if (strength.isEmpty()) {
        if (!entry.weighed().readings().taken().isEmpty()) {
          odd.add(leftOut(entry, Saying.of("odd.readings")));
        }
        continue;
      }
      boolean unlikely =
          entry.weighed().beverage().isPresent()
              && kept.stream().noneMatch(seen -> seen.entry().equals(entry));
      if (unlikely) {
        continue; // its weights can't be so, and it was named for them
      }
      double own =
          kept.stream()
              .filter(seen -> seen.entry().equals(entry))
              .mapToDouble(Seen::value)
              .findFirst()
              .orElse(meanKept);
      BrewRatio ratio = entry.weighed().ratio();
      extracted(starting, entry, strength.get(), own)
          .ifPresentOrElse(
              extraction ->
                  lifted.add(
                      new Seen(
                          entry,
                          ratio.gramsPerGram(),
                          extraction.fraction() - starting.curve().at(ratio).fraction())),
              () -> odd.add(leftOut(entry, Saying.of("odd.extraction-impossible"))));
    }
    return lifted;
  }

  private List<Point> curve(Starting starting, List<Seen> lifted, List<Oddity> odd) {
    if (lifted.isEmpty()) {
      return List.of();
    }
    double[] x = lifted.stream().mapToDouble(Seen::x).toArray();
    LineFit line = new LineFit(CURVE_TRUST, x, values(lifted));
    List<Seen> about =
        lifted.stream()
            .map(seen -> new Seen(seen.entry(), seen.x(), seen.value() - line.at(seen.x())))
            .toList();
    name(
        about,
        CURVE_TRUST.scatter(),
        value ->
            Saying.of("odd.extraction")
                .with("off", display.extraction(Extraction.ofFraction(Math.abs(value)))),
        odd);
    return DoubleStream.concat(
            starting.curve().knots().stream().mapToDouble(knot -> knot.ratio().gramsPerGram()),
            DoubleStream.of(line.least(), line.greatest()))
        .distinct()
        .sorted()
        .mapToObj(ratio -> point(starting, line, ratio, lifted.size()))
        .toList();
  }

  private static Point point(Starting starting, LineFit line, double ratio, int entries) {
    BrewRatio at = BrewRatio.ofGramsPerGram(ratio);
    Extraction before = starting.curve().at(at);
    double now = before.fraction() + line.at(ratio);
    double reach = line.reachAt(ratio);
    return new Point(
        at,
        new Learned<>(
            before, extraction(now), extraction(now - reach), extraction(now + reach), entries),
        ratio >= line.least() && ratio <= line.greatest());
  }

  private static Extraction extraction(double fraction) {
    return Extraction.ofFraction(Math.max(0, Math.min(MOST_EXTRACTED, fraction)));
  }

  /** Names what lies too far from the middle; it counts all the same. */
  private static void name(
      List<Seen> all, double usual, DoubleFunction<Saying> why, List<Oddity> odd) {
    Middle middle = Middle.of(usual / 2, values(all));
    all.stream()
        .filter(seen -> middle.isOdd(seen.value()))
        .forEach(seen -> odd.add(oddity(seen.entry(), why.apply(seen.value()), true)));
  }

  /** Empty where nothing would have left the grounds, or more than coffee gives. */
  private static Optional<Extraction> extracted(
      Starting starting, BrewEntry entry, Strength strength, double kept) {
    double left = left(starting, entry);
    double ifTheWaterHeldItAll = strength.fraction() * left / (1 - strength.fraction());
    return left <= kept || ifTheWaterHeldItAll > 1
        ? Optional.empty()
        : Optional.of(
                BrewModel.extractionOf(
                    starting.method(),
                    strength,
                    entry.weighed().ratio(),
                    Absorption.ofGramsPerGram(kept),
                    starting.steamLoss()))
            .filter(extraction -> extraction.fraction() <= MOST_EXTRACTED);
  }

  /** Water left after steam, for each gram of dose. */
  private static double left(Starting starting, BrewEntry entry) {
    return entry.weighed().ratio().gramsPerGram() * (1 - starting.steamLoss().fraction());
  }

  private static double[] values(List<Seen> all) {
    return all.stream().mapToDouble(Seen::value).toArray();
  }

  private static Oddity leftOut(BrewEntry entry, Saying why) {
    return oddity(entry, why, false);
  }

  private static Oddity oddity(BrewEntry entry, Saying why, boolean counted) {
    UUID id = entry.id();
    return new Oddity(id, entry.occasion().event() + ", " + entry.batch(), why, counted);
  }
}
