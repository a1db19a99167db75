package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Doubt;
import dev.urnwright.brew.Estimate;
import dev.urnwright.brew.Evidence;
import dev.urnwright.brew.StrengthBudget;
import dev.urnwright.event.Event;
import dev.urnwright.event.Uncertainties;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The same model with errors drawn at random (JCGM 101:2008) says how sure a cup is as the
 * first-order budget does. All errors are normal.
 */
class MonteCarloTest {
  /**
   * So many draws know a standard deviation to one part in √(2 · 4000) = 1.1 %, and a mean to
   * u/√4000 = 1.6 % of it.
   */
  private static final int DRAWS = 4000;

  private static final int EVENTS = 60;

  @Test
  void randomEventsAreAsSureAsTheirBudgetsSay() {
    int checked = 0;
    for (long seed = 0; seed < EVENTS; seed++) {
      Optional<Plan> plan = new Planner().plan(RandomEvents.sane(seed)).value();
      if (plan.isPresent()) {
        Random random = new Random(seed);
        for (CoffeePlan coffee : plan.get().coffees()) {
          Fill fill = coffee.groups().get(0).fills().get(0);
          if (isNearlyLinear(plan.get(), coffee, fill)) {
            check(plan.get(), coffee, fill, random, "seed " + seed);
            checked++;
          }
        }
      }
    }
    assertTrue(checked > 40, checked + " checked");
  }

  /**
   * First order is for errors that are small beside what they are errors of, and for a curve
   * without a corner nearby: at the ends of its measured range it goes on flat.
   */
  private static boolean isNearlyLinear(Plan plan, CoffeePlan coffee, Fill fill) {
    double scale = plan.event().equipment().uncertainties().scales().kitchen().grams();
    double least =
        Math.min(
            fill.blend().concentrate().grams(),
            coffee.batches().stream()
                .mapToDouble(b -> b.brew().dose().grams())
                .min()
                .orElseThrow());
    var knots = plan.brewing(coffee).curve().knots();
    double ratio = coffee.needed().brew().ratio().gramsPerGram();
    return scale < 0.05 * least
        && (knots.size() == 1
            || knots.stream()
                .allMatch(knot -> Math.abs(knot.ratio().gramsPerGram() / ratio - 1) > 0.04));
  }

  private static void check(Plan plan, CoffeePlan coffee, Fill fill, Random random, String where) {
    Estimate budget = plan.certainty().of(fill);
    double sum = 0;
    double squares = 0;
    double centre = budget.strength().fraction();
    Draw draw = new Draw(plan.event(), coffee, fill);
    for (int i = 0; i < DRAWS; i++) {
      double off = draw.cup(random).fraction() - centre;
      sum += off;
      squares += off * off;
    }
    double mean = sum / DRAWS;
    double deviation = Math.sqrt(squares / DRAWS - mean * mean);
    // Five times what the draws can be off by chance, and 2 % for what is not linear.
    assertEquals(1, deviation / budget.uncertainty(), 0.07, where);
    assertEquals(0, mean / budget.uncertainty(), 0.13, where);
  }

  /**
   * One cup with many draws: the interval at k = 2 of a normal distribution holds 95.45 % (from
   * memory of its tables), and 100 000 draws know that to √(0.9545 · 0.0455 / 100 000) = 0.07 %.
   */
  @Test
  void theIntervalHoldsNinetyFiveCupsOutOfAHundred() {
    Event event = Events.simple(Events.ratio(13), Events.group("Everybody", 100, 200, 1.25));
    Plan plan = new Planner().plan(event).value().orElseThrow();
    CoffeePlan coffee = plan.coffees().get(0);
    Fill fill = plan.fills().get(0);
    Estimate budget = plan.certainty().of(fill);
    Draw draw = new Draw(event, coffee, fill);
    Random random = new Random(20270417);
    int draws = 100_000;
    int inside = 0;
    for (int i = 0; i < draws; i++) {
      Strength cup = draw.cup(random);
      if (cup.compareTo(budget.low()) >= 0 && cup.compareTo(budget.high()) <= 0) {
        inside++;
      }
    }
    assertEquals(0.9545, inside / (double) draws, 0.004); // and a little for what is not linear
  }

  /** One way that a fill can come out. */
  private static final class Draw {
    private final Evidence evidence;
    private final Map<Doubt, Double> uncertainties = new EnumMap<>(Doubt.class);
    private final Batch batch;
    private final Fill fill;

    Draw(Event event, CoffeePlan coffee, Fill fill) {
      this.evidence =
          CoffeeModel.read(coffee.coffee(), new Findings(event)).orElseThrow().evidence();
      Uncertainties given = event.equipment().uncertainties();
      for (Doubt doubt : Doubt.values()) {
        uncertainties.put(
            doubt, new Doubts(given, evidence.method(), Optional.empty()).applyAsDouble(doubt));
      }
      if (fill.blend().bypass().isZero()) {
        uncertainties.put(Doubt.BYPASS, 0.0);
      }
      this.batch =
          coffee.batches().stream()
              .filter(b -> fill.draws().stream().anyMatch(d -> d.batchId().equals(b.id())))
              .min((one, other) -> one.brew().dose().compareTo(other.brew().dose()))
              .orElseThrow();
      this.fill = fill;
    }

    Strength cup(Random random) {
      Map<Doubt, Double> errors = new EnumMap<>(Doubt.class);
      uncertainties.forEach((doubt, u) -> errors.put(doubt, u * random.nextGaussian()));
      Mass dose = batch.brew().dose();
      Strength concentrate =
          StrengthBudget.concentrate(evidence, dose, batch.brew().water(), errors::get);
      // Batches differ a little in ratio by rounding; the fill has the strength of its mixture.
      double mixture =
          fill.blend().concentrateStrength().fraction() / batch.brew().strength().fraction();
      return StrengthBudget.cup(
          fill.blend(), Strength.ofFraction(concentrate.fraction() * mixture), errors::get);
    }
  }
}
