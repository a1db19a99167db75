package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.Doubt;
import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Measured;
import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.ConcentrateWish;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Learned;
import dev.urnwright.event.Note;
import dev.urnwright.event.Provision;
import dev.urnwright.event.Taught;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.event.Uncertainties;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the user knows of a coffee and of the day: at the limits of what can be. */
class KnownOfACoffeeTest {
  private static final List<Measured> NO_POINTS = List.of();

  /** From 1:1 to 1:200, both included. */
  @Test
  void aReferenceHasAnOrdinaryRatio() {
    assertFine(reference(Method.PERCOLATION, 0, 60, 60, 20, 1));
    assertWrong(reference(Method.PERCOLATION, 0, 60, 59.9, 20, 1), "for 60");
    assertFine(reference(Method.PERCOLATION, 0, 5, 1000, 960, 0.1));
    assertWrong(reference(Method.PERCOLATION, 0, 5, 1000.1, 960, 0.1), "1 to 200");
  }

  /** 5 % of 960 g are steam: 912 g can leave, and 60 g keep no more than 600 of them. */
  @Test
  void aReferenceGivesWhatSteamAndGroundsLeave() {
    assertFine(reference(Method.PERCOLATION, 5, 60, 960, 912, 1));
    assertWrong(reference(Method.PERCOLATION, 5, 60, 960, 912.1, 1), "912\u00a0g of water left");
    assertFine(reference(Method.PERCOLATION, 5, 60, 960, 312, 1));
    assertWrong(reference(Method.PERCOLATION, 5, 60, 960, 311.9, 1), "312\u00a0g or more");
  }

  /** Dripped: 800 g of 7.5 % hold 60 g, all of the dose. */
  @Test
  void aDripDissolvesNoMoreThanItsDose() {
    assertFine(reference(Method.PERCOLATION, 0, 60, 960, 800, 7.5));
    assertWrong(reference(Method.PERCOLATION, 0, 60, 960, 800, 7.51), "below 7.50");
  }

  /**
   * Steeped, 50 g in 950 g of water and themselves are 1000 g of 5 %: all of the dose, whatever was
   * poured off; and if 5 % of 1000 g went as steam, the same.
   */
  @Test
  void aSteepDissolvesNoMoreThanItsDose() {
    assertFine(reference(Method.IMMERSION, 0, 50, 950, 700, 5));
    assertWrong(reference(Method.IMMERSION, 0, 50, 950, 700, 5.01), "below 5.00");
    assertFine(reference(Method.IMMERSION, 5, 50, 1000, 700, 4.99));
    assertWrong(reference(Method.IMMERSION, 5, 50, 1000, 700, 5.01), "below 5.00");
  }

  /** Half of the water may go as steam, but no more. */
  @Test
  void halfASteamKettleIsNoBrew() {
    assertTrue(model(profile(Method.PERCOLATION, Optional.empty(), 50)).isPresent());
    Event event = event(profile(Method.PERCOLATION, Optional.empty(), 50.1));
    Findings findings = new Findings(event);
    assertTrue(CoffeeModel.read(event.coffees().get(0), findings).isEmpty());
    assertTrue(findings.problems().get(0).toString().contains("leaves no brew"));
  }

  /** Unweighed, the grounds are taken to keep 2.1 or 3 g/g; at so little water nothing is left. */
  @Test
  void aReferenceWithoutEnoughWaterIsRefused() {
    assertTrue(
        CoffeeModel.read(coffee(unweighed(2.11, 0)), findings(unweighed(2.11, 0))).isPresent());
    assertDry(unweighed(2.1, 0));
    // with a tenth lost as steam it takes 2.1 / 0.9 = 2.333
    assertTrue(
        CoffeeModel.read(coffee(unweighed(2.35, 10)), findings(unweighed(2.35, 10))).isPresent());
    assertDry(unweighed(2.33, 10));
  }

  /** Unweighed, but they are said to keep 3 g/g. */
  @Test
  void aReferenceWithoutEnoughWaterForWhatIsSaid() {
    assertDry(keeping(3, unweighed(3, 0).reference().orElseThrow()));
    assertTrue(model(keeping(3, unweighed(3.01, 0).reference().orElseThrow())).isPresent());
  }

