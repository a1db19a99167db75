package dev.urnwright.brew;

import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;

/**
 * One coffee, brewed one way: what a dose and its water give, and what it takes for a strength.
 *
 * <p>The balance of water, for both methods, with {@code W} brew water, {@code v} steam loss,
 * {@code a} absorption, {@code D} dose, {@code B} beverage:
 *
 * <pre>B = W(1 − v) − a·D        R = W / D        E = T·B / D</pre>
 *
 * @param method percolation or immersion
 * @param curve extraction against ratio; for immersion, solids dissolved at the end of the steep
 * @param absorption net liquid kept by the grounds
 * @param steamLoss share of the brew water lost as vapour, below 100 %
 */
public record BrewModel(
    BrewMethod method, ExtractionCurve curve, Absorption absorption, Share steamLoss) {
  /** Taken where nobody read an extraction: the centre of the window, 18 to 22 %. */
  public static final Extraction USUAL_EXTRACTION = Extraction.ofPercent(20);

  /** Past this a brew would be more solids than water; no refractometer for coffee reads so far. */
  private static final double STRONGEST = 0.30;

  /**
   * Grounds that keep all but this much, grams per gram of dose, give nothing worth brewing.
   * Steeped coffee comes here long before it is too strong: at 3 g/g kept, 1:3 gives not a drop.
   */
  private static final double LEAST_BEVERAGE_PER_DOSE = 0.5;

  private static final double LEAST_RATIO = 0.1;
  private static final double WEAKEST_RATIO = 1000;
  private static final double NOISE = 1e-9;

  /** Refuses a brew of nothing but steam. */
  public BrewModel {
    if (steamLoss.fraction() >= 1) {
      throw new IllegalArgumentException(
          "the steam loss must be below 100 %: " + steamLoss.percent() + " %");
    }
  }

  /**
   * The extraction of a brew that was weighed and read: {@code E = T·B / D} for percolation, the
   * solids in all the liquid over the dose for immersion.
   *
   * @param strength as read, below 100 %
   * @param ratio its brew ratio
   * @param absorption what its grounds kept
   * @param steamLoss what it lost as vapour
   * @throws IllegalArgumentException if that would dissolve more than the whole dose
   */
  public static Extraction extractionOf(
      BrewMethod method,
      Strength strength,
      BrewRatio ratio,
      Absorption absorption,
      Share steamLoss) {
    return Extraction.ofFraction(
        method.extraction(
            strength.fraction(),
            ratio.gramsPerGram() * (1 - steamLoss.fraction()),
            absorption.gramsPerGram()));
  }

  /** The least ratio at which anything leaves the grounds; a brew's must be above it. */
  public double dryRatio() {
    return absorption.gramsPerGram() / (1 - steamLoss.fraction());
  }

  /** Whether there is any ratio up to 1:1000 at which {@link #brewsAt} holds. */
  public boolean brews() {
    return runningRatio() <= WEAKEST_RATIO && strengthAt(WEAKEST_RATIO) <= STRONGEST;
  }

  /**
   * Whether a ratio leaves a liquid one could call coffee: half a gram of it at least for each gram
   * of dose, and 30 % strong at most.
   *
   * @return false where the grounds keep all the water, or nearly
   */
  public boolean brewsAt(BrewRatio ratio) {
    return ratio.gramsPerGram() >= runningRatio() * (1 - NOISE)
        && strengthAt(ratio.gramsPerGram()) <= STRONGEST * (1 + NOISE);
  }

  /** Whether {@link #ratioFor} has a ratio for a strength. */
  public boolean reaches(Strength strength) {
    return brews()
        && strength.fraction() <= strengthAt(leastRatio().gramsPerGram())
        && strength.fraction() >= strengthAt(WEAKEST_RATIO);
  }

  /**
   * The least ratio at which {@link #brewsAt} holds; no brew is stronger.
   *
   * @throws IllegalArgumentException if there is none, see {@link #brews}
   */
  public BrewRatio leastRatio() {
    if (!brews()) {
      throw new IllegalArgumentException(
          "the grounds keep the water at any ratio: " + absorption + ", " + steamLoss + " steam");
    }
    return BrewRatio.ofGramsPerGram(search(STRONGEST, runningRatio()).weak());
  }

  /**
   * Beverage for each gram of dose, {@code R(1 − v) − a}; zero or less where nothing leaves them.
   */
  public double beveragePerDose(BrewRatio ratio) {
    return waterPerDose(ratio.gramsPerGram()) - absorption.gramsPerGram();
  }

  /**
   * The ratio that gives so much beverage for each gram of dose, {@code R = (B/D + a) / (1 − v)}.
   */
  public double ratioGiving(double beveragePerDose) {
    return (beveragePerDose + absorption.gramsPerGram()) / (1 - steamLoss.fraction());
  }

  /**
   * The strength that a ratio gives.
   *
   * @param ratio above {@link #dryRatio()}, and high enough for a liquid
   * @throws IllegalArgumentException if the ratio leaves no beverage, or one stronger than 100 %
   */
  public Strength strengthAt(BrewRatio ratio) {
    if (beveragePerDose(ratio) <= 0) {
      throw new IllegalArgumentException(
          "at " + ratio + " the grounds keep all the water; above 1:" + dryRatio());
    }
    return Strength.ofFraction(strengthAt(ratio.gramsPerGram()));
  }

  /**
   * The ratio that gives a strength. For a constant extraction and percolation it is {@code R =
   * (E/T + a) / (1 − v)}; in general it is searched for, between {@link #leastRatio} and 1:1000.
   *
   * @param strength from what 1:1000 gives to what {@link #leastRatio} gives
   * @throws IllegalArgumentException if the strength is outside that range
   */
  public BrewRatio ratioFor(Strength strength) {
    if (!reaches(strength)) {
      throw new IllegalArgumentException("no ratio up to 1:1000 gives " + strength);
    }
    return BrewRatio.ofGramsPerGram(
        search(strength.fraction(), leastRatio().gramsPerGram()).strong());
  }

  /**
   * Where everything goes in one brew.
   *
   * @param dose above 0
   * @param water enough that some leaves the grounds
   * @throws IllegalArgumentException if no beverage leaves the grounds
   */
  public BrewBalance brew(Mass dose, Mass water) {
    Strength strength = strengthAt(BrewRatio.of(water, dose));
    Mass steam = water.times(steamLoss.fraction());
    Mass absorbed = absorption.of(dose);
    return new BrewBalance(
        dose, water, steam, absorbed, water.minus(steam).minus(absorbed), strength);
  }

  /** The dose for so much beverage, {@code D = B / (R(1 − v) − a)}. */
  public Mass doseFor(Mass beverage, BrewRatio ratio) {
    return beverage.times(1 / beveragePerDose(ratio));
  }

  /** The brew at a ratio that gives so much beverage. */
  public BrewBalance forBeverage(Mass beverage, BrewRatio ratio) {
    Mass dose = doseFor(beverage, ratio);
    return brew(dose, ratio.waterFor(dose));
  }

  /** Two ratios next to each other, between which the strength falls below the wanted one. */
  private record Crossing(double strong, double weak) {}

  private Crossing search(double wanted, double from) {
    double strong = from;
    double weak = WEAKEST_RATIO;
    while (weak - strong > 1e-13 * weak) {
      double middle = (strong + weak) / 2;
      if (strengthAt(middle) >= wanted) {
        strong = middle;
      } else {
        weak = middle;
      }
    }
    return new Crossing(strong, weak);
  }

  /** The least ratio at which enough beverage leaves the grounds. */
  private double runningRatio() {
    return Math.max(
        LEAST_RATIO,
        (absorption.gramsPerGram() + LEAST_BEVERAGE_PER_DOSE) / (1 - steamLoss.fraction()));
  }

  private double waterPerDose(double ratio) {
    return ratio * (1 - steamLoss.fraction());
  }

  /** As a fraction, for ratios above {@link #dryRatio}. */
  private double strengthAt(double ratio) {
    return method.strength(curve.at(ratio), waterPerDose(ratio), absorption.gramsPerGram());
  }
}
