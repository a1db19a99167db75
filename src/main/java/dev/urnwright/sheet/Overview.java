package dev.urnwright.sheet;

import dev.urnwright.brew.Blend;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.wording.Counted;
import dev.urnwright.wording.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The first sheet: everything at a glance.
 *
 * @param coffees one block each
 * @param groups one row for each coffee of each group
 */
record Overview(List<CoffeeBlock> coffees, List<GroupRow> groups) {
  private static final int FEW = 12;

  /** Whether the groups fit on one page. */
  boolean few() {
    return groups.size() <= FEW;
  }

  static Overview of(Plan plan, Certainty certainty, Display display, Words words) {
    return new Overview(
        plan.coffees().stream()
            .map(coffee -> CoffeeBlock.of(coffee, certainty, display, words))
            .toList(),
        plan.groups().stream()
            .map(group -> GroupRow.of(plan, group, certainty, display, words))
            .toList());
  }

  /**
   * One coffee.
   *
   * @param coffee which
   * @param tiles the big numbers
   * @param went where the brew water went
   * @param ratios by their names
   */
  record CoffeeBlock(CoffeeTag coffee, Tiles tiles, WaterWent went, Ratios ratios) {
    static CoffeeBlock of(CoffeePlan plan, Certainty certainty, Display display, Words words) {
      return new CoffeeBlock(
          CoffeeTag.of(plan.coffee()),
          Tiles.of(plan, display, words),
          WaterWent.of(plan.brewed().brew(), display),
          Ratios.of(plan.needed(), certainty.of(plan).concentrate(), display));
    }
  }

  /**
   * The big numbers, as rounded for the scale.
   *
   * @param dose ground coffee of all batches
   * @param brewWater of all batches
   * @param concentrate what leaves the grounds
   * @param bypass water added in all dispensers
   * @param ice that melts into the cups, when there is any
   * @param counts how many of what
   */
  record Tiles(
      Figure dose,
      Figure brewWater,
      Figure concentrate,
      Figure bypass,
      Optional<Figure> ice,
      Counts counts) {
    /** How wide its figures are: a class of the style sheet. */
    String width() {
      return Widths.ofTiles(Stream.of(dose, brewWater, concentrate, bypass));
    }

    static Tiles of(CoffeePlan plan, Display display, Words words) {
      Blend filled = plan.filled();
      return new Tiles(
          display.mass(plan.brewed().brew().dose()),
          display.mass(plan.brewed().brew().water()),
          display.mass(plan.brewed().brew().beverage()),
          display.mass(filled.bypass()),
          filled.ice().isZero() ? Optional.empty() : Optional.of(display.mass(filled.ice())),
          new Counts(
              plan.batches().size(),
              words.count(plan.fills().size()),
              plan.groups().stream().mapToInt(group -> group.demand().cups()).sum()));
    }
  }

  /**
   * How many of what.
   *
   * @param batches brewed
   * @param fills dispensers filled
   * @param cups poured
   */
  record Counts(int batches, Counted fills, int cups) {}

  /**
   * One coffee of one group.
   *
   * @param name the group's
   * @param coffee which
   * @param cups how many of what size
   * @param strength wanted and reached
   * @param service where and when
   */
  record GroupRow(
      Name name, CoffeeTag coffee, Cups cups, StrengthPair strength, ServiceText service) {
    static GroupRow of(
        Plan plan, GroupPlan group, Certainty certainty, Display display, Words words) {
      return new GroupRow(
          new Name(group.group().name()),
          CoffeeTag.of(group.coffee()),
          new Cups(group.demand().cups(), display.volume(group.group().cup().poured())),
          StrengthPair.of(group, certainty, display, words),
          ServiceText.of(plan.event(), group.group(), words));
    }
  }

  /**
   * Cups.
   *
   * @param count how many
   * @param poured coffee in each
   */
  record Cups(int count, Figure poured) {}
}
