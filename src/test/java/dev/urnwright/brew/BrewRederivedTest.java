package dev.urnwright.brew;

import static dev.urnwright.brew.Brews.grams;
import static dev.urnwright.brew.Brews.model;
import static dev.urnwright.brew.Brews.percent;
import static dev.urnwright.brew.Brews.ratio;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.ExtractionCurve.Knot;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Every formula of the brew model once more, by another road than its code's: small steps instead
 * of a formula, a formula instead of a search, what is conserved, and where the limits lie.
 */
class BrewRederivedTest {
  private static final Strength NOTHING_READ = percent(0);

  private final SplittableRandom random = new SplittableRandom(41);

  /**
   * Percolation, poured gram by gram. The grounds take up {@code a·D} first; of what drips after
   * that each gram carries away its part of {@code E·D} solids. Mass: water = steam + kept + cup.
   */
  @Test
  void percolationPouredInSmallPortions() {
    for (int trial = 0; trial < 50; trial++) {
      double extracted = random.nextDouble(0.15, 0.25);
      double kept = random.nextDouble(1.5, 3);
      double steam = random.nextDouble(0, 0.05);
      double dose = random.nextDouble(20, 2000);
      double water = dose * random.nextDouble(8, 20);
      int portions = 10_000;
      double thirst = kept * dose;
      double cup = 0;
      for (int i = 0; i < portions; i++) {
        double arrives = water / portions * (1 - steam);
        double soaked = Math.min(thirst, arrives);
        thirst -= soaked;
        cup += arrives - soaked;
      }
      BrewBalance brew =
          model(BrewMethod.PERCOLATION, 100 * extracted, kept, 100 * steam)
              .brew(grams(dose), grams(water));
      near(cup, brew.beverage().grams());
      near(extracted * dose / cup, brew.strength().fraction());
      near(extracted * dose, brew.solids().grams());
      near(water, brew.steam().grams() + brew.absorbed().grams() + brew.beverage().grams());
      near(extracted, brew.extraction().fraction());
      near(kept, brew.absorption().gramsPerGram());
      near(water / dose, brew.ratio().gramsPerGram());
    }
  }

  /**
   * Immersion as a fixed point: the liquid is the water and the solids in it, the strength is
   * solids over liquid. Starting from water alone, {@code L ← W + E·D}, {@code S ← T·L} settles.
   */
  @Test
  void immersionAsAFixedPoint() {
    for (int trial = 0; trial < 50; trial++) {
      double dissolved = random.nextDouble(0.15, 0.25);
      double water = random.nextDouble(6, 20);
      double strength = 0;
      for (int i = 0; i < 200; i++) {
        double liquid = water / (1 - strength); // water is what isn't solids
        strength = dissolved / liquid;
      }
      BrewModel steep = model(BrewMethod.IMMERSION, 100 * dissolved, 3, 0);
      near(strength, steep.strengthAt(ratio(water)).fraction());
      // What was dissolved is in the cup or in the liquid that the grounds keep. They keep a·D of
      // the water by weight and its solids besides: the liquid W + E·D less the cup W − a·D.
      BrewBalance brew = steep.brew(grams(1), grams(water));
      double left = water + dissolved - brew.beverage().grams();
      near(dissolved, brew.solids().grams() + left * strength);
    }
  }

  /** A reading and the extraction it stands for, there and back. */
  @Test
  void aReadingTellsTheExtractionThatGaveIt() {
    for (BrewMethod method : BrewMethod.values()) {
      for (int trial = 0; trial < 50; trial++) {
        double extracted = random.nextDouble(0.12, 0.26);
        double kept = random.nextDouble(1, 3);
        double steam = random.nextDouble(0, 0.1);
        double water = random.nextDouble(7, 20);
        BrewModel model = model(method, 100 * extracted, kept, 100 * steam);
        near(
            extracted,
            BrewModel.extractionOf(
                    method,
                    model.strengthAt(ratio(water)),
                    ratio(water),
                    model.absorption(),
                    model.steamLoss())
                .fraction());
      }
    }
    assertEquals(
        0,
        BrewModel.extractionOf(
                BrewMethod.IMMERSION,
                NOTHING_READ,
                ratio(13),
                model(BrewMethod.IMMERSION, 20, 3, 0).absorption(),
                Share.ofPercent(0))
            .fraction());
  }

