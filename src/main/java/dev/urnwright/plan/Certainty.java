package dev.urnwright.plan;

import dev.urnwright.brew.BrewBalance;
import dev.urnwright.brew.Budget;
import dev.urnwright.brew.Doubt;
import dev.urnwright.brew.Estimate;
import dev.urnwright.brew.Evidence;
import dev.urnwright.brew.StrengthBudget;
import dev.urnwright.event.Event;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * How sure a plan's strengths are: that of every batch, every fill and every group's cup, and what
 * makes them unsure.
 *
 * <p>A fill that draws on several batches is as sure as if all of it came from the smallest: their
 * differences partly cancel, and this leaves that out.
 */
public final class Certainty {
  private final Event event;
  private final Map<String, Estimate> batches = new HashMap<>();
  private final Map<String, Estimate> fills = new HashMap<>();
  private final Map<GroupKey, Estimate> groups = new HashMap<>();
  private final Map<String, StrengthAccount> accounts = new HashMap<>();

  private Certainty(Event event) {
    this.event = event;
  }

  /** Works it out. */
  static Certainty of(Plan plan) {
    Certainty certainty = new Certainty(plan.event());
    for (CoffeePlan coffee : plan.coffees()) {
      certainty.add(
          coffee,
          CoffeeModel.read(coffee.coffee(), new Findings(plan.event())).orElseThrow().evidence());
    }
    return certainty;
  }

  /** What makes a coffee's strengths unsure. */
  public StrengthAccount of(CoffeePlan coffee) {
    return known(accounts, coffee.coffee().key());
  }

  /** The concentrate of a batch. */
  public Estimate of(Batch batch) {
    return known(batches, batch.id());
  }

  /** A cup out of a fill. */
  public Estimate of(Fill fill) {
    return known(fills, fill.id());
  }

  /** A cup of a group, out of the least sure of its fills. */
  public Estimate of(GroupPlan group) {
    return known(groups, GroupKey.of(group));
  }

  private static <K, V> V known(Map<K, V> all, K key) {
    V found = all.get(key);
    if (found == null) {
      throw new IllegalArgumentException("not of this plan: " + key);
    }
    return found;
  }

  /** The probability that a group's cup lies within the event's window of strengths. */
  public double chanceInWindow(GroupPlan group) {
    return of(group)
        .chanceBetween(event.print().window().weakest(), event.print().window().strongest());
  }

  /**
   * One coffee of one group.
   *
   * @param group its name
   * @param coffee its key
   */
  private record GroupKey(String group, String coffee) {
    static GroupKey of(GroupPlan group) {
      return new GroupKey(group.group().name(), group.coffee().key());
    }
  }

  /**
   * What goes into a brewer.
   *
   * @param dose ground coffee
   * @param water brew water
   */
  private record Weighed(Mass dose, Mass water) {
    static Weighed of(BrewBalance brew) {
      return new Weighed(brew.dose(), brew.water());
    }
  }

  private void add(CoffeePlan coffee, Evidence evidence) {
    ToDoubleFunction<Doubt> doubts =
        new Doubts(
            event.equipment().uncertainties(),
            evidence.method(),
            event.taught().of(coffee.coffee()));
    Map<Weighed, Budget<Doubt>> brewed = new HashMap<>();
    Map<String, Batch> byId = new HashMap<>();
    Function<Weighed, Budget<Doubt>> budgets =
        weighed -> StrengthBudget.ofConcentrate(evidence, weighed.dose(), weighed.water(), doubts);
    for (Batch batch : coffee.batches()) {
      byId.put(batch.id(), batch);
      Budget<Doubt> budget = brewed.computeIfAbsent(Weighed.of(batch.brew()), budgets);
      batches.put(batch.id(), new Estimate(batch.brew().strength(), budget.uncertainty()));
    }
    GroupPlan largest = largest(coffee);
    for (GroupPlan group : coffee.groups()) {
      Budget<Doubt> widest = new Budget<>(0, List.of());
      for (Fill fill : group.fills()) {
        Budget<Doubt> budget =
            StrengthBudget.ofCup(
                brewed.computeIfAbsent(Weighed.of(smallest(fill, coffee, byId)), budgets),
                fill.blend(),
                doubts);
        fills.put(fill.id(), new Estimate(fill.blend().strength(), budget.uncertainty()));
        if (budget.uncertainty() >= widest.uncertainty()) {
          widest = budget;
        }
      }
      Estimate cup = new Estimate(group.strengthReached(), widest.uncertainty());
      groups.put(GroupKey.of(group), cup);
      if (group.equals(largest)) {
        accounts.put(
            coffee.coffee().key(),
            StrengthAccount.of(
                leastSure(coffee, brewed.values()),
                group,
                cup,
                widest,
                event.equipment().uncertainties().refractometer(),
                new Display(event.print().units(), event.equipment().scaleStep())));
      }
    }
  }

  private Estimate leastSure(CoffeePlan coffee, Collection<Budget<Doubt>> brewed) {
    double uncertainty = brewed.stream().mapToDouble(Budget::uncertainty).max().orElse(0);
    return new Estimate(coffee.brewed().brew().strength(), uncertainty);
  }

  private static GroupPlan largest(CoffeePlan coffee) {
    return coffee.groups().stream()
        .max(Comparator.comparingInt(group -> group.demand().cups()))
        .orElseThrow();
  }

  /**
   * Where only what is left of a plan is known, for batches brewed already that of all together.
   */
  private static BrewBalance smallest(Fill fill, CoffeePlan coffee, Map<String, Batch> byId) {
    return fill.draws().stream()
        .flatMap(draw -> Optional.ofNullable(byId.get(draw.batchId())).stream())
        .map(Batch::brew)
        .min(Comparator.comparing(BrewBalance::dose))
        .orElse(coffee.needed().brew());
  }
}
