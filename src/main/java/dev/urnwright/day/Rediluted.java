package dev.urnwright.day;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewModel;
import dev.urnwright.event.Note;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A plan whose groups are diluted otherwise: as much in every cup and dispenser, from the same
 * batches; more or less of it is concentrate. Nothing is rounded here.
 */
final class Rediluted {
  private final Plan plan;
  private final CoffeePlan coffee;
  private final Strength concentrate;
  private final Map<String, Strength> wanted;

  /**
   * Other dilutions of one coffee.
   *
   * @param concentrate what it is taken for
   * @param wanted strength for each of its groups, by name; none needs more than the concentrate
   */
  Rediluted(Plan plan, CoffeePlan coffee, Strength concentrate, Map<String, Strength> wanted) {
    this.plan = plan;
    this.coffee = coffee;
    this.concentrate = concentrate;
    this.wanted = Map.copyOf(wanted);
  }

  Plan plan() {
    List<Note> notes = new ArrayList<>(plan.notes());
    notes.add(
        new Note("by-taste", Saying.of("note.by-taste").with("coffee", coffee.coffee().name())));
    return new Plan(
        plan.event(),
        plan.coffees().stream().map(each -> each.equals(coffee) ? rediluted() : each).toList(),
        plan.run(),
        plan.shopping(),
        plan.cautions(),
        notes);
  }

  private CoffeePlan rediluted() {
    List<GroupPlan> groups = coffee.groups().stream().map(this::rediluted).toList();
    return new CoffeePlan(
        coffee.coffee(),
        coffee.needed(),
        coffee.brewed(),
        groups,
        coffee.batches().stream().map(batch -> sized(batch, groups)).toList(),
        coffee.onTheDay());
  }

  /** A batch by what is drawn from it now, with the same to spare. */
  private Batch sized(Batch batch, List<GroupPlan> groups) {
    double before = drawn(batch, coffee.groups());
    double now = drawn(batch, groups);
    double beverage = batch.brew().beverage().grams();
    double factor = Math.max(0, beverage + now - before) / beverage;
    BrewModel brewing = plan.brewing(coffee);
    return new Batch(
        batch.id(),
        batch.number(),
        batch.unit(),
        brewing.brew(batch.brew().dose().times(factor), batch.brew().water().times(factor)),
        batch.waterByVolume().times(factor));
  }

  private static double drawn(Batch batch, List<GroupPlan> groups) {
    return groups.stream()
        .flatMap(group -> group.fills().stream())
        .flatMap(fill -> fill.draws().stream())
        .filter(draw -> draw.batchId().equals(batch.id()))
        .mapToDouble(draw -> draw.concentrate().grams())
        .sum();
  }

  private GroupPlan rediluted(GroupPlan group) {
    Strength strength = wanted.getOrDefault(group.group().name(), group.group().strength());
    return new GroupPlan(
        group.group().wanting(strength),
        group.coffee(),
        group.demand(),
        cup(group, strength),
        blend(group.needed(), strength),
        group.fills().stream().map(fill -> fill(fill, strength)).toList(),
        group.taps());
  }

  private GroupPlan.CupFill cup(GroupPlan group, Strength strength) {
    Blend before = group.cup().blend();
    Blend now = blend(before, strength);
    double more = now.concentrate().grams() / before.concentrate().grams();
    double beveragePerDose =
        coffee.needed().brew().beverage().grams() / coffee.needed().brew().dose().grams();
    double dose = now.concentrate().grams() / beveragePerDose;
    double water =
        coffee.needed().brew().ratio().gramsPerGram() * dose
            + now.bypass().grams()
            + now.ice().grams();
    return new GroupPlan.CupFill(
        now,
        new GroupPlan.Caffeine(
            group.cup().caffeine().lowMilligrams() * more,
            group.cup().caffeine().highMilligrams() * more),
        BrewRatio.ofGramsPerGram(water / dose));
  }

  private Fill fill(Fill fill, Strength strength) {
    Blend blend = blend(fill.blend(), strength);
    double more = blend.concentrate().grams() / fill.blend().concentrate().grams();
    return new Fill(
        fill.id(),
        fill.groupName(),
        fill.dispenser(),
        fill.draws().stream()
            .map(draw -> new Fill.Draw(draw.batchId(), draw.concentrate().times(more)))
            .toList(),
        blend,
        fill.level(),
        fill.byJug());
  }

  /** As much finished, with the same ice: {@code concentrate = m·t / Tc}. */
  private Blend blend(Blend before, Strength strength) {
    Mass liquid = before.liquid();
    Mass taken = before.finished().times(strength.fraction() / concentrate.fraction()).min(liquid);
    return new Blend(taken, liquid.minus(taken), before.ice(), concentrate);
  }
}
