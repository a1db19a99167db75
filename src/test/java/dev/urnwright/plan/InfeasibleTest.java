package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.BrewProfile;
import dev.urnwright.event.BrewProfile.Method;
import dev.urnwright.event.BrewProfile.ReferenceBrew;
import dev.urnwright.event.Brewer;
import dev.urnwright.event.Coffee;
import dev.urnwright.event.ConcentrateWish;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Provision;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Absorption;
import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Volume;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What can't be done is refused by name with a figure, and the figure is right: whoever follows it
 * gets a plan, and whoever just misses it does not.
 *
 * <p>The reference extracts 1.40 % × 831 / 60 = 19.39 % and keeps (960 − 831) / 60 = 2.15 g/g, so
 * at 1:13 it is 19.39 / 10.85 = 1.787 % strong.
 */
class InfeasibleTest {
  @Test
  void aGroupStrongerThanTheConcentrate() {
    Problem problem = refused(strong(13, 1.90));
    assertNames(problem, "'Crew'", "1.90\u00a0%", "1.79\u00a0%");
    double ratio = number(problem, "brew it at 1:([0-9.]+) or stronger");
    assertEquals(12.3, ratio, 1e-9); // 19.39 / 1.90 + 2.15 = 12.355
    assertPlanned(strong(ratio, 1.90));
    assertPlanned(strong(ratio - 1, 1.90));
    assertRefused(strong(ratio + 0.1, 1.90));
    double most = number(problem, "at most ([0-9.]+)\u00a0%");
    assertEquals(1.78, most, 1e-9);
    assertPlanned(strong(13, most));
    assertRefused(strong(13, most + 0.01));
    // the strength that the advice promises can be asked for too
    double gives = number(problem, "which gives ([0-9.]+)\u00a0%");
    assertEquals(1.90, gives, 1e-9);
    assertPlanned(
        Events.simple(
            new ConcentrateWish.ByStrength(Strength.ofPercent(gives)),
            Events.group("Crew", 40, 240, 1.90)));
  }

  @Test
  void everyGroupThatIsTooStrongIsNamed() {
    Event event =
        Events.simple(
            Events.ratio(13),
            Events.group("Crew", 40, 240, 1.90),
            Events.group("Guests", 40, 240, 1.30),
            Events.group("Band", 40, 240, 2.10));
    List<Problem> problems = new Planner().plan(event).problems();
    assertEquals(2, problems.size());
    assertNames(problems.get(0), "'Crew'");
    assertNames(problems.get(1), "'Band'");
  }

  @Test
  void steepedCoffeeIsOnlySoStrong() {
    // 20 % dissolved, 3 g/g kept: half a gram runs off at 1:3.5, which is 0.20 / 3.70 = 5.41 %
    Problem problem = refused(steep(new ConcentrateWish.AsReference(), 8));
    assertNames(problem, "'Crew'", "8.00\u00a0%", "5.41\u00a0%");
    double most = number(problem, "at most ([0-9.]+)\u00a0%");
    assertEquals(5.40, most, 1e-9);
    assertPlanned(steep(new ConcentrateWish.AsReference(), most));
    Problem dry = refused(steep(Events.ratio(3.0), 1.3));
    double ratio = number(dry, "a ratio of 1:([0-9.]+) or more");
    assertEquals(3.5, ratio, 1e-9);
    assertPlanned(steep(Events.ratio(ratio), 1.3));
    assertRefused(steep(Events.ratio(ratio - 0.1), 1.3));
    Problem strong = refused(steep(new ConcentrateWish.ByStrength(Strength.ofPercent(6)), 1.3));
    double strength = number(strong, "at most ([0-9.]+)\u00a0%");
    assertPlanned(steep(new ConcentrateWish.ByStrength(Strength.ofPercent(strength)), 1.3));
    assertRefused(steep(new ConcentrateWish.ByStrength(Strength.ofPercent(strength + 0.01)), 1.3));
  }

