package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.schedule.RunProblem.Kind;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who brews what: a brewer keeps its coffee where it can. Five minutes and one of turnaround. */
class BrewerNamesTest {
  private static final RunProblem PROBLEM =
      new RunProblem(
          List.of(),
          List.of(new Kind(2, 5, 1, 0, -1), new Kind(3, 5, 1, 0, -1)),
          List.of(),
          Integer.MIN_VALUE / 2);

  /** Coffee, kind and start of each batch; the units in order of starts. */
  private static String units(int[]... batches) {
    Placement placements = null;
    for (int last = batches.length - 1; last >= 0; last--) {
      int[] batch = batches[last];
      OrderBook.Run run = new OrderBook.Run(List.of(new Order("F", 50, -999, 99)));
      Leg leg = new FixedLeg(batch[0], run, List.of(50.0), List.of(RunInstances.range(1, 9)), 10);
      Leg.Choice choice = leg.choices(new long[1], 0).get(0);
      placements = new Placement(placements, leg, choice, batch[1], batch[2], batch[2] + 5);
    }
    String units = "";
    int before = Integer.MIN_VALUE;
    for (TimedBatch batch : new BrewerNames(PROBLEM).of(placements)) {
      assertEquals(batch.start() + 5, batch.ready());
      assertEquals(5, batch.doseSteps());
      assertEquals(50, batch.drawnGrams());
      assertEquals(true, batch.start() >= before);
      before = batch.start();
      units += batch.coffee() + ":" + batch.kind() + "." + batch.unit() + " ";
    }
    return units.strip();
  }

  private static int[] batch(int coffee, int kind, int start) {
    return new int[] {coffee, kind, start};
  }

  @Test
  void theSameCoffeeComesFirst() {
    // at 16 all three are free again; the one that had coffee 1 takes it
    assertEquals(
        "0:1.0 1:1.1 2:1.2 1:1.1",
        units(batch(0, 1, 10), batch(1, 1, 10), batch(2, 1, 10), batch(1, 1, 16)));
    // the first that had it
    assertEquals("0:1.0 0:1.1 0:1.0", units(batch(0, 1, 10), batch(0, 1, 12), batch(0, 1, 30)));
  }

  @Test
  void aCleanOneComesBeforeOneOfAnotherCoffee() {
    assertEquals("0:1.0 1:1.1", units(batch(0, 1, 10), batch(1, 1, 30)));
    assertEquals("0:1.0 1:1.1 0:1.0", units(batch(0, 1, 10), batch(1, 1, 20), batch(0, 1, 30)));
    // the third coffee finds one clean, the fourth none and takes the first
    assertEquals(
        "0:1.0 1:1.1 2:1.2 3:1.0",
        units(batch(0, 1, 10), batch(1, 1, 20), batch(2, 1, 30), batch(3, 1, 40)));
  }

  /** Ready at 15, free at 16; a minute before it is not. */
  @Test
  void onlyWhatIsFreeIsTaken() {
    assertEquals("0:1.0 0:1.1", units(batch(0, 1, 10), batch(0, 1, 15)));
    assertEquals("0:1.0 0:1.0", units(batch(0, 1, 10), batch(0, 1, 16)));
    assertEquals("0:1.0", units(batch(0, 1, -500)));
  }

  @Test
  void eachKindHasItsOwn() {
    assertEquals("0:0.0 0:1.0 0:0.0", units(batch(0, 0, 10), batch(0, 1, 10), batch(0, 0, 16)));
    assertEquals("0:0.0 0:0.0 0:0.1", units(batch(0, 0, 10), batch(0, 0, 20), batch(0, 0, 24)));
  }

  /** A slow kind's batch is placed by when it is ready, but starts before. */
  @Test
  void startsDecide() {
    assertEquals("1:1.0 0:1.1", units(batch(0, 1, 12), batch(1, 1, 10)));
    assertEquals("0:1.0 1:1.1", units(batch(0, 1, 10), batch(1, 1, 12)));
  }
}
