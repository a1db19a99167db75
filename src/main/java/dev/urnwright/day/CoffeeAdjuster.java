package dev.urnwright.day;

import static java.util.Objects.requireNonNull;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.day.Adjustment.BatchChange;
import dev.urnwright.day.Adjustment.FillChange;
import dev.urnwright.event.Event;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.FillMaking;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Shares out what there is of one coffee, and asks the batches still to brew for the rest.
 *
 * <p>Every dispenser keeps its strength. Where a measured batch gave too little, all that draw on
 * it get the same part, so that nobody is left out; what a group misses goes into its later
 * dispensers, as far as they hold it, and into the batches that these draw on.
 */
final class CoffeeAdjuster {
  /** A batch that is stronger by less is rounded, not brewed stronger; in percent. */
  private static final double SAME_PERCENT = 0.005;

  /** So much of one cup, missing from a whole dispenser, is seen by nobody. */
  private static final double UNSEEN = 0.1;

  private final Event event;
  private final CoffeePlan coffee;
  private final BrewModel today;
  private final Map<String, Supply> supplies = new LinkedHashMap<>();
  private final Map<String, BatchChange> batches = new LinkedHashMap<>();

  /**
   * Of one coffee.
   *
   * @param brewed its batches that are brewed, by id, in order of brewing
   * @param made its fills that drew from them already, by the plan's amounts
   */
  CoffeeAdjuster(
      Event event,
      CoffeePlan coffee,
      BrewModel today,
      Map<String, MeasuredBatch> brewed,
      List<Fill> made) {
    this.event = event;
    this.coffee = coffee;
    this.today = today;
    brewed.forEach(
        (id, batch) ->
            supplies.put(
                id,
                new Supply(
                    Math.max(0, batch.beverage().grams() - drawn(made, id)), batch.strength())));
  }

  /**
   * Concentrate for a dispenser that is diluted already, before any other gets some: of the batch
   * brewed last that has it.
   *
   * @param remedy what to do with concentrate of a strength; nothing when that is too weak
   */
  Optional<Remedied> remedied(Function<Strength, Optional<Dilution>> remedy) {
    List<String> latestFirst = new ArrayList<>(supplies.keySet());
    Collections.reverse(latestFirst);
    for (String batch : latestFirst) {
      Supply supply = requireNonNull(supplies.get(batch));
      Optional<Dilution> dilution = remedy.apply(supply.strength());
      if (dilution.isPresent() && dilution.get().concentrate().grams() <= supply.grams()) {
        supplies.put(batch, supply.without(dilution.get().concentrate()));
        return Optional.of(new Remedied(batch, dilution.get()));
      }
    }
    return Optional.empty();
  }

  /**
   * A dispenser put right.
   *
   * @param batch whose concentrate was thought of
   * @param dilution what to do
   */
  record Remedied(String batch, Dilution dilution) {}

  /** The batches still to brew, as they are to be brewed now; known after {@link #fills}. */
  List<BatchChange> batches() {
    return List.copyOf(batches.values());
  }

  /** The dispensers still to fill, in the plan's order. */
  List<FillChange> fills(Happened happened) {
    List<FillShare> shares = withMakeUp(fairly(planned(happened)));
    brew(shares);
    List<FillShare> brewed =
        shares.stream().map(share -> share.stretched(this::expected, this::strength)).toList();
    List<FillChange> changes = new ArrayList<>();
    for (FillShare share : fairly(brewed)) {
      changes.add(change(share));
    }
    return changes;
  }

  private List<FillShare> planned(Happened happened) {
    List<FillShare> shares = new ArrayList<>();
    for (GroupPlan group : coffee.groups()) {
      for (Fill fill : group.fills()) {
        if (!happened.isMade(fill.id())) {
          shares.add(FillShare.of(group, fill, this::strength));
        }
      }
    }
    return shares;
  }

  /** As brewed; as planned where it isn't yet. */
  private Strength strength(String batchId) {
    Supply supply = supplies.get(batchId);
    return supply != null
        ? supply.strength()
        : coffee.batches().stream()
            .filter(batch -> batch.id().equals(batchId))
            .findFirst()
            .orElseThrow()
            .brew()
            .strength();
  }

  /** What its shares were worked out by: as strong as planned, unless it was brewed stronger. */
  private Strength expected(String batchId) {
    BatchChange change = batches.get(batchId);
    return change != null && isStronger(change)
        ? change.planned().brew().strength()
        : strength(batchId);
  }

  private static boolean isStronger(BatchChange change) {
    return change.now().brew().strength().percent()
        > change.planned().brew().strength().percent() + SAME_PERCENT;
  }

  /** Where a batch gave too little, the same part of it for all that draw on it. */
  private List<FillShare> fairly(List<FillShare> shares) {
    Map<String, Double> wanted = sums(shares);
    return shares.stream()
        .map(
            share ->
                share.times(
                    share.draws().keySet().stream()
                        .mapToDouble(batch -> part(batch, wanted))
                        .min()
                        .orElse(1)))
        .toList();
  }

  private double part(String batch, Map<String, Double> wanted) {
    Supply supply = supplies.get(batch);
    double all = wanted.getOrDefault(batch, 0.0);
    return supply == null || all <= supply.grams() ? 1 : supply.grams() / all;
  }

