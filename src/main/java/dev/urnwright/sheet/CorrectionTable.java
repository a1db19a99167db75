package dev.urnwright.sheet;

import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.OnTheDay.Correction;
import dev.urnwright.plan.OnTheDay.Pour;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.wording.Counted;
import dev.urnwright.wording.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What to weigh into the dispensers of a few groups of one coffee for each likely reading of its
 * concentrate.
 *
 * @param coffee which
 * @param sure how far off a cup may still be then, at k = 2, either way
 * @param groups across
 * @param rows down, weakest reading first
 */
record CorrectionTable(CoffeeTag coffee, Figure sure, List<Column> groups, List<Row> rows) {
  /** What fits across a page in type that is read at arm's length. */
  private static final int LETTERS_ACROSS = 46;

  static List<CorrectionTable> of(Plan plan, Certainty certainty, Display display, Words words) {
    List<CorrectionTable> tables = new ArrayList<>();
    for (CoffeePlan coffee : plan.coffees()) {
      if (!coffee.onTheDay().corrections().isEmpty()) {
        List<Column> columns =
            coffee.groups().stream().map(group -> Column.of(group, display, words)).toList();
        List<Row> rows =
            coffee.onTheDay().corrections().stream()
                .map(row -> Row.of(row, coffee.groups(), display, words))
                .toList();
        for (Columns.Span span : Columns.split(columns.size(), across(rows))) {
          tables.add(
              new CorrectionTable(
                  CoffeeTag.of(coffee.coffee()),
                  display.strength(certainty.of(coffee).afterReading().plusMinus()),
                  span.of(columns),
                  rows.stream().map(row -> row.part(span)).toList()));
        }
      }
    }
    return tables;
  }

  /** Columns of the table: the reading, and two for each group. */
  int across() {
    return 1 + 2 * groups.size();
  }

  private static int across(List<Row> rows) {
    int letters =
        rows.stream()
            .flatMap(row -> row.pours().stream())
            .mapToInt(PourText::letters)
            .max()
            .orElse(1);
    return Math.max(1, Math.min(3, LETTERS_ACROSS / letters));
  }

  /**
   * One group.
   *
   * @param group who
   * @param wanted its strength
   * @param fills how many dispensers take this, all alike
   */
  record Column(Name group, Figure wanted, Counted fills) {
    static Column of(GroupPlan group, Display display, Words words) {
      return new Column(
          new Name(group.group().name()),
          display.strength(group.group().strength()),
          words.count(group.fills().size()));
    }
  }

  /**
   * One reading.
   *
   * @param reading of the concentrate
   * @param planned whether the plan expects it
   * @param pours for each group
   */
  record Row(Figure reading, boolean planned, List<PourText> pours) {
    static Row of(Correction correction, List<GroupPlan> groups, Display display, Words words) {
      return new Row(
          display.strength(correction.reading()),
          correction.planned(),
          IntStream.range(0, groups.size())
              .mapToObj(
                  at -> PourText.of(correction.pours().get(at), groups.get(at), display, words))
              .toList());
    }

    Row part(Columns.Span span) {
      return new Row(reading, planned, span.of(pours));
    }
  }

  /**
   * One dispenser.
   *
   * @param concentrate to weigh in
   * @param bypass to weigh in
   * @param cupsShort how many fewer it makes, when it does
   * @param weaker the strength, when even undiluted it falls short of what the group wants
   */
  record PourText(
      Figure concentrate, Figure bypass, Optional<Counted> cupsShort, Optional<Figure> weaker) {
    /** What no refractometer tells apart, as a fraction. */
    private static final double SAME_STRENGTH = 0.0001;

    static PourText of(Pour pour, GroupPlan group, Display display, Words words) {
      boolean weak =
          pour.strength().fraction() < group.group().strength().fraction() - SAME_STRENGTH
              && pour.bypass().isZero();
      return new PourText(
          display.mass(pour.concentrate()),
          display.mass(pour.bypass()),
          pour.cupsShort() == 0 ? Optional.empty() : Optional.of(words.count(pour.cupsShort())),
          weak ? Optional.of(display.strength(pour.strength())) : Optional.empty());
    }

    int letters() {
      return concentrate.toString().length() + bypass.toString().length();
    }
  }
}
