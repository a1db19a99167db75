package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.schedule.RunSolution.Proof;
import dev.urnwright.schedule.RunSolution.TimedBatch;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Batches on a clock, as they are listed. */
class RunSolutionTest {
  @Test
  void batchesAreListedAsTheyAreReady() {
    TimedBatch first = new TimedBatch(0, 1, 1, 5, 10, 15, 50);
    TimedBatch slower = new TimedBatch(1, 0, 0, 5, 10, 20, 50);
    TimedBatch quicker = new TimedBatch(0, 1, 0, 5, 15, 20, 50);
    TimedBatch next = new TimedBatch(0, 1, 1, 5, 15, 20, 50);
    Proof proof = new Proof(true, true, 0);
    assertEquals(
        List.of(first, slower, quicker, next),
        new RunSolution(List.of(next, quicker, slower, first), 0, proof).batches());
  }

  @Test
  void anotherDoseIsAllThatChanges() {
    assertEquals(
        new TimedBatch(1, 2, 3, 7, 10, 15, 50), new TimedBatch(1, 2, 3, 4, 10, 15, 50).withDose(7));
  }
}