  /**
   * Whoever writes the usual 2.1 g/g has hardly weighed it, but whoever also weighed a reference,
   * which kept 2.15, means it.
   */
  @Test
  void theUsualAbsorptionIsHardlyMeasured() {
    ReferenceBrew unweighed = unweighed(16, 0).reference().orElseThrow();
    assertEquals(Optional.empty(), given(keeping(2.1, unweighed)));
    assertEquals(Optional.of(2.2), given(keeping(2.2, unweighed)));
    assertEquals(Optional.of(2.1), given(keeping(2.1, Events.REFERENCE)));
    assertEquals(
        2.1,
        model(keeping(2.1, Events.REFERENCE)).orElseThrow().brewing().absorption().gramsPerGram());
  }

  private static Optional<Double> given(BrewProfile profile) {
    return model(profile)
        .orElseThrow()
        .evidence()
        .absorption()
        .given()
        .map(Absorption::gramsPerGram);
  }

  private static BrewProfile keeping(double gramsPerGram, ReferenceBrew reference) {
    return new BrewProfile(
        Method.PERCOLATION,
        Optional.of(reference),
        Optional.empty(),
        Optional.of(Absorption.ofGramsPerGram(gramsPerGram)),
        NO_POINTS,
        Share.ofPercent(0));
  }

  /** That another was weighed is told to whoever gave one, not to whoever learned it. */
  @Test
  void whatWasLearnedIsNoContradiction() {
    BrewProfile both = keeping(2.5, Events.REFERENCE);
    assertEquals(List.of("absorption-given"), codes(both));
    Event told = event(both);
    Absorption kept = Absorption.ofGramsPerGram(2.5);
    Event taught =
        told.taught(
            told.coffees(),
            told.groups(),
            List.of(),
            new Taught(
                List.of(
                    new Taught.Brewing(
                        "house", Optional.of(new Learned<>(kept, kept, kept, kept, 9)), List.of())),
                List.of()));
    Findings findings = new Findings(taught);
    assertTrue(CoffeeModel.read(taught.coffees().get(0), findings).isPresent());
    assertEquals(List.of(), findings.notes());
  }

  private static void assertDry(BrewProfile profile) {
    Findings findings = findings(profile);
    assertTrue(CoffeeModel.read(coffee(profile), findings).isEmpty());
    assertTrue(
        findings.problems().get(0).toString().contains("too little water"),
        findings.problems().toString());
  }

  private static BrewProfile unweighed(double ratio, double steamPercent) {
    return profile(
        Method.PERCOLATION,
        Optional.of(
            new ReferenceBrew(
                Mass.ofGrams(100), Mass.ofGrams(100 * ratio), Optional.empty(), percent(0.5))),
        steamPercent);
  }

  /** Every assumption is told, and nothing that was known. */
  @Test
  void whatIsAssumedIsTold() {
    assertEquals(
        List.of("absorption-assumed", "extraction-assumed"),
        codes(profile(Method.PERCOLATION, Optional.empty(), 0)));
    assertEquals(
        List.of("absorption-assumed"),
        codes(with(Optional.of(Extraction.ofPercent(19)), Optional.empty(), NO_POINTS)));
    assertEquals(
        List.of("extraction-assumed"),
        codes(with(Optional.empty(), Optional.of(Absorption.ofGramsPerGram(2)), NO_POINTS)));
    assertEquals(
        List.of("absorption-assumed"),
        codes(
            with(
                Optional.empty(),
                Optional.empty(),
                List.of(new Measured(BrewRatio.ofGramsPerGram(14), Extraction.ofPercent(19))))));
    assertEquals(List.of(), codes(profile(Method.PERCOLATION, Optional.of(Events.REFERENCE), 0)));
    BrewProfile both =
        new BrewProfile(
            Method.PERCOLATION,
            Optional.of(Events.REFERENCE),
            Optional.empty(),
            Optional.of(Absorption.ofGramsPerGram(2.5)),
            List.of(),
            Share.ofPercent(0));
    assertEquals(List.of("absorption-given"), codes(both));
    // the given one is planned with, the weighed one explains the reference
    assertEquals(2.5, model(both).orElseThrow().brewing().absorption().gramsPerGram());
    assertEquals(16, model(both).orElseThrow().reference().orElseThrow().gramsPerGram(), 1e-12);
  }

