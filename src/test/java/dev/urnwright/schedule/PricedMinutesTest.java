package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.RunProblem.Kind;
import dev.urnwright.schedule.TinyRuns.PriceRows;
import dev.urnwright.schedule.TinyRuns.Tiny;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/**
 * Bounds by prices: any prices against going through brewers, circuits and minutes one by one, and
 * good ones against the best there are, which a general library finds as a linear programme.
 */
class PricedMinutesTest {
  private static final int SEEDS = 150;

  /** All of one problem, minute by minute. */
  private record Minutes(RunProblem problem, PriceRows rows) {
    int from() {
      return problem.earliestStart();
    }

    int to() {
      return from() + rows.unit()[0].length;
    }

    private double priceOf(double[] row, int minute) {
      return minute < from() || minute >= to() ? 0 : row[minute - from()];
    }

    double batch(int kind, int ready) {
      Kind brewer = problem.kinds().get(kind);
      double price = 0;
      for (int m = ready - brewer.brewMinutes(); m < ready + brewer.turnaroundMinutes(); m++) {
        price += priceOf(rows.unit()[kind], m);
        price += m < ready ? priceOf(rows.power()[kind], m) : 0;
      }
      return price;
    }

    double piece(Piece piece, int last) {
      double best = Double.NEGATIVE_INFINITY;
      for (int at = 0; at < piece.kinds().length; at++) {
        int kind = piece.kinds()[at];
        int first =
            Math.max(piece.earliestReady(), from() + problem.kinds().get(kind).brewMinutes());
        for (int ready = first; ready <= Math.min(last, piece.latestReady()); ready++) {
          best = Math.max(best, piece.grams() * ready - piece.batches()[at] * batch(kind, ready));
        }
      }
      return best;
    }

    double pieces(List<Piece> pieces, double count, int last) {
      double sum = 0;
      for (int i = 0; i < count; i++) {
        sum += Math.min(1, count - i) * piece(pieces.get(i), last);
      }
      return sum;
    }

    double capacity(int[] free, int last) {
      double worth = 0;
      for (int m = from(); m < to(); m++) {
        int[] running = new int[problem.kinds().size()];
        int unit = 0;
        for (int kind = 0; kind < running.length; kind++) {
          for (int i = 0; i < problem.kinds().get(kind).units(); i++, unit++) {
            boolean isFree = m < free[unit] + problem.kinds().get(kind).turnaroundMinutes();
            worth += isFree ? priceOf(rows.unit()[kind], m) : 0;
            running[kind] += isFree ? 0 : 1;
          }
        }
        if (m < last) {
          worth += power(m, 0, running, running.clone());
        }
      }
      return worth;
    }

    /** The most that kinds from one on can pay for power, beside those that run. */
    private double power(int minute, int kind, int[] running, int[] all) {
      if (kind == all.length) {
        return 0;
      }
      double most = 0;
      int before = all[kind];
      for (int more = 0; before + more <= problem.kinds().get(kind).units(); more++) {
        all[kind] = before + more;
        if (more == 0 || carries(all)) {
          double here = more * priceOf(rows.power()[kind], minute);
          most = Math.max(most, here + power(minute, kind + 1, running, all));
        }
      }
      all[kind] = before;
      return most;
    }

    private boolean carries(int[] brewers) {
      return IntStream.range(0, problem.circuitWatts().size())
          .allMatch(c -> watts(c, brewers) <= problem.circuitWatts().get(c));
    }

    private double watts(int circuit, int[] brewers) {
      return IntStream.range(0, brewers.length)
          .filter(kind -> problem.kinds().get(kind).circuit() == circuit)
          .mapToDouble(kind -> brewers[kind] * problem.kinds().get(kind).watts())
          .sum();
    }
  }

