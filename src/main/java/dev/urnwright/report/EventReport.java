package dev.urnwright.report;

import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.day.MeasuredBatch;
import dev.urnwright.event.Coffee;
import dev.urnwright.journal.BrewEntry;
import dev.urnwright.journal.ServiceEntry;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Money;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An event when it is over.
 *
 * @param plan what was planned
 * @param coffees one for each coffee of the plan, in its order
 */
public record EventReport(Plan plan, List<CoffeeReport> coffees) {
  /** Copies the list. */
  public EventReport {
    coffees = List.copyOf(coffees);
  }

  /**
   * One coffee.
   *
   * @param coffee which
   * @param batches planned, each with what was measured of it
   * @param groups who was to drink it, each with what came back
   */
  public record CoffeeReport(Coffee coffee, List<BatchReport> batches, List<GroupReport> groups) {
    /** Copies the lists. */
    public CoffeeReport {
      batches = List.copyOf(batches);
      groups = List.copyOf(groups);
    }

    /** All that came back. */
    public Mass cameBack() {
      return groups.stream()
          .flatMap(group -> group.served().stream())
          .map(Served::cameBack)
          .reduce(Mass.ZERO, Mass::plus);
    }

    /** What the coffee in it cost; empty when the bag's price isn't known, or nobody weighed. */
    public Optional<Money> costOfLeftOver() {
      return groups.stream()
          .flatMap(group -> group.served().stream())
          .flatMap(served -> served.cost().stream())
          .reduce(Money::plus);
    }
  }

  /**
   * One batch.
   *
   * @param planned as it was to be
   * @param measured as it was, when it was measured
   */
  public record BatchReport(Batch planned, Optional<MeasuredBatch> measured) {}

  /**
   * One group's coffee.
   *
   * @param group as planned
   * @param served what is known of it
   */
  public record GroupReport(GroupPlan group, Optional<Served> served) {}

  /**
   * What became of a group's coffee.
   *
   * @param guests who came
   * @param cupsPoured what did not come back, in cups
   * @param cameBack unpoured
   * @param cost of the coffee in that, when the bag has a price
   */
  public record Served(int guests, double cupsPoured, Mass cameBack, Optional<Money> cost) {}

  /**
   * Sets entries beside a plan.
   *
   * @param brews the event's, the latest of a batch counts
   * @param services the event's, the latest of a group counts
   */
  public static EventReport of(Plan plan, List<BrewEntry> brews, List<ServiceEntry> services) {
    List<CoffeeReport> coffees = new ArrayList<>();
    for (CoffeePlan coffee : plan.coffees()) {
      coffees.add(
          new CoffeeReport(
              coffee.coffee(),
              coffee.batches().stream()
                  .map(batch -> new BatchReport(batch, measured(plan, coffee, batch, brews)))
                  .toList(),
              coffee.groups().stream()
                  .map(group -> new GroupReport(group, served(coffee, group, services)))
                  .toList()));
    }
    return new EventReport(plan, coffees);
  }

  private static Optional<MeasuredBatch> measured(
      Plan plan, CoffeePlan coffee, Batch batch, List<BrewEntry> brews) {
    Optional<WeighedBatch> weighed =
        brews.stream()
            .filter(entry -> entry.batch().equals(batch.id()))
            .reduce((first, second) -> second)
            .map(BrewEntry::weighed);
    return weighed.map(as -> MeasuredBatch.of(batch, as, plan.brewing(coffee)));
  }

  private static Optional<Served> served(
      CoffeePlan coffee, GroupPlan group, List<ServiceEntry> services) {
    return services.stream()
        .filter(
            entry ->
                entry.group().equals(group.group().name())
                    && entry.coffee().equals(coffee.coffee().nameInJournal()))
        .reduce((first, second) -> second)
        .map(
            entry ->
                new Served(
                    entry.asked().headcount(),
                    entry.cupsPoured(),
                    entry.cameBack(),
                    cost(coffee, entry.cameBack())));
  }

  /** The dose in so much of what stood in the dispensers, at the price of the bag. */
  private static Optional<Money> cost(CoffeePlan coffee, Mass cameBack) {
    double dosePerLiquid = coffee.brewed().brew().dose().grams() / coffee.filled().liquid().grams();
    BigDecimal grams = BigDecimal.valueOf(cameBack.grams() * dosePerLiquid);
    return coffee
        .coffee()
        .bag()
        .flatMap(
            bag ->
                bag.price()
                    .map(
                        price ->
                            price
                                .times(
                                    grams.divide(
                                        BigDecimal.valueOf(bag.size().grams()),
                                        MathContext.DECIMAL64))
                                .rounded()));
  }
}
