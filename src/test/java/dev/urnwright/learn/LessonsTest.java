package dev.urnwright.learn;

import static dev.urnwright.learn.Journals.DISPLAY;
import static dev.urnwright.learn.Journals.brew;
import static dev.urnwright.learn.Journals.thrice;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.ConcentrateWish;
import dev.urnwright.event.Event;
import dev.urnwright.event.Note;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LessonsTest {
  private static final Event EVENT =
      Events.simple(new ConcentrateWish.AsReference(), Events.group("Group", 40, 200, 1.3));

  /** The reference keeps (960 − 831) / 60 = 2.15 g/g and extracts 1.40 % × 831 / 60 = 19.39 %. */
  private static final Starting STARTING =
      Starting.of(EVENT.coffee("house").profile()).orElseThrow();

  private static final Event TAUGHT =
      new Lessons(DISPLAY)
          .into(
              EVENT,
              Map.of(
                  "house",
                  new BrewFitter(DISPLAY)
                      .fit(STARTING, List.of(brew(60, 900, Optional.of(756.0), thrice(1.50))))));

  @Test
  void theProfileHasWhatWasLearned() {
    BrewProfile now = TAUGHT.coffee("house").profile();
    // (900 − 756) / 60 = 2.4; (16 × 2.15 + 100 × 2.4) / 116 = 2.365517
    assertEquals(2.365517, now.absorption().orElseThrow().gramsPerGram(), 1e-6);
    // 1.50 % × 756 / 60 = 18.90 %; of 0.49 points less 0.9 count: 18.949 %, at both ratios
    assertEquals(
        List.of(15.0, 16.0), now.measured().stream().map(m -> m.ratio().gramsPerGram()).toList());
    now.measured().forEach(m -> assertEquals(18.949, m.extraction().percent(), 1e-6));
  }

  @Test
  void thePlannerBrewsByIt() {
    Plan plan = new Planner().plan(TAUGHT).value().orElseThrow();
    CoffeePlan coffee = plan.coffees().get(0);
    assertEquals(2.365517, plan.brewing(coffee).absorption().gramsPerGram(), 1e-6);
    assertEquals(
        18.949,
        plan.brewing(coffee).curve().at(STARTING.curve().knots().get(0).ratio()).percent(),
        1e-6);
    // and before it, by what the file says: both read a profile alike
    Plan before = new Planner().plan(EVENT).value().orElseThrow();
    assertEquals(STARTING.absorption(), before.brewing(before.coffees().get(0)).absorption());
    assertEquals(STARTING.curve().knots(), before.brewing(before.coffees().get(0)).curve().knots());
  }

  @Test
  void notesSayByHowMuchItMoved() {
    List<String> notes =
        TAUGHT.defaults().stream()
            .filter(note -> note.code().equals(Lessons.NOTE))
            .map(Note::text)
            .toList();
    assertEquals(2, notes.size());
    // 2.776445 / √116 = 0.26
    assertEquals(
        "Coffee house: by the journal's one batch the grounds keep 2.37\u00a0g/g (2.11\u00a0g/g to"
            + " 2.62\u00a0g/g), 0.22\u00a0g/g more than without it",
        notes.get(0));
    assertTrue(notes.get(1).contains("at 1:15.0 is 18.9\u00a0% ("), notes.get(1));
    assertTrue(notes.get(1).endsWith("0.4\u00a0% less than without it"), notes.get(1));
  }

  @Test
  void aCoffeeWithoutALessonStays() {
    Fit nothing = new BrewFitter(DISPLAY).fit(STARTING, List.of());
    Event same = new Lessons(DISPLAY).into(EVENT, Map.of("house", nothing));
    assertSame(EVENT.coffee("house"), same.coffee("house"));
    assertEquals(EVENT.defaults(), same.defaults());
  }
}
