package dev.urnwright.brew;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** The reference everywhere: 60 g and 960 g of water gave 831 g at 1.40 %. */
class StrengthBudgetTest {
  private static final double T0 = 0.0140;
  private static final double D0 = 60;
  private static final double W0 = 960;
  private static final double B0 = 831;

  /**
   * Percolation at 1:13 from a weighed reference, by hand: {@code T = T0·B0 / N} with {@code N =
   * D0·R − W0 + B0 = 780 − 960 + 831 = 651}, since E = T0·B0/D0 and a = (W0 − B0)/D0. So T =
   * 0.0140·831/651 = 0.017871, and its derivatives are those below. The reference's beverage is in
   * both E and a, and all but cancels.
   */
  @Test
  void aConcentrateFollowsTheReferencesWeightsAndReading() {
    double n = 651;
    double t = T0 * B0 / n;
    Budget<Doubt> budget = concentrate(evidence(BrewMethod.PERCOLATION, true), 1000, 13_000);
    assertEquals(t, budget.value(), 1e-12);
    sensitivity(B0 / n, budget, Doubt.READING);
    sensitivity(-T0 * B0 * 13 / (n * n), budget, Doubt.REFERENCE_DOSE);
    sensitivity(T0 * B0 / (n * n), budget, Doubt.REFERENCE_WATER);
    sensitivity(T0 * (n - B0) / (n * n), budget, Doubt.REFERENCE_BEVERAGE);
    // T = E/(R − a), with R − a = 651/60 = 10.85.
    sensitivity(1 / 10.85, budget, Doubt.EXTRACTION);
    sensitivity(t / 10.85, budget, Doubt.ABSORPTION);
    // R = W/D: a gram more on 1000 g of dose is a thousandth of 13 less.
    sensitivity(t / 10.85 * 13 / 1000, budget, Doubt.DOSE);
    sensitivity(-t / 10.85 * 13, budget, Doubt.BREW_WATER);
    sensitivity(0, budget, Doubt.ABSORPTION_ASSUMED);
    sensitivity(0, budget, Doubt.EXTRACTION_ASSUMED);
  }

  /** Brewed like the reference, it comes out like the reference, whatever that weighed. */
  @Test
  void atTheReferencesRatioItsBeverageTellsNothing() {
    Budget<Doubt> budget = concentrate(evidence(BrewMethod.PERCOLATION, true), 60, 960);
    sensitivity(1, budget, Doubt.READING);
    sensitivity(0, budget, Doubt.REFERENCE_BEVERAGE);
  }

  /**
   * Nobody weighed the beverage: {@code T = T0·(R0 − a)/(R − a)}, with a = 2.1 assumed; {@code
   * dT/da = T0·(R0 − R)/(R − a)²} = 0.0140·3/10.9².
   */
  @Test
  void anAssumedAbsorptionMattersAsFarAsTheRatioIsFromTheReference() {
    Budget<Doubt> budget = concentrate(evidence(BrewMethod.PERCOLATION, false), 1000, 13_000);
    sensitivity(T0 * 3 / (10.9 * 10.9), budget, Doubt.ABSORPTION_ASSUMED);
    sensitivity(13.9 / 10.9, budget, Doubt.READING);
    sensitivity(
        0,
        concentrate(evidence(BrewMethod.PERCOLATION, false), 1000, 16_000),
        Doubt.ABSORPTION_ASSUMED);
  }

  /**
   * Steeped: E = T0·R0/(1 − T0), T = E/(R + E). By hand dE/dT0 = R0/(1 − T0)² and dT/dE = R/(R +
   * E)²; what the grounds keep doesn't change the strength.
   */
  @Test
  void steepedCoffeeIsAsStrongWhateverTheGroundsKeep() {
    Budget<Doubt> budget = concentrate(evidence(BrewMethod.IMMERSION, true), 1000, 10_000);
    double extracted = T0 * 16 / (1 - T0);
    double toStrength = 10 / Math.pow(10 + extracted, 2);
    assertEquals(extracted / (10 + extracted), budget.value(), 1e-12);
    sensitivity(16 / Math.pow(1 - T0, 2) * toStrength, budget, Doubt.READING);
    sensitivity(toStrength, budget, Doubt.EXTRACTION);
    sensitivity(0, budget, Doubt.ABSORPTION);
    sensitivity(0, budget, Doubt.REFERENCE_BEVERAGE);
  }

