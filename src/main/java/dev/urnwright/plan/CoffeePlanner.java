package dev.urnwright.plan;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.Event;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.BatchSplit;
import dev.urnwright.schedule.BrewerQueue;
import dev.urnwright.schedule.BrewerUnit;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plans one coffee: its ratio, the exact blends, the batches rounded for the scale, the fills drawn
 * from them.
 */
final class CoffeePlanner {
  private final Event event;
  private final CoffeeModel model;
  private final List<GroupNeed> needs;
  private final Map<GroupNeed, Chosen> dispensers;
  private final Mass step;
  private final FillRounding rounding;

  /**
   * A planner for one coffee.
   *
   * @param needs of its groups that drink at least one cup of it; not empty
   * @param dispensers for each need, or none at all when the event lists none
   */
  CoffeePlanner(
      Event event, CoffeeModel model, List<GroupNeed> needs, Map<GroupNeed, Chosen> dispensers) {
    this.event = event;
    this.model = model;
    this.needs = needs;
    this.dispensers = dispensers;
    this.step = event.equipment().scaleStep();
    this.rounding = new FillRounding(event.equipment(), event.serving());
  }

  /** The plan, or nothing and the reasons among the findings' problems. */
  Optional<CoffeePlan> plan(BrewerQueue queue, Findings findings) {
    Optional<BrewRatio> ratio = ratio(findings);
    if (ratio.isEmpty()) {
      return Optional.empty();
    }
    Strength concentrate = brewing().strengthAt(ratio.get());
    List<Blend> blends = blends(concentrate);
    Blend all = sum(blends, concentrate);
    Needed needed = new Needed(brewing().forBeverage(all.concentrate(), ratio.get()), all);

    List<FillRounding.Share> shares = shares(blends);
    Mass drawn = drawn(shares);
    Optional<List<Batch>> batches = batches(drawn, ratio.get(), queue, findings);
    if (batches.isEmpty()) {
      return Optional.empty();
    }
    BrewBalance brewed =
        batches.get().stream().map(Batch::brew).reduce(BrewBalance::plus).orElseThrow();
    List<List<Fill>> fills = rounding.fill(model.coffee().key(), shares, batches.get());
    List<GroupPlan> groups = new ArrayList<>();
    for (int i = 0; i < needs.size(); i++) {
      groups.add(group(needs.get(i), blends.get(i), concentrate, ratio.get(), fills.get(i)));
    }
    OnTheDay onTheDay = new DayTables(event, groups, needs, brewed.strength()).tables();
    return Optional.of(
        new CoffeePlan(
            model.coffee(),
            needed,
            new Brewed(brewed, drawn, brewed.beverage().minus(drawn.min(brewed.beverage()))),
            groups,
            batches.get(),
            onTheDay));
  }

  private BrewModel brewing() {
    return model.brewing();
  }

  private Optional<BrewRatio> ratio(Findings findings) {
    return new RatioChoice(model, needs, this::batchesAt).choose(findings);
  }

  /**
   * How many batches a ratio takes that is strong enough for all; many where it can't be brewed.
   */
  private int batchesAt(BrewRatio ratio) {
    if (event.equipment().brewers().isEmpty()) {
      return 1;
    }
    Mass drawn = drawn(shares(blends(brewing().strengthAt(ratio))));
    return split(brewing().doseFor(drawn, ratio), ratio)
        .map(BatchSplit::count)
        .orElse(Integer.MAX_VALUE);
  }

  private Optional<BatchSplit> split(Mass dose, BrewRatio ratio) {
    return BatchSplit.of(
        dose,
        ratio,
        brewing().beveragePerDose(ratio),
        event.equipment(),
        event.serving().bypassTemperature());
  }

  private List<Blend> blends(Strength concentrate) {
    return needs.stream().map(need -> blend(need, concentrate)).toList();
  }

  private List<FillRounding.Share> shares(List<Blend> blends) {
    List<FillRounding.Share> shares = new ArrayList<>();
    for (int i = 0; i < needs.size(); i++) {
      GroupNeed need = needs.get(i);
      shares.add(rounding.share(need, Optional.ofNullable(dispensers.get(need)), blends.get(i)));
    }
    return shares;
  }

  private static Mass drawn(List<FillRounding.Share> shares) {
    return shares.stream().map(FillRounding.Share::concentrateOfAll).reduce(Mass.ZERO, Mass::plus);
  }

  private Mass finished(GroupNeed need) {
    return need.finished(Optional.ofNullable(dispensers.get(need)));
  }

  private Blend blend(GroupNeed need, Strength concentrate) {
    return Blend.of(finished(need), need.group().strength(), concentrate, need.ice());
  }

  private static Blend sum(List<Blend> blends, Strength concentrate) {
    double[] sums = new double[3];
    for (Blend blend : blends) {
      sums[0] += blend.concentrate().grams();
      sums[1] += blend.bypass().grams();
      sums[2] += blend.ice().grams();
    }
    return new Blend(
        Mass.ofGrams(sums[0]), Mass.ofGrams(sums[1]), Mass.ofGrams(sums[2]), concentrate);
  }

  private Optional<List<Batch>> batches(
      Mass beverage, BrewRatio ratio, BrewerQueue queue, Findings findings) {
    Mass dose = brewing().doseFor(beverage, ratio);
    if (event.equipment().brewers().isEmpty()) {
      return Optional.of(List.of(batch(1, Optional.empty(), dose.roundUpTo(step), ratio)));
    }
    Optional<BatchSplit> split = split(dose, ratio);
    if (split.isEmpty()) {
      findings.refuse(
          new Unbrewable(event, model, needs, dose, ratio, findings.display()).problem());
      return Optional.empty();
    }
    if (!split.get().surplus().isZero()) {
      findings.caution(
          "surplus",
          model.coffee().name()
              + ": the brewers' least doses force "
              + findings.display().mass(split.get().surplus())
              + " more coffee than the guests need; the concentrate left over is on the sheet.");
    }
    List<Batch> batches = new ArrayList<>();
    for (BatchSplit.Share share : split.get().batches()) {
      BrewerUnit unit = queue.next(share.brewers());
      batches.add(batch(batches.size() + 1, Optional.of(unit), share.dose(), ratio));
    }
    return Optional.of(batches);
  }

  private Batch batch(int number, Optional<BrewerUnit> unit, Mass dose, BrewRatio ratio) {
    // Water is rounded up like the dose, so that a batch never falls short of its beverage.
    Mass water = ratio.waterFor(dose).roundUpTo(step);
    return new Batch(
        model.coffee().key() + "-" + number,
        number,
        unit,
        brewing().brew(dose, water),
        Volume.ofWater(water, event.serving().fillingTemperature()));
  }

  private GroupPlan group(
      GroupNeed need, Blend blend, Strength concentrate, BrewRatio ratio, List<Fill> fills) {
    Blend cup = Blend.of(need.cupMass(), need.group().strength(), concentrate, need.ice());
    double dose = cup.concentrate().grams() / brewing().beveragePerDose(ratio);
    double water = ratio.gramsPerGram() * dose + cup.bypass().grams() + cup.ice().grams();
    return new GroupPlan(
        need.group(),
        need.coffee(),
        need.demand(),
        new GroupPlan.CupFill(
            cup,
            GroupPlan.Caffeine.of(Mass.ofGrams(dose), need.coffee().caffeine()),
            BrewRatio.ofGramsPerGram(water / dose)),
        blend,
        fills);
  }
}