  /** Where the code searches there is a formula: {@code R = (E/T + a)/(1 − v)}, {@code E/T − E}. */
  @Test
  void theRatioForAStrengthInClosedForm() {
    for (int trial = 0; trial < 100; trial++) {
      double extracted = random.nextDouble(0.15, 0.25);
      double kept = random.nextDouble(1, 3);
      double steam = random.nextDouble(0, 0.1);
      double strength = random.nextDouble(0.01, 0.03);
      near(
          (extracted / strength + kept) / (1 - steam),
          model(BrewMethod.PERCOLATION, 100 * extracted, kept, 100 * steam)
              .ratioFor(Strength.ofFraction(strength))
              .gramsPerGram());
      near(
          extracted * (1 - strength) / strength / (1 - steam),
          model(BrewMethod.IMMERSION, 100 * extracted, kept, 100 * steam)
              .ratioFor(Strength.ofFraction(strength))
              .gramsPerGram());
    }
  }

  /**
   * The strongest brew: half a gram of beverage to the gram, or 30 % strong, whichever comes first.
   * By hand at 20 % and 2.15 g/g: half a gram at 1:2.65 would be 0.2/0.5 = 40 %, so 30 % it is, at
   * 0.2/0.3 + 2.15 = 2.8167. At 10 % extracted, 0.1/0.5 = 20 %, so 1:2.65 it is. With a tenth lost
   * as steam both are divided by 0.9.
   */
  @Test
  void theStrongestBrewByHand() {
    near(2.15 + 0.2 / 0.3, model(BrewMethod.PERCOLATION, 20, 2.15, 0).leastRatio().gramsPerGram());
    near(2.65, model(BrewMethod.PERCOLATION, 10, 2.15, 0).leastRatio().gramsPerGram());
    near(2.65 / 0.9, model(BrewMethod.PERCOLATION, 10, 2.15, 10).leastRatio().gramsPerGram());
    near(
        (2.15 + 0.2 / 0.3) / 0.9,
        model(BrewMethod.PERCOLATION, 20, 2.15, 10).leastRatio().gramsPerGram());
    BrewModel brew = model(BrewMethod.PERCOLATION, 20, 2.15, 0);
    near(30, brew.strengthAt(brew.leastRatio()).percent());
    assertTrue(brew.brewsAt(brew.leastRatio()));
    assertTrue(!brew.brewsAt(ratio(brew.leastRatio().gramsPerGram() - 1e-6)));
  }

  /** Pearson's square: concentrate and water stand as t to T − t. And water added drop by drop. */
  @Test
  void dilutionByAlligationAndByDrops() {
    for (int trial = 0; trial < 50; trial++) {
      double concentrate = random.nextDouble(0.015, 0.03);
      double wanted = random.nextDouble(0.01, concentrate);
      double mass = random.nextDouble(100, 20_000);
      Blend blend =
          Blend.of(
              grams(mass),
              Strength.ofFraction(wanted),
              Strength.ofFraction(concentrate),
              Share.ofPercent(0));
      near(wanted / (concentrate - wanted), blend.concentrate().grams() / blend.bypass().grams());
      // drop by drop, each one replacing nothing and diluting what is there
      double strength = concentrate;
      double there = blend.concentrate().grams();
      int drops = 1000;
      double drop = blend.bypass().grams() / drops;
      for (int i = 0; i < drops; i++) {
        strength *= there / (there + drop);
        there += drop;
      }
      assertEquals(wanted, strength, 1e-12);
      near(mass, there);
      near(wanted, blend.strength().fraction());
      near(wanted * mass, blend.solids().grams());
    }
  }

