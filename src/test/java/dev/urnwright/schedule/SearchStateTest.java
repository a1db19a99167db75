package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Of states that have come as far, those that matter. */
class SearchStateTest {
  /** Kept are just those than which no other is as good in every way and better in one. */
  @Test
  void whatIsOutdoneIsDropped() {
    for (int seed = 1; seed <= 300; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<List<Integer>> all = new ArrayList<>();
      List<SearchState> states = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        List<Integer> figures = random.ints(5, 0, 3).boxed().toList();
        all.add(figures);
        state(figures).joins(states);
      }
      Set<List<Integer>> wanted =
          all.stream()
              .filter(one -> all.stream().noneMatch(o -> !o.equals(one) && isAsGood(o, one)))
              .collect(Collectors.toSet());
      List<List<Integer>> kept = states.stream().map(SearchStateTest::figures).toList();
      assertEquals(wanted, Set.copyOf(kept), "seed " + seed);
      assertEquals(wanted.size(), kept.size(), "seed " + seed);
    }
  }

  /** Last minute, value, first start, and two brewers' minutes. */
  private static SearchState state(List<Integer> figures) {
    SearchState state = new SearchState(new long[0], new int[] {figures.get(3), figures.get(4)});
    state.last = figures.get(0);
    state.value = figures.get(1);
    state.firstStart = figures.get(2);
    return state;
  }

  private static List<Integer> figures(SearchState s) {
    return List.of(s.last, (int) s.value, s.firstStart, s.free[0], s.free[1]);
  }

  /** A later start counts among those that wait as little. */
  private static boolean isAsGood(List<Integer> one, List<Integer> other) {
    return one.get(0) >= other.get(0)
        && one.get(1) * 10 + one.get(2) >= other.get(1) * 10 + other.get(2)
        && one.get(3) >= other.get(3)
        && one.get(4) >= other.get(4);
  }

  /** A ten-millionth of a gram-minute comes of adding up in another order. */
  @Test
  void roundingIsNoDifference() {
    SearchState more = state(List.of(5, 100, 1, 5, 5));
    more.value += 1e-7;
    SearchState later = state(List.of(5, 100, 2, 5, 5));
    List<SearchState> states = new ArrayList<>(List.of(more));
    later.joins(states);
    assertEquals(List.of(later), states);
    more.joins(states);
    assertEquals(List.of(later), states);
  }

  @Test
  void theSameProgressIsTheSameKey() {
    assertEquals(key(1, 2), key(1, 2));
    assertEquals(key(1, 2).hashCode(), key(1, 2).hashCode());
    assertFalse(key(1, 2).equals(key(2, 1)));
    assertFalse(key(1).equals((Object) "1"));
    // and a table of them isn't one long list
    Set<Integer> hashes =
        LongStream.range(0, 100).mapToObj(n -> key(n, 3).hashCode()).collect(Collectors.toSet());
    assertTrue(hashes.size() > 50, hashes.toString());
  }

  private static SearchState.Progress key(long... progress) {
    return new SearchState(Arrays.copyOf(progress, progress.length), new int[0]).key();
  }
}
