package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.event.Event;
import dev.urnwright.plan.Handwork.Water;
import dev.urnwright.plan.Run.Action;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.schedule.BrewerUnit;
import dev.urnwright.wording.Saying;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How far work may be moved for too few hands, by hand. Of one batch, ready at 9:53, the hall's urn
 * goes 4 min away at 9:56, and the bar's (3 min, at 10:10) at 10:07 at the latest.
 */
class HandworkTest {
  static final String EVENT =
      """
      event: A generic event
      date: 2027-04-17
      coffee:
        name: House
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Hall, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30, station: Hall}
        - {name: Bar, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:10-10:30}
      brewers:
        - {name: Tall, dose: 100 g to 1.2 kg, water: 16 l, cycle: 10 min}
      heaters: [{name: Boiler, capacity: 40 l, power: 9 kW}]
      dispensers:
        - {name: Urn, count: 4, capacity: 6 l, hold: 60 min, pour: 6 cups per minute}
      stations:
        - {name: Hall, carry: 4 min}
      kitchen: {turnaround: 2 min, transfer: 3 min, cleaning: 8 min}
      """;

  @TempDir Path folder;
  private Event event;
  private Run run;

  @BeforeEach
  void plan() throws IOException {
    plan(EVENT);
  }

  private void plan(String text) throws IOException {
    Plan plan = new Written(folder).plan(text);
    event = plan.event();
    run = plan.run().orElseThrow();
  }

  /**
   * One person can do it all, with water that needs no heater: rinse the urns at 9:49 and 9:50,
   * fill the hall's from 9:53 to 9:56, take it there and be back at 10:04, fill the bar's until
   * 10:07 and be there at 10:10. The bar's urn has the time to be filled before, but not on the
   * way.
   */
  @Test
  void theFillThatHasTimeWaitsForTheWay() throws IOException {
    String bare = EVENT.replaceAll("heaters: .*\n", "");
    plan(bare);
    assertEquals(1, run.crew().enough());
    plan(bare.replace("kitchen: {", "kitchen: {people: 1, "));
    assertEquals(1, run.crew().busiest().orElseThrow().people());
    assertEquals(
        List.of(
            "09:28 Switch on",
            "09:37 Grind",
            "09:43 Start",
            "09:49 Preheat",
            "09:50 Preheat",
            "09:53 Fill",
            "09:56 Carry",
            "10:04 Fill",
            "10:07 Carry"),
        run.actions().stream()
            .filter(action -> action.kind() != ActionKind.DISCARD)
            .map(action -> action.at().toLocalTime() + " " + action.kind().words())
            .toList());
  }

  /** Two minutes each, up to 20 min earlier: eleven doses follow each other from 9:17 to 9:39. */
  @Test
  void dosesAreGroundEarlier() {
    List<String> eleven = new ArrayList<>();
    for (int minute = 17; minute <= 37; minute += 2) {
      eleven.add("09:" + minute);
    }
    assertEquals(eleven, levelled(Water.NONE, times(11, ActionKind.GRIND, "09:37", "coffee-1")));
  }

  /** A quarter of an hour earlier, one minute each: sixteen brewers are on from 9:13 to 9:28. */
  @Test
  void brewersAreOnEarlierAndHeatersAreNot() {
    List<String> sixteen = new ArrayList<>();
    for (int minute = 13; minute <= 28; minute++) {
      sixteen.add("09:" + minute);
    }
    assertEquals(sixteen, levelled(Water.NONE, times(16, ActionKind.SWITCH_ON, "09:28", "Tall")));
    assertEquals(
        List.of("09:28", "09:28"),
        levelled(Water.NONE, times(2, ActionKind.SWITCH_ON, "09:28", "Boiler")));
  }

  /** Not before the kitchen opens, unless the plan has it so. */
  @Test
  void nobodyIsThereBeforeTheKitchenOpens() throws IOException {
    plan(EVENT.replace("kitchen: {", "kitchen: {opens: 09:10, "));
    assertEquals(
        List.of("09:10", "09:11", "09:12"),
        levelled(Water.NONE, times(3, ActionKind.SWITCH_ON, "09:12", "Tall")));
    assertEquals(
        List.of("09:10", "09:11", "09:12", "09:12"),
        levelled(Water.NONE, times(4, ActionKind.SWITCH_ON, "09:12", "Tall")));
    assertEquals(
        List.of("09:05", "09:05"),
        levelled(Water.NONE, times(2, ActionKind.GRIND, "09:05", "coffee-1")));
  }

