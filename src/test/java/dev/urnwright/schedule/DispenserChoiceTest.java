package dev.urnwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Dispenser;
import dev.urnwright.plan.Events;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import dev.urnwright.schedule.DispenserChoice.Pace;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which dispensers serve a group, and which brewer brews the next batch. */
class DispenserChoiceTest {
  private static final Dispenser AIRPOT = Events.dispenser("Airpot", 4, 2.2, 40);
  private static final Dispenser URN = Events.dispenser("Urn", 1, 10, 100);

  @Test
  void theHeelCannotBeDrawn() {
    // 2.16 l can be drawn of 2.2 l
    assertEquals(1, take(choice(AIRPOT), 2.16).fills());
    assertEquals(2, take(choice(AIRPOT), 2.17).fills());
    assertEquals(2, take(choice(AIRPOT), 4.32).fills());
  }

  @Test
  void aLittleIsKeptFreeForRounding() {
    Volume slack = Volume.ofMillilitres(10);
    Chosen chosen = choice(AIRPOT).take(Volume.ofLitres(2.155), slack, Optional.empty()).get();
    assertEquals(2, chosen.fills());
  }

  @Test
  void theFewestFillsThenTheLeastLeftEmpty() {
    assertEquals(URN, take(choice(AIRPOT, URN), 5).dispenser());
    assertEquals(AIRPOT, take(choice(AIRPOT, URN), 2).dispenser());
  }

  @Test
  void aKindThatIsTakenIsNotTakenAgainWhileAnotherIsFree() {
    DispenserChoice choice = choice(AIRPOT, URN);
    assertEquals(URN, take(choice, 8).dispenser());
    Chosen second = take(choice, 8);
    assertEquals(AIRPOT, second.dispenser());
    assertEquals(4, second.fills());
    assertEquals(Map.of(), choice.refilled());
    take(choice, 8);
    assertEquals(Map.of(URN, 2), choice.refilled());
  }

  @Test
  void sideBySideAllAreEmptiedTogether() {
    // 2.16 l can be drawn of 2.2 l; as many fills as make whole rounds, the fewest that do
    assertEquals(chosen(AIRPOT, 3, 3), sideBySide(2, new Pace(1, 3, 4)));
    assertEquals(chosen(AIRPOT, 4, 4), sideBySide(8.6, new Pace(1, 3, 4)));
    assertEquals(chosen(AIRPOT, 6, 3), sideBySide(8.7, new Pace(1, 3, 4)));
    assertEquals(chosen(AIRPOT, 6, 2), sideBySide(8.7, new Pace(1, 2, 4)));
    assertEquals(chosen(AIRPOT, 5, 1), sideBySide(8.7, new Pace(1, 1, 4)));
    // five side by side would be five fills, but are more than twice the two that are needed
    assertEquals(chosen(AIRPOT, 6, 2), sideBySide(8.7, new Pace(1, 2, 5)));
    // three rounds by the hold
    assertEquals(chosen(AIRPOT, 6, 2), sideBySide(2, new Pace(3, 2, 4)));
    // seven are wanted, and there are four
    assertEquals(chosen(AIRPOT, 4, 4), sideBySide(2, new Pace(1, 7, 4)));
  }

  @Test
  void aKindWithEnoughSideBySideComesFirst() {
    Chosen chosen =
        choice(AIRPOT, URN)
            .take(
                Volume.ofLitres(5),
                Volume.ofLitres(0),
                Optional.empty(),
                kind -> Optional.of(new Pace(1, 3, kind.count())))
            .orElseThrow();
    assertEquals(chosen(AIRPOT, 3, 3), chosen);
    // all four are just enough
    assertEquals(
        chosen(AIRPOT, 4, 4),
        choice(AIRPOT, URN)
            .take(
                Volume.ofLitres(5),
                Volume.ofLitres(0),
                Optional.empty(),
                kind -> Optional.of(new Pace(1, 4, kind.count())))
            .orElseThrow());
  }

  private static Chosen chosen(Dispenser kind, int fills, int taps) {
    return new Chosen(kind, fills, taps);
  }

  private static Chosen sideBySide(double litres, Pace pace) {
    return DispenserChoice.of(AIRPOT, Volume.ofLitres(litres), Volume.ofLitres(0), pace)
        .orElseThrow();
  }

  @Test
  void aWishIsHeard() {
    Volume none = Volume.ofLitres(0);
    Volume much = Volume.ofLitres(5);
    assertEquals(
        AIRPOT, choice(AIRPOT, URN).take(much, none, Optional.of("Airpot")).get().dispenser());
    assertTrue(choice(AIRPOT, URN).take(much, none, Optional.of("Carafe")).isEmpty());
  }

  @Test
  void aDispenserAllHeelServesNobody() {
    Dispenser shallow = Events.dispenser("Shallow", 3, 0.05, 40);
    Volume slack = Volume.ofMillilitres(10);
    assertTrue(choice(shallow).take(Volume.ofLitres(1), slack, Optional.empty()).isEmpty());
  }

  @Test
  void batchesGoToTheBrewerThatIsDoneFirst() {
    Brewer twin = Events.brewer("Twin", 2, 0, 500, 6);
    Brewer single = Events.brewer("Single", 1, 0, 500, 6);
    BrewerQueue queue = new BrewerQueue(List.of(twin, single));
    List<Brewer> any = List.of(twin, single);
    assertEquals("Twin 1", queue.next(any).label());
    assertEquals("Twin 2", queue.next(any).label());
    assertEquals("Single", queue.next(any).label());
    assertEquals("Twin 1", queue.next(any).label());
    assertEquals("Single", queue.next(List.of(single)).label());
    assertEquals("Twin 2", queue.next(any).label());
    List<Brewer> none = List.of(Events.brewer("Other", 1, 0, 500, 6));
    assertThrows(IllegalArgumentException.class, () -> queue.next(none));
  }

  private static DispenserChoice choice(Dispenser... kinds) {
    return new DispenserChoice(List.of(kinds));
  }

  private static Chosen take(DispenserChoice choice, double litres) {
    return choice.take(Volume.ofLitres(litres), Volume.ofLitres(0), Optional.empty()).orElseThrow();
  }
}
