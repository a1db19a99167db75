package dev.urnwright.sheet;

import dev.urnwright.brew.Estimate;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Mass;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The batches of one coffee.
 *
 * @param coffee which
 * @param ratio brew water to dose
 * @param fillingTemperature of the brew water when measured by volume
 * @param batches in order of brewing
 */
record BrewTable(
    CoffeeTag coffee, String ratio, Figure fillingTemperature, List<BatchRow> batches) {
  /** How wide its figures are: a class of the style sheet. */
  String width() {
    return Widths.of(
        batches.stream().flatMap(batch -> Stream.of(batch.pour().water(), batch.beverage())));
  }

  static List<BrewTable> of(Plan plan, Certainty certainty, Display display, Words words) {
    RunTimes times = RunTimes.of(plan, words);
    return plan.coffees().stream()
        .map(coffee -> of(plan, coffee, certainty, times, display))
        .toList();
  }

  private static BrewTable of(
      Plan plan, CoffeePlan coffee, Certainty certainty, RunTimes times, Display display) {
    List<Mass> expected = coffee.printedBeverages(display);
    return new BrewTable(
        CoffeeTag.of(coffee.coffee()),
        display.ratio(coffee.needed().brew().ratio()),
        display.temperature(plan.event().serving().fillingTemperature()),
        IntStream.range(0, coffee.batches().size())
            .mapToObj(
                i ->
                    BatchRow.of(
                        coffee.batches().get(i),
                        display.mass(expected.get(i)),
                        CoffeeTag.of(coffee.coffee()),
                        certainty.of(coffee.batches().get(i)),
                        times,
                        display))
            .toList());
  }

  /**
   * One batch.
   *
   * @param id its name
   * @param coffee which, again on every row
   * @param turn where and when it is brewed, as far as that is known
   * @param pour what to weigh in
   * @param beverage to expect
   * @param strength to expect
   * @param likely from where to where it lies, at k = 2
   */
  record BatchRow(
      String id,
      CoffeeTag coffee,
      Turn turn,
      Pour pour,
      Figure beverage,
      Figure strength,
      Figure likely) {
    static BatchRow of(
        Batch batch,
        Figure beverage,
        CoffeeTag coffee,
        Estimate sure,
        RunTimes times,
        Display display) {
      return new BatchRow(
          batch.id(),
          coffee,
          new Turn(batch.unit().map(unit -> new Name(unit.label())), times.of(batch)),
          new Pour(
              display.mass(batch.brew().dose()),
              display.mass(batch.brew().water()),
              display.volume(batch.waterByVolume())),
          beverage,
          display.strength(batch.brew().strength()),
          display.strengths(sure.low(), sure.high()));
    }
  }

  /**
   * Where and when.
   *
   * @param brewer when the event lists any
   * @param times when the plan has a run
   */
  record Turn(Optional<Name> brewer, Optional<RunTimes.Brewing> times) {}

  /**
   * What to weigh in.
   *
   * @param dose ground coffee
   * @param water brew water
   * @param volume the same by volume
   */
  record Pour(Figure dose, Figure water, Figure volume) {}
}