  /** Published ranges taken as evenly likely: a width over √12, a half-width over √3. */
  @Test
  void doubtsOfWhatIsAssumed() {
    Uncertainties usual = Uncertainties.usual(Mass.ofGrams(5));
    Doubts drip = new Doubts(usual, BrewMethod.PERCOLATION, Optional.empty());
    Doubts steep = new Doubts(usual, BrewMethod.IMMERSION, Optional.empty());
    assertEquals(0.85 / 3.4641016, drip.applyAsDouble(Doubt.ABSORPTION_ASSUMED), 1e-8);
    assertEquals(0.5 / 1.7320508, steep.applyAsDouble(Doubt.ABSORPTION_ASSUMED), 1e-8);
    assertEquals(0.04 / 3.4641016, steep.applyAsDouble(Doubt.EXTRACTION_ASSUMED), 1e-9);
    assertEquals(usual.refractometer().fraction(), drip.applyAsDouble(Doubt.READING));
    assertEquals(usual.scales().reference().grams(), drip.applyAsDouble(Doubt.REFERENCE_BEVERAGE));
    assertEquals(usual.scales().kitchen().grams(), drip.applyAsDouble(Doubt.BYPASS));
  }

  /**
   * An interval of 95 % is four standard uncertainties wide: from 2.0 to 2.4 g/g, 0.1; from 18 to
   * 20 %, half a percent, where another ratio is surer. Nothing learned, no doubt of that kind.
   */
  @Test
  void doubtsOfWhatIsLearned() {
    Uncertainties usual = Uncertainties.usual(Mass.ofGrams(5));
    Taught.Brewing brewing =
        new Taught.Brewing(
            "house",
            Optional.of(
                new Learned<>(
                    Absorption.ofGramsPerGram(2.1),
                    Absorption.ofGramsPerGram(2.2),
                    Absorption.ofGramsPerGram(2.0),
                    Absorption.ofGramsPerGram(2.4),
                    9)),
            List.of(extracted(13, 18, 20), extracted(16, 18.5, 19.5)));
    Doubts learned = new Doubts(usual, BrewMethod.PERCOLATION, Optional.of(brewing));
    assertEquals(0.1, learned.applyAsDouble(Doubt.ABSORPTION_LEARNED), 1e-12);
    assertEquals(0.005, learned.applyAsDouble(Doubt.EXTRACTION_LEARNED), 1e-12);
    Doubts told = new Doubts(usual, BrewMethod.PERCOLATION, Optional.empty());
    assertEquals(0, told.applyAsDouble(Doubt.ABSORPTION_LEARNED));
    assertEquals(0, told.applyAsDouble(Doubt.EXTRACTION_LEARNED));
  }

  private static Taught.Extracted extracted(double ratio, double low, double high) {
    return new Taught.Extracted(
        BrewRatio.ofGramsPerGram(ratio),
        new Learned<>(
            Extraction.ofPercent(20),
            Extraction.ofPercent((low + high) / 2),
            Extraction.ofPercent(low),
            Extraction.ofPercent(high),
            9));
  }

  /**
   * Six groups of two coffees: five are served at once from 10:00 to 11:00, one past midnight. Four
   * dispensers are one too few, and five enough.
   */
  @Test
  void dispensersForAllThatIsServedAtOnce() {
    Optional<Problem> problem = atOnce(4, 5);
    assertTrue(problem.isPresent());
    String text = problem.get().toString();
    assertTrue(text.contains("5 coffees of groups"), text);
    assertTrue(text.contains("and 1 more"), text);
    assertTrue(text.contains("4 dispensers"), text);
    assertEquals(Optional.empty(), atOnce(5, 5));
    String four = atOnce(1, 4).orElseThrow().toString();
    assertTrue(!four.contains(" and ") && four.contains("with 1 dispenser;"), four);
    // one that ends when the next begins needs no other, past midnight too
    assertEquals(Optional.empty(), served(1, "23:00-00:30", "00:30-01:00"));
    assertTrue(served(1, "23:00-00:30", "23:59-00:10").isPresent());
    // without a window a group is due at the event's time, midnight where there is none
    assertTrue(served(1, "", "00:00-01:00").isPresent());
    assertEquals(Optional.empty(), served(1, "", "00:01-01:00"));
  }

