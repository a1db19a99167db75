package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.quantity.Temperature;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run on the clock, action by action, by hand. */
class RunByHandTest {
  @TempDir Path folder;

  /**
   * At 1:13 a gram of coffee gives 10.85 g of concentrate at 1.787 %. The hall's 20 cups are 3899 g
   * at 75 °C: 2727.5, so 2730 g of concentrate, of 251.6, so 255 g of coffee with 3315 g of water.
   * 2730 g make 3903 g of 1.25 %: 1175 g of water.
   */
  private static final String EVENT =
      """
      event: A generic event
      date: 2027-04-17
      coffee:
        name: House
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Hall, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30, station: Hall}
      brewers:
        - {name: Tall, dose: 100 g to 1.2 kg, water: 16 l, cycle: 10 min}
      dispensers:
        - {name: Urn, capacity: 6 l, hold: 60 min, pour: 6 cups per minute}
      stations:
        - {name: Hall, carry: 4 min}
      kitchen: {turnaround: 2 min, transfer: 3 min, cleaning: 8 min, rinse: 300 ml}
      """;

  /**
   * There at 10:00, carried 4 min, filled 3: ready at 9:53, started at 9:43. On a quarter of an
   * hour before that, ground 6 min and rinsed 2 min before. The urn is rinsed 3 min before it is
   * filled, and emptied an hour after.
   */
  @Test
  void oneBatch() throws IOException {
    assertEquals(
        List.of(
            "09:28 Switch on Tall @ Tall: Switch on and let it warm up",
            "09:37 Grind coffee-1 @ Tall: 255 g of House",
            "09:41 Rinse coffee-1 @ Tall: Filter, with 300 ml of hot water",
            "09:43 Start coffee-1 @ Tall: House: 255 g with 3315 g of water, ready at 09:53",
            "09:50 Preheat coffee-F1 @ Urn: Rinse with hot water, for House",
            "09:53 Fill coffee-F1 @ Urn: House: 2730 g from coffee-1 and 1175 g of hot water",
            "09:56 Carry coffee-F1 @ Hall: Urn of House, first cup at 10:00",
            "10:53 Discard coffee-F1 @ Hall: Pour away what is left in Urn"),
        actions(EVENT));
  }

  /** Where no water is told for it, no filter is rinsed. */
  @Test
  void withoutRinsing() throws IOException {
    List<String> actions = actions(EVENT.replace(", rinse: 300 ml", ""));
    assertTrue(actions.stream().noneMatch(action -> action.contains("Rinse coffee")));
    assertEquals(7, actions.size());
  }

  /** A cup just as warm as wanted is warm enough. */
  @Test
  void asWarmAsWanted() {
    Temperature hot = Temperature.ofCelsius(75);
    assertTrue(new Run.Heat(hot, hot, hot, hot).isWarmEnough());
  }

  /**
   * At noon the only urn is wanted for another coffee: filled at 11:54 (no station: 3 min to
   * carry), preheated 5 min before, washed 8 min and brought 4 min back, so fetched at 11:37 at the
   * latest; and at 10:53 if it holds an hour, for then it would have to be emptied anyway. The
   * brewer is warm by then.
   */
  @Test
  void anUrnThatComesBack() throws IOException {
    String two =
        EVENT
            .replace("coffee:\n  name: House\n", "coffees:\n house:\n  name: House\n")
            .replace("  reference", "   reference")
            .replace("  concentrate", "   concentrate")
            .replace("station: Hall}", "station: Hall, coffee: house}")
            .replace(
                "brewers:",
                "  - {name: Late, headcount: 20, cup: 200 ml, strength: 1.25 %,"
                    + " serve: 12:00-12:30, coffee: OTHER}\nbrewers:");
    two = two.replace(" house:\n  name: House\n", " house:\n   name: House\n");
    String decaf =
        two.replace("OTHER", "house-decaf")
            .replace(
                "groups:",
                " house-decaf:\n   name: Evening\n"
                    + two.substring(two.indexOf("   reference"), two.indexOf("groups:"))
                    + "groups:");
    List<String> actions = actions(decaf);
    assertEquals(
        List.of(
            "10:53 Collect house-F1 @ Hall: Urn: bring back, empty, wash well, Evening (DECAF) comes"
                + " next; refilled at 11:54",
            "11:38 Grind house-decaf-1 @ Tall: 255 g of Evening (DECAF)",
            "11:42 Rinse house-decaf-1 @ Tall: Filter, with 300 ml of hot water",
            "11:44 Start house-decaf-1 @ Tall: Evening (DECAF): 255 g with 3315 g of water, ready"
                + " at 11:54; before, rinse the brewer clean of House",
            "11:51 Preheat house-decaf-F1 @ Urn: Rinse with hot water, for Evening (DECAF)",
            "11:54 Fill house-decaf-F1 @ Urn: Evening (DECAF): 2730 g from house-decaf-1 and 1175 g"
                + " of hot water",
            "11:57 Carry house-decaf-F1 @ Late: Urn of Evening (DECAF), first cup at 12:00",
            "12:54 Discard house-decaf-F1 @ Late: Pour away what is left in Urn"),
        actions.subList(7, actions.size()));
    // of the same coffee it need not be washed well; fetched no sooner than it is empty
    List<String> same = actions(two.replace("OTHER", "house"));
    assertTrue(
        same.contains(
            "10:53 Collect house-F1 @ Hall: Urn: bring back, empty, clean; refilled at 11:54"),
        same.toString());
    List<String> longer =
        actions(two.replace("OTHER", "house").replace("hold: 60 min", "hold: 2 h"));
    assertTrue(
        longer.contains(
            "11:37 Collect house-F1 @ Hall: Urn: bring back, empty, clean; refilled at 11:54"),
        longer.toString());
    // in order of time, whichever coffee stands first
    Run later = run(decaf.replace("10:00-10:30", "15:00-15:30"));
    assertEquals("house-decaf-1", later.batches().get(0).batch().id());
    assertEquals("house-decaf-F1", later.fills().get(0).fill().id());
    List<String> soon =
        actions(two.replace("OTHER", "house").replace("12:00-12:30", "10:51-11:21"));
    assertTrue(
        soon.contains(
            "10:30 Collect house-F1 @ Hall: Urn: bring back, empty, clean; refilled at 10:45"),
        soon.toString());
  }

