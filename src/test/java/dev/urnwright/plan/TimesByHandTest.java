package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.input.EventReader;
import dev.urnwright.plan.Timetable.FillWindow;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.HotWater.Draw;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Windows of fills, hot water, and what is asked of the clock, by hand. Minutes are of the day. */
class TimesByHandTest {
  @TempDir Path folder;

  private static final String EVENT =
      """
      event: A generic event
      time: 08:00
      coffee:
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Hall, headcount: 60, cup: 200 ml, strength: 1.25 %, serve: 10:00-11:00}
        - {name: Bar, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 23:30-00:30, station: Cellar}
        - {name: Crew, headcount: 10, cup: 200 ml, strength: 1.25 %}
        - name: Iced
          headcount: 10
          cup: 300 ml
          strength: 1.20 %
          serve: 12:00-12:30
          over_ice: {poured_at: 25 °C, served_at: 5 °C}
      brewers:
        - {name: Tall brewer, count: 2, dose: up to 1.2 kg, water: 16 l, cycle: 12 min}
      dispensers:
        - {name: Pot, count: 9, capacity: 6 l, heel: 100 ml, hold: 40 min, pour: 3 cups per minute}
        - {name: Urn, count: 9, capacity: 12 l, heel: 100 ml, pour: 12 cups per minute}
      stations: [{name: Cellar, carry: 7 min}]
      """;

  private Event event(String text) throws IOException {
    Path file = folder.resolve("event.yaml");
    Files.writeString(file, text);
    Checked<Event> read = new EventReader().read(file);
    return read.value().orElseThrow(() -> new AssertionError(read.problems().toString()));
  }

  private static GuestGroup group(Event event, String name) {
    return event.groups().stream().filter(g -> g.name().equals(name)).findFirst().orElseThrow();
  }

  private static Optional<Dispenser> pot(Event event) {
    return Optional.of(event.equipment().dispensers().get(0));
  }

  private static Optional<Dispenser> urn(Event event) {
    return Optional.of(event.equipment().dispensers().get(1));
  }

  /**
   * An hour out of pots that hold for 40 min, of which filling takes 3 and carrying 3: 34 min of
   * pouring at most, so two rounds of 30. A window of the second: 10:30 to 11:00; ready at 10:24 at
   * the latest, at 10:20 at the earliest.
   */
  @Test
  void theWindowsOfAGroup() throws IOException {
    Event event = event(EVENT);
    Timetable timetable = new Timetable(event);
    GuestGroup hall = group(event, "Hall");
    assertEquals(OptionalInt.of(2), timetable.roundsForHold(hall, pot(event)));
    List<FillWindow> windows = timetable.windows(hall, pot(event), 2, 1);
    assertEquals(new FillWindow(600, 630, 615, 3, 590, 594), windows.get(0));
    assertEquals(new FillWindow(630, 660, 645, 3, 620, 624), windows.get(1));
    // two side by side are emptied together
    List<FillWindow> pairs = timetable.windows(hall, pot(event), 4, 2);
    assertEquals(List.of(600, 600, 630, 630), pairs.stream().map(FillWindow::due).toList());
    // thirds of an hour: whole minutes, as early and as late as need be
    List<FillWindow> sevenths = timetable.windows(hall, pot(event), 7, 1);
    assertEquals(608, sevenths.get(1).due()); // 608.57
    assertEquals(609, sevenths.get(0).lastPour());
    // held for the usual hour where nothing is said, of which 54 min are left
    assertEquals(Optional.of(60), timetable.hold(hall, urn(event)));
    assertEquals(OptionalInt.of(2), timetable.roundsForHold(hall, urn(event)));
    // and without a dispenser as long as one likes
    assertEquals(Optional.empty(), timetable.hold(hall, Optional.empty()));
    assertEquals(OptionalInt.of(1), timetable.roundsForHold(hall, Optional.empty()));
    FillWindow open = timetable.windows(hall, Optional.empty(), 1, 1).get(0);
    assertEquals(new FillWindow(600, 660, 630, 3, 594 - 1440, 594), open);
  }

  /** Until the same time it is a whole day, and until a minute later just that. */
  @Test
  void whereAWindowEnds() {
    LocalTime ten = LocalTime.of(10, 0);
    assertEquals(600, new TimeWindow(ten, ten).startMinute());
    assertEquals(600 + 24 * 60, new TimeWindow(ten, ten).endMinute());
    assertEquals(601, new TimeWindow(ten, ten.plusMinutes(1)).endMinute());
    assertEquals(599 + 24 * 60, new TimeWindow(ten, ten.minusMinutes(1)).endMinute());
  }

