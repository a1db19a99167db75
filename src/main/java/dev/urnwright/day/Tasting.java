package dev.urnwright.day;

import dev.urnwright.day.Adjustment.BatchChange;
import dev.urnwright.day.Adjustment.CoffeeDay;
import dev.urnwright.day.Adjustment.FillChange;
import dev.urnwright.day.Adjustment.Judged;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Strength;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Corrects a plan by taste, as a reading would. What a tongue tells for certain is a ratio: so much
 * water to so much of this concentrate is right for this group. Its dispensers are filled by that
 * ratio, and what is still to brew is brewed as planned, only more or less of it, so that the ratio
 * goes on being right; a batch that has to be stronger, to be enough, is diluted as much further.
 * How strong that is depends on the concentrate, which is taken as read, or else as planned.
 */
public final class Tasting {
  private final Plan plan;
  private final Ladder ladder;
  private final Map<String, Double> steps;

  /**
   * A tasting.
   *
   * @param steps after how many it tasted right, 0 or more, by the group's name; the coffee's other
   *     groups keep their proportion to these, or when the concentrate was read their strength
   * @throws IllegalArgumentException if nothing was tasted, or a group isn't the ladder's
   */
  public Tasting(Plan plan, Ladder ladder, Map<String, Double> steps) {
    this.plan = plan;
    this.ladder = ladder;
    this.steps = Map.copyOf(steps);
    List<String> names = ladder.groups().stream().map(group -> group.group().name()).toList();
    if (steps.isEmpty() || !names.containsAll(steps.keySet())) {
      throw new IllegalArgumentException("tasted " + steps.keySet() + ", of the groups " + names);
    }
  }

  /**
   * What came of it.
   *
   * @param ladder that was tasted along
   * @param groups of the coffee, each as it is diluted from now on
   * @param asIfRead the concentrate whose dilution to the planned strengths would taste like that:
   *     what a refractometer would show if the planned strengths were right
   * @param adjustment what to do now
   */
  public record Outcome(
      Ladder ladder, List<TastedGroup> groups, Strength asIfRead, Adjustment adjustment) {
    /** Copies the list. */
    public Outcome {
      groups = List.copyOf(groups);
    }
  }

  /**
   * A group by taste.
   *
   * @param group as planned
   * @param steps at which it tasted right; empty when it wasn't tasted and follows the others
   * @param waterPerGram water, ice included, to each gram of this concentrate
   * @param strength in the cup, if the concentrate is what the ladder takes it for
   */
  public record TastedGroup(
      GroupPlan group, OptionalDouble steps, double waterPerGram, Strength strength) {}

  /**
   * The plan corrected.
   *
   * @param happened with the tasted batch among its batches
   */
  public Outcome correct(Happened happened) {
    double asIfRead =
        ladder.groups().stream()
            .filter(group -> steps.containsKey(group.group().name()))
            .mapToDouble(this::asIfRead)
            .average()
            .orElseThrow();
    List<TastedGroup> tasted =
        ladder.coffee().groups().stream().map(group -> tasted(group, asIfRead)).toList();
    Rediluted rediluted =
        new Rediluted(
            plan,
            ladder.coffee(),
            ladder.from().strength(),
            tasted.stream()
                .collect(
                    Collectors.toMap(each -> each.group().group().name(), TastedGroup::strength)));
    Adjustment adjustment = new Adjuster(rediluted.plan()).adjust(happened);
    return new Outcome(
        ladder, tasted, Strength.ofFraction(Math.min(1, asIfRead)), againstThePlan(adjustment));
  }

  /** The reading of a concentrate that, diluted like this, has the group's wanted strength. */
  private double asIfRead(GroupPlan group) {
    double water = ladder.waterPerGram(steps.getOrDefault(group.group().name(), 0.0));
    return group.group().strength().fraction() * (1 + water);
  }

  private TastedGroup tasted(GroupPlan group, double asIfRead) {
    double concentrate = ladder.from().strength().fraction();
    Optional<Double> step = Optional.ofNullable(steps.get(group.group().name()));
    double least = 1 / (1 - group.iceShare().fraction()); // undiluted but for its ice
    double untasted =
        (ladder.from().read() ? concentrate : asIfRead) / group.group().strength().fraction();
    double times = Math.max(least, step.map(k -> 1 + ladder.waterPerGram(k)).orElse(untasted));
    return new TastedGroup(
        group,
        step.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
        times - 1,
        Strength.ofFraction(concentrate / times));
  }

  /** With the fills and batches that people have on paper as those that were planned. */
  private Adjustment againstThePlan(Adjustment adjustment) {
    Map<String, Fill> fills = byId(plan.fills(), Fill::id);
    Map<String, Batch> batches = byId(plan.batches(), Batch::id);
    return new Adjustment(
        plan,
        adjustment.coffees().stream()
            .map(
                day ->
                    new CoffeeDay(
                        day.coffee(),
                        day.readAgain(),
                        day.measured().stream()
                            .map(j -> new Judged(j.batch().of(was(j, batches)), j.verdict()))
                            .toList(),
                        day.today(),
                        day.fills().stream()
                            .map(change -> change.from(was(change, fills)))
                            .toList(),
                        day.standing(),
                        day.batches().stream()
                            .map(change -> change.from(was(change, batches)))
                            .toList()))
            .toList(),
        adjustment.left());
  }

  private static Fill was(FillChange change, Map<String, Fill> fills) {
    return fills.getOrDefault(change.planned().id(), change.planned());
  }

  private static Batch was(BatchChange change, Map<String, Batch> batches) {
    return batches.getOrDefault(change.planned().id(), change.planned());
  }

  private static Batch was(Judged judged, Map<String, Batch> batches) {
    Batch planned = judged.batch().planned();
    return batches.getOrDefault(planned.id(), planned);
  }

  private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
    return all.stream().collect(Collectors.toMap(id, Function.identity()));
  }
}
