package dev.urnwright.xlsx;

import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.OnTheDay.Correction;
import dev.urnwright.plan.OnTheDay.Pour;
import dev.urnwright.plan.Plan;
import dev.urnwright.xlsx.Styles.Look;
import java.util.ArrayList;
import java.util.List;

/** For each likely reading of the concentrate: what one dispenser of each group takes. */
final class CorrectionSheet {
  /** Three lines a group. */
  private enum Figure {
    CONCENTRATE("concentrate"),
    WATER("water"),
    SHORT("cups short");

    final String words;

    Figure(String words) {
      this.words = words;
    }
  }

  /** Then the readings stand again, on a page of their own. */
  private static final int GROUPS_ON_A_PAGE = 14;

  private final Book book;
  private final Page page;
  private final Grid grid;
  private int item;

  private CorrectionSheet(Book book, Page page, Grid grid) {
    this.book = book;
    this.page = page;
    this.grid = grid;
  }

  private static int readings(Plan plan) {
    return plan.coffees().stream()
        .mapToInt(coffee -> coffee.onTheDay().corrections().size())
        .max()
        .orElse(0);
  }

  private static Grid grid(Plan plan, Units units) {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("name", "Coffee and group", Format.TEXT, 28));
    columns.add(new Column("what", "In one dispenser", Format.TEXT, 17));
    for (int i = 0; i < readings(plan); i++) {
      columns.add(new Column(reading(i), "", units.weighed(), 9));
    }
    columns.add(new Column("gap", "", Format.TEXT, 3));
    columns.add(new Column("first", "Row of its first fill", Format.WHOLE, 9));
    return Grid.down(Layout.CORRECTION, Page.FIRST_ITEM - 1, columns);
  }

  private static String reading(int i) {
    return "r" + i;
  }

  static void write(Book book) {
    Grid grid = grid(book.plan(), book.units());
    Page page =
        Page.of(book, Layout.CORRECTION, true)
            .widths(grid.columns().stream().map(Column::width).toList())
            .title(
                "Correction",
                "When the concentrate reads otherwise than planned: find its reading, take what"
                    + " stands below it for each dispenser. A reading counts when three in a row"
                    + " agree. Stronger: the same total, thinned further. Weaker: the planned"
                    + " concentrate with less water, for fewer cups.",
                grid.columns().size() - 2);
    new CorrectionSheet(book, page, grid).write();
    page.freeze(2, 0).printColumns(grid.columns().size() - 2).finish();
  }

  private void write() {
    int groupRow = 0;
    for (int c = 0; c < book.plan().coffees().size(); c++) {
      CoffeePlan coffee = book.plan().coffees().get(c);
      Entry readingsRow = readings(coffee, c);
      for (int g = 0; g < coffee.groups().size(); g++) {
        if (g > 0 && g % GROUPS_ON_A_PAGE == 0) {
          page.sheet().setRowBreak(grid.row("name", item) - 1);
          readingsRow = readings(coffee, c);
        }
        group(coffee, g, groupRow++, readingsRow);
      }
      item++;
    }
  }

  private Entry readings(CoffeePlan coffee, int number) {
    Entry entry = grid.entry(item++);
    Line line = page.line(entry).with("coffee", book.layout().coffees().entry(number));
    line.text("name", Words.coffee(coffee.coffee()), Look.HEADING)
        .text("what", "Concentrate reads", Look.HEADER);
    List<Correction> corrections = coffee.onTheDay().corrections();
    int planned = planned(corrections);
    for (int i = 0; i < corrections.size(); i++) {
      line.formula(
          reading(i),
          "MAX(0.0001,(ROUND([coffee.brewedStrength]*10000,0)+" + (i - planned) * 2 + ")/10000)",
          corrections.get(i).reading().fraction(),
          Look.HEADER,
          Format.STRENGTH);
    }
    return entry;
  }

  private static int planned(List<Correction> corrections) {
    for (int i = 0; i < corrections.size(); i++) {
      if (corrections.get(i).planned()) {
        return i;
      }
    }
    throw new IllegalArgumentException("no correction is for the planned reading");
  }

  private void group(CoffeePlan coffee, int g, int groupRow, Entry readingsRow) {
    GroupPlan group = coffee.groups().get(g);
    int place = FillOrder.place(FillOrder.of(book.plan()), groupRow);
    double before = firstFill(place);
    for (Figure figure : Figure.values()) {
      Line line =
          page.line(grid.entry(item++))
              .with("readings", readingsRow)
              .with("dilution", book.layout().dilution().entry(groupRow))
              .with("service", book.layout().service().entry(groupRow))
              .with("order", book.layout().order().entry(place))
              .text("name", figure == Figure.CONCENTRATE ? group.group().name() : "")
              .text(
                  "what", figure.words + (figure == Figure.SHORT ? "" : ", " + book.units().mass()))
              .formula("first", "[order.before]+1", before + 1);
      List<Correction> corrections = coffee.onTheDay().corrections();
      for (int i = 0; i < corrections.size(); i++) {
        Correction correction = corrections.get(i);
        line.formula(
            reading(i),
            "IF(OR([service.fills]=0,[first]>"
                + FillsSheet.rows(book.plan())
                + "),0,"
                + formula(figure, correction.planned(), "[readings." + reading(i) + "]")
                + ")",
            value(figure, correction.pours().get(g)),
            Look.RESULT,
            figure == Figure.SHORT ? Format.COUNT : book.units().weighed());
      }
    }
  }

  private double firstFill(int place) {
    return FillOrder.of(book.plan()).stream().limit(place).mapToInt(FillOrder.Stretch::fills).sum();
  }

  private double value(Figure figure, Pour pour) {
    return switch (figure) {
      case CONCENTRATE -> book.units().of(pour.concentrate());
      case WATER -> book.units().of(pour.bypass());
      case SHORT -> pour.cupsShort();
    };
  }

  private static String formula(Figure figure, boolean planned, String reading) {
    String concentrate = "INDEX(" + FillsSheet.all("plannedConcentrate") + ",[first])";
    String bypass = "INDEX(" + FillsSheet.all("plannedBypass") + ",[first])";
    String liquid = "(" + concentrate + "+" + bypass + ")";
    if (planned) {
      return switch (figure) {
        case CONCENTRATE -> concentrate;
        case WATER -> bypass;
        case SHORT -> "0";
      };
    }
    String step = Inputs.SCALE_STEP;
    String forTotal =
        "MIN("
            + liquid
            + ","
            + Formulas.up(liquid + "/(1-[dilution.iceShare])*[dilution.strength]/" + reading, step)
            + ")";
    String lessWater =
        "MIN("
            + bypass
            + ","
            + Formulas.nearest(
                "MAX(0,"
                    + concentrate
                    + "*"
                    + reading
                    + "/[dilution.strength]*(1-[dilution.iceShare])-"
                    + concentrate
                    + ")",
                step)
            + ")";
    String thinned = forTotal + "<=" + concentrate;
    return switch (figure) {
      case CONCENTRATE -> "MIN(" + forTotal + "," + concentrate + ")";
      case WATER -> "IF(" + thinned + "," + liquid + "-" + forTotal + "," + lessWater + ")";
      case SHORT ->
          "IF("
              + thinned
              + ",0,MAX(0,"
              + cups(liquid)
              + "-"
              + cups("(" + concentrate + "+" + lessWater + ")")
              + "))";
    };
  }

  private static String cups(String liquid) {
    return "INT(MAX(0,"
        + liquid
        + "-[service.heelMass])/([dilution.cupMass]*(1+"
        + Inputs.SPILL
        + ")*(1-[dilution.iceShare]))+1E-9)";
  }
}