  /** Past midnight it is the next day; seven minutes are carried, so 30 are left of the hold. */
  @Test
  void aWindowPastMidnightAtAStation() throws IOException {
    Event event = event(EVENT);
    Timetable timetable = new Timetable(event);
    GuestGroup bar = group(event, "Bar");
    assertEquals(OptionalInt.of(2), timetable.roundsForHold(bar, pot(event)));
    assertEquals(
        new FillWindow(1440, 1470, 1455, 7, 1430, 1430),
        timetable.windows(bar, pot(event), 2, 1).get(1));
    // a minute less of hold, and it takes three rounds of 20
    Event shorter = event(EVENT.replace("hold: 40 min", "hold: 39 min"));
    assertEquals(
        OptionalInt.of(3),
        new Timetable(shorter).roundsForHold(group(shorter, "Bar"), pot(shorter)));
    // 11 min leave one of pouring, 10 none
    Event barely = event(EVENT.replace("hold: 40 min", "hold: 11 min"));
    assertEquals(
        OptionalInt.of(60), new Timetable(barely).roundsForHold(group(barely, "Bar"), pot(barely)));
    Event never = event(EVENT.replace("hold: 40 min", "hold: 10 min"));
    assertEquals(
        OptionalInt.empty(), new Timetable(never).roundsForHold(group(never, "Bar"), pot(never)));
  }

  @Test
  void whoHasNoWindowIsDueAtTheEventsTime() throws IOException {
    Event event = event(EVENT);
    Timetable timetable = new Timetable(event);
    GuestGroup crew = group(event, "Crew");
    assertEquals(
        new FillWindow(480, 480, 480, 3, 440, 474),
        timetable.windows(crew, pot(event), 1, 1).get(0));
    assertEquals(1, timetable.tapsFor(crew, 10, pot(event).orElseThrow()));
  }

  /** Iced coffee cools for an hour and keeps: ready at 11:00 − 6 min, yesterday at the earliest. */
  @Test
  void icedCoffeeCoolsFirstAndKeeps() throws IOException {
    Event event = event(EVENT);
    Timetable timetable = new Timetable(event);
    GuestGroup iced = group(event, "Iced");
    assertEquals(Optional.empty(), timetable.hold(iced, pot(event)));
    assertEquals(
        new FillWindow(720, 750, 735, 3, 654 - 1440, 654),
        timetable.windows(iced, pot(event), 1, 1).get(0));
  }

  /** 60 cups an hour are one a minute; a pot pours three. 200 an hour need two. */
  @Test
  void tapsAndQueues() throws IOException {
    Event event = event(EVENT);
    Timetable timetable = new Timetable(event);
    GuestGroup hall = group(event, "Hall");
    Dispenser pot = pot(event).orElseThrow();
    assertEquals(1, timetable.tapsFor(hall, 60, pot));
    assertEquals(1, timetable.tapsFor(hall, 180, pot));
    assertEquals(2, timetable.tapsFor(hall, 181, pot));
    assertEquals(1, timetable.busiest(hall, 60));
    assertEquals(4, timetable.busiest(hall, 200)); // 3.33
    // 240 in an hour at three a minute take 80 min: the last one waits 20
    assertEquals(20, timetable.queueMinutes(hall, 240, pot, 1));
    assertEquals(0, timetable.queueMinutes(hall, 240, pot, 2));
    assertEquals(3, Timetable.pour(pot));
    assertEquals(6, Timetable.pour(Events.dispenser("Bare", 1, 2, 0))); // ten seconds a guest
  }

  @Test
  void minutesAreRoundedUp() {
    assertEquals(0, Timetable.minutesUp(Duration.ZERO));
    assertEquals(1, Timetable.minutesUp(Duration.ofSeconds(1)));
    assertEquals(1, Timetable.minutesUp(Duration.ofSeconds(60)));
    assertEquals(2, Timetable.minutesUp(Duration.ofSeconds(61)));
    assertEquals(605, Timetable.minuteOf(LocalTime.of(10, 5)));
  }

  private static final String HEATED =
      EVENT
          + """
          heaters:
            - {name: Boiler, count: 2, capacity: 10 l, power: 3 kW, efficiency: 90 %}
            - {name: Kettle, capacity: 2 l, power: 2 kW, efficiency: 90 %}
          """;

  /**
   * By hand: 10 l at 92 °C are 9639.5 g; from 15 °C they take 9639.5 · 4.186 · 77 / 2700 = 1150.8,
   * so 1151 s; 2 l 1927.9 · 4.186 · 77 / 1800 = 345.2, so 346 s. Together 22 l at (20/1151 +
   * 2/346)·60 = 1.3894 l a minute: 22 l take 15.8, so 16 min; but a boiler alone takes 20.
   */
  @Test
  void heatersAreOnInTime() throws IOException {
    Event event = event(HEATED);
    RunClock clock = RunClock.of(event);
    HotWaterPlan plan = new HotWaterPlan(event, List.of(new Draw(600, 5), new Draw(590, 3)));
    List<Run.HeaterTime> heaters = plan.heaters(clock);
    assertEquals(
        List.of("Boiler 1", "Boiler 2", "Kettle"),
        heaters.stream().map(Run.HeaterTime::name).toList());
    assertEquals(clock.at(570), heaters.get(0).on());
    assertEquals(clock.at(570), heaters.get(1).on());
    assertEquals(clock.at(574), heaters.get(2).on());
    assertEquals(Duration.ofSeconds(1151), heaters.get(0).toHeat());
    assertEquals(Duration.ofSeconds(346), heaters.get(2).toHeat());
    assertEquals(Optional.empty(), plan.problem(clock, new Findings(event).display()));
    assertEquals(List.of(), new HotWaterPlan(event, List.of()).heaters(clock));
    assertEquals(
        Optional.empty(),
        new HotWaterPlan(event, List.of()).problem(clock, new Findings(event).display()));
    Event cold = event(EVENT);
    HotWaterPlan none = new HotWaterPlan(cold, List.of(new Draw(600, 500)));
    assertEquals(List.of(), none.heaters(clock));
    assertEquals(Optional.empty(), none.problem(clock, new Findings(cold).display()));
  }