  /** Half the ice now and half later melts to the same; in the dispenser it isn't there yet. */
  @Test
  void iceIsWaterThatComesLater() {
    for (int trial = 0; trial < 50; trial++) {
      double concentrate = random.nextDouble(0.02, 0.03);
      double wanted = random.nextDouble(0.01, 0.013);
      double ice = random.nextDouble(0.05, 0.3);
      Blend iced =
          Blend.of(
              grams(1000),
              Strength.ofFraction(wanted),
              Strength.ofFraction(concentrate),
              Share.ofFraction(ice));
      Blend hot =
          Blend.of(
              grams(1000),
              Strength.ofFraction(wanted),
              Strength.ofFraction(concentrate),
              Share.ofPercent(0));
      near(hot.concentrate().grams(), iced.concentrate().grams());
      near(hot.bypass().grams(), iced.bypass().grams() + iced.ice().grams());
      near(wanted / (1 - ice), iced.liquidStrength().fraction());
      near(1000 * (1 - ice), iced.liquid().grams());
    }
  }

  /** All of it k times as large is the same brew, k times; strengths and ratios don't change. */
  @Test
  void onlyRatiosCount() {
    BrewModel model = model(BrewMethod.PERCOLATION, 19.4, 2.15, 2);
    BrewBalance one = model.brew(grams(60), grams(780));
    for (double factor : new double[] {1e-3, 0.5, 28.349523125, 453.59237}) {
      BrewBalance large = model.brew(grams(60 * factor), grams(780 * factor));
      BrewBalance alike = one.times(factor);
      near(factor * one.beverage().grams(), large.beverage().grams());
      near(large.beverage().grams(), alike.beverage().grams());
      near(large.dose().grams(), alike.dose().grams());
      near(large.water().grams(), alike.water().grams());
      near(large.steam().grams(), alike.steam().grams());
      near(large.absorbed().grams(), alike.absorbed().grams());
      near(one.strength().fraction(), large.strength().fraction());
      near(one.extraction().fraction(), alike.extraction().fraction());
    }
  }

  /** Two brews poured together: water and solids add, whatever their strengths. */
  @Test
  void brewsPouredTogether() {
    BrewBalance weak = model(BrewMethod.PERCOLATION, 18, 2, 1).brew(grams(100), grams(1700));
    BrewBalance strong = model(BrewMethod.PERCOLATION, 21, 2.4, 3).brew(grams(70), grams(700));
    BrewBalance both = weak.plus(strong);
    near(170, both.dose().grams());
    near(2400, both.water().grams());
    near(17 + 21, both.steam().grams());
    near(200 + 168, both.absorbed().grams());
    near(2400 - 38 - 368, both.beverage().grams());
    near(18 + 14.7, both.solids().grams()); // 18 % of 100 g, 21 % of 70 g
    near(32.7 / (2400 - 38 - 368), both.strength().fraction());
  }

  /** What a dose is for: brewing it gives the beverage back. */
  @Test
  void theDoseForABeverageGivesIt() {
    for (int trial = 0; trial < 50; trial++) {
      BrewModel model =
          model(
              BrewMethod.PERCOLATION,
              random.nextDouble(15, 24),
              random.nextDouble(1, 3),
              random.nextDouble(0, 5));
      double wanted = random.nextDouble(500, 50_000);
      double r = random.nextDouble(8, 18);
      BrewBalance brew = model.forBeverage(grams(wanted), ratio(r));
      near(wanted, brew.beverage().grams());
      near(r, brew.ratio().gramsPerGram());
      near(wanted, model.brew(brew.dose(), grams(r * brew.dose().grams())).beverage().grams());
      // and the ratio that gives so much to the gram
      near(r, model.ratioGiving(wanted / brew.dose().grams()));
      // down to the ratio that gives nothing
      near(model.dryRatio(), model.ratioGiving(0));
      near(0, model.beveragePerDose(ratio(model.dryRatio())));
    }
  }

