package dev.urnwright.schedule;

import dev.urnwright.schedule.RunSolution.TimedBatch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Gives each placed batch one brewer of its kind. */
record BrewerNames(RunProblem problem) {
  /** Names a unit for each batch in order of time, if it can be one that brewed the same coffee. */
  List<TimedBatch> of(@Nullable Placement first) {
    int[] busyUntil = new int[firstUnit(problem.kinds().size())];
    Arrays.fill(busyUntil, Integer.MIN_VALUE);
    int[] lastCoffee = new int[firstUnit(problem.kinds().size())];
    Arrays.fill(lastCoffee, -1);
    List<TimedBatch> batches = new ArrayList<>();
    // The last placement is the first on the clock; starts are sorted before units are named.
    List<Placement> placements = new ArrayList<>();
    for (Placement p = first; p != null; p = p.later()) {
      placements.add(p);
    }
    placements.sort(Comparator.comparingInt(Placement::start));
    for (Placement p : placements) {
      int unit = unitFor(p, busyUntil, lastCoffee);
      lastCoffee[unit] = p.coffee();
      busyUntil[unit] = p.ready() + problem.kinds().get(p.kind()).turnaroundMinutes();
      batches.add(
          new TimedBatch(
              p.coffee(),
              p.kind(),
              unit - firstUnit(p.kind()),
              p.choice().doseSteps(),
              p.start(),
              p.ready(),
              p.choice().grams()));
    }
    return batches;
  }

  private int unitFor(Placement placement, int[] busyUntil, int[] lastCoffee) {
    int chosen = -1;
    for (int unit = firstUnit(placement.kind()); unit < firstUnit(placement.kind() + 1); unit++) {
      if (busyUntil[unit] <= placement.start()
          && (chosen < 0
              || rank(lastCoffee[unit], placement) < rank(lastCoffee[chosen], placement))) {
        chosen = unit;
      }
    }
    return chosen;
  }

  /** The same coffee first, then a clean brewer, then one that brewed another coffee. */
  private static int rank(int lastCoffee, Placement placement) {
    if (lastCoffee == placement.coffee()) {
      return 0;
    }
    return lastCoffee < 0 ? 1 : 2;
  }

  /** Units are counted through all kinds. */
  private int firstUnit(int kind) {
    return problem.kinds().subList(0, kind).stream().mapToInt(RunProblem.Kind::units).sum();
  }
}