  /** Rinsed hot two minutes earlier, where the heaters' water may be drawn then. */
  @Test
  void urnsAreRinsedEarlierWhereThereIsWater() {
    List<Action> three = times(3, ActionKind.PREHEAT, "09:50", "coffee-F1");
    assertEquals(List.of("09:48", "09:49", "09:50"), levelled(Water.ALL, three));
    assertEquals(List.of("09:50", "09:50", "09:50"), levelled(Water.BYPASS, three));
  }

  /**
   * The bar's urn may be filled until 10:04, when it is 3 min from being carried; the hall's may
   * not wait. By one person, three minutes each: 9:53, 9:56, 9:59, 10:02, and the fifth as little
   * before somebody is free as can be, at 10:04.
   */
  @Test
  void anUrnWaitsForItsFill() {
    List<Action> bar = times(5, ActionKind.FILL, "09:53", "coffee-F2");
    assertEquals(List.of("09:53", "09:56", "09:59", "10:02", "10:04"), levelled(Water.BYPASS, bar));
    assertEquals(Collections.nCopies(5, "09:53"), levelled(Water.NONE, bar));
    assertEquals(
        Collections.nCopies(2, "09:53"),
        levelled(Water.ALL, times(2, ActionKind.FILL, "09:53", "coffee-F1")));
    // what only begins a fill isn't moved
    assertEquals(
        Collections.nCopies(2, "09:51"),
        levelled(Water.ALL, times(2, ActionKind.FILL, "09:51", "coffee-F2")));
  }

  /** If the brewer is started again at 9:57, it is empty by 9:55; another brewer doesn't matter. */
  @Test
  void aBrewerIsEmptiedInTimeForTheNextBatch() {
    List<Action> two = times(2, ActionKind.FILL, "09:53", "coffee-F2");
    Batch batch = run.batches().get(0).batch();
    assertEquals(List.of("09:53", "09:55"), levelled(two, next(batch.unit(), "09:57")));
    assertEquals(List.of("09:53", "09:56"), levelled(two, next(Optional.empty(), "09:57")));
    assertEquals(List.of("09:53", "09:56"), levelled(two, next(batch.unit(), "09:30")));
  }

  private Run.BatchTime next(Optional<BrewerUnit> unit, String start) {
    Batch batch = run.batches().get(0).batch();
    return new Run.BatchTime(
        new Batch("coffee-2", 2, unit, batch.brew(), batch.waterByVolume()),
        at(start),
        at(start).plusMinutes(10));
  }

  private List<String> levelled(List<Action> actions, Run.BatchTime next) {
    return new Handwork(
            event, List.of(run.batches().get(0), next), run.fills(), actions, Water.BYPASS)
        .levelled(1).stream().map(action -> action.at().toLocalTime().toString()).toList();
  }

  /**
   * Somebody starts a brewer at 10:07 (10:05 to 10:08): the 6 min to the bar and back go before.
   */
  @Test
  void anUrnIsCarriedEarlierOnceItIsFull() {
    Action start = action(ActionKind.START, "10:07", "coffee-1");
    Action carry = action(ActionKind.CARRY, "10:07", "coffee-F2");
    Action fill = action(ActionKind.FILL, "09:53", "coffee-F2");
    assertEquals(
        List.of("09:53", "09:59", "10:07"), levelled(Water.NONE, List.of(fill, carry, start)));
    // of which no fill is known stays
    assertEquals(List.of("10:07", "10:07"), levelled(Water.NONE, List.of(carry, start)));
    // five are carried at 10:02 … 9:56, and no sooner than it is full for three minutes
    List<Action> many = new ArrayList<>(times(9, ActionKind.CARRY, "10:07", "coffee-F2"));
    many.replaceAll(
        each ->
            new Action(
                each.at(),
                each.kind(),
                each.what(),
                "" + System.identityHashCode(each),
                each.how()));
    many.add(fill);
    List<String> moved = levelled(Water.NONE, many);
    assertEquals("09:53", moved.get(0));
    assertEquals("09:56", moved.get(1));
  }

