package dev.urnwright.schedule;

import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What one circuit can carry at once: so many brewers of this kind and so many of that. A load is
 * written as one number, with a place for each kind.
 *
 * @param kinds on the circuit
 * @param places what one brewer of each of these kinds adds to a load's number
 * @param loads that the circuit carries, each as brewers of each kind; the empty one first
 * @param carries for each number whether it is one of them
 */
record CircuitLoads(int[] kinds, int[] places, List<int[]> loads, boolean[] carries) {
  /** Circuits with more possible loads than this are taken to carry anything. */
  private static final int MOST = 1_000;

  /** The loads of all circuits that may be too weak for their brewers. */
  static List<CircuitLoads> of(RunProblem problem) {
    List<CircuitLoads> all = new ArrayList<>();
    for (int circuit = 0; circuit < problem.circuitWatts().size(); circuit++) {
      int which = circuit;
      int[] kinds =
          IntStream.range(0, problem.kinds().size())
              .filter(kind -> problem.kinds().get(kind).circuit() == which)
              .toArray();
      double watts =
          Arrays.stream(kinds)
              .mapToObj(problem.kinds()::get)
              .mapToDouble(kind -> kind.units() * kind.watts())
              .sum();
      double numbers = 1;
      for (int kind : kinds) {
        numbers *= problem.kinds().get(kind).units() + 1;
      }
      if (watts > problem.circuitWatts().get(circuit) && numbers <= MOST) {
        all.add(of(problem, kinds, problem.circuitWatts().get(circuit)));
      }
    }
    return all;
  }

  private static CircuitLoads of(RunProblem problem, int[] kinds, double limit) {
    int[] places = new int[kinds.length];
    int numbers = 1;
    for (int i = 0; i < kinds.length; i++) {
      places[i] = numbers;
      numbers *= problem.kinds().get(kinds[i]).units() + 1;
    }
    List<int[]> loads = new ArrayList<>();
    boolean[] carries = new boolean[numbers];
    for (int number = 0; number < numbers; number++) {
      int[] load = new int[kinds.length];
      double watts = 0;
      for (int i = 0; i < kinds.length; i++) {
        Kind kind = problem.kinds().get(kinds[i]);
        load[i] = number / places[i] % (kind.units() + 1);
        watts += load[i] * kind.watts();
      }
      carries[number] = watts <= limit + BackwardSearch.SAME;
      if (carries[number]) {
        loads.add(load);
      }
    }
    return new CircuitLoads(kinds, places, loads, carries);
  }

  /** The number of a load. */
  int number(int[] load) {
    int number = 0;
    for (int i = 0; i < load.length; i++) {
      number += load[i] * places[i];
    }
    return number;
  }

  /**
   * The loads that can be carried on top of another.
   *
   * @param all kinds of the problem
   */
  List<int[]> beside(int[] present, List<Kind> all) {
    return loads.stream()
        .filter(
            load ->
                IntStream.range(0, load.length)
                    .allMatch(i -> load[i] + present[i] <= all.get(kinds[i]).units()))
        .filter(load -> carries[number(load) + number(present)])
        .toList();
  }
}