  @Test
  void whatIsLeftIsWorthWhatItsMinutesAre() {
    for (int seed = 1; seed <= SEEDS; seed++) {
      Tiny tiny = TinyRuns.of(seed);
      PriceRows rows = PriceRows.any(tiny.problem(), seed);
      Minutes minutes = new Minutes(tiny.problem(), rows);
      PriceBound bound = rows.bound(tiny.problem(), tiny.legs());
      SplittableRandom random = new SplittableRandom(seed);
      for (int n = 0; n < 20; n++) {
        int last = random.nextInt(5, 30);
        int[] free = free(tiny.problem(), last, random);
        assertEquals(
            minutes.capacity(free, last), bound.ofCapacity(free, last), 1e-9, "seed " + seed);
      }
    }
  }

  /** As a search leaves them: free until the last minute or less, falling in each kind. */
  private static int[] free(RunProblem problem, int last, SplittableRandom random) {
    List<Integer> all = new ArrayList<>();
    int[] running = new int[problem.kinds().size()];
    Minutes watts = new Minutes(problem, PriceRows.any(problem, 1));
    for (int kind = 0; kind < running.length; kind++) {
      List<Integer> units = new ArrayList<>();
      for (int unit = 0; unit < problem.kinds().get(kind).units(); unit++) {
        running[kind]++;
        boolean mayRun = random.nextInt(3) > 0 && watts.carries(running);
        running[kind] -= mayRun ? 0 : 1;
        units.add(mayRun ? last - random.nextInt(12) : last);
      }
      units.sort((a, b) -> b - a);
      all.addAll(units);
    }
    return all.stream().mapToInt(Integer::intValue).toArray();
  }

  @Test
  void eachPieceIsReadyWhenThatIsBestForItAlone() {
    for (int seed = 1; seed <= SEEDS; seed++) {
      Tiny tiny = TinyRuns.of(seed);
      PriceRows rows = PriceRows.any(tiny.problem(), seed);
      Minutes minutes = new Minutes(tiny.problem(), rows);
      List<Leg> legs = tiny.legs();
      PriceBound bound = rows.bound(tiny.problem(), legs);
      for (int leg = 0; leg < legs.size(); leg++) {
        List<Piece> pieces = legs.get(leg).pieces();
        for (int last = 4; last < 28; last++) {
          for (double count = 0; count <= pieces.size(); count += 0.25) {
            double best = bound.ofLeg(leg, count, last);
            assertEquals(minutes.pieces(pieces, count, last), best, 1e-9, "seed " + seed);
          }
        }
      }
    }
  }

  @Test
  void theBoundOfAllIsThatOfAnEmptyDay() {
    for (int seed = 1; seed <= SEEDS; seed++) {
      Tiny tiny = TinyRuns.of(seed);
      PriceRows rows = PriceRows.any(tiny.problem(), seed);
      Minutes minutes = new Minutes(tiny.problem(), rows);
      int[] free = new int[tiny.problem().kinds().stream().mapToInt(Kind::units).sum()];
      Arrays.fill(free, 1000);
      double all = minutes.capacity(free, 1000);
      for (Leg leg : tiny.legs()) {
        all += minutes.pieces(leg.pieces(), leg.pieces().size(), 1000);
      }
      assertEquals(all, rows.bound(tiny.problem(), tiny.legs()).ofAll(), 1e-9, "seed " + seed);
    }
  }

  /** Brewed in 2 minutes and ready at the last of all, without turnaround: 3 + 5, and 7 + 11. */
  @Test
  void aBatchPaysForItsBrewerAndItsPower() {
    RunProblem problem =
        new RunProblem(List.of(), List.of(new Kind(1, 2, 0, 1000, 0)), List.of(1.0), 10);
    double[][] unit = {{1, 3, 5}};
    double[][] power = {{2, 7, 11}};
    Prices prices = new Prices(problem, 10, unit, power);
    assertEquals(3 + 5 + 7 + 11, prices.ofBatch(0, 13));
    assertEquals(1 + 3 + 2 + 7, prices.ofBatch(0, 12));
    assertEquals(1 + 3, prices.unitsBefore(0, 12));
    assertEquals(1 + 3 + 5, prices.unitsBefore(0, 99));
    assertEquals(0, prices.unitsBefore(0, 9));
  }

