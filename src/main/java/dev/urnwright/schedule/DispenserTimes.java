package dev.urnwright.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which single dispenser of a kind each fill goes into, so that none is wanted twice at once.
 *
 * @param units for each use, in its order, a dispenser counted from 0
 * @param most dispensers wanted at the same time
 */
public record DispenserTimes(List<Integer> units, int most) {
  /** Copies the list. */
  public DispenserTimes {
    units = List.copyOf(units);
  }

  /**
   * One use of a dispenser.
   *
   * @param from minute at which it is wanted
   * @param until minute from which it can be used again
   */
  public record Use(int from, int until) {}

  /**
   * Gives out dispensers in the order of time, each the one that has been free for longest.
   *
   * @param uses in any order
   */
  public static DispenserTimes of(List<Use> uses) {
    Integer[] units = new Integer[uses.size()];
    List<Integer> freeFrom = new ArrayList<>();
    IntStream.range(0, uses.size())
        .boxed()
        .sorted(
            Comparator.comparingInt((Integer i) -> uses.get(i).from())
                .thenComparingInt(i -> uses.get(i).until()))
        .forEach(
            i -> {
              int unit =
                  IntStream.range(0, freeFrom.size())
                      .filter(u -> freeFrom.get(u) <= uses.get(i).from())
                      .boxed()
                      .min(Comparator.comparingInt(freeFrom::get))
                      .orElse(freeFrom.size());
              if (unit == freeFrom.size()) {
                freeFrom.add(0);
              }
              freeFrom.set(unit, uses.get(i).until());
              units[i] = unit;
            });
    return new DispenserTimes(List.of(units), freeFrom.size());
  }
}
