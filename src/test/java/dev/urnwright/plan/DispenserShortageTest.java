package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.plan.DispenserShortage.Out;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** When most dispensers of a kind are out, and where. */
class DispenserShortageTest {
  private static final Dispenser POT = Events.dispenser("Pot", 1, 2, 0);

  private static final List<GroupNeed> NEEDS = needs(13);

  /** One that is clean at 600 can be filled at 600. */
  @Test
  void oneAfterTheOtherIsNoShortage() {
    DispenserShortage none = DispenserShortage.of(POT, List.of(out(0, 590, 600), out(1, 600, 610)));
    assertEquals(1, none.needed());
    assertEquals(0, none.more());
    assertEquals(590, none.minute());
    assertEquals(List.of(out(0, 590, 600)), none.out());
  }

  /** Three from 605 on, when one has just come back, and three again later. */
  @Test
  void theFirstOfTheBusiestMinutesIsTold() {
    List<Out> uses =
        List.of(
            out(0, 600, 610),
            out(1, 600, 605),
            out(2, 605, 610),
            out(3, 605, 615),
            out(4, 620, 630),
            out(5, 625, 630),
            out(6, 625, 630));
    DispenserShortage shortage = DispenserShortage.of(POT, uses);
    assertEquals(3, shortage.needed());
    assertEquals(2, shortage.more());
    assertEquals(605, shortage.minute());
    assertEquals(List.of(uses.get(0), uses.get(2), uses.get(3)), shortage.out());
  }

  /** Twelve groups are named, and how many are out for others. */
  @Test
  void manyGroups() {
    List<Out> uses = new ArrayList<>();
    IntStream.range(0, 12).forEach(group -> uses.add(out(group, 600, 610)));
    String twelve = DispenserShortage.of(POT, uses).problem("").wrong();
    assertTrue(twelve.endsWith(", 1 for 'G12' (Coffee house) from 10:00 to 10:10"), twelve);
    uses.add(out(12, 600, 610));
    uses.add(out(12, 600, 620));
    String more = DispenserShortage.of(POT, uses).problem("").wrong();
    assertTrue(more.startsWith("the run needs 14 of Pot at once at 10:00"), more);
    assertTrue(
        more.endsWith(", 1 for 'G12' (Coffee house) from 10:00 to 10:10, 2 for others"), more);
  }

  private static Out out(int group, int from, int until) {
    return new Out(NEEDS.get(group), from, until);
  }

  private static List<GroupNeed> needs(int groups) {
    GuestGroup[] all =
        IntStream.rangeClosed(1, groups)
            .mapToObj(number -> Events.group("G" + number, 10, 200, 1.3))
            .toArray(GuestGroup[]::new);
    Event event = Events.simple(Events.ratio(13), all);
    return event.groups().stream()
        .map(group -> GroupNeed.of(event, group, group.coffees().get(0)))
        .toList();
  }
}
