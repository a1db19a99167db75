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
import dev.urnwright.schedule.DispenserChoice.Chosen;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One coffee with its ratio and blends decided and its fills sized: all that can be known before
 * the batches are put on brewers.
 */
final class CoffeeDraft {
  private final Event event;
  private final CoffeeModel model;
  private final List<GroupNeed> needs;
  private final Map<GroupNeed, Chosen> dispensers;
  private final Mass step;
  private final FillRounding rounding;
  private final BrewRatio ratio;
  private final List<Blend> blends;
  private final List<FillRounding.Share> shares;

  private CoffeeDraft(
      Event event,
      CoffeeModel model,
      List<GroupNeed> needs,
      Map<GroupNeed, Chosen> dispensers,
      BrewRatio ratio) {
    this.event = event;
    this.model = model;
    this.needs = needs;
    this.dispensers = dispensers;
    this.step = event.equipment().scaleStep();
    this.rounding = new FillRounding(event.equipment());
    this.ratio = ratio;
    this.blends = needs.stream().map(this::blend).toList();
    this.shares = sized();
  }

  /**
   * A draft for one coffee.
   *
   * @param needs of its groups that drink at least one cup of it; not empty
   * @param dispensers for each need, or none at all when the event lists none
   * @return nothing when no ratio serves, and the reasons among the findings' problems
   */
  static Optional<CoffeeDraft> of(
      Event event,
      CoffeeModel model,
      List<GroupNeed> needs,
      Map<GroupNeed, Chosen> dispensers,
      Findings findings) {
    return new RatioChoice(
            model, needs, ratio -> at(event, model, needs, dispensers, ratio).batches())
        .choose(findings)
        .map(ratio -> at(event, model, needs, dispensers, ratio));
  }

  private static CoffeeDraft at(
      Event event,
      CoffeeModel model,
      List<GroupNeed> needs,
      Map<GroupNeed, Chosen> dispensers,
      BrewRatio ratio) {
    return new CoffeeDraft(event, model, needs, dispensers, ratio);
  }

  CoffeeModel model() {
    return model;
  }

  BrewRatio ratio() {
    return ratio;
  }

  double beveragePerDose() {
    return brewing().beveragePerDose(ratio);
  }

  /** One for each group, in the event's order. */
  List<FillRounding.Share> shares() {
    return shares;
  }

  /** Batches without a clock, as few and as equal as can be; nothing when no brewer fits. */
  Optional<List<BrewOrder>> orders(BrewerQueue queue, Findings findings) {
    Mass dose = dose();
    if (event.equipment().brewers().isEmpty()) {
      return Optional.of(List.of(new BrewOrder(Optional.empty(), dose.roundUpTo(step))));
    }
    Optional<BatchSplit> split = split();
    if (split.isEmpty()) {
      findings.refuse(
          new Unbrewable(event, model, needs, dose, ratio, findings.display()).problem());
      return Optional.empty();
    }
    return Optional.of(
        split.get().batches().stream()
            .map(share -> new BrewOrder(Optional.of(queue.next(share.brewers())), share.dose()))
            .toList());
  }

  /** The dose that all fills take, exact. */
  Mass dose() {
    return brewing().doseFor(drawn(), ratio);
  }

  /**
   * The plan, with these batches.
   *
   * @param orders in order of brewing; enough for all fills
   * @param sequence in which the fills draw their concentrate
   */
  CoffeePlan finish(List<BrewOrder> orders, List<FillRounding.Turn> sequence) {
    Strength concentrate = concentrate();
    Blend all = sum(blends, concentrate);
    List<Batch> batches = new ArrayList<>();
    for (BrewOrder order : orders) {
      batches.add(batch(batches.size() + 1, order));
    }
    BrewBalance brewed = batches.stream().map(Batch::brew).reduce(BrewBalance::plus).orElseThrow();
    List<List<Fill>> fills =
        rounding.fill(model.coffee().key(), shares, sequence, new ConcentrateTap(batches));
    List<GroupPlan> groups = new ArrayList<>();
    for (int i = 0; i < needs.size(); i++) {
      groups.add(group(needs.get(i), blends.get(i), fills.get(i), shares.get(i).taps()));
    }
    return new CoffeePlan(
        model.coffee(),
        new Needed(brewing().forBeverage(all.concentrate(), ratio), all),
        new Brewed(brewed, drawn(), brewed.beverage().minus(drawn().min(brewed.beverage()))),
        groups,
        batches,
        new DayTables(event, groups, brewed.strength(), true).tables());
  }

  /** Fills in the order in which their groups are served. */
  List<FillRounding.Turn> inServiceOrder() {
    return rounding.inServiceOrder(shares);
  }

  private Strength concentrate() {
    return brewing().strengthAt(ratio);
  }

  /** How many batches this draft takes; many where it can't be brewed, or no brewers are listed. */
  private int batches() {
    return split().map(BatchSplit::count).orElse(Integer.MAX_VALUE);
  }

  private Optional<BatchSplit> split() {
    return BatchSplit.of(
        dose(), ratio, beveragePerDose(), event.equipment(), event.serving().bypassTemperature());
  }

  private List<FillRounding.Share> sized() {
    List<FillRounding.Share> sized = new ArrayList<>();
    for (int i = 0; i < needs.size(); i++) {
      GroupNeed need = needs.get(i);
      sized.add(rounding.share(need, Optional.ofNullable(dispensers.get(need)), blends.get(i)));
    }
    return sized;
  }

  private Mass drawn() {
    return shares.stream().map(FillRounding.Share::concentrateOfAll).reduce(Mass.ZERO, Mass::plus);
  }

  private BrewModel brewing() {
    return model.brewing();
  }

  private Blend blend(GroupNeed need) {
    return Blend.of(
        need.finished(Optional.ofNullable(dispensers.get(need))),
        need.group().strength(),
        concentrate(),
        need.ice());
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

  private Batch batch(int number, BrewOrder order) {
    // Water is rounded up like the dose, so that a batch never falls short of its beverage.
    Mass water = ratio.waterFor(order.dose()).roundUpTo(step);
    return new Batch(
        model.coffee().key() + "-" + number,
        number,
        order.unit(),
        brewing().brew(order.dose(), water),
        Volume.ofWater(water, event.serving().fillingTemperature()));
  }

  private GroupPlan group(GroupNeed need, Blend blend, List<Fill> fills, int taps) {
    Blend cup = Blend.of(need.cupMass(), need.group().strength(), concentrate(), need.ice());
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
        fills,
        taps);
  }
}
