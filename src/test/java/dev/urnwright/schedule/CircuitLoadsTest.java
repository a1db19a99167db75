package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.schedule.RunProblem.Kind;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a circuit carries at once, by hand. */
class CircuitLoadsTest {
  /** Two of 2000 W and one of 3000 W on 4000 W; beside them one on another circuit, one on none. */
  private static final List<Kind> KINDS =
      List.of(kind(1, 9000, -1), kind(2, 2000, 1), kind(1, 4000, 0), kind(1, 3000, 1));

  private static final RunProblem PROBLEM = problem(KINDS, 4000, 4000);

  @Test
  void aCircuitCarriesWhatItsWattsAllow() {
    CircuitLoads loads = CircuitLoads.of(PROBLEM).get(0);
    assertArrayEquals(new int[] {1, 3}, loads.kinds());
    assertEquals(List.of("[0, 0]", "[1, 0]", "[2, 0]", "[0, 1]"), texts(loads.loads()));
    assertEquals(0, loads.number(new int[] {0, 0}));
    // three numbers for the first kind, 0 to 2, and then those of the second
    assertEquals(2, loads.number(new int[] {2, 0}));
    assertEquals(3, loads.number(new int[] {0, 1}));
    assertEquals(5, loads.number(new int[] {2, 1}));
    assertArrayEquals(new boolean[] {true, true, true, true, false, false}, loads.carries());
  }

  @Test
  void besideWhatRunsThereIsLessRoom() {
    CircuitLoads loads = CircuitLoads.of(PROBLEM).get(0);
    assertEquals(
        List.of("[0, 0]", "[1, 0]", "[2, 0]", "[0, 1]"),
        texts(loads.beside(new int[] {0, 0}, KINDS)));
    assertEquals(List.of("[0, 0]", "[1, 0]"), texts(loads.beside(new int[] {1, 0}, KINDS)));
    assertEquals(List.of("[0, 0]"), texts(loads.beside(new int[] {2, 0}, KINDS)));
    assertEquals(List.of("[0, 0]"), texts(loads.beside(new int[] {0, 1}, KINDS)));
  }

  /** All at once is no more than it carries; then there is nothing to count. */
  @Test
  void aCircuitThatCarriesAllIsNone() {
    assertEquals(1, CircuitLoads.of(PROBLEM).size());
    assertEquals(0, CircuitLoads.of(problem(KINDS, 4000, 7000)).size());
    assertEquals(2, CircuitLoads.of(problem(KINDS, 3999, 6999)).size());
    assertEquals(0, CircuitLoads.of(problem(KINDS)).size());
  }

  /** 10 · 10 · 10 loads are counted; 10 · 10 · 11 are too many. */
  @Test
  void aCircuitOfVeryManyBrewersIsLeftOut() {
    assertEquals(1, CircuitLoads.of(problem(nine(9), 100)).size());
    assertTrue(CircuitLoads.of(problem(nine(10), 100)).isEmpty());
  }

  private static List<Kind> nine(int last) {
    return List.of(kind(9, 50, 0), kind(9, 50, 0), kind(last, 50, 0));
  }

  private static List<String> texts(List<int[]> loads) {
    return loads.stream().map(Arrays::toString).toList();
  }

  private static Kind kind(int units, double watts, int circuit) {
    return new Kind(units, 5, 2, watts, circuit);
  }

  private static RunProblem problem(List<Kind> kinds, double... watts) {
    return new RunProblem(List.of(), kinds, Arrays.stream(watts).boxed().toList(), 0);
  }
}
