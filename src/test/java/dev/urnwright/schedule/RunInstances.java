package dev.urnwright.schedule;

import dev.urnwright.event.Brewer;
import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Mass;
import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Seeded problems for the scheduler, from a few batches to a conference. */
final class RunInstances {
  private RunInstances() {}

  static DoseRange range(long least, long greatest) {
    return new DoseRange(
        new Brewer(
            "b" + greatest,
            1,
            Mass.ofGrams(1),
            Mass.ofGrams(Math.max(1, greatest)),
            Mass.ofGrams(1),
            Optional.empty(),
            Optional.empty(),
            new Brewer.Supply(Optional.empty(), Optional.empty()),
            new Location("x", 1, 1)),
        least,
        greatest);
  }

  /** Orders of one dispenser each over a day, with breaks and a hold. */
  static CoffeeOrders orders(
      Random random, int count, int from, int to, int hold, List<DoseRange> ranges) {
    List<Order> orders = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int due = from + random.nextInt(to - from);
      int span = 10 + random.nextInt(25);
      orders.add(new Order("F" + i, 1500 + random.nextInt(600), due + span - hold, due));
    }
    return new CoffeeOrders(orders, 10.85 * 5, ranges); // 5 g steps at 1:13
  }

  static RunProblem problem(
      long seed,
      int batches,
      int[] units,
      long[] doses,
      int[] cycles,
      double[] watts,
      int[] circuit,
      List<Double> circuits,
      int coffees) {
    Random random = new Random(seed);
    List<Kind> kinds = new ArrayList<>();
    List<DoseRange> ranges = new ArrayList<>();
    long most = 0;
    for (int k = 0; k < units.length; k++) {
      kinds.add(new Kind(units[k], cycles[k], 2, watts[k], circuit[k]));
      ranges.add(range(doses[k] / 3, doses[k]));
      most = Math.max(most, doses[k]);
    }
    double grams = batches * most * 10.85 * 5 * 0.97;
    List<CoffeeOrders> all = new ArrayList<>();
    for (int c = 0; c < coffees; c++) {
      all.add(orders(random, Math.max(1, (int) (grams / coffees / 1800)), 480, 960, 75, ranges));
    }
    return new RunProblem(all, kinds, circuits, 0);
  }

  public static void main(String[] args) {
    for (int w : new int[] {2000}) {
      System.out.println("width " + w);
      for (int seed = 1; seed <= 3; seed++) {
        show(
            "10/120 mixed",
            problem(
                seed,
                120,
                new int[] {4, 3, 2, 1},
                new long[] {96, 110, 120, 130},
                new int[] {10, 12, 15, 20},
                new double[] {3100, 2800, 2000, 4000},
                new int[] {0, 0, 1, 1},
                List.of(12000.0, 6000.0),
                2),
            w);
        show(
            "20/400",
            problem(
                seed,
                400,
                new int[] {8, 6, 4, 2},
                new long[] {96, 96, 96, 96},
                new int[] {10, 12, 15, 20},
                new double[] {3100, 2800, 2000, 4000},
                new int[] {0, 0, 1, 1},
                List.of(24000.0, 12000.0),
                2),
            w);
        show(
            "3/20 equal",
            problem(
                seed,
                20,
                new int[] {3},
                new long[] {96},
                new int[] {11},
                new double[] {3100},
                new int[] {-1},
                List.of(),
                1),
            w);
        show(
            "3/20 circ",
            problem(
                seed,
                20,
                new int[] {2, 1},
                new long[] {96, 96},
                new int[] {11, 14},
                new double[] {3100, 2400},
                new int[] {0, 0},
                List.of(5888.0),
                2),
            w);
        show(
            "5/50 mixed",
            problem(
                seed,
                50,
                new int[] {3, 2},
                new long[] {96, 150},
                new int[] {11, 16},
                new double[] {3100, 4000},
                new int[] {0, 1},
                List.of(7000.0, 8000.0),
                2),
            w);
        show(
            "10/120",
            problem(
                seed,
                120,
                new int[] {4, 3, 2, 1},
                new long[] {96, 96, 96, 96},
                new int[] {10, 12, 15, 20},
                new double[] {3100, 2800, 2000, 4000},
                new int[] {0, 0, 1, 1},
                List.of(12000.0, 6000.0),
                2),
            w);
      }
    }
  }

  static void show(String name, RunProblem p, int width) {
    long t = System.nanoTime();
    Optional<RunSolution> s = RunScheduler.solve(p, width);
    System.out.printf(
        "%-14s %7.0f ms %s%n",
        name,
        (System.nanoTime() - t) / 1e6,
        s.map(
                x ->
                    x.batches().size()
                        + " batches wait "
                        + Math.round(x.waitGramMinutes())
                        + " bound "
                        + Math.round(x.proof().waitBound())
                        + " "
                        + x.proof().fewestBatches()
                        + " "
                        + x.proof().leastWait()
                        + " first "
                        + x.firstStart())
            .orElse("none"));
  }
}
