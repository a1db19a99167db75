package dev.urnwright.plan;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.ConcentrateWish;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Strength;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

/**
 * The brew ratio of one coffee's concentrate: the one wished for, or the one that suits best.
 *
 * <p>A ratio of the planner's own choice is one that people can say and set, in tenths: 1:13.2.
 */
final class RatioChoice {
  private static final double TENTHS = 10;

  /** Half of what a blend forgives, so that what is found strong enough here is so there. */
  private static final double NOISE = 0.5e-9;

  private final CoffeeModel model;
  private final List<GroupNeed> needs;
  private final ToIntFunction<BrewRatio> batches;

  /**
   * A choice for one coffee.
   *
   * @param needs of all its groups
   * @param batches how many a ratio takes; where it can't be brewed at all, more than any that can
   */
  RatioChoice(CoffeeModel model, List<GroupNeed> needs, ToIntFunction<BrewRatio> batches) {
    this.model = model;
    this.needs = needs;
    this.batches = batches;
  }

  /** The ratio, or nothing and the reasons among the findings' problems. */
  Optional<BrewRatio> choose(Findings findings) {
    ConcentrateWish wish = model.coffee().concentrate();
    if (wish instanceof ConcentrateWish.ByRatio by) {
      return checked(by.ratio(), findings);
    }
    if (wish instanceof ConcentrateWish.ByStrength by) {
      return byStrength(by.strength(), findings);
    }
    if (wish instanceof ConcentrateWish.Between range) {
      return between(range, findings);
    }
    return asReference(findings);
  }

  private Optional<BrewRatio> byStrength(Strength strength, Findings findings) {
    if (!brewing().reaches(strength)) {
      findings.refuse(
          new Problem(
              model.coffee().location(),
              "no brew of "
                  + model.coffee().name()
                  + " is "
                  + findings.display().strength(strength)
                  + " strong",
              "at most "
                  + findings.display().strength(strongest())
                  + "; a concentrate of 1.5 % to 3 % is usual"));
      return Optional.empty();
    }
    return checked(brewing().ratioFor(strength), findings);
  }

  /** Down to the hundredth of a percent that is printed. */
  private Strength strongest() {
    double percent = brewing().strengthAt(brewing().leastRatio()).percent();
    return Strength.ofPercent(Math.floor(percent * 100 + NOISE) / 100);
  }

  private BrewModel brewing() {
    return model.brewing();
  }

  /** The ratio itself when it brews and is strong enough for every group. */
  private Optional<BrewRatio> checked(BrewRatio ratio, Findings findings) {
    String name = model.coffee().name();
    if (!brewing().brewsAt(ratio)) {
      double least = brewing().leastRatio().gramsPerGram();
      findings.refuse(
          new Problem(
              model.coffee().location(),
              "at "
                  + findings.display().ratio(ratio)
                  + " the grounds of "
                  + name
                  + " keep the water",
              "a ratio of "
                  + findings.display().perGram(Math.ceil(least * TENTHS - NOISE) / TENTHS)
                  + " or more"));
      return Optional.empty();
    }
    return served(ratio, findings);
  }

  private Optional<BrewRatio> served(BrewRatio ratio, Findings findings) {
    Strength strength = brewing().strengthAt(ratio);
    List<GroupNeed> unreached = needs.stream().filter(n -> !n.isReachedBy(strength)).toList();
    unreached.forEach(
        need -> findings.refuse(new Unreached(model, need, ratio, findings.display()).problem()));
    return unreached.isEmpty() ? Optional.of(ratio) : Optional.empty();
  }

  private Optional<BrewRatio> between(ConcentrateWish.Between range, Findings findings) {
    Strength least = leastConcentrate();
    List<BrewRatio> strongEnough =
        candidates(range).stream()
            .filter(ratio -> brewing().brewsAt(ratio))
            .filter(ratio -> atLeast(brewing().strengthAt(ratio), least))
            .toList();
    if (strongEnough.isEmpty()) {
      return checked(range.strongest(), findings);
    }
    // Without a reference the weakest is nearest to an ordinary brew.
    double wanted = model.reference().orElse(range.weakest()).gramsPerGram();
    BrewRatio chosen =
        strongEnough.stream()
            .min(
                Comparator.comparingInt(batches)
                    .thenComparingDouble(ratio -> Math.abs(ratio.gramsPerGram() - wanted)))
            .orElseThrow();
    findings.note(
        "ratio-chosen",
        Saying.of("note.ratio-chosen")
            .with("coffee", model.coffee().name())
            .with("ratio", Figure.bare(findings.display().ratio(chosen)))
            .with("strongest", Figure.bare(findings.display().ratio(range.strongest())))
            .with("weakest", Figure.bare(findings.display().ratio(range.weakest())))
            .with("reference", model.reference().isPresent()));
    return Optional.of(chosen);
  }

  private Optional<BrewRatio> asReference(Findings findings) {
    Strength least = leastConcentrate();
    Optional<BrewRatio> reference =
        model
            .reference()
            .filter(brewing()::brewsAt)
            .filter(r -> atLeast(brewing().strengthAt(r), least));
    if (reference.isEmpty() && !brewing().reaches(least)) {
      return served(brewing().leastRatio(), findings); // names the groups that it can't serve
    }
    BrewRatio ratio = reference.orElseGet(() -> strongEnough(least));
    findings.note(
        "ratio-default",
        Saying.of("note.ratio-default")
            .with("coffee", model.coffee().name())
            .with("ratio", Figure.bare(findings.display().ratio(ratio)))
            .with("reference", reference.isPresent()));
    return checked(ratio, findings);
  }

  /** The weakest ratio, in tenths if it can be, that reaches a strength. */
  private BrewRatio strongEnough(Strength least) {
    BrewRatio exact = brewing().ratioFor(least);
    BrewRatio tenths = BrewRatio.ofGramsPerGram(Math.floor(exact.gramsPerGram() * TENTHS) / TENTHS);
    return brewing().brewsAt(tenths) && atLeast(brewing().strengthAt(tenths), least)
        ? tenths
        : exact;
  }

  private List<BrewRatio> candidates(ConcentrateWish.Between range) {
    double from = range.strongest().gramsPerGram();
    double to = range.weakest().gramsPerGram();
    List<BrewRatio> ratios = new ArrayList<>(List.of(range.strongest(), range.weakest()));
    model
        .reference()
        .filter(r -> r.gramsPerGram() >= from && r.gramsPerGram() <= to)
        .ifPresent(ratios::add);
    for (long tenth = (long) Math.ceil(from * TENTHS); tenth <= to * TENTHS; tenth++) {
      ratios.add(BrewRatio.ofGramsPerGram(tenth / TENTHS));
    }
    return ratios;
  }

  private Strength leastConcentrate() {
    return needs.stream()
        .map(GroupNeed::leastConcentrate)
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  private static boolean atLeast(Strength strength, Strength least) {
    return strength.fraction() >= least.fraction() * (1 - NOISE);
  }
}
