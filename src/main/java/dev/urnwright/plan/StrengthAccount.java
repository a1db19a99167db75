package dev.urnwright.plan;

import dev.urnwright.brew.Budget;
import dev.urnwright.brew.Budget.Line;
import dev.urnwright.brew.Doubt;
import dev.urnwright.brew.Estimate;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Unit;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What makes the cups of one coffee unsure, told for the group that drinks the most of it.
 *
 * @param concentrate of the least sure batch
 * @param group that group
 * @param cup how sure its cup is
 * @param entries what it comes from, the largest part first; none when all is known exactly
 * @param afterReading how sure the cup is when every batch is read on the day and corrected for
 * @param first what to improve first; empty when all is known exactly
 */
public record StrengthAccount(
    Estimate concentrate,
    GroupPlan group,
    Estimate cup,
    List<Entry> entries,
    Estimate afterReading,
    Optional<Saying> first) {
  /** What a reading of the batch doesn't tell. */
  private static final Set<Doubt> AFTER_THE_READING =
      EnumSet.of(Doubt.CONCENTRATE, Doubt.BYPASS, Doubt.CUP);

  /** Copies the list. */
  public StrengthAccount {
    entries = List.copyOf(entries);
  }

  /** What to improve first, in English; empty when all is known exactly. */
  public String advice() {
    return first.map(Saying::toString).orElse("");
  }

  /**
   * One source of uncertainty.
   *
   * @param source which
   * @param amount its standard uncertainty, in the source's unit
   * @param contribution the standard uncertainty of the cup, were this its only source
   * @param share of the cup's variance
   * @param without how sure the cup would be if this were known exactly
   */
  public record Entry(
      Source source, double amount, Strength contribution, Share share, Estimate without) {}

  static StrengthAccount of(
      Estimate concentrate,
      GroupPlan group,
      Estimate cup,
      Budget<Doubt> budget,
      Strength refractometer,
      Display display) {
    List<Entry> entries = new ArrayList<>();
    for (Source source : Source.values()) {
      List<Line<Doubt>> lines =
          budget.lines().stream()
              .filter(line -> Source.of(line.input().source()) == source)
              .filter(line -> line.contribution() > 0)
              .toList();
      if (!lines.isEmpty()) {
        entries.add(entry(source, cup, budget, lines));
      }
    }
    entries.sort(Comparator.comparing(Entry::share).reversed());
    Estimate after =
        new Estimate(cup.strength(), afterReading(group.fills().get(0), budget, refractometer));
    return new StrengthAccount(
        concentrate,
        group,
        cup,
        entries,
        after,
        entries.stream().findFirst().map(most -> new Advice(most, cup, after, display).saying()));
  }

  private static Entry entry(
      Source source, Estimate cup, Budget<Doubt> budget, List<Line<Doubt>> lines) {
    double uncertainty = lines.get(0).input().uncertainty();
    return new Entry(
        source,
        source.unit() == Unit.PERCENT ? 100 * uncertainty : uncertainty,
        Strength.ofFraction(Math.min(1, new Budget<>(0, lines).uncertainty())),
        Share.ofFraction(budget.share(lines)),
        new Estimate(cup.strength(), budget.uncertaintyWithout(lines)));
  }

  /** A reading of the batch takes the place of all that the concentrate was worked out from. */
  private static double afterReading(Fill fill, Budget<Doubt> budget, Strength refractometer) {
    double diluted =
        fill.blend().strength().fraction() / fill.blend().concentrateStrength().fraction();
    List<Line<Doubt>> left =
        budget.lines().stream()
            .filter(line -> AFTER_THE_READING.contains(line.input().source()))
            .toList();
    return Math.hypot(diluted * refractometer.fraction(), new Budget<>(0, left).uncertainty());
  }
}
