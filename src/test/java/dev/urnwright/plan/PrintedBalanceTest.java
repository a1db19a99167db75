package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Blend;
import dev.urnwright.brew.BrewBalance;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class PrintedBalanceTest {
  /**
   * By hand: 3333.4 = 100.4 + 700.5 + 2532.5 g; printed 3333 = 100 + 700 + 2533, for the grounds
   * take what is left. And 3000.5 = 2532.5 + 400.2 + 67.8: 3001 = 2533 + 400 + 68.
   */
  @Test
  void whatNobodyWeighsTakesTheRest() {
    PrintedBalance printed =
        PrintedBalance.of(
            brew(3333.4, 100.4, 700.5, 2532.5),
            new Blend(grams(2532.5), grams(400.2), grams(67.8), Strength.ofPercent(1.8)),
            new Display(UnitSystem.METRIC, grams(1)));
    assertEquals(3333, printed.water().grams(), 1e-9);
    assertEquals(100, printed.steam().grams(), 1e-9);
    assertEquals(700, printed.absorbed().grams(), 1e-9);
    assertEquals(2533, printed.beverage().grams(), 1e-9);
    assertEquals(3001, printed.finished().grams(), 1e-9);
    assertEquals(68, printed.ice().grams(), 1e-9);
    assertEquals(400, printed.bypass().grams(), 1e-9);
  }

  /**
   * Two batches of 257 g at 1:13, of which the grounds keep 2.15 g/g: 257 · 10.85 = 2788.45 g each,
   * and 5576.9 together, which is printed as 5577.
   */
  @Test
  void batchesAddUpToWhatIsPrinted() {
    Plan plan =
        new Planner()
            .plan(Events.simple(Events.ratio(13), Events.group("Crew", 40, 200, 1.25)))
            .value()
            .orElseThrow();
    CoffeePlan coffee = plan.coffees().get(0);
    BrewBalance each = plan.brewing(coffee).brew(grams(257), grams(257 * 13));
    CoffeePlan twice =
        new CoffeePlan(
            coffee.coffee(),
            coffee.needed(),
            new Brewed(each.plus(each), Mass.ZERO, Mass.ZERO),
            List.of(),
            List.of(batch(1, each), batch(2, each)),
            coffee.onTheDay());
    assertEquals(
        List.of(2789L, 2788L),
        twice.printedBeverages(new Display(UnitSystem.METRIC, grams(1))).stream()
            .map(mass -> Math.round(mass.grams()))
            .toList());
    assertEquals(0, twice.filled().strength().percent()); // nothing of it is poured
    assertEquals(0, twice.filled().concentrateStrength().percent());
  }

  private static Batch batch(int number, BrewBalance brew) {
    return new Batch(
        "house-" + number, number, Optional.empty(), brew, Volume.ofMillilitres(257 * 13));
  }

  /** On a scale of 10 g, 16.38 kg show tens, and so do the parts: 2710 g and 13.67 kg. */
  @Test
  void partsShowNoMoreThanTheirTotal() {
    PrintedBalance printed =
        PrintedBalance.of(
            brew(16_380, 0, 2709, 13_671),
            new Blend(grams(13_671), grams(5864), Mass.ZERO, Strength.ofPercent(1.8)),
            new Display(UnitSystem.METRIC, grams(10)));
    assertEquals(2710, printed.absorbed().grams(), 1e-9);
    assertEquals(13_670, printed.beverage().grams(), 1e-9);
    assertEquals(19_540, printed.finished().grams(), 1e-9); // 19 535
    assertEquals(5870, printed.bypass().grams(), 1e-9);
  }

  /** Whatever the figures, each is within a digit of its exact one. */
  @Test
  void nothingIsFurtherOffThanADigit() {
    SplittableRandom random = new SplittableRandom(53);
    for (int trial = 0; trial < 500; trial++) {
      UnitSystem units = trial % 2 == 0 ? UnitSystem.METRIC : UnitSystem.US;
      Display display = new Display(units, grams(new double[] {0.1, 1, 5, 10}[random.nextInt(4)]));
      double beverage = random.nextDouble(500, 40_000);
      double kept = random.nextDouble(100, 4000);
      double steam = random.nextDouble(0, 500);
      double bypass = random.nextDouble(0, 9000);
      double ice = random.nextDouble(0, 3000);
      BrewBalance brew = brew(beverage + kept + steam, steam, kept, beverage);
      Blend blend = new Blend(grams(beverage), grams(bypass), grams(ice), Strength.ofPercent(1.8));
      PrintedBalance printed = PrintedBalance.of(brew, blend, display);
      double digit =
          Math.max(display.finest(brew.water()).grams(), display.finest(blend.finished()).grams())
              * 1.5001;
      assertEquals(kept, printed.absorbed().grams(), digit);
      assertEquals(bypass, printed.bypass().grams(), digit);
      assertEquals(
          printed.water().grams(),
          printed.steam().grams() + printed.absorbed().grams() + printed.beverage().grams(),
          1e-6);
      assertEquals(
          printed.finished().grams(),
          printed.beverage().grams() + printed.bypass().grams() + printed.ice().grams(),
          1e-6);
    }
  }

  /** Thirds of 10 are 3, 3 and 4; the largest remainder gets the digit. */
  @Test
  void theLargestRemaindersGetTheDigits() {
    assertParts(1, new double[] {10 / 3.0, 10 / 3.0, 10 / 3.0}, 4, 3, 3);
    assertParts(1, new double[] {1.2, 1.7, 1.6}, 1, 2, 2); // 4.5 is 5
    assertParts(1, new double[] {1.2, 1.7, 1.5}, 1, 2, 1); // 4.4 is 4
    assertParts(5, new double[] {12, 13, 15}, 10, 15, 15);
    assertParts(1, new double[] {2, 3}, 2, 3);
    assertTrue(PrintedBalance.parts(List.of(), grams(1)).isEmpty());
  }

  private static void assertParts(double finest, double[] exact, double... printed) {
    List<Mass> parts =
        PrintedBalance.parts(
            DoubleStream.of(exact).mapToObj(Mass::ofGrams).toList(), grams(finest));
    assertEquals(printed.length, parts.size());
    for (int i = 0; i < printed.length; i++) {
      assertEquals(printed[i], parts.get(i).grams(), 1e-9);
    }
  }

  private static BrewBalance brew(double water, double steam, double absorbed, double beverage) {
    return new BrewBalance(
        grams(1000),
        grams(water),
        grams(steam),
        grams(absorbed),
        grams(beverage),
        Strength.ofPercent(1.8));
  }

  private static Mass grams(double grams) {
    return Mass.ofGrams(grams);
  }
}
