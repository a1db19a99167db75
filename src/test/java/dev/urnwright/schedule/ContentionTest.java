package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.schedule.RunProblem.CoffeeOrders;
import dev.urnwright.schedule.RunProblem.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which of two coffees' next batches must both be tried first. */
class ContentionTest {
  /** Two on one circuit, one on another, one on none; all with a turnaround of 2 minutes. */
  private static final List<Kind> KINDS =
      List.of(
          new Kind(2, 5, 2, 2000, 0),
          new Kind(2, 5, 2, 2000, 0),
          new Kind(2, 5, 2, 2000, 1),
          new Kind(2, 5, 2, 2000, -1));

  /** The later one goes first, and the other needn't be tried: they can't touch each other. */
  @Test
  void onBrewersAndCircuitsOfTheirOwnTheLaterGoesFirst() {
    assertEquals("0", left(batch(0, 0, 20), batch(1, 2, 18)));
    assertEquals("1", left(batch(0, 0, 18), batch(1, 2, 20)));
    assertEquals("0", left(batch(0, 3, 20), batch(1, 0, 18)));
    assertEquals("1", left(batch(0, 3, 18), batch(1, 0, 20)));
  }

  @Test
  void atTheSameMinuteBothAreTried() {
    assertEquals("0 1", left(batch(0, 0, 20), batch(1, 2, 20)));
  }

  /** Started at 15, so over (looking back) at 15; and its brewer 2 minutes before that. */
  @Test
  void whatIsOverDoesNotTouch() {
    assertEquals("0", left(batch(0, 0, 20), batch(1, 1, 15)));
    assertEquals("0 1", left(batch(0, 0, 20), batch(1, 1, 16)));
    assertEquals("0", left(batch(0, 0, 20), batch(1, 0, 13)));
    assertEquals("0 1", left(batch(0, 0, 20), batch(1, 0, 14)));
  }

  /** Two brewers of one kind without a circuit are still wanted by both. */
  @Test
  void aKindIsSharedWithAndWithoutCircuit() {
    assertEquals("0 1", left(batch(0, 3, 20), batch(1, 3, 18)));
    assertEquals("0 1", left(batch(0, 2, 20), batch(1, 2, 18)));
  }

  /** All choices of the later coffee must leave it alone; its own choices stay together. */
  @Test
  void oneChoiceInTheWayIsEnough() {
    assertEquals("0 0 1", left(batch(0, 2, 20), batch(0, 1, 20), batch(1, 1, 18)));
    assertEquals("0 0", left(batch(0, 2, 20), batch(0, 3, 20), batch(1, 1, 18)));
    // and each choice is looked at for itself: that on kind 2 can wait, that on kind 0 can't
    assertEquals("0 1", left(batch(0, 0, 20), batch(1, 0, 18), batch(1, 2, 18)));
  }

  /** A third coffee that touches neither goes first; the two others wait for it. */
  @Test
  void oneOfSeveralIsEnough() {
    assertEquals("2", left(batch(0, 0, 18), batch(1, 1, 17), batch(2, 3, 20)));
  }

  @Test
  void oneCoffeeHasNothingToSettle() {
    List<SearchState> states = new ArrayList<>(List.of(batch(0, 0, 20), batch(0, 2, 18)));
    new Contention(problem(1)).settle(states);
    assertEquals(2, states.size());
  }

  private static String left(SearchState... states) {
    List<SearchState> left = new ArrayList<>(List.of(states));
    new Contention(problem(3)).settle(left);
    return String.join(" ", left.stream().map(s -> "" + s.placed().coffee()).toList());
  }

  private static SearchState batch(int coffee, int kind, int ready) {
    OrderBook.Run run = new OrderBook.Run(List.of(new Order("F", 50, 0, ready)));
    Leg leg =
        new FixedLeg(
            coffee,
            run,
            List.of(50.0),
            KINDS.stream().map(k -> RunInstances.range(1, 9)).toList(),
            10);
    SearchState state = new SearchState(new long[1], new int[8]);
    state.placements =
        new Placement(null, leg, leg.choices(new long[1], 0).get(0), kind, ready - 5, ready);
    return state;
  }

  private static RunProblem problem(int coffees) {
    CoffeeOrders none = new CoffeeOrders(List.of(), 10, List.of());
    return new RunProblem(Collections.nCopies(coffees, none), KINDS, List.of(4000.0, 4000.0), 0);
  }
}