  /**
   * 150 g at most in the brewer: 255 g take two batches, the second as above, the first emptied and
   * reloaded 2 min before it. 130 g give 1410.5 g, 1410 on a scale of 5 g steps, and 1320 are
   * missing then of 2730.
   */
  @Test
  void anUrnOutOfTwoBatches() throws IOException {
    List<String> actions = actions(EVENT.replace("100 g to 1.2 kg", "100 g to 150 g"));
    assertEquals(
        List.of(
            "09:16 Switch on Tall @ Tall: Switch on and let it warm up",
            "09:25 Grind coffee-1 @ Tall: 130 g of House",
            "09:29 Rinse coffee-1 @ Tall: Filter, with 300 ml of hot water",
            "09:31 Start coffee-1 @ Tall: House: 130 g with 1690 g of water, ready at 09:41",
            "09:37 Grind coffee-2 @ Tall: 125 g of House",
            "09:38 Preheat coffee-F1 @ Urn: Rinse with hot water, for House",
            "09:41 Rinse coffee-2 @ Tall: Filter, with 300 ml of hot water",
            "09:41 Fill coffee-F1 @ Urn: House: draw 1410 g from coffee-1; the rest comes at 09:53",
            "09:43 Start coffee-2 @ Tall: House: 125 g with 1625 g of water, ready at 09:53",
            "09:53 Fill coffee-F1 @ Urn: House: 1320 g more from coffee-2, to 2730 g in all, and"
                + " 1175 g of hot water",
            "09:56 Carry coffee-F1 @ Hall: Urn of House, first cup at 10:00",
            "10:41 Discard coffee-F1 @ Hall: Pour away what is left in Urn"),
        actions);
  }

  /**
   * 60 cups in 5 min are 12 a minute, two taps of 6. 30 cups are 5849 g, of 4091, so 4095 g of
   * concentrate, which make 5855 g: 1760 of water. 8190 g take 754.8 g of coffee.
   */
  @Test
  void sideBySide() throws IOException {
    List<String> actions =
        actions(
            EVENT
                .replace("headcount: 20", "headcount: 60")
                .replace("10:00-10:30", "10:00-10:05")
                .replace("{name: Urn,", "{name: Urn, count: 5,")
                .replace("capacity: 6 l", "capacity: 6.5 l"));
    assertEquals(
        List.of(
            "09:28 Switch on Tall @ Tall: Switch on and let it warm up",
            "09:37 Grind coffee-1 @ Tall: 755 g of House",
            "09:41 Rinse coffee-1 @ Tall: Filter, with 300 ml of hot water",
            "09:43 Start coffee-1 @ Tall: House: 755 g with 9815 g of water, ready at 09:53",
            "09:50 Preheat coffee-F1 @ Urn 1: Rinse with hot water, for House",
            "09:50 Preheat coffee-F2 @ Urn 2: Rinse with hot water, for House",
            "09:53 Fill coffee-F1 @ Urn 1: House: 4095 g from coffee-1 and 1760 g of hot water",
            "09:53 Fill coffee-F2 @ Urn 2: House: 4095 g from coffee-1 and 1760 g of hot water",
            "09:56 Carry coffee-F1 @ Hall: Urn 1 of House, first cup at 10:00; tap 1 of 2",
            "09:56 Carry coffee-F2 @ Hall: Urn 2 of House, first cup at 10:00; tap 2 of 2",
            "10:53 Discard coffee-F1 @ Hall: Pour away what is left in Urn 1",
            "10:53 Discard coffee-F2 @ Hall: Pour away what is left in Urn 2"),
        actions);
  }

