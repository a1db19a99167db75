package dev.urnwright.sheet;

import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import java.util.List;
import java.util.Optional;
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

  static List<BrewTable> of(Plan plan, Display display) {
    return plan.coffees().stream().map(coffee -> of(plan, coffee, display)).toList();
  }

  private static BrewTable of(Plan plan, CoffeePlan coffee, Display display) {
    return new BrewTable(
        CoffeeTag.of(coffee.coffee()),
        display.ratio(coffee.needed().brew().ratio()),
        display.temperature(plan.event().serving().fillingTemperature()),
        coffee.batches().stream()
            .map(batch -> BatchRow.of(batch, CoffeeTag.of(coffee.coffee()), display))
            .toList());
  }

  /**
   * One batch.
   *
   * @param id its name
   * @param coffee which, again on every row
   * @param brewer where it is brewed, when the event says
   * @param pour what to weigh in
   * @param beverage to expect
   * @param strength to expect
   */
  record BatchRow(
      String id,
      CoffeeTag coffee,
      Optional<Name> brewer,
      Pour pour,
      Figure beverage,
      Figure strength) {
    static BatchRow of(Batch batch, CoffeeTag coffee, Display display) {
      return new BatchRow(
          batch.id(),
          coffee,
          batch.unit().map(unit -> new Name(unit.label())),
          new Pour(
              display.mass(batch.brew().dose()),
              display.mass(batch.brew().water()),
              display.volume(batch.waterByVolume())),
          display.mass(batch.brew().beverage()),
          display.strength(batch.brew().strength()));
    }
  }

  /**
   * What to weigh in.
   *
   * @param dose ground coffee
   * @param water brew water
   * @param volume the same by volume
   */
  record Pour(Figure dose, Figure water, Figure volume) {}
}