  @Test
  void iceThatOutweighsTheBypass() {
    // poured at 60 °C and served at 5: 4.186 × 55 / (333.55 + 4.186 × 60) = 39.4 % ice, but 1.30 %
    // out of 1.787 % leaves room for 27.3 % of water
    Problem problem = refused(iced(13, 60));
    // 27.3 % of 240 g
    assertNames(problem, "'Crew'", "of ice", "room for 65\u00a0g of water");
    // at 1.777 % there is room for 0.57 %, what coffee poured at 5.5 °C melts: no warmer than
    // served
    Problem hardly =
        refused(
            Events.simple(
                Events.ratio(13), Events.iced(Events.group("Crew", 9, 240, 1.777), 60, 5)));
    assertTrue(!hardly.toString().contains("pour it"), hardly.toString());
    double celsius = number(problem, "pour it at ([0-9]+)\u00a0°C or cooler");
    assertPlanned(iced(13, celsius));
    assertRefused(iced(13, celsius + 1));
    double ratio = number(problem, "brew it at 1:([0-9.]+) or stronger");
    assertPlanned(iced(ratio, 60));
    assertRefused(iced(ratio + 0.1, 60));
    double most = number(problem, "at most ([0-9.]+)\u00a0%");
    assertPlanned(
        Events.simple(Events.ratio(13), Events.iced(Events.group("Crew", 9, 240, most), 60, 5)));
  }

  @Test
  void aLeastDoseAboveTheNeed() {
    Problem problem = refused(brewed(10, Events.brewer("Large", 1, 500, 2000, 30)));
    assertNames(problem, "'Crew'", "Large", "500\u00a0g");
    double least = number(problem, "a least dose of ([0-9]+)\u00a0g or less");
    assertPlanned(brewed(10, Events.brewer("Large", 1, least, 2000, 30)));
    assertRefused(brewed(10, Events.brewer("Large", 1, least + 1, 2000, 30)));
    int cups = (int) number(problem, "about ([0-9]+) cups");
    assertPlanned(brewed(cups, Events.brewer("Large", 1, 500, 2000, 30)));
    assertRefused(brewed(cups - 2, Events.brewer("Large", 1, 500, 2000, 30)));
  }

  /**
   * 5 % dissolve and 2.1 g/g are kept: the strongest brew has 10 %, and at 1:49.7 it is 5 / 47.6 =
   * 0.105 %, at 1:60 hardly anything. Nobody's coffee has 20 %.
   */
  @Test
  void hardlyCoffeeAtAll() {
    assertEquals("ask for at most 0.10\u00a0%", refused(faint(49.7)).expected());
    assertEquals(
        "a group that is served weaker, or a coffee that extracts more",
        refused(faint(60)).expected());
  }

  private static Event faint(double ratio) {
    BrewProfile profile =
        new BrewProfile(
            Method.PERCOLATION,
            Optional.empty(),
            Optional.of(Extraction.ofPercent(5)),
            Optional.of(Absorption.ofGramsPerGram(2.1)),
            List.of(),
            Share.ofPercent(0));
    return Events.event(
        Events.serving(new Provision.Mean(), 0),
        List.of(Events.coffee("house", Events.ratio(ratio), profile)),
        List.of(Events.group("Crew", 40, 240, 20)),
        Events.equipment(1, List.of(), List.of()));
  }

  /** Three are named, and how many more there are. */
  @Test
  void whoNeedsTooLittle() {
    assertTrue(need(1).contains("group 'A' needs only"), need(1));
    assertTrue(need(3).contains("groups 'A', 'B', 'C' need only"), need(3));
    assertTrue(need(5).contains("groups 'A', 'B', 'C' and 2 more need only"), need(5));
  }

