package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import org.junit.jupiter.api.Test;

/** Whatever a valid event asks for, the answer is a plan or reasons, never an exception. */
class NothingEscapesTest {
  private static final int EVENTS = RandomEvents.count(400);

  @Test
  void atTheEndsOfAllRanges() {
    int planned = 0;
    for (long seed = 0; seed < EVENTS; seed++) {
      if (isPlanned(seed, RandomEvents.wild(seed))) {
        planned++;
      }
    }
    assertTrue(planned >= EVENTS / 80, "some of the wild events can be planned: " + planned);
  }

  @Test
  void saneEventsAreMostlyPlanned() {
    int planned = 0;
    for (long seed = 0; seed < EVENTS; seed++) {
      if (isPlanned(seed, RandomEvents.sane(seed))) {
        planned++;
      }
    }
    assertTrue(planned > EVENTS / 3, "sane events can be planned: " + planned);
  }

  private static boolean isPlanned(long seed, Event event) {
    Checked<Plan> plan;
    try {
      plan = new Planner().plan(event);
    } catch (RuntimeException e) {
      throw new AssertionError("event of seed " + seed + ": " + event, e);
    }
    for (Problem problem : plan.problems()) {
      String text = problem.toString();
      assertFalse(text.endsWith("."), text);
      assertFalse(text.contains("NaN") || text.contains("null") || text.contains("Infinity"), text);
      assertFalse(problem.expected().isBlank(), text);
    }
    return plan.value().isPresent();
  }
}
