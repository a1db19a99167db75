package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The rounded bound against the sharp one, and its slopes against differences. */
class SmoothBoundTest {
  private static final double WIDTH = 40;

  @Test
  void isTheBoundButForItsEdges() {
    for (int seed = 1; seed <= 60; seed++) {
      Case made = new Case(seed);
      double sharp = made.sharp();
      double smooth = made.smooth.at(made.prices, 1e-6, made.slope);
      assertEquals(sharp, smooth, 1e-3 * Math.max(1, Math.abs(sharp) * 1e-3), "seed " + seed);
      double rounded = made.smooth.at(made.prices, WIDTH, made.slope);
      // of each choice among n at most w·log n, and none has a thousand
      double most =
          WIDTH * Math.log(1000) * (made.pieces.size() + made.loads.size() * made.minutes);
      assertTrue(rounded >= sharp - 1e-3 && rounded <= sharp + most, "seed " + seed);
    }
  }

  @Test
  void slopesAreDifferences() {
    for (int seed = 1; seed <= 20; seed++) {
      Case made = new Case(seed);
      made.smooth.at(made.prices, WIDTH, made.slope);
      double[] slope = made.slope.clone();
      SplittableRandom random = new SplittableRandom(seed);
      for (int n = 0; n < 40; n++) {
        int i = random.nextInt(made.prices.length);
        double before = made.prices[i];
        double step = 1e-4;
        made.prices[i] = before + step;
        double up = made.smooth.at(made.prices, WIDTH, made.slope);
        made.prices[i] = before - step;
        double down = made.smooth.at(made.prices, WIDTH, made.slope);
        made.prices[i] = before;
        if (made.isPriced(i)) {
          assertEquals((up - down) / (2 * step), slope[i], 1e-4, "seed " + seed + ", price " + i);
        }
      }
    }
  }

  /** Random prices, in the steps that {@link Prices} keeps, for a small problem. */
  private static final class Case {
    final RunProblem problem;
    final List<Leg> legs;
    final List<Piece> pieces;
    final List<CircuitLoads> loads;
    final int minutes;
    final SmoothBound smooth;
    final double[] prices;
    final double[] slope;

    Case(int seed) {
      RunInstances.Sized sized = RunInstances.sized(seed, seed % 2 == 0);
      problem = sized.problem();
      legs = RunInstances.legs(sized);
      pieces = legs.stream().flatMap(leg -> leg.pieces().stream()).toList();
      loads = CircuitLoads.of(problem);
      minutes = pieces.stream().mapToInt(Piece::latestReady).max().orElseThrow() + 3;
      smooth = new SmoothBound(problem, pieces, loads, minutes);
      prices = new double[smooth.size()];
      slope = new double[smooth.size()];
      SplittableRandom random = new SplittableRandom(seed);
      for (int i = 0; i < prices.length; i++) {
        prices[i] = isPriced(i) ? random.nextInt(4096) / 64.0 : 0;
      }
    }

    /** Kinds that no circuit limits have no price for power. */
    boolean isPriced(int i) {
      int kind = i / minutes - problem.kinds().size();
      return kind < 0
          || loads.stream()
              .anyMatch(c -> java.util.Arrays.stream(c.kinds()).anyMatch(k -> k == kind));
    }

    double sharp() {
      int kinds = problem.kinds().size();
      double[][] unit = new double[kinds][minutes];
      double[][] power = new double[kinds][minutes];
      for (int kind = 0; kind < kinds; kind++) {
        System.arraycopy(prices, kind * minutes, unit[kind], 0, minutes);
        System.arraycopy(prices, (kinds + kind) * minutes, power[kind], 0, minutes);
      }
      return new PriceBound(
              problem, legs, new Prices(problem, problem.earliestStart(), unit, power))
          .ofAll();
    }
  }
}