  /** A piece that no kind can have ready in time is worth less than any other, at any price. */
  @Test
  void whatCantBeReadyIsWorthNothing() {
    RunProblem problem =
        new RunProblem(List.of(), List.of(new Kind(1, 5, 1, 1000, -1)), List.of(), -100);
    double[][] none = new double[1][60];
    Bargain bargain = new Bargain(problem, new Prices(problem, -100, none, none));
    Piece late = new Piece(10, new int[] {0}, new double[] {1}, -120, -96);
    Piece inTime = new Piece(10, new int[] {0}, new double[] {1}, -120, -95);
    double never = Double.NEGATIVE_INFINITY;
    assertEquals(never, new PricedPieces(List.of(late), bargain).best(1, -50));
    assertEquals(-950, new PricedPieces(List.of(inTime), bargain).best(1, -50));
    assertEquals(never, new PricedPieces(List.of(inTime), bargain).best(1, -96));
  }

  /** So that sums of them are exact: 0.3 of 1024 parts are 307.2. */
  @Test
  void pricesAreWholePartsOf1024() {
    RunProblem problem = TinyRuns.of(1).problem();
    double[][] rows = new double[problem.kinds().size()][3];
    rows[0] = new double[] {0.3, 2, 0.0004};
    Prices prices = new Prices(problem, 5, new double[rows.length][3], rows);
    assertArrayEquals(
        new double[] {307 / 1024.0, 2, 0},
        new double[] {prices.power(0, 5), prices.power(0, 6), prices.power(0, 7)});
    assertEquals(5, prices.from());
    assertEquals(8, prices.to());
  }

  /**
   * Prices can't be better than the linear programme in which batches may be brewed in parts: its
   * best is the least bound of all, by duality. Those that are looked for come within a gram-minute
   * of it, what one gram of coffee loses that waits a minute, in the rounds that are usual at
   * first.
   */
  @Test
  void goodPricesAreNearlyTheBestThereAre() {
    int better = 0;
    for (int seed = 1; better < 10; seed++) {
      Tiny tiny = TinyRuns.of(seed);
      List<Piece> pieces = tiny.legs().stream().flatMap(leg -> leg.pieces().stream()).toList();
      double none = pieces.stream().mapToDouble(p -> p.grams() * p.latestReady()).sum();
      if (new BackwardSearch(tiny.problem(), tiny.legs(), 1000)
          .run(Double.NEGATIVE_INFINITY)
          .filter(found -> found.value() < none - 1)
          .isPresent()) {
        double best = new Relaxed(tiny.problem(), pieces).best();
        double good =
            Pricing.of(tiny.problem(), tiny.legs(), 0, Patience.USUAL.firstRounds()).ofAll();
        assertEquals(best, good, 1, "seed " + seed);
        // and far fewer rounds lead most of the way, since steps gather momentum
        double soon = Pricing.of(tiny.problem(), tiny.legs(), 0, 400).ofAll();
        assertEquals(best, soon, 10, "seed " + seed);
        assertTrue(good >= best - 1e-3, "seed " + seed + ": " + good + " < " + best);
        better += best < none - 1 ? 1 : 0;
      }
    }
  }

  /** Times are counted from any moment, also from one that all of it comes before. */
  @Test
  void anHourEarlierIsAnHourEarlierForEachGram() {
    for (int seed = 1; seed <= 5; seed++) {
      Tiny tiny = TinyRuns.of(seed);
      double grams =
          tiny.parts().stream().flatMap(p -> p.orders().stream()).mapToDouble(Order::grams).sum();
      double now = Pricing.of(tiny.problem(), tiny.legs(), -1e9, 400).ofAll();
      Tiny earlier = tiny.earlier(60);
      double then = Pricing.of(earlier.problem(), earlier.legs(), -1e9, 400).ofAll();
      assertEquals(now - 60 * grams, then, 1e-2, "seed " + seed);
    }
  }

