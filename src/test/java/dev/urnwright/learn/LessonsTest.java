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
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Learned;
import dev.urnwright.event.Note;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.plan.Source;
import dev.urnwright.plan.StrengthAccount;
import dev.urnwright.quantity.Share;
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
                      .fit(STARTING, List.of(brew(60, 900, Optional.of(756.0), thrice(1.50))))),
              Map.of());

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
        "Coffee house: 1\u00a0batch in the journal moves what the grounds keep from 2.15\u00a0g/g to"
            + " 2.37\u00a0g/g (2.11\u00a0g/g to 2.62\u00a0g/g).",
        notes.get(0));
    assertTrue(notes.get(1).contains("at 1:15.0 from 19.4\u00a0% to 18.9\u00a0% ("), notes.get(1));
  }

  @Test
  void aGroupHasTheCupsThatWereLearned() {
    GuestFit fit =
        new GuestFit(
            new Learned<>(0.9, 0.8, 0.6, 1.0, 3),
            new Learned<>(
                Share.ofPercent(60),
                Share.ofPercent(50),
                Share.ofPercent(40),
                Share.ofPercent(60),
                3),
            List.of());
    Event event = new Lessons(DISPLAY).into(EVENT, Map.of(), Map.of("Group", fit));
    GuestGroup.Guests now = event.groups().get(0).guests();
    assertEquals(50, now.drinkers().percent(), 1e-9);
    assertEquals(0.8 / 0.5, now.cupsEach(), 1e-9); // so that 40 guests take 40 × 0.8 = 32 cups
    String note = event.defaults().get(event.defaults().size() - 1).text();
    assertTrue(
        note.contains("from 0.90 to 0.80 (0.60 to 1.00), and the cups to expect from 36 to 32"),
        note);
  }

  /**
   * The interval of 95 % is one of two standard uncertainties: 2.776445 / √116 / 2 = 0.1289 g/g.
   */
  @Test
  void howSureItIsGoesIntoTheBudget() {
    Plan plan = new Planner().plan(TAUGHT).value().orElseThrow();
    StrengthAccount account = plan.certainty().of(plan.coffees().get(0));
    StrengthAccount.Entry learned =
        account.entries().stream()
            .filter(entry -> entry.source() == Source.ABSORPTION_LEARNED)
            .findFirst()
            .orElseThrow();
    assertEquals(0.1289, learned.amount(), 5e-5);
    // 1.25 % = E / (R − a), so 0.1289 g/g of a are T · 0.1289 / (R − a) of the concentrate, and the
    // same part of the cup
    double ratio = plan.coffees().get(0).needed().brew().ratio().gramsPerGram();
    double kept = plan.brewing(plan.coffees().get(0)).absorption().gramsPerGram();
    double cup = account.cup().strength().fraction();
    assertEquals(
        cup * 0.1289 / (ratio - kept), learned.contribution().fraction(), 0.02 * 0.1289 / ratio);
    assertTrue(account.entries().stream().anyMatch(e -> e.source() == Source.EXTRACTION_LEARNED));
  }

  @Test
  void aCoffeeWithoutALessonStays() {
    Fit nothing = new BrewFitter(DISPLAY).fit(STARTING, List.of());
    Event same = new Lessons(DISPLAY).into(EVENT, Map.of("house", nothing), Map.of());
    assertSame(EVENT.coffee("house"), same.coffee("house"));
    assertEquals(EVENT.defaults(), same.defaults());
  }
}
