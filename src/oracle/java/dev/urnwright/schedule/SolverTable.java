package dev.urnwright.schedule;

import com.google.ortools.sat.CpSolverStatus;
import dev.urnwright.schedule.RunInstances.Named;
import dev.urnwright.schedule.SolverModel.Answer;
import java.util.Locale;
import java.util.Optional;

/**
 * Our time, wait and gap beside CP-SAT's, on the same days in the same run. The solver is given the
 * sizes that ours has chosen, so it is spared that part of the work; it has two workers and twenty
 * seconds.
 */
public final class SolverTable {
  private static final double SECONDS = 20;

  private SolverTable() {}

  /**
   * Prints the table.
   *
   * @param args how many seeds; 2 when left out
   */
  public static void main(String[] args) {
    int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 2;
    System.out.println(
        "instance          seed batches |  ours s   mean wait min  proven  gap % | CP-SAT s   mean wait min  status");
    RunInstances.days(99).subList(0, 2).forEach(day -> RunScheduler.solve(day.problem())); // warm
    for (int seed = 1; seed <= seeds; seed++) {
      for (Named day : RunInstances.days(seed)) {
        row(day, seed);
      }
    }
  }

  private static void row(Named day, int seed) {
    long before = System.nanoTime();
    Optional<RunSolution> solution = RunScheduler.solve(day.problem());
    double seconds = (System.nanoTime() - before) / 1e9;
    if (solution.isEmpty()) {
      System.out.printf(Locale.ROOT, "%-17s %4d  nothing found%n", day.name(), seed);
      return;
    }
    RunSolution ours = solution.get();
    Answer answer = SolverModel.solve(day.problem(), SolverSizes.of(day.problem(), ours), SECONDS);
    double grams =
        day.problem().coffees().stream()
            .flatMap(coffee -> coffee.orders().stream())
            .mapToDouble(Order::grams)
            .sum();
    double wait = ours.waitGramMinutes();
    System.out.printf(
        Locale.ROOT,
        "%-17s %4d %7d | %7.2f %15.3f %7s %6.2f | %8.2f %15s  %s%n",
        day.name(),
        seed,
        ours.batches().size(),
        seconds,
        wait / grams,
        ours.proof().leastWait() ? "yes" : "no",
        100 * (wait - ours.proof().waitBound()) / wait,
        answer.seconds(),
        found(answer) ? String.format(Locale.ROOT, "%.3f", answer.leastWait() / grams) : "-",
        SolverSizes.areWhole(day.problem(), ours) ? answer.status() : "(other sizes)");
  }

  private static boolean found(Answer answer) {
    return answer.status() == CpSolverStatus.OPTIMAL || answer.status() == CpSolverStatus.FEASIBLE;
  }
}