  /**
   * 700 g of concentrate at 1.8 % with 300 g of water: 1.26 %. By hand dt/dc = T·b/m² = 0.018·300
   * /10⁶, dt/db = −T·c/m² = −0.018·700/10⁶, dt/dT = c/m = 0.7.
   */
  @Test
  void aCupFollowsWhatIsWeighedIn() {
    Budget<Doubt> budget = cup(new Blend(grams(700), grams(300), grams(0), percent(1.8)), 0.0005);
    assertEquals(0.0126, budget.value(), 1e-15);
    sensitivity(0.018 * 300 / 1e6, budget, Doubt.CONCENTRATE);
    sensitivity(-0.018 * 700 / 1e6, budget, Doubt.BYPASS);
    sensitivity(0.7, budget, Doubt.READING);
    sensitivity(0, budget, Doubt.CUP);
  }

  /** Undiluted there is no water to weigh, and so much concentrate more or less is as strong. */
  @Test
  void anUndilutedCupIsAsSureAsItsConcentrate() {
    Budget<Doubt> budget = cup(new Blend(grams(700), grams(0), grams(0), percent(1.8)), 0.0005);
    assertEquals(0.0005, budget.uncertainty(), 1e-12);
  }

  /**
   * Over ice: 600 g of concentrate, 200 g of water and 200 g of ice make 1000 g of 1.08 %. A cup
   * poured fuller by the part x has (1 + x)·800 g over 200 g of ice, so dt/dx = t·200/1000.
   */
  @Test
  void overIceItMattersHowFullTheCupIsPoured() {
    Budget<Doubt> budget = cup(new Blend(grams(600), grams(200), grams(200), percent(1.8)), 0);
    sensitivity(0.0108 * 0.2, budget, Doubt.CUP);
  }

  private static Budget<Doubt> cup(Blend blend, double uncertaintyOfConcentrate) {
    Budget<Doubt> concentrate =
        new Budget<>(
            0.018,
            List.of(
                new Budget.Line<>(
                    new Budget.Input<>(Doubt.READING, 0, uncertaintyOfConcentrate), 1)));
    return StrengthBudget.ofCup(
        concentrate,
        blend,
        doubt ->
            Map.of(Doubt.CONCENTRATE, 2.0, Doubt.BYPASS, 2.0, Doubt.CUP, 0.03)
                .getOrDefault(doubt, 0.0));
  }

  private static Budget<Doubt> concentrate(Evidence evidence, double dose, double water) {
    ToDoubleFunction<Doubt> some =
        doubt ->
            switch (doubt) {
              case READING -> 0.0003;
              case REFERENCE_DOSE, REFERENCE_WATER, REFERENCE_BEVERAGE -> 0.4;
              case ABSORPTION, ABSORPTION_ASSUMED -> 0.2;
              case EXTRACTION, EXTRACTION_ASSUMED -> 0.005;
              case ABSORPTION_LEARNED, EXTRACTION_LEARNED -> 0;
              case BREW_WATER, CUP -> 0.01;
              case DOSE, CONCENTRATE, BYPASS -> 2;
            };
    return StrengthBudget.ofConcentrate(evidence, grams(dose), grams(water), some);
  }

  private static Evidence evidence(BrewMethod method, boolean weighed) {
    return new Evidence(
        method,
        Optional.of(
            new Evidence.Reference(
                grams(D0),
                grams(W0),
                weighed ? Optional.of(grams(B0)) : Optional.empty(),
                Strength.ofFraction(T0))),
        new Evidence.Kept(Optional.empty(), Absorption.ofGramsPerGram(2.1)),
        new Evidence.Told(Extraction.ofPercent(20), true),
        List.of(),
        Share.ofPercent(0));
  }

  private static void sensitivity(double expected, Budget<Doubt> budget, Doubt doubt) {
    double sensitivity =
        budget.lines().stream()
            .filter(line -> line.input().source() == doubt)
            .mapToDouble(Budget.Line::sensitivity)
            .sum();
    // Central differences: a millionth of themselves, and rounding where the truth is zero.
    assertEquals(expected, sensitivity, 1e-6 * Math.abs(expected) + 1e-9, doubt::name);
  }

  private static Mass grams(double grams) {
    return Mass.ofGrams(grams);
  }

  private static Strength percent(double percent) {
    return Strength.ofPercent(percent);
  }
}