  /**
   * 40 l at once are 18 more than 22: two more boilers of 10 l, or nine more kettles of 2 l, just
   * cure it. 100 l at once are more than nine of either can.
   */
  @Test
  void moreHeatersCureIt() throws IOException {
    Event event = event(HEATED);
    String short18 = problem(event, 40).toString();
    assertTrue(short18.contains("18.00\u00a0l"), short18);
    assertTrue(short18.contains("10:00"), short18);
    assertTrue(short18.contains("2 more Boiler, or 9 more Kettle"), short18);
    String short22 = problem(event, 42.1).toString();
    assertTrue(short22.contains("3 more Boiler"), short22);
    assertFalse(short22.contains("more Kettle"), short22);
    String short98 = problem(event, 120).toString();
    assertFalse(short98.contains(" more Boiler"), short98);
  }

  /**
   * No nine more are enough for 400 l. Water drawn at other minutes is served while it keeps ahead
   * and no heater must be on earlier: 5 l at 10:00 and 3 at 9:50 have the boilers on at 9:30; a
   * draw at 9:49 would need them a minute before, one at 9:51 does not.
   */
  @Test
  void waterThatHeatersHaveOrNot() throws IOException {
    Event event = event(HEATED);
    RunClock clock = RunClock.of(event);
    assertTrue(
        problem(event, 400)
            .toString()
            .contains("larger heaters, or bypass drawn from the brewers' own taps"));
    List<Run.HeaterTime> planned =
        new HotWaterPlan(event, List.of(new Draw(600, 5), new Draw(590, 3))).heaters(clock);
    assertTrue(new HotWaterPlan(event, List.of(new Draw(591, 3))).isServedBy(planned, clock));
    assertTrue(new HotWaterPlan(event, List.of(new Draw(590, 8))).isServedBy(planned, clock));
    assertFalse(new HotWaterPlan(event, List.of(new Draw(589, 3))).isServedBy(planned, clock));
    assertFalse(new HotWaterPlan(event, List.of(new Draw(600, 40))).isServedBy(planned, clock));
    assertTrue(new HotWaterPlan(event, List.of()).isServedBy(planned, clock));
    assertTrue(
        new HotWaterPlan(event(EVENT), List.of(new Draw(600, 500))).isServedBy(List.of(), clock));
    assertEquals(2, new Timetable(event).turnaround());
    assertEquals(5, new Timetable(event).cleaning());
  }

  private static Problem problem(Event event, double litres) {
    return new HotWaterPlan(event, List.of(new Draw(600, litres)))
        .problem(RunClock.of(event), new Findings(event).display())
        .orElseThrow();
  }

  /** What can be asked of a run: each batch, each fill, and how cool the last cup gets. */
  @Test
  void aRunKnowsItsBatchesAndFills() throws IOException {
    Plan plan = new Planner().plan(event(EVENT)).value().orElseThrow();
    Run run = plan.run().orElseThrow();
    for (Batch batch : plan.batches()) {
      assertEquals(batch, run.timeOf(batch).orElseThrow().batch());
    }
    for (Fill fill : plan.fills()) {
      assertEquals(fill, run.timeOf(fill).orElseThrow().fill());
      boolean hot = !fill.groupName().equals("Iced");
      assertEquals(hot, run.timeOf(fill).orElseThrow().heat().isPresent());
    }
    // two rounds at least of the pots' 40 min where an hour is poured; one where no clock is
    List<Integer> least = plan.leastFills();
    for (int i = 0; i < least.size(); i++) {
      GroupPlan group = plan.groups().get(i);
      String name = group.group().name();
      int rounds = name.equals("Hall") || name.equals("Bar") ? 2 : 1;
      assertEquals(rounds * group.taps(), least.get(i), name);
    }
    Plan untimed =
        new Planner()
            .plan(event(EVENT.replaceAll("(?ms)^brewers:.*?^dispensers:", "dispensers:")))
            .value()
            .orElseThrow();
    assertEquals(List.of(1, 1, 1, 1), untimed.leastFills());
    assertTrue(untimed.run().isEmpty());
    // the model that a plan was made with: 2.15 g/g kept
    assertEquals(2.15, plan.brewing(plan.coffees().get(0)).absorption().gramsPerGram(), 1e-9);
    assertEquals(Volume.ofLitres(0), run.water().rinsing());
  }
}