  /**
   * Iced coffee cools for an hour in a vessel of the group's own, and is poured away when the last
   * is served: ready at 10:00 less 3, 3 and 60 min. 4000 g at 5 °C take 2798, so 2800 g, of 258 g
   * of coffee; they make 4003 g, of which 4.186 · 20 / (333.55 + 4.186 · 25), 19.1 %, are ice: 438
   * g of water.
   */
  @Test
  void icedInAVesselOfItsOwn() throws IOException {
    String iced =
        EVENT
            .replace("station: Hall}", "over_ice: {poured_at: 25 °C, served_at: 5 °C}}")
            .replaceAll("(?ms)^dispensers:.*?^stations:", "stations:");
    List<String> actions = actions(iced);
    assertEquals(Duration.ZERO, run(iced).quality().meanAge()); // it is meant to stand
    assertEquals(Duration.ZERO, run(iced).quality().greatestAge());
    assertEquals(
        List.of(
            "08:29 Switch on Tall @ Tall: Switch on and let it warm up",
            "08:38 Grind coffee-1 @ Tall: 260 g of House",
            "08:42 Rinse coffee-1 @ Tall: Filter, with 300 ml of hot water",
            "08:44 Start coffee-1 @ Tall: House: 260 g with 3380 g of water, ready at 08:54",
            "08:54 Fill coffee-F1 @ Vessel for Hall: House: 2800 g from coffee-1 and 440 g of cold"
                + " water; cool it, the ice comes in the cups",
            "09:57 Carry coffee-F1 @ Hall: Vessel for Hall of House, first cup at 10:00",
            "10:30 Discard coffee-F1 @ Hall: Pour away what is left in Vessel for Hall"),
        actions);
  }

  /**
   * Out of the urn from 9:53 on, poured from 10:00 to 10:30: 22 min old on average, 37 at most.
   * Concentrate of 88 °C, bypass and a rinsed urn of 480 g water equivalent at 92: 89.5 °C; 5 K
   * less after an hour, in 37 min 86.4.
   */
  @Test
  void howFreshAndHowWarm() throws IOException {
    Run run = run(EVENT);
    assertEquals(Duration.ofMinutes(22), run.quality().meanAge());
    assertEquals(Duration.ofMinutes(22), run.quality().meanAgeBound());
    assertEquals(Duration.ofMinutes(37), run.quality().greatestAge());
    assertTrue(run.quality().fewestBatches() && run.quality().leastAge());
    Run.FillTime urn = run.fills().get(0);
    Run.Heat heat = urn.heat().orElseThrow();
    assertEquals(89.5097, heat.filled().celsius(), 1e-3);
    assertEquals(86.3824, heat.lastPour().celsius(), 1e-3);
    assertTrue(heat.isWarmEnough());
    assertEquals("tap 1 of 1", urn.tap().toString());
    // 1410.5 g from 9:41 and 1319.5 from 9:53: (1410.5 · 34 + 1319.5 · 22) / 2730 = 28.2 min
    Run two = run(EVENT.replace("100 g to 1.2 kg", "100 g to 150 g"));
    assertEquals(Duration.ofSeconds(28 * 60 + 12), two.quality().meanAge());
    assertEquals(Duration.ofSeconds(28 * 60 + 12), two.quality().meanAgeBound());
    assertEquals(Duration.ofMinutes(49), two.quality().greatestAge());
    assertEquals("10:53", urn.useBy().toLocalTime().toString());
  }

  private List<String> actions(String event) throws IOException {
    return run(event).actions().stream()
        .map(
            action ->
                "%s %s %s @ %s: %s"
                    .formatted(
                        action.at().toLocalTime(),
                        action.kind().words(),
                        action.what(),
                        action.where(),
                        action.detail()))
        .map(text -> text.replace('\u00a0', ' '))
        .toList();
  }

  private Run run(String event) throws IOException {
    return new Written(folder).plan(event).run().orElseThrow();
  }
}