  /** Who is done when the others begin isn't one of them. */
  @Test
  void onlyWhoIsServedThenIsNamed() {
    String text = served(1, "08:00-10:00", "10:00-11:00", "10:00-11:00").orElseThrow().toString();
    assertTrue(text.contains("'Group 1'") && text.contains("'Group 2'"), text);
    assertTrue(!text.contains("'Group 0'"), text);
  }

  private static Optional<Problem> atOnce(int dispensers, int groups) {
    List<String> windows = new ArrayList<>();
    for (int i = 0; i < groups; i++) {
      windows.add("10:00-11:00");
    }
    windows.add("23:30-00:30");
    return served(dispensers, windows.toArray(String[]::new));
  }

  private static Optional<Problem> served(int dispensers, String... windows) {
    List<GuestGroup> groups = new ArrayList<>();
    for (int i = 0; i < windows.length; i++) {
      groups.add(serve(Events.group("Group " + i, 10, 200, 1.3), windows[i]));
    }
    Event event =
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(Events.coffee("house", Events.ratio(13))),
            groups,
            Events.equipment(1, List.of(), List.of(Events.dispenser("Airpot", dispensers, 3, 0))));
    return new AtOnce(
            event,
            groups.stream()
                .map(group -> GroupNeed.of(event, group, group.coffees().get(0)))
                .toList())
        .problem();
  }

  private static GuestGroup serve(GuestGroup group, String window) {
    Optional<TimeWindow> served =
        window.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new TimeWindow(
                    LocalTime.parse(window.split("-")[0]), LocalTime.parse(window.split("-")[1])));
    return new GuestGroup(
        group.name(),
        group.guests(),
        group.cup(),
        group.strength(),
        group.coffees(),
        group.ice(),
        new GuestGroup.Service(
            served, GuestGroup.Arrivals.EVEN, Optional.empty(), Optional.empty()),
        group.location());
  }

  private static void assertFine(BrewProfile profile) {
    assertEquals(Optional.empty(), check(profile));
  }

  private static void assertWrong(BrewProfile profile, String words) {
    String text = check(profile).orElseThrow().toString();
    assertTrue(text.contains(words), text);
  }

  private static Optional<Problem> check(BrewProfile profile) {
    return new ReferenceCheck(
            coffee(profile), profile.reference().orElseThrow(), findings(profile).display())
        .problem();
  }

  private static BrewProfile reference(
      Method method, double steam, double dose, double water, double beverage, double percent) {
    return profile(
        method,
        Optional.of(
            new ReferenceBrew(
                Mass.ofGrams(dose),
                Mass.ofGrams(water),
                Optional.of(Mass.ofGrams(beverage)),
                percent(percent))),
        steam);
  }

  private static BrewProfile profile(
      Method method, Optional<ReferenceBrew> reference, double steamPercent) {
    return new BrewProfile(
        method,
        reference,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Share.ofPercent(steamPercent));
  }

  private static BrewProfile with(
      Optional<Extraction> extraction, Optional<Absorption> absorption, List<Measured> points) {
    return new BrewProfile(
        Method.PERCOLATION, Optional.empty(), extraction, absorption, points, Share.ofPercent(0));
  }

  private static Coffee coffee(BrewProfile profile) {
    return Events.coffee("house", new ConcentrateWish.AsReference(), profile);
  }

  private static Event event(BrewProfile profile) {
    return Events.event(
        Events.serving(new Provision.Mean(), 0),
        List.of(coffee(profile)),
        List.of(Events.group("Crew", 10, 200, 1.3)),
        Events.equipment(1, List.of(), List.of()));
  }

  private static Findings findings(BrewProfile profile) {
    return new Findings(event(profile));
  }

  private static Optional<CoffeeModel> model(BrewProfile profile) {
    return CoffeeModel.read(coffee(profile), findings(profile));
  }

  private static List<String> codes(BrewProfile profile) {
    Findings findings = findings(profile);
    assertTrue(CoffeeModel.read(coffee(profile), findings).isPresent());
    return findings.notes().stream().map(Note::code).toList();
  }

  private static Strength percent(double percent) {
    return Strength.ofPercent(percent);
  }
}
