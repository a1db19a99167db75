package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.wording.Saying;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How long each thing takes of one person, in the event of {@link HandworkTest}. */
class HandTimesTest {
  @TempDir Path folder;

  /** The way is 4 min each, filling 3, cleaning 8, reloading 2; the rest is the trade's habit. */
  @Test
  void howLongEachTakes() throws IOException {
    HandTimes times = times(HandworkTest.EVENT);
    Optional<String> hall = Optional.of("Hall");
    assertEquals(2, times.before(ActionKind.START));
    assertEquals(0, times.before(ActionKind.FILL));
    assertEquals(2, minutes(times, ActionKind.GRIND, "coffee-1", 1));
    assertEquals(0, minutes(times, ActionKind.RINSE, "coffee-1", 1));
    assertEquals(1, minutes(times, ActionKind.START, "coffee-1", 1));
    assertEquals(1, minutes(times, ActionKind.PREHEAT, "coffee-F1", 1));
    assertEquals(1, minutes(times, ActionKind.SWITCH_ON, "Tall", 1));
    assertEquals(3, minutes(times, ActionKind.SWITCH_ON, "Boiler", 1));
    assertEquals(3, minutes(times, ActionKind.FILL, "coffee-F1", 1));
    assertEquals(8, times.minutes(action(ActionKind.CARRY, "coffee-F1"), hall, 2));
    assertEquals(24, times.minutes(action(ActionKind.COLLECT, "coffee-F1"), hall, 2));
    assertEquals(10, times.minutes(action(ActionKind.DISCARD, "coffee-F1"), hall, 2));
    assertEquals(
        "Hands are counted with 2 min to weigh and grind, 1 min to start a brewer, preheat a"
            + " dispenser or pour away, 3 min to fill a heater, what the run counts to reload a"
            + " brewer, to fill and to clean a dispenser, and the way there and back, with 2"
            + " dispensers at once.",
        times.saying().toString());
  }

  /** A brewer has its number, and a heater may be called after it. */
  @Test
  void whatIsABrewerAndWhatAHeater() throws IOException {
    HandTimes times =
        times(
            HandworkTest.EVENT
                .replace("{name: Tall,", "{name: Tall, count: 2,")
                .replace("name: Boiler", "name: Tall boiler"));
    assertEquals(1, minutes(times, ActionKind.SWITCH_ON, "Tall 1", 1));
    assertEquals(1, minutes(times, ActionKind.SWITCH_ON, "Tall 2", 1));
    assertEquals(3, minutes(times, ActionKind.SWITCH_ON, "Tall boiler", 1));
  }

  private static int minutes(HandTimes times, ActionKind kind, String what, int together) {
    return times.minutes(action(kind, what), Optional.empty(), together);
  }

  private HandTimes times(String event) throws IOException {
    return new HandTimes(new Written(folder).event(event));
  }

  private static Action action(ActionKind kind, String what) {
    return new Action(
        LocalDate.of(2027, 4, 17).atTime(10, 0), kind, what, "there", Saying.of("how.warm-up"));
  }
}