  /** Iced coffee cools for an hour before it is carried. */
  @Test
  void icedCoffeeIsCarriedWhenItIsCold() throws IOException {
    plan(
        EVENT.replace(
            "serve: 10:10-10:30}",
            "serve: 11:10-11:30, over_ice: {poured_at: 25 °C, served_at: 5 °C}}"));
    Run.FillTime iced =
        run.fills().stream().filter(f -> f.heat().isEmpty()).findFirst().orElseThrow();
    // filled with the hall's, at 9:53: cold at 10:56
    assertEquals("09:53", iced.filled().toLocalTime().toString());
    String id = iced.fill().id();
    List<Action> many = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      many.add(
          new Action(at("11:07"), ActionKind.CARRY, id, "place " + i, Saying.of("how.warm-up")));
    }
    many.add(action(ActionKind.FILL, "09:53", id));
    assertEquals(List.of("09:53", "10:56", "11:01", "11:07"), levelled(Water.NONE, many));
    // and filled by 10:04, an hour and 3 min before that
    assertEquals(
        "10:04", Collections.max(levelled(Water.ALL, times(9, ActionKind.FILL, "09:53", id))));
  }

  /**
   * Somebody starts a brewer from 9:51 to 9:54 and fills the bar's urn then, until 9:57; from 10:02
   * to 10:11 two are busy. So the way of 6 min begins at 9:57, when it meets two for one minute
   * only, and not at 9:56, when it would meet one.
   */
  @Test
  void anUrnIsCarriedNoSoonerThanItIsFull() {
    List<Action> actions = new ArrayList<>();
    actions.add(action(ActionKind.START, "09:53", "coffee-1"));
    actions.add(action(ActionKind.FILL, "09:53", "coffee-F2"));
    actions.add(action(ActionKind.CARRY, "10:07", "coffee-F2"));
    for (String busy : List.of("10:04", "10:07", "10:10")) {
      actions.addAll(times(2, ActionKind.START, busy, "coffee-1"));
    }
    assertEquals(
        List.of("09:53", "09:54", "09:57", "10:04", "10:04", "10:07", "10:07", "10:10", "10:10"),
        levelled(Water.BYPASS, actions));
  }

  /**
   * Cold at 10:56, the bar's urn has 11 min and keeps 11:07; the hall's, full since 9:56, goes
   * before, for 8 min from 10:59.
   */
  @Test
  void whatIsColdLaterHasLessTime() throws IOException {
    plan(
        EVENT.replace(
            "serve: 10:10-10:30}",
            "serve: 11:10-11:30, over_ice: {poured_at: 25 °C, served_at: 5 °C}}"));
    String iced =
        run.fills().stream()
            .filter(fill -> fill.heat().isEmpty())
            .map(fill -> fill.fill().id())
            .findFirst()
            .orElseThrow();
    String hot = iced.equals("coffee-F1") ? "coffee-F2" : "coffee-F1";
    List<Action> actions =
        List.of(
            action(ActionKind.FILL, "09:53", hot),
            action(ActionKind.FILL, "09:53", iced),
            action(ActionKind.CARRY, "11:05", hot),
            action(ActionKind.CARRY, "11:07", iced));
    assertEquals(
        List.of("10:59 " + hot, "11:07 " + iced),
        new Handwork(event, run.batches(), run.fills(), actions, Water.NONE)
            .levelled(1).stream()
                .filter(action -> action.kind() == ActionKind.CARRY)
                .map(action -> action.at().toLocalTime() + " " + action.what())
                .toList());
  }

  /** Poured away or fetched from the last pour on: 4 min there, one or 8 there, 4 min back. */
  @Test
  void emptyUrnsAreSeenToEarlier() {
    Action start = action(ActionKind.START, "10:53", "coffee-1"); // 10:51 to 10:54
    assertEquals(
        List.of("10:42", "10:53"),
        levelled(Water.NONE, List.of(action(ActionKind.DISCARD, "10:53", "coffee-F1"), start)));
    assertEquals(
        List.of("10:35", "10:53"),
        levelled(Water.NONE, List.of(action(ActionKind.COLLECT, "10:53", "coffee-F1"), start)));
    // six walks of nine minutes, the earliest at the last pour
    List<Action> walks = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      walks.add(
          new Action(
              at("10:53"),
              ActionKind.DISCARD,
              "coffee-F1",
              "place " + i,
              Saying.of("how.warm-up")));
    }
    assertEquals("10:30", levelled(Water.NONE, walks).get(0));
  }

  /** What goes the same way at once goes together, two at a time; two more minutes to see to. */
  @Test
  void urnsGoTogether() {
    assertEquals(1, work(times(2, ActionKind.CARRY, "09:56", "coffee-F1")).most());
    assertEquals(2, work(times(3, ActionKind.CARRY, "09:56", "coffee-F1")).most());
    assertEquals(
        List.of("10:53-11:03 1"), stretches(times(2, ActionKind.DISCARD, "10:53", "coffee-F1")));
    assertEquals(
        List.of("10:53-11:02 2", "11:02-11:03 1"),
        stretches(times(3, ActionKind.DISCARD, "10:53", "coffee-F1")));
    assertEquals(
        List.of("10:53-11:17 1"), stretches(times(2, ActionKind.COLLECT, "10:53", "coffee-F1")));
    assertEquals(List.of(), stretches(List.of()));
  }

  /** Minutes with nobody busy part the stretches; a start takes the 2 min before it, too. */
  @Test
  void whenHowManyAreBusyAndWithWhat() {
    List<Action> actions =
        List.of(
            action(ActionKind.GRIND, "09:37", "coffee-1"),
            action(ActionKind.GRIND, "09:38", "coffee-1"),
            action(ActionKind.START, "09:43", "coffee-1"));
    Handwork work = work(actions);
    assertEquals(2, work.most());
    Run.Crew crew = work.crew(7);
    assertEquals(7, crew.enough());
    assertEquals(
        List.of("09:37-09:38 1", "09:38-09:39 2", "09:39-09:40 1", "09:41-09:44 1"),
        stretches(actions));
    assertEquals(crew.stretches().get(1), crew.busiest().orElseThrow());
    assertEquals(
        List.of(
            Map.of(ActionKind.GRIND, 1),
            Map.of(ActionKind.GRIND, 2),
            Map.of(ActionKind.GRIND, 1),
            Map.of(ActionKind.START, 1)),
        crew.stretches().stream().map(work::busyIn).toList());
    assertEquals(Optional.empty(), work(List.of()).crew(0).busiest());
  }

  /** What was in the plan has the time that it had; what wasn't, or stood there twice, its own. */
  @Test
  void timesOfAPlanAreKept() {
    List<Action> planned =
        List.of(
            action(ActionKind.GRIND, "09:20", "coffee-1"),
            action(ActionKind.FILL, "09:53", "coffee-F1"),
            action(ActionKind.FILL, "09:55", "coffee-F1"));
    List<Action> actions =
        List.of(
            action(ActionKind.FILL, "09:54", "coffee-F1"),
            action(ActionKind.GRIND, "09:37", "coffee-1"),
            action(ActionKind.GRIND, "09:10", "coffee-2"),
            action(ActionKind.START, "09:37", "coffee-1"));
    assertEquals(
        List.of(
            "09:10 Grind coffee-2",
            "09:20 Grind coffee-1",
            "09:37 Start coffee-1",
            "09:54 Fill coffee-F1"),
        Handwork.atTimesOf(planned, actions).stream()
            .map(a -> a.at().toLocalTime() + " " + a.kind().words() + " " + a.what())
            .toList());
  }

  private List<String> stretches(List<Action> actions) {
    return work(actions).crew(1).stretches().stream()
        .map(s -> s.from().toLocalTime() + "-" + s.until().toLocalTime() + " " + s.people())
        .toList();
  }

  private List<String> levelled(Water water, List<Action> actions) {
    return new Handwork(event, run.batches(), run.fills(), actions, water)
        .levelled(1).stream().map(action -> action.at().toLocalTime().toString()).toList();
  }

  private Handwork work(List<Action> actions) {
    return new Handwork(event, run.batches(), run.fills(), actions, Water.NONE);
  }

  private static List<Action> times(int times, ActionKind kind, String at, String what) {
    List<Action> actions = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      actions.add(action(kind, at, what));
    }
    return actions;
  }

  private static Action action(ActionKind kind, String at, String what) {
    return new Action(at(at), kind, what, "there", Saying.of("how.warm-up"));
  }

  private static LocalDateTime at(String time) {
    return LocalDate.of(2027, 4, 17).atTime(LocalTime.parse(time));
  }
}