  private static String need(int groups) {
    List<GuestGroup> small =
        Stream.of("A", "B", "C", "D", "E")
            .limit(groups)
            .map(name -> Events.group(name, 1, 200, 1.3))
            .toList();
    return refused(
            Events.event(
                Events.serving(new Provision.Mean(), 0),
                List.of(Events.coffee("house", Events.ratio(13))),
                small,
                Events.equipment(1, List.of(Events.brewer("Large", 1, 500, 2000, 30)), List.of())))
        .toString();
  }

  /** Of a hundredth of a guest's cup nothing is planned, and that is said. */
  @Test
  void aCupThatHardlyAnybodyTakes() {
    GuestGroup mixed =
        Events.drinking(
            Events.group("Crew", 1, 200, 1.3),
            new GuestGroup.CoffeeShare("house", Share.ofPercent(99)),
            new GuestGroup.CoffeeShare("decaf", Share.ofPercent(1)));
    GuestGroup decaf =
        Events.drinking(
            Events.group("Band", 9, 200, 1.3),
            new GuestGroup.CoffeeShare("decaf", Share.ofPercent(100)));
    Event event =
        Events.event(
            Events.serving(new Provision.ServiceLevel(Share.ofPercent(50)), 0),
            List.of(
                Events.coffee("house", Events.ratio(13)), Events.coffee("decaf", Events.ratio(13))),
            List.of(mixed, decaf),
            Events.equipment(1, List.of(), List.of()));
    Plan plan = new Planner().plan(event).value().orElseThrow();
    assertEquals(
        List.of(
            "No cup of Decaf is planned for Crew: so few are expected that none meets the service"
                + " level."),
        Written.said("no-cups", plan));
    assertEquals(2, plan.groups().size());
  }

  @Test
  void waterTooLittleForTheLeastDose() {
    // 150 g at 1:13 take 1950 g; there are 1.5 × 998.2 = 1497 g, 9.98 times the least dose
    Brewer brewer = Events.brewer("Low tank", 1, 150, 480, 1.5);
    Problem problem = refused(brewed(60, brewer));
    assertNames(problem, "Low tank", "150\u00a0g");
    double ratio = number(problem, "a ratio of 1:([0-9.]+) or stronger");
    assertEquals(9.9, ratio, 1e-9);
    assertPlanned(brewed(60, ratio, brewer));
    assertRefused(brewed(60, ratio + 0.1, brewer));
  }

  @Test
  void aVesselTooSmallForTheLeastDose() {
    Brewer brewer = pot(150, 480, 1.5);
    Problem problem = refused(brewed(60, brewer));
    assertNames(problem, "Low pot", "1.50\u00a0l");
    double ratio = number(problem, "a ratio of 1:([0-9.]+) or stronger");
    assertPlanned(brewed(60, ratio, brewer));
    assertRefused(brewed(60, ratio + 0.1, brewer));
  }

  /**
   * 1.5 l at 92 °C are 1446 g; a step of 25 g more water than is wanted may arrive, so 1421 are
   * left for what 150 g give: 9.47 g/g, and 2.15 are kept: 11.62.
   */
  @Test
  void aStepOfWaterMoreThanTheVesselTakes() {
    Brewer brewer = pot(150, 480, 1.5);
    double ratio =
        number(refused(brewed(25, 60, 13, brewer)), "a ratio of 1:([0-9.]+) or stronger");
    assertEquals(11.6, ratio, 1e-9);
    assertPlanned(brewed(25, 60, ratio, brewer));
    assertRefused(brewed(25, 60, ratio + 0.1, brewer));
  }

  /** A dose of just 150 g can be weighed; at 1:13 it takes 1950 g of water. */
  @Test
  void aBrewerOfASingleDose() {
    Problem problem = refused(brewed(60, Events.brewer("Single", 1, 150, 150, 1.5)));
    assertNames(problem, "at 1:13.0 a dose of 150\u00a0g", "needs more than its");
    assertPlanned(brewed(60, 9.9, Events.brewer("Single", 1, 150, 150, 1.5)));
  }

