package dev.urnwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Equipment;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Print;
import dev.urnwright.event.Provision;
import dev.urnwright.plan.Events;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import dev.urnwright.plan.Run;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.UnitSystem;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlanTextTest {
  private static final List<String> NAMES =
      List.of(
          "Volunteers who set up the tables, the tents and the stage before anybody else is up",
          "Donaudampfschifffahrtsgesellschaftskapitänskajütenfrühstücksrunde".repeat(3),
          "珈琲の会の皆さまとそのご家族、ご友人、近所の方々と朝の散歩の方々",
          "Sound\u001b[31m and\u0007 light\ncrew",
          "شاي وقهوة للضيوف");

  /**
   * Common practice, no source (check values): 16 g and 208 g of water gave 169 g at 1.81 %, 19.12
   * % extracted; with 55.9 g of bypass it is 224.9 g at 1.36 %. So all water over coffee is (208 +
   * 55.9) / 16 = 16.5, and the cup over coffee 224.9 / 16 = 14.06.
   */
  @Test
  void theFiguresOfOneCupStandBesideTheirNames() {
    String text = text(plan(Events.oneCup())).replaceAll(" +", " ");
    for (String expected :
        List.of(
            "Dose, dry ground coffee 16.0\u00a0g",
            "Brew water 208.0\u00a0g",
            "Absorbed, stays in the grounds 39.0\u00a0g",
            "Beverage, the concentrate 169.0\u00a0g",
            "Bypass, water added after brewing 55.9\u00a0g",
            "Finished beverage 224.9\u00a0g",
            "Strength of the concentrate 1.81\u00a0%",
            "Extraction, the same before and after bypass 19.1\u00a0%",
            "Brew ratio, brew water to coffee 1:13.0",
            "Total water to coffee, with bypass 1:16.5",
            "Cup to coffee, which is not a brew ratio 1:14.1")) {
      assertTrue(text.contains(expected), expected + " in\n" + text);
    }
  }

  @ParameterizedTest
  @EnumSource
  void nothingIsWiderThanTheScreenAndNoFigureIsCut(UnitSystem units) {
    Plan plan = plan(crowded(units));
    String text = text(plan);
    text.lines().forEach(line -> assertTrue(ScreenText.width(line) <= PlanText.COLUMNS, line));
    Display display = new Display(units, plan.event().equipment().scaleStep());
    for (Fill fill : plan.fills()) {
      String concentrate = display.mass(fill.blend().concentrate()).toString();
      String bypass = display.mass(fill.blend().bypass()).toString();
      assertTrue(
          text.lines().anyMatch(line -> line.contains(concentrate) && line.contains(bypass)),
          concentrate + " with " + bypass);
    }
  }

  @Test
  void namesAreCleanedOfWhatMovesTheCursor() {
    String text = text(plan(crowded(UnitSystem.METRIC)));
    assertFalse(text.contains("\u001b"));
    assertFalse(text.contains("\u0007"));
    assertTrue(text.contains("Sound[31m and light"));
  }

  @Test
  void emphasisOnlyAddsMarks() {
    Plan plan = plan(crowded(UnitSystem.METRIC));
    StringWriter marked = new StringWriter();
    Palette stars = new Palette(s -> "*" + s, s -> "*" + s, s -> "*" + s, s -> "*" + s);
    new PlanText(stars).write(plan, new PrintWriter(marked, true));
    assertTrue(marked.toString().contains("*"));
    assertEquals(text(plan), marked.toString().replace("*", ""));
  }

  @Test
  void aDecafIsCalledSoInItsHeading() {
    String text = text(plan(crowded(UnitSystem.METRIC)));
    assertTrue(text.lines().anyMatch("DECAF: Decaf (decaf)"::equals), text);
  }

  /** Nobody reads fifty thousand rows on a terminal; the first are enough to see what's what. */
  @Test
  void anEndlessListIsCutWithAWordAboutTheRest() {
    List<GuestGroup> groups = new ArrayList<>();
    for (int i = 1; i <= CoffeeText.MOST_ROWS + 7; i++) {
      groups.add(Events.group("Group " + i, 10, 200, 1.3));
    }
    String text = text(plan(Events.simple(Events.ratio(13), groups.toArray(GuestGroup[]::new))));
    assertTrue(text.contains("Group " + CoffeeText.MOST_ROWS + " "));
    assertFalse(text.contains("Group " + (CoffeeText.MOST_ROWS + 1) + " "));
    assertTrue(text.contains("and 7 more groups"), text);
  }

  @Test
  void theRunTellsItsBatchesAndActionsByTheClock() {
    Plan plan = plan(timed(crowded(UnitSystem.METRIC, 3), LocalTime.of(9, 30)));
    Run run = plan.run().orElseThrow();
    String text = text(plan).replace('\u00a0', ' ');
    assertTrue(text.contains("\nThe run\n"));
    assertTrue(text.contains("The work begins at " + run.actions().get(0).at().toLocalTime()));
    for (Run.BatchTime time : run.batches()) {
      String ready = time.ready().toLocalTime() + "  " + time.batch().unit().orElseThrow().label();
      assertTrue(
          text.lines()
              .anyMatch(line -> line.contains(ready) && line.endsWith(", " + time.batch().id())),
          ready);
    }
    for (Run.Action action : run.actions()) {
      assertTrue(text.contains(action.what()), action::toString);
    }
    assertFalse(text.contains("on the day"), "all on one day");
    double coolest =
        run.fills().stream()
            .flatMap(fill -> fill.heat().stream())
            .mapToDouble(heat -> heat.lastPour().celsius())
            .min()
            .orElseThrow();
    assertTrue(
        text.contains("The coolest hot cup leaves its dispenser at " + Math.round(coolest) + " °C"),
        text);
    String quality = "Coffee is on average";
    assertEquals(text.indexOf(quality), text.lastIndexOf(quality));
  }

  @Test
  void aRunThatBeginsTheDayBeforeSaysSo() {
    String text = text(plan(timed(crowded(UnitSystem.METRIC, 3), LocalTime.of(0, 20))));
    assertTrue(text.matches("(?s).*The work begins at 23:\\d\\d the day before\\..*"), text);
    assertTrue(text.contains("\n  the day before\n  23:"), text);
    assertTrue(text.contains("\n  on the day\n  00:"), text);
  }

  @Test
  void aLongRunIsCutAndItsRowsFitTheScreen() {
    Plan plan = plan(timed(crowded(UnitSystem.METRIC, 3), LocalTime.of(9, 30)));
    Run run = plan.run().orElseThrow();
    List<Run.BatchTime> batches = new ArrayList<>();
    List<Run.Action> actions = new ArrayList<>();
    while (batches.size() <= RunText.MOST_ROWS) {
      batches.addAll(run.batches());
    }
    for (int minute = 0; minute < RunText.MOST_ROWS + 7; minute++) {
      Run.Action action = run.actions().get(minute % run.actions().size());
      LocalDateTime at = run.actions().get(0).at().plusMinutes(minute);
      actions.add(new Run.Action(at, action.kind(), action.what(), action.where(), action.how()));
    }
    Run longer =
        new Run(
            batches, run.fills(), run.heaters(), run.water(), actions, run.crew(), run.quality());
    String text =
        text(
            new Plan(
                plan.event(),
                plan.coffees(),
                Optional.of(longer),
                plan.shopping(),
                plan.cautions(),
                plan.notes()));
    text.lines().forEach(line -> assertTrue(ScreenText.width(line) <= PlanText.COLUMNS, line));
    String more = "... and %d more %s; the run sheet and --json have them all";
    int cut = batches.size() - RunText.MOST_ROWS;
    assertTrue(text.contains(more.formatted(cut, "batches")), text);
    assertTrue(text.contains(more.formatted(7, "rows")), text);
    LocalDateTime last = actions.get(RunText.MOST_ROWS - 1).at();
    assertTrue(text.contains("\n  " + last.toLocalTime() + "  "), text);
    assertFalse(text.contains("\n  " + last.plusMinutes(1).toLocalTime() + "  "), text);
  }

  @Test
  void withoutTimesThereIsNoRun() {
    assertFalse(text(plan(crowded(UnitSystem.METRIC))).contains("The run\n"));
  }

  private static Event timed(Event event, LocalTime time) {
    return new Event(
        event.name(),
        event.date(),
        Optional.of(time),
        event.print(),
        event.serving(),
        event.coffees(),
        event.groups(),
        event.equipment(),
        event.kitchen(),
        event.purchases(),
        event.defaults(),
        event.location());
  }

  private static Event crowded(UnitSystem units) {
    return crowded(units, 40);
  }

  private static Event crowded(UnitSystem units, int count) {
    List<GuestGroup> groups = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String name = NAMES.get(i % NAMES.size()) + " " + i;
      GuestGroup group = Events.group(name, 50 + i, 240, 1.2 + 0.005 * i);
      groups.add(
          i % 5 == 4
              ? Events.iced(group, 25, 5)
              : Events.drinking(
                  group,
                  new GuestGroup.CoffeeShare("house", Share.ofPercent(80)),
                  new GuestGroup.CoffeeShare("decaf", Share.ofPercent(20))));
    }
    Equipment equipment =
        Events.equipment(
            0.1,
            List.of(Events.brewer("A twin brewer with a long name", 12, 50, 480, 6)),
            List.of(Events.dispenser("An insulated airpot with a long name", 2000, 2.2, 40)));
    Event metric =
        Events.event(
            Events.serving(new Provision.Mean(), 2),
            List.of(
                Events.coffee("house", Events.ratio(13)), Events.coffee("decaf", Events.ratio(13))),
            groups,
            equipment);
    return new Event(
        metric.name().repeat(12),
        metric.date(),
        metric.time(),
        new Print(units, metric.print().paper(), metric.print().window()),
        metric.serving(),
        metric.coffees(),
        metric.groups(),
        metric.equipment(),
        metric.kitchen(),
        metric.purchases(),
        metric.defaults(),
        metric.location());
  }

  private static Plan plan(Event event) {
    return new Planner().plan(event).value().orElseThrow();
  }

  private static String text(Plan plan) {
    StringWriter text = new StringWriter();
    new PlanText(Palette.PLAIN).write(plan, new PrintWriter(text, true));
    return text.toString();
  }
}