  /**
   * The curve between two points as a Bézier curve: the same cubic by de Casteljau's halving, its
   * handles a third of the way along the slopes at either end.
   */
  @Test
  void theCurveByDeCasteljau() {
    for (int trial = 0; trial < 100; trial++) {
      List<Knot> points = new ArrayList<>();
      double x = 8;
      for (int i = 0; i < random.nextInt(2, 7); i++) {
        points.add(new Knot(ratio(x), Extraction.ofFraction(random.nextDouble(0.15, 0.25)), 0));
        x += random.nextDouble(0.3, 4);
      }
      if (points.size() < 2) {
        continue;
      }
      ExtractionCurve curve = ExtractionCurve.through(points);
      for (int i = 1; i < curve.knots().size(); i++) {
        Knot from = curve.knots().get(i - 1);
        Knot to = curve.knots().get(i);
        double h = to.ratio().gramsPerGram() - from.ratio().gramsPerGram();
        for (double s : new double[] {0, 0.1, 0.5, 0.77, 1}) {
          double[] handles = {
            from.extraction().fraction(),
            from.extraction().fraction() + from.slope() * h / 3,
            to.extraction().fraction() - to.slope() * h / 3,
            to.extraction().fraction()
          };
          for (int level = 3; level > 0; level--) {
            for (int k = 0; k < level; k++) {
              handles[k] += s * (handles[k + 1] - handles[k]);
            }
          }
          near(handles[0], curve.at(ratio(from.ratio().gramsPerGram() + s * h)).fraction());
        }
      }
    }
  }

  /** Ice melted crumb by crumb, each taking its heat before the next one comes. */
  @Test
  void iceMeltedInCrumbs() {
    double melting = 333.55; // J/g
    double specific = 4.186; // J/(g·K)
    for (double[] pourServe : new double[][] {{25, 5}, {60, 10}, {90, 20}, {60, 0.5}}) {
      double theta = pourServe[0];
      double liquid = 1;
      double crumb = 1e-5;
      while (theta > pourServe[1]) {
        // heat of the liquid, less what melts the crumb, over both at the same temperature
        theta = (liquid * specific * theta - crumb * melting) / ((liquid + crumb) * specific);
        liquid += crumb;
      }
      double share = (liquid - 1) / liquid;
      Share ice =
          Melting.iceShare(
              Temperature.ofCelsius(pourServe[0]), Temperature.ofCelsius(pourServe[1]));
      assertEquals(share, ice.fraction(), 2e-5); // a crumb more or less
    }
  }

  /** The normal density summed up in slices, against the chance to lie within. */
  @Test
  void theChanceBetweenIsTheAreaUnderTheBell() {
    for (int trial = 0; trial < 20; trial++) {
      double mean = random.nextDouble(0.011, 0.015);
      double u = random.nextDouble(2e-4, 1e-3);
      double from = random.nextDouble(0.01, 0.013);
      double to = from + random.nextDouble(0.0005, 0.004);
      int slices = 20_000;
      double area = 0;
      for (int i = 0; i < slices; i++) {
        double at = from + (to - from) * (i + 0.5) / slices;
        double z = (at - mean) / u;
        area += Math.exp(-z * z / 2) / (u * Math.sqrt(2 * Math.PI)) * (to - from) / slices;
      }
      assertEquals(
          area,
          new Estimate(Strength.ofFraction(mean), u)
              .chanceBetween(Strength.ofFraction(from), Strength.ofFraction(to)),
          1e-6);
    }
  }

  private static void near(double expected, double actual) {
    assertEquals(expected, actual, 1e-9 * Math.max(1e-3, Math.abs(expected)));
  }
}
