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
   * @param coffee what is in it, as a number
   */
  public record Use(int from, int until, int coffee) {}

  /**
   * Gives out dispensers in the order of time: one that last held the same coffee, or one not used
   * yet, before one that held another. More than there are are given out only when all are wanted
   * at once.
   *
   * @param uses in any order
   * @param there how many there are
   */
  public static DispenserTimes of(List<Use> uses, int there) {
    Integer[] units = new Integer[uses.size()];
    List<Use> lastUses = new ArrayList<>();
    IntStream.range(0, uses.size())
        .boxed()
        .sorted(
            Comparator.comparingInt((Integer i) -> uses.get(i).from())
                .thenComparingInt(i -> uses.get(i).until()))
        .forEach(i -> units[i] = take(uses.get(i), lastUses, there));
    return new DispenserTimes(List.of(units), lastUses.size());
  }

  private static int take(Use use, List<Use> lastUses, int there) {
    boolean unusedLeft = lastUses.size() < there;
    int unit =
        IntStream.range(0, lastUses.size())
            .filter(u -> lastUses.get(u).until() <= use.from())
            .filter(u -> lastUses.get(u).coffee() == use.coffee() || !unusedLeft)
            .boxed()
            .min(
                Comparator.comparing((Integer u) -> lastUses.get(u).coffee() != use.coffee())
                    .thenComparingInt(u -> lastUses.get(u).until()))
            .orElse(lastUses.size());
    if (unit == lastUses.size()) {
      lastUses.add(use);
    } else {
      lastUses.set(unit, use);
    }
    return unit;
  }
}