  private static Map<String, Double> sums(List<FillShare> shares) {
    Map<String, Double> sums = new HashMap<>();
    shares.forEach(
        share -> share.draws().forEach((batch, grams) -> sums.merge(batch, grams, Double::sum)));
    return sums;
  }

  /** What groups miss, put into their dispensers that draw on nothing but batches to come. */
  private List<FillShare> withMakeUp(List<FillShare> shares) {
    Map<GroupPlan, Double> missing = new LinkedHashMap<>();
    shares.forEach(
        share -> missing.merge(share.group(), share.planned() - share.finished(), Double::sum));
    return shares.stream().map(share -> madeUp(share, missing)).toList();
  }

  private FillShare madeUp(FillShare share, Map<GroupPlan, Double> missing) {
    double owed = missing.getOrDefault(share.group(), 0.0);
    boolean toCome = share.draws().keySet().stream().noneMatch(supplies::containsKey);
    if (owed <= 0 || !toCome) {
      return share;
    }
    double room =
        full(share)
            .map(all -> all.grams() / (1 - share.group().iceShare().fraction()) - share.finished())
            .orElse(owed);
    double more = Math.min(owed, Math.max(0, room));
    missing.put(share.group(), owed - more);
    return share.times((share.finished() + more) / share.finished());
  }

  /** Corrects the batches to come, and takes up what they will give. */
  private void brew(List<FillShare> shares) {
    Map<String, Double> wanted = sums(shares);
    BatchCorrection correction = new BatchCorrection(event, today, display());
    for (Batch batch : coffee.batches()) {
      if (!supplies.containsKey(batch.id())) {
        double grams = wanted.getOrDefault(batch.id(), 0.0) + spare(batch);
        int fills =
            (int) shares.stream().filter(each -> each.draws().containsKey(batch.id())).count();
        BatchChange change = correction.giving(batch, grams, fills);
        batches.put(batch.id(), change);
      }
    }
    batches.forEach(
        (id, change) ->
            supplies.put(
                id,
                new Supply(
                    change.now().brew().beverage().grams(), change.now().brew().strength())));
  }

  /** What nobody was to draw from a batch stays its margin; least doses force some. */
  private double spare(Batch batch) {
    double drawn = drawn(coffee.fills(), batch.id());
    double stepGives =
        event.equipment().scaleStep().grams() * today.beveragePerDose(batch.brew().ratio());
    return Math.max(0, batch.brew().beverage().grams() - drawn - stepGives);
  }

  private static double drawn(List<Fill> fills, String batchId) {
    return fills.stream()
        .flatMap(fill -> fill.draws().stream())
        .filter(draw -> draw.batchId().equals(batchId))
        .mapToDouble(draw -> draw.concentrate().grams())
        .sum();
  }

  private FillChange change(FillShare share) {
    Mass step = event.equipment().scaleStep();
    List<Fill.Draw> draws = new ArrayList<>();
    double grams = 0;
    double solids = 0;
    for (Map.Entry<String, Double> draw : share.draws().entrySet()) {
      Supply supply = requireNonNull(supplies.get(draw.getKey()));
      double taken = supply.take(draw.getValue(), step);
      draws.add(new Fill.Draw(draw.getKey(), Mass.ofGrams(taken)));
      grams += taken;
      solids += taken * supply.strength().fraction();
    }
    Fill fill = share.fill();
    GroupPlan group = share.group();
    Mass concentrate = Mass.ofGrams(grams);
    Strength strength = Strength.ofFraction(grams == 0 ? 0 : solids / grams);
    Mass ice = fill.blend().ice().times(share.finished() / share.planned());
    FillMaking making = new FillMaking(event.equipment());
    boolean dilutes = Blend.reaches(strength, group.group().strength(), group.iceShare());
    Mass bypass =
        !dilutes
            ? Mass.ZERO
            : making.bypass(
                new FillMaking.Wanted(group.group().strength(), Mass.ofGrams(share.least())),
                concentrate,
                strength,
                ice,
                full(share));
    Fill now =
        making.fill(
            new FillMaking.Label(fill.id(), fill.groupName(), fill.dispenser()),
            draws,
            new Blend(concentrate, bypass, ice, strength),
            warm(group));
    return new FillChange(fill, now, group.group().strength(), cupsShort(group, fill, now));
  }

  private int cupsShort(GroupPlan group, Fill planned, Fill now) {
    int were = group.cupsOut(planned, planned.blend().liquid(), event.serving());
    Mass unseen = group.cup().blend().liquid().times(UNSEEN);
    int are = group.cupsOut(planned, now.blend().liquid().plus(unseen), event.serving());
    return Math.max(0, were - are);
  }

  private Optional<Mass> full(FillShare share) {
    return share
        .fill()
        .dispenser()
        .map(dispenser -> dispenser.capacity().massOfWaterAt(warm(share.group())));
  }

  private Temperature warm(GroupPlan group) {
    return group.filledAt(event.serving());
  }

  private Display display() {
    return new Display(event.print().units(), event.equipment().scaleStep());
  }
}
