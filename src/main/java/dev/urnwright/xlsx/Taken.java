package dev.urnwright.xlsx;

import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Mass;
import dev.urnwright.schedule.DoseRange;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much concentrate the fills take from each batch. Without a clock they draw all of one batch
 * before the next is touched; on a clock each batch serves its own stretch of the day, and keeps
 * its part of what all fills take, however much that is.
 */
final class Taken {
  /** Binary noise of the sums, in scale steps, never calls for another step. */
  static final double NOISE_STEPS = 1e-6;

  private final Plan plan;
  private final Map<String, Double> grams = new HashMap<>();

  Taken(Plan plan) {
    this.plan = plan;
    for (Fill fill : plan.fills()) {
      fill.draws()
          .forEach(draw -> grams.merge(draw.batchId(), draw.concentrate().grams(), Double::sum));
    }
  }

  private boolean isTimed() {
    return plan.run().isPresent();
  }

  /** What there is to take from one batch. */
  Mass of(Batch batch) {
    return isTimed() ? Mass.ofGrams(grams.getOrDefault(batch.id(), 0.0)) : batch.brew().beverage();
  }

  /** The same of all batches of a coffee. */
  Mass of(CoffeePlan coffee) {
    return isTimed() ? coffee.brewed().drawn() : coffee.brewed().brew().beverage();
  }

  /** On a clock the part of what all fills take, else the part of the dose. */
  double part(CoffeePlan coffee, Batch batch) {
    return isTimed()
        ? of(batch).grams() / of(coffee).grams()
        : batch.brew().dose().grams() / coffee.brewed().brew().dose().grams();
  }

  /** On a clock: how many more steps a batch has than its part and its brewer's least dose ask. */
  long spareSteps(CoffeePlan coffee, Batch batch) {
    if (!isTimed()) {
      return 0;
    }
    Mass step = plan.event().equipment().scaleStep();
    double perDose = plan.brewing(coffee).beveragePerDose(coffee.needed().brew().ratio());
    long asked = (long) Math.ceil(of(batch).times(1 / perDose).steps(step) - NOISE_STEPS);
    long dose = Math.round(batch.brew().dose().steps(step));
    return dose > Math.max(least(coffee, batch), asked) ? dose - asked : 0;
  }

  private long least(CoffeePlan coffee, Batch batch) {
    List<DoseRange> ranges = EquipmentSheet.ranges(plan, coffee);
    return batch.unit().stream()
        .mapToInt(unit -> plan.event().equipment().brewers().indexOf(unit.brewer()))
        .mapToLong(kind -> ranges.get(kind).least())
        .findFirst()
        .orElse(0);
  }
}