  /** Ten grams of water for 150 g of coffee: no ratio helps. */
  @Test
  void hardlyAnyWaterAtAll() {
    assertNames(
        refused(brewed(60, Events.brewer("Dry", 1, 150, 480, 0.01))),
        "a larger brewer or a finer scale");
  }

  /** A least dose of 500 g is a hundred steps of 5 g, and ten guests take some 140 g. */
  @Test
  void aLeastDoseInStepsOfTheScale() {
    assertNames(
        refused(brewed(5, 10, 13, Events.brewer("Large", 1, 500, 2000, 30))),
        "'Crew'",
        "the least dose of Large is 500\u00a0g");
  }

  @Test
  void aScaleTooCoarseForTheBrewer() {
    Event event =
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(Events.coffee("house", Events.ratio(13))),
            List.of(Events.group("Crew", 10, 200, 1.3)),
            Events.equipment(50, List.of(Events.brewer("Small", 1, 10, 40, 3)), List.of()));
    assertNames(refused(event), "Small", "40\u00a0g");
  }

  @Test
  void moreBatchesThanAnyoneBrews() {
    GuestGroup crowd = Events.group("Crew", 1_000_000, 240, 1.3);
    Problem problem = refused(crowd(crowd, List.of(Events.brewer("Tiny", 1, 0, 30, 1)), List.of()));
    assertNames(problem, "'Crew'", "10000");
    double each = number(problem, "takes ([0-9. \u00a0]+)\u00a0g or more");
    Brewer larger = Events.brewer("Larger", 1, 0, each, 100);
    assertPlanned(crowd(crowd, List.of(larger), List.of()));
  }

  @Test
  void moreFillsThanAnyoneFills() {
    GuestGroup crowd = Events.group("Crew", 1_000_000, 240, 1.3);
    Problem problem =
        refused(crowd(crowd, List.of(), List.of(Events.dispenser("Airpot", 99, 2.2, 40))));
    assertNames(problem, "'Crew'", "Airpot", "10000");
    double litres = number(problem, "more than ([0-9.]+)\u00a0l");
    assertPlanned(
        crowd(crowd, List.of(), List.of(Events.dispenser("Airpot", 99, litres + 0.01, 40))));
  }

  @Test
  void noDispenserThatServes() {
    Problem problem = refused(dispensed(0.050, 40, 5));
    assertNames(problem, "'Crew'");
    // heel 40 ml and two steps of 5 g, 10.4 ml at 92 °C
    double millilitres = number(problem, "more than ([0-9]+)\u00a0ml");
    assertEquals(51, millilitres, 1e-9);
    assertPlanned(dispensed((millilitres + 1) / 1000, 40, 5));
    assertRefused(dispensed((millilitres - 1) / 1000, 40, 5));
  }

  @Test
  void tooFewDispensersAtOnce() {
    Problem problem = refused(atOnce(1, "08:00", "09:30"));
    assertNames(problem, "'Crew'", "'Guests'", "1 dispenser");
    int needed = (int) number(problem, "^.*; ([0-9]+) dispensers or more");
    assertEquals(2, needed);
    assertPlanned(atOnce(needed, "08:00", "09:30"));
    assertPlanned(atOnce(1, "08:00", "10:00")); // the first are served until ten
  }

  @Test
  void moreOutThanIn() {
    Problem problem = refused(reference(60, 960, 970, 1.4));
    assertNames(problem, "Coffee house", "970\u00a0g", "960\u00a0g");
    assertPlanned(reference(60, 960, 959, 1.25));
  }

  @Test
  void moreDissolvedThanThereWas() {
    // 60 / 831 = 7.22 %
    Problem problem = refused(reference(60, 960, 831, 7.3));
    assertNames(problem, "Coffee house", "whole dose");
    double below = number(problem, "a strength below ([0-9.]+)\u00a0%");
    assertEquals(7.22, below, 1e-9);
    assertPlanned(reference(60, 960, 831, below - 0.01));
  }

  @Test
  void groundsThatKeptTooMuch() {
    Problem problem = refused(reference(60, 2000, 800, 1.4));
    assertNames(problem, "800\u00a0g", "2000\u00a0g");
    double least = number(problem, "; ([0-9]+)\u00a0g or more");
    assertEquals(1400, least, 1e-9); // 2000 − 10 × 60
    // 1.40 % × 1400 / 60 = 32.7 %: odd, but it can be planned
    assertPlanned(reference(60, 2000, least, 1.4));
    assertRefused(reference(60, 2000, least - 1, 1.4));
  }

  @Test
  void aReferenceDrierThanTheAbsorptionGiven() {
    // 1:5 was weighed, and then 6 g/g are said to be kept: nothing runs off at the reference, so
    // the ratio that just serves the group is brewed, and nothing breaks
    BrewProfile profile =
        new BrewProfile(
            Method.PERCOLATION,
            Optional.of(brew(60, 300, 180, 6)),
            Optional.empty(),
            Optional.of(Absorption.ofGramsPerGram(6)),
            List.of(),
            Share.ofPercent(0));
    Checked<Plan> plan =
        new Planner()
            .plan(single(Events.coffee("house", new ConcentrateWish.AsReference(), profile)));
    // E = 6 % × 180 / 60 = 18 %; 18 / 1.3 + 6 = 19.846
    assertEquals(
        19.8,
        plan.value().orElseThrow().coffees().get(0).needed().brew().ratio().gramsPerGram(),
        1e-9);
  }

  @Test
  void aCoffeeThatNobodyDrinks() {
    Event event =
        Events.event(
            Events.serving(new Provision.Mean(), 0),
            List.of(
                Events.coffee("house", Events.ratio(13)), Events.coffee("decaf", Events.ratio(13))),
            List.of(Events.group("Crew", 10, 200, 1.3)),
            Events.equipment(1, List.of(), List.of()));
    assertNames(refused(event), "Decaf");
  }

  private static Event strong(double ratio, double percent) {
    return Events.simple(Events.ratio(ratio), Events.group("Crew", 40, 240, percent));
  }

  private static Event iced(double ratio, double pouredAt) {
    return Events.simple(
        Events.ratio(ratio), Events.iced(Events.group("Crew", 9, 240, 1.3), pouredAt, 5));
  }

  private static Event steep(ConcentrateWish wish, double percent) {
    BrewProfile profile =
        new BrewProfile(
            Method.IMMERSION,
            Optional.empty(),
            Optional.of(Extraction.ofPercent(20)),
            Optional.of(Absorption.ofGramsPerGram(3)),
            List.of(),
            Share.ofPercent(0));
    return Events.event(
        Events.serving(new Provision.Mean(), 0),
        List.of(Events.coffee("house", wish, profile)),
        List.of(Events.group("Crew", 40, 240, percent)),
        Events.equipment(1, List.of(), List.of()));
  }

  private static Event single(Coffee coffee) {
    return Events.event(
        Events.serving(new Provision.Mean(), 0),
        List.of(coffee),
        List.of(Events.group("Crew", 40, 240, 1.3)),
        Events.equipment(1, List.of(), List.of()));
  }

  private static ReferenceBrew brew(double dose, double water, double beverage, double percent) {
    return new ReferenceBrew(
        Mass.ofGrams(dose),
        Mass.ofGrams(water),
        Optional.of(Mass.ofGrams(beverage)),
        Strength.ofPercent(percent));
  }

  private static Event reference(double dose, double water, double beverage, double percent) {
    return Events.event(
        Events.serving(new Provision.Mean(), 0),
        List.of(
            Events.coffee(
                "house",
                new ConcentrateWish.AsReference(),
                Events.profile(Method.PERCOLATION, brew(dose, water, beverage, percent)))),
        List.of(Events.group("Crew", 40, 240, 1.2)),
        Events.equipment(1, List.of(), List.of()));
  }

  private static Event brewed(int headcount, Brewer brewer) {
    return brewed(headcount, 13, brewer);
  }

  private static Event brewed(int headcount, double ratio, Brewer brewer) {
    return brewed(1, headcount, ratio, brewer);
  }

  private static Event brewed(double step, int headcount, double ratio, Brewer brewer) {
    return Events.event(
        Events.serving(new Provision.Mean(), 0),
        List.of(Events.coffee("house", Events.ratio(ratio))),
        List.of(Events.group("Crew", headcount, 240, 1.3)),
        Events.equipment(step, List.of(brewer), List.of()));
  }

  private static Brewer pot(double leastGrams, double mostGrams, double vesselLitres) {
    return new Brewer(
        "Low pot",
        1,
        Mass.ofGrams(leastGrams),
        Mass.ofGrams(mostGrams),
        Mass.ofGrams(6000),
        Optional.of(Volume.ofLitres(vesselLitres)),
        Optional.empty(),
        new Brewer.Supply(Optional.empty(), Optional.empty()),
        Events.SOMEWHERE);
  }

  private static Event crowd(GuestGroup crowd, List<Brewer> brewers, List<Dispenser> dispensers) {
    return Events.event(
        Events.serving(new Provision.Mean(), 0),
        List.of(Events.coffee("house", Events.ratio(13))),
        List.of(crowd),
        Events.equipment(5, brewers, dispensers));
  }

  private static Event dispensed(double litres, double heel, double step) {
    return Events.event(
        Events.serving(new Provision.Mean(), 0),
        List.of(Events.coffee("house", Events.ratio(13))),
        List.of(Events.group("Crew", 2, 100, 1.3)),
        Events.equipment(step, List.of(), List.of(Events.dispenser("Flask", 9, litres, heel))));
  }

  private static Event atOnce(int dispensers, String first, String second) {
    return Events.event(
        Events.serving(new Provision.Mean(), 0),
        List.of(Events.coffee("house", Events.ratio(13))),
        List.of(
            serve(Events.group("Crew", 10, 200, 1.3), first, "10:00"),
            serve(Events.group("Guests", 10, 200, 1.3), second, "11:00")),
        Events.equipment(1, List.of(), List.of(Events.dispenser("Airpot", dispensers, 3, 0))));
  }

  private static GuestGroup serve(GuestGroup group, String from, String to) {
    TimeWindow window = new TimeWindow(LocalTime.parse(from), LocalTime.parse(to));
    return new GuestGroup(
        group.name(),
        group.guests(),
        group.cup(),
        group.strength(),
        group.coffees(),
        group.ice(),
        new GuestGroup.Service(
            Optional.of(window), GuestGroup.Arrivals.EVEN, Optional.empty(), Optional.empty()),
        group.location());
  }

  private static Problem refused(Event event) {
    List<Problem> problems = new Planner().plan(event).problems();
    assertEquals(1, problems.size(), problems.toString());
    return problems.get(0);
  }

  private static void assertRefused(Event event) {
    assertTrue(new Planner().plan(event).value().isEmpty());
  }

  private static void assertPlanned(Event event) {
    Checked<Plan> plan = new Planner().plan(event);
    assertTrue(plan.value().isPresent(), plan.problems().toString());
  }

  private static void assertNames(Problem problem, String... words) {
    for (String word : words) {
      assertTrue(problem.toString().contains(word), word + " in " + problem);
    }
  }

  private static double number(Problem problem, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(problem.toString());
    assertTrue(matcher.find(), pattern + " in " + problem);
    return Double.parseDouble(matcher.group(1).replaceAll("[ \u00a0]", ""));
  }
}
