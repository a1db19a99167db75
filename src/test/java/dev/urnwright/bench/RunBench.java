package dev.urnwright.bench;

import dev.urnwright.schedule.RunInstances;
import dev.urnwright.schedule.RunInstances.Named;
import dev.urnwright.schedule.RunScheduler;
import dev.urnwright.schedule.RunSolution;
import java.util.Locale;
import java.util.Optional;

/** How long the scheduler takes for a day, and how good it knows its schedule to be. */
public final class RunBench {
  private RunBench() {}

  /**
   * Prints one line for each day.
   *
   * @param args how many seeds; 3 when left out
   */
  public static void main(String[] args) {
    int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 3;
    RunInstances.days(99).subList(0, 3).forEach(day -> RunScheduler.solve(day.problem())); // warm
    System.out.println(
        "brewers/batches   seed    time s batches fewest    wait kg·min   bound kg·min least");
    for (int seed = 1; seed <= seeds; seed++) {
      for (Named day : RunInstances.days(seed)) {
        long before = System.nanoTime();
        Optional<RunSolution> solution = RunScheduler.solve(day.problem());
        double seconds = (System.nanoTime() - before) / 1e9;
        System.out.printf(Locale.ROOT, "%-17s %4d %9.2f ", day.name(), seed, seconds);
        System.out.println(solution.map(RunBench::line).orElse("none found"));
      }
    }
  }

  private static String line(RunSolution solution) {
    return String.format(
        Locale.ROOT,
        "%7d %-6s %14.0f %14.0f %s",
        solution.batches().size(),
        solution.proof().fewestBatches() ? "yes" : "no",
        solution.waitGramMinutes() / 1000,
        solution.proof().waitBound() / 1000,
        solution.proof().leastWait() ? "yes" : "no");
  }
}
