package dev.urnwright.sheet;

import dev.urnwright.brew.Estimate;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.OnTheDay.Rung;
import dev.urnwright.plan.OnTheDay.TasteLadder;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.wording.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * Bypass by taste, for a few groups of one coffee.
 *
 * @param coffee which
 * @param sample concentrate to start from
 * @param step water for each rung
 * @param expected strength and extraction that the strengths assume
 * @param groups across
 * @param rungs down
 */
record LadderTable(
    CoffeeTag coffee,
    Figure sample,
    Figure step,
    Expected expected,
    List<CorrectionTable.Column> groups,
    List<RungRow> rungs) {
  private static final int GROUPS_ACROSS = 4;

  static List<LadderTable> of(Plan plan, Certainty certainty, Display display, Words words) {
    List<LadderTable> tables = new ArrayList<>();
    for (CoffeePlan coffee : plan.coffees()) {
      if (!coffee.onTheDay().ladder().rungs().isEmpty()) {
        for (Columns.Span span : Columns.split(coffee.groups().size(), GROUPS_ACROSS)) {
          tables.add(of(coffee, span, certainty.of(coffee).concentrate(), display, words));
        }
      }
    }
    return tables;
  }

  /** Columns of the table: the sample's water and strength, and one for each group. */
  int across() {
    return 2 + groups.size();
  }

  private static LadderTable of(
      CoffeePlan coffee, Columns.Span span, Estimate batch, Display display, Words words) {
    TasteLadder ladder = coffee.onTheDay().ladder();
    return new LadderTable(
        CoffeeTag.of(coffee.coffee()),
        display.mass(ladder.sample()),
        display.mass(ladder.step()),
        new Expected(
            display.strength(coffee.needed().brew().strength()),
            display.strengths(batch.low(), batch.high()),
            display.extraction(coffee.needed().brew().extraction())),
        span.of(coffee.groups()).stream()
            .map(group -> CorrectionTable.Column.of(group, display, words))
            .toList(),
        ladder.rungs().stream().map(rung -> RungRow.of(rung, span, display)).toList());
  }

  /**
   * The concentrate that the plan expects.
   *
   * @param strength of it
   * @param likely from where to where that of a batch lies, at k = 2
   * @param extraction of it
   */
  record Expected(Figure strength, Figure likely, Figure extraction) {}

  /**
   * One rung.
   *
   * @param water in the sample so far
   * @param strength to expect
   * @param bypass for one dispenser of each group
   */
  record RungRow(Figure water, Figure strength, List<Figure> bypass) {
    static RungRow of(Rung rung, Columns.Span span, Display display) {
      return new RungRow(
          display.mass(rung.water()),
          display.strength(rung.strength()),
          span.of(rung.bypass()).stream().map(display::mass).toList());
    }
  }
}
