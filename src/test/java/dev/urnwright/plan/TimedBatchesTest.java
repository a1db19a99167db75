package dev.urnwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.event.Event;
import dev.urnwright.plan.DispenserPlan.Limits;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import dev.urnwright.schedule.RunScheduler;
import dev.urnwright.schedule.RunSolution;
import dev.urnwright.schedule.RunSolution.Proof;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The batches of a run, by hand. 20 cups take 2730 g of concentrate; a gram of coffee gives 10.85
 * g. Ready at 9:54, for 10:00 less the usual 3 min to fill and 3 to carry.
 */
class TimedBatchesTest {
  private static final String EVENT =
      """
      event: A generic event
      coffee:
        name: House
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Hall, headcount: 20, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30}
      brewers:
        - {name: Tall, dose: 100 g to 260 g, water: 16 l, cycle: 10 min}
      dispensers:
        - {name: Urn, count: 2, capacity: 6 l, hold: 60 min, pour: 6 cups per minute}
      """;

  @TempDir Path folder;

  /** 25 g in each: eleven batches for 251.6 g, all brewed at once, and told in their order. */
  @Test
  void whatStartsAtOnceIsToldByNumber() throws IOException {
    Run run =
        run(
            EVENT.replace(
                "{name: Tall, dose: 100 g to 260 g", "{name: Tall, count: 11, dose: 10 g to 25 g"));
    assertEquals(1, run.batches().stream().map(Run.BatchTime::start).distinct().count());
    assertEquals(
        IntStream.rangeClosed(1, 11).mapToObj(n -> "coffee-" + n).toList(),
        run.batches().stream().map(time -> time.batch().id()).toList());
  }

  /**
   * Two urns take 5460 g, of 503.2 g of coffee: 255 and 250 g. The first batch gives 2767 g, 37
   * more than its urn takes, a trifle for which nobody opens the other one: that is filled out of
   * the second batch alone, for which 251.6 g are brewed, so 255 g.
   */
  @Test
  void anUrnOutOfOneBatchIsBrewedThatMuchLarger() throws IOException {
    Run run =
        run(
            EVENT
                .replace("{name: Tall,", "{name: Tall, count: 2,")
                .replace(
                    "brewers:",
                    "  - {name: Bar, headcount: 20, cup: 200 ml, strength: 1.25 %,"
                        + " serve: 10:00-10:30}\nbrewers:"));
    assertEquals(
        List.of("Tall 1: 255 g", "Tall 2: 255 g"),
        run.batches().stream()
            .map(Run.BatchTime::batch)
            .map(
                batch ->
                    "%s: %.0f g"
                        .formatted(batch.unit().orElseThrow().label(), batch.brew().dose().grams()))
            .toList());
    assertEquals(
        List.of("[coffee-1]", "[coffee-2]"),
        run.fills().stream()
            .map(time -> time.fill().draws().stream().map(Fill.Draw::batchId).toList().toString())
            .toList());
  }

  /** Whoever is named first: what is ready first goes to those who are served first. */
  @Test
  void theFirstBatchIsForThoseServedFirst() throws IOException {
    Run run =
        run(
            EVENT.replace(
                "groups:\n",
                "groups:\n  - {name: Late, headcount: 20, cup: 200 ml, strength: 1.25 %,"
                    + " serve: 13:00-13:30}\n"));
    assertEquals(
        List.of("Hall 09:54 [coffee-1]", "Late 12:54 [coffee-2]"),
        run.fills().stream()
            .map(
                time ->
                    "%s %s %s"
                        .formatted(
                            time.fill().groupName(),
                            time.filled().toLocalTime(),
                            time.fill().draws().stream().map(Fill.Draw::batchId).toList()))
            .toList());
  }

  /** Decaf at 8, house at 10, decaf at noon and at 2: only at noon was it other coffee before. */
  @Test
  void aBrewerIsRinsedCleanBeforeDecafAlone() throws IOException {
    String coffee =
        "   reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}\n"
            + "   concentrate: {ratio: 13}\n";
    StringBuilder groups = new StringBuilder("groups:\n");
    for (String group : List.of("08 house-decaf", "10 house", "12 house-decaf", "14 house-decaf")) {
      String hour = group.substring(0, 2);
      groups.append(
          " - {name: At %s, headcount: 20, cup: 200 ml, strength: 1.25 %%, coffee: %s, serve: %s:00-%s:30}\n"
              .formatted(hour, group.substring(3), hour, hour));
    }
    Run run =
        run(
            "event: A generic event\ncoffees:\n house:\n   name: House\n"
                + coffee
                + " house-decaf:\n   name: Evening\n"
                + coffee
                + groups
                + EVENT.substring(EVENT.indexOf("brewers:")));
    assertEquals(
        List.of("07:44", "09:44", "11:44; before, rinse the brewer clean of House", "13:44"),
        run.actions().stream()
            .filter(action -> action.kind() == Run.ActionKind.START)
            .map(
                action ->
                    action.at().toLocalTime()
                        + action.detail().replaceAll("^.*ready at \\d\\d:\\d\\d", ""))
            .toList());
  }

  /** Two litres at 92 °C are 1927 g, of 177 g of coffee: 255 g take two batches, not one. */
  @Test
  void noBatchIsLargerThanTheVesselUnderTheBrewer() throws IOException {
    assertEquals(1, run(EVENT).batches().size());
    assertEquals(
        2, run(EVENT.replace("water: 16 l,", "water: 16 l, vessel: 2 l,")).batches().size());
  }

  /**
   * Poured 21 min old on average, 6 at first and 36 at last; where it is only known that no run
   * waits 13,650 g·min less, which is 5 min for each of the 2730 g, it might be 16. Nothing is
   * poured before it is brewed.
   */
  @Test
  void howFreshItMightBe() throws IOException {
    Run.Quality quality = with(2730 * 5).quality();
    assertEquals(Duration.ofMinutes(21), quality.meanAge());
    assertEquals(Duration.ofMinutes(16), quality.meanAgeBound());
    assertEquals(Duration.ZERO, with(2730 * 60).quality().meanAgeBound());
  }

  /** A run of which it is only known that none waits so many gram minutes less. */
  private Run with(double less) throws IOException {
    Event event = new Written(folder).event(EVENT);
    Findings findings = new Findings(event);
    CoffeeModel model = CoffeeModel.read(event.coffees().get(0), findings).orElseThrow();
    List<GroupNeed> needs =
        event.groups().stream()
            .map(group -> GroupNeed.of(event, group, group.coffees().get(0)))
            .toList();
    Map<GroupNeed, Chosen> urns = new DispenserPlan(event, findings, Limits.NONE).choose(needs);
    CoffeeDraft draft = CoffeeDraft.of(event, model, needs, urns, findings).orElseThrow();
    RunPlanner planner =
        new RunPlanner(
            event,
            findings,
            1,
            problem -> RunScheduler.solve(problem).map(solution -> lessProven(solution, less)));
    return planner.finish(List.of(draft)).orElseThrow().run().orElseThrow();
  }

  private static RunSolution lessProven(RunSolution solution, double less) {
    return new RunSolution(
        solution.batches(),
        solution.waitGramMinutes(),
        new Proof(true, false, solution.waitGramMinutes() - less));
  }

  private Run run(String event) throws IOException {
    return new Written(folder).plan(event).run().orElseThrow();
  }
}