  /** Which part of each piece is ready when, and which part of each minute has which load. */
  private static final class Relaxed {
    private final RunProblem problem;
    private final List<double[]> columns = new ArrayList<>(); // value, then each row's use
    private final double[] limits;
    private final int minutes;
    private final int kinds;
    private final int pieces;

    Relaxed(RunProblem problem, List<Piece> all) {
      this.problem = problem;
      this.kinds = problem.kinds().size();
      this.minutes = 30;
      this.pieces = all.size();
      // rows: units of each kind and minute; power of each kind and minute; pieces; minutes
      this.limits = new double[2 * kinds * minutes + pieces + minutes];
      for (int kind = 0; kind < kinds; kind++) {
        Arrays.fill(
            limits, kind * minutes, (kind + 1) * minutes, problem.kinds().get(kind).units());
      }
      Arrays.fill(limits, 2 * kinds * minutes, limits.length, 1);
      for (int i = 0; i < pieces; i++) {
        add(all.get(i), i);
      }
      for (int minute = 0; minute < minutes; minute++) {
        addLoads(minute, new int[kinds], 0);
      }
    }

    private void add(Piece piece, int number) {
      for (int at = 0; at < piece.kinds().length; at++) {
        int k = piece.kinds()[at];
        Kind kind = problem.kinds().get(k);
        int first = Math.max(piece.earliestReady(), problem.earliestStart() + kind.brewMinutes());
        for (int ready = first; ready <= piece.latestReady(); ready++) {
          double[] column = new double[1 + limits.length];
          column[0] = piece.grams() * ready;
          int start = ready - kind.brewMinutes();
          for (int m = start; m < ready + kind.turnaroundMinutes(); m++) {
            column[1 + k * minutes + m] = piece.batches()[at];
            if (m < ready && TinyRuns.isLimited(problem, k)) {
              column[1 + (kinds + k) * minutes + m] = piece.batches()[at];
            }
          }
          column[1 + 2 * kinds * minutes + number] = 1;
          columns.add(column);
        }
      }
    }

    private void addLoads(int minute, int[] load, int kind) {
      if (kind < kinds) {
        int most = TinyRuns.isLimited(problem, kind) ? problem.kinds().get(kind).units() : 0;
        for (int n = 0; n <= most; n++) {
          load[kind] = n;
          addLoads(minute, load, kind + 1);
        }
        load[kind] = 0;
      } else if (new Minutes(problem, PriceRows.any(problem, 1)).carries(load)) {
        double[] column = new double[1 + limits.length];
        for (int k = 0; k < kinds; k++) {
          column[1 + (kinds + k) * minutes + minute] = -load[k];
        }
        column[1 + 2 * kinds * minutes + pieces + minute] = 1;
        columns.add(column);
      }
    }

    double best() {
      List<LinearConstraint> constraints = new ArrayList<>();
      for (int row = 0; row < limits.length; row++) {
        int which = row + 1;
        double[] uses = columns.stream().mapToDouble(column -> column[which]).toArray();
        boolean isWhole = row >= 2 * kinds * minutes;
        if (Arrays.stream(uses).anyMatch(use -> use != 0)) {
          constraints.add(
              new LinearConstraint(
                  uses, isWhole ? Relationship.EQ : Relationship.LEQ, limits[row]));
        }
      }
      double[] values = columns.stream().mapToDouble(column -> column[0]).toArray();
      return new SimplexSolver()
          .optimize(
              new LinearObjectiveFunction(values, 0),
              new LinearConstraintSet(constraints),
              GoalType.MAXIMIZE,
              new NonNegativeConstraint(true),
              new MaxIter(20_000))
          .getValue();
    }
  }
}
