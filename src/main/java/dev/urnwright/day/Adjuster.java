package dev.urnwright.day;

import dev.urnwright.brew.BrewModel;
import dev.urnwright.brew.Readings;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.day.Adjustment.BatchChange;
import dev.urnwright.day.Adjustment.CoffeeDay;
import dev.urnwright.day.Adjustment.Doubt;
import dev.urnwright.day.Adjustment.FillChange;
import dev.urnwright.day.Adjustment.Judged;
import dev.urnwright.day.Adjustment.Remedy;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Remainder;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Sets what happened against the plan: {@code x = M(T − t)/t} of water, {@code x = M(t − T)/(Tc −
 * t)} of concentrate, new fills from what the batches really gave, new doses for those to come.
 */
public final class Adjuster {
  private final Plan plan;

  /** For a plan. */
  public Adjuster(Plan plan) {
    this.plan = plan;
  }

  /**
   * What to do now.
   *
   * @param happened its batches and fills are the plan's
   * @throws IllegalArgumentException if the plan has no such batch or fill
   */
  public Adjustment adjust(Happened happened) {
    List<CoffeeDay> days = new ArrayList<>();
    for (CoffeePlan coffee : plan.coffees()) {
      days.add(day(coffee, happened));
    }
    List<CoffeeDay> touched =
        days.stream()
            .filter(
                day ->
                    !day.measured().isEmpty()
                        || !day.readAgain().isEmpty()
                        || !day.standing().isEmpty())
            .toList();
    boolean stands = days.stream().allMatch(day -> day.readAgain().isEmpty());
    return new Adjustment(plan, touched, stands ? left(days) : Optional.empty());
  }

  private Optional<Plan> left(List<CoffeeDay> days) {
    Map<String, Batch> toBrew = new LinkedHashMap<>();
    Map<String, Fill> toFill = new LinkedHashMap<>();
    for (CoffeeDay day : days) {
      day.batches().stream().map(BatchChange::now).forEach(batch -> toBrew.put(batch.id(), batch));
      day.fills().stream().map(FillChange::now).forEach(fill -> toFill.put(fill.id(), fill));
    }
    return new Remainder(plan, toBrew, toFill).plan();
  }

  private CoffeeDay day(CoffeePlan coffee, Happened happened) {
    BrewModel planned = plan.brewing(coffee);
    Map<String, MeasuredBatch> measured = new LinkedHashMap<>();
    List<Judged> judged = new ArrayList<>();
    List<Doubt> doubts = new ArrayList<>();
    for (Batch batch : coffee.batches()) {
      Optional<WeighedBatch> weighed = Optional.ofNullable(happened.batches().get(batch.id()));
      if (weighed.isPresent()) {
        Verdict verdict = Verdict.of(weighed.get().readings());
        MeasuredBatch as = MeasuredBatch.of(batch, weighed.get(), planned);
        measured.put(batch.id(), as);
        judged.add(new Judged(as, verdict));
        if (!verdict.stands()) {
          doubts.add(new Doubt(batch.id(), verdict));
        }
      }
    }
    if (!doubts.isEmpty()) {
      return new CoffeeDay(
          coffee.coffee(), doubts, judged, planned, List.of(), List.of(), List.of());
    }
    BrewModel today = LearnedToday.model(planned, List.copyOf(measured.values()));
    List<Fill> made = coffee.fills().stream().filter(fill -> happened.isMade(fill.id())).toList();
    Map<String, MeasuredBatch> brewed = brewed(coffee, made, measured, planned);
    CoffeeAdjuster adjuster = new CoffeeAdjuster(plan.event(), coffee, today, brewed, made);
    List<Remedy> remedies = remedies(coffee, happened, brewed, adjuster);
    List<FillChange> fills = adjuster.fills(happened);
    return new CoffeeDay(
        coffee.coffee(), List.of(), judged, today, fills, remedies, adjuster.batches());
  }

  /** The measured batches, and as planned those that a made dispenser must have come from. */
  private static Map<String, MeasuredBatch> brewed(
      CoffeePlan coffee, List<Fill> made, Map<String, MeasuredBatch> measured, BrewModel planned) {
    Set<String> drawn =
        made.stream()
            .flatMap(fill -> fill.draws().stream())
            .map(Fill.Draw::batchId)
            .collect(Collectors.toSet());
    Map<String, MeasuredBatch> brewed = new LinkedHashMap<>();
    for (Batch batch : coffee.batches()) {
      Optional<MeasuredBatch> known = Optional.ofNullable(measured.get(batch.id()));
      if (known.isPresent() || drawn.contains(batch.id())) {
        brewed.put(batch.id(), known.orElseGet(() -> asPlanned(batch, planned)));
      }
    }
    return brewed;
  }

  private static MeasuredBatch asPlanned(Batch batch, BrewModel planned) {
    return MeasuredBatch.of(
        batch,
        new WeighedBatch(
            batch.brew().dose(), batch.brew().water(), Optional.empty(), Readings.NONE),
        planned);
  }

  private List<Remedy> remedies(
      CoffeePlan coffee,
      Happened happened,
      Map<String, MeasuredBatch> brewed,
      CoffeeAdjuster adjuster) {
    List<Remedy> remedies = new ArrayList<>();
    for (GroupPlan group : coffee.groups()) {
      for (Fill fill : group.fills()) {
        happened.standing().stream()
            .filter(standing -> standing.fillId().equals(fill.id()))
            .map(
                standing ->
                    remedy(
                        group,
                        fill,
                        standing.holds(),
                        standing.strength().orElseGet(() -> mixed(fill, brewed)),
                        adjuster))
            .forEach(remedies::add);
      }
    }
    return remedies;
  }

  private Remedy remedy(
      GroupPlan group, Fill fill, Mass holds, Strength is, CoffeeAdjuster adjuster) {
    Strength wanted =
        Strength.ofFraction(
            group.group().strength().fraction() / (1 - group.iceShare().fraction()));
    Temperature warm = group.filledAt(plan.event().serving());
    Optional<Mass> full = fill.dispenser().map(d -> d.capacity().massOfWaterAt(warm).max(holds));
    Mass step = plan.event().equipment().scaleStep();
    Function<Strength, Optional<Dilution>> withConcentrate =
        of ->
            Dilution.of(holds, is, wanted, of, full)
                .map(exact -> exact.rounded(holds, is, of, full, step));
    Optional<Dilution> withWater = withConcentrate.apply(Strength.ofFraction(0));
    if (withWater.isPresent()) {
      return new Remedy(fill, holds, is, wanted, withWater, Optional.empty());
    }
    Optional<CoffeeAdjuster.Remedied> remedied = adjuster.remedied(withConcentrate);
    return new Remedy(
        fill,
        holds,
        is,
        wanted,
        remedied.map(CoffeeAdjuster.Remedied::dilution),
        remedied.map(CoffeeAdjuster.Remedied::batch));
  }

  /** As it was weighed in by the plan, of batches as they came out. */
  private static Strength mixed(Fill fill, Map<String, MeasuredBatch> brewed) {
    double solids =
        fill.draws().stream()
            .mapToDouble(
                draw ->
                    draw.concentrate().grams()
                        * Optional.ofNullable(brewed.get(draw.batchId()))
                            .map(MeasuredBatch::strength)
                            .orElse(fill.blend().concentrateStrength())
                            .fraction())
            .sum();
    return Strength.ofFraction(solids / fill.blend().liquid().grams());
  }
}
