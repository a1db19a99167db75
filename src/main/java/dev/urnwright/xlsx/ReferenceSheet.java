package dev.urnwright.xlsx;

import dev.urnwright.brew.ExtractionCurve.Knot;
import dev.urnwright.event.Brewer;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.schedule.DoseRange;
import dev.urnwright.xlsx.Styles.Look;
import java.util.List;

/** The tables behind the formulas: water, melting, measured extraction, order of filling. */
final class ReferenceSheet {
  static final String RULES = "CountingRules";
  static final String DISPENSERS = "DispenserNames";
  static final String MELTING = "MeltingDegrees";
  static final String MILLIGRAMS = "MilligramsPerUnit";

  /** Coffees are told apart in the table of knots by this much of a ratio each. */
  static final int RATIO_REACH = 10_000;

  /** Planned batches are found by coffee × this + number. */
  static final int BATCH_REACH = 100_000;

  /** More steps than any dose has. */
  static final int NO_DOSE = 1_000_000_000;

  /** A single point holds from a ratio of 0 to this. */
  static final double CONSTANT_TO_RATIO = 1000;

  private final Book book;
  private final Page page;
  private final Layout layout;

  private ReferenceSheet(Book book, Page page) {
    this.book = book;
    this.page = page;
    this.layout = book.layout();
  }

  private static Grid at(int column, Column... columns) {
    return new Grid(Layout.REFERENCE, false, Page.FIRST_ITEM, column, List.of(columns));
  }

  static Grid knots() {
    return at(
        4,
        new Column("coffee", "Coffee", Format.WHOLE, 8),
        new Column("ratio", "Ratio", Format.RATIO, 8),
        new Column("at", "Looked up at", Format.CUPS, 10),
        new Column("extraction", "Extraction", new Format("0.00%"), 10),
        new Column("slope", "Slope, per 1 of ratio", new Format("0.0000%"), 10));
  }

  static Grid ranges() {
    return at(
        10,
        new Column("coffee", "Coffee", Format.TEXT, 16),
        new Column("number", "Its number", Format.WHOLE, 8),
        new Column("brewer", "Brewer", Format.TEXT, 18),
        new Column("least", "Least dose, steps", Format.COUNT, 9),
        new Column("greatest", "Greatest dose, steps; 0: none", Format.COUNT, 10),
        new Column("usable", "Least dose, if usable", Format.COUNT, 10),
        new Column("reach", "Greatest, if the dose reaches its least", Format.COUNT, 10));
  }

  static Grid plannedBatches() {
    return at(
        18,
        new Column("at", "Batch looked up at", Format.WHOLE, 10),
        new Column("unit", "Brewed on, as planned", Format.TEXT, 20),
        new Column("range", "Its row in what a brewer takes", Format.WHOLE, 10),
        new Column("part", "Its part, as planned", new Format("0.0000%"), 10),
        new Column("spare", "Steps brewed to spare", Format.COUNT, 10));
  }

  static Grid order() {
    return at(
        24,
        new Column("group", "Filled in this order: row of the group", Format.WHOLE, 10),
        new Column("coffee", "Coffee", Format.WHOLE, 8),
        new Column("first", "From this fill of the group on", Format.COUNT, 8),
        new Column("upTo", "Up to this one", Format.COUNT, 8),
        new Column("fills", "Fills", Format.COUNT, 8),
        new Column("before", "Fills before it", Format.COUNT, 8));
  }

  private static final int CONSTANTS_COLUMN = 31;

  static void write(Book book) {
    Page page =
        Page.of(book, Layout.REFERENCE, true)
            .widths(
                List.of(
                    11, 13, 13, 3, 8, 8, 10, 10, 10, 3, 16, 8, 18, 9, 10, 10, 10, 3, 10, 20, 10, 10,
                    10, 3, 10, 8, 8, 8, 8, 8, 3, 30, 14))
            .title(
                "Behind the formulas",
                "Density of water: IAPWS Industrial Formulation 1997, region 1, at 101.325 kPa;"
                    + " between two rows a straight line. Extraction between measured points: the"
                    + " monotone cubic of Fritsch and Butland (1984), flat outside them; a single"
                    + " point holds everywhere. Scale steps: what a dose is counted in.");
    new ReferenceSheet(book, page).write();
    page.freeze(0, Page.FIRST_ITEM).finish();
  }

  private void write() {
    page.header(layout.water());
    WaterTable.write(page, layout.water(), book.units());
    WaterTable.name(book, layout.water());
    page.header(layout.knots()).header(layout.plannedBatches()).header(layout.order());
    knotRows();
    if (!book.plan().event().equipment().brewers().isEmpty()) {
      page.header(layout.ranges());
      rangeRows();
    }
    plannedRows();
    orderRows();
    constants();
  }

  private void knotRows() {
    int row = 0;
    for (int i = 0; i < book.plan().coffees().size(); i++) {
      List<Knot> knots = book.plan().brewing(book.plan().coffees().get(i)).curve().knots();
      if (knots.size() == 1) {
        for (double ratio : new double[] {0, CONSTANT_TO_RATIO}) {
          Line line = knot(row++, i, ratio).with("coffee", layout.coffees().entry(i));
          line.formula("extraction", "[coffee.given]", knots.get(0).extraction().fraction())
              .number("slope", 0);
        }
      } else {
        for (Knot knot : knots) {
          knot(row++, i, knot.ratio().gramsPerGram())
              .number("extraction", knot.extraction().fraction())
              .number("slope", knot.slope());
        }
      }
    }
    for (String key : List.of("ratio", "at", "extraction", "slope")) {
      book.name(Extractions.name(key), layout.knots().fullRange(key, 0, row));
    }
  }

  private Line knot(int row, int coffee, double ratio) {
    return page.line(layout.knots().entry(row))
        .number("coffee", coffee + 1)
        .number("ratio", ratio)
        .number("at", (coffee + 1) * RATIO_REACH + ratio);
  }

  private void rangeRows() {
    List<Brewer> brewers = book.plan().event().equipment().brewers();
    int row = 0;
    for (int c = 0; c < book.plan().coffees().size(); c++) {
      CoffeePlan coffee = book.plan().coffees().get(c);
      List<DoseRange> ranges = EquipmentSheet.ranges(book.plan(), coffee);
      double steps = BatchShares.of(book, coffee).steps();
      for (int b = 0; b < brewers.size(); b++) {
        DoseRange range = ranges.get(b);
        double greatest = range.usable() ? range.greatest() : 0;
        String water =
            Formulas.stepsDown("[brewer.water]", Inputs.SCALE_STEP) + "*" + Inputs.SCALE_STEP;
        String held =
            "MAX(0,[brewer.vessel]*"
                + WaterTable.densityAt(Inputs.BYPASS_TEMPERATURE)
                + "-"
                + Inputs.SCALE_STEP
                + ")/[coffee.perDose]";
        String most =
            Formulas.stepsDown(
                "MIN([brewer.greatest],"
                    + water
                    + "/[coffee.ratio],IF([brewer.vessel]=\"\",[brewer.greatest],"
                    + held
                    + "))",
                Inputs.SCALE_STEP);
        page.line(layout.ranges().entry(row++))
            .with("brewer", layout.brewers().entry(b))
            .with("coffee", layout.coffees().entry(c))
            .text("coffee", Words.coffee(coffee.coffee()))
            .number("number", c + 1)
            .text("brewer", brewers.get(b).name())
            .formula("least", Formulas.stepsUp("[brewer.least]", Inputs.SCALE_STEP), range.least())
            .formula(
                "greatest",
                "IF([coffee.perDose]<=0,0,IF(" + most + "<[least],0," + most + "))",
                greatest)
            .formula(
                "reach",
                "IF([least]<=[coffee.steps],[greatest],0)",
                range.least() <= steps ? greatest : 0)
            .formula(
                "usable",
                "IF([greatest]>0,[least]," + NO_DOSE + ")",
                greatest > 0 ? range.least() : NO_DOSE);
      }
    }
    for (String key : List.of("number", "least", "greatest")) {
      book.name(BatchesSheet.range(key), layout.ranges().fullRange(key, 0, row));
    }
  }

  private void plannedRows() {
    List<Brewer> brewers = book.plan().event().equipment().brewers();
    int row = 0;
    for (int c = 0; c < book.plan().coffees().size(); c++) {
      CoffeePlan coffee = book.plan().coffees().get(c);
      for (Batch batch : coffee.batches()) {
        int kind = batch.unit().map(unit -> brewers.indexOf(unit.brewer())).orElse(-1);
        page.line(layout.plannedBatches().entry(row++))
            .number("at", (c + 1) * BATCH_REACH + batch.number())
            .text("unit", batch.unit().map(unit -> unit.label()).orElse("–"))
            .number("range", kind < 0 ? 0 : c * brewers.size() + kind + 1)
            .number("part", book.taken().part(coffee, batch))
            .number("spare", book.taken().spareSteps(coffee, batch));
      }
    }
    for (String key : List.of("at", "unit", "range", "part", "spare")) {
      book.name(BatchesSheet.planned(key), layout.plannedBatches().fullRange(key, 0, row));
    }
  }

  private void orderRows() {
    List<FillOrder.Stretch> order = FillOrder.of(book.plan());
    double before = 0;
    for (int i = 0; i < order.size(); i++) {
      FillOrder.Stretch stretch = order.get(i);
      Line line =
          page.line(layout.order().entry(i))
              .with("service", layout.service().entry(stretch.group()))
              .number("group", stretch.group() + 1)
              .number("coffee", FillOrder.coffee(book.plan(), stretch.group()) + 1)
              .number("first", stretch.first());
      if (stretch.last()) {
        line.blank("upTo").formula("fills", "MAX(0,[service.fills]-[first]+1)", stretch.fills());
      } else {
        line.number("upTo", stretch.first() + stretch.fills() - 1)
            .formula("fills", "MAX(0,MIN([service.fills],[upTo])-[first]+1)", stretch.fills());
      }
      if (i == 0) {
        line.number("before", 0);
      } else {
        line.with("above", layout.order().entry(i - 1))
            .formula("before", "[above.before]+[above.fills]", before);
      }
      before += stretch.fills();
    }
    for (String key : List.of("group", "coffee", "before")) {
      book.name(FillsSheet.order(key), layout.order().fullRange(key, 0, order.size()));
    }
  }

  private void constants() {
    Units units = book.units();
    int row = Page.FIRST_ITEM - 1;
    page.put(row, CONSTANTS_COLUMN, "Constant", Look.HEADER)
        .put(row, CONSTANTS_COLUMN + 1, "Value", Look.HEADER);
    constant(
        ++row,
        "Melting ice cools as much water by, " + units.temperature(),
        MELTING,
        units.meltingDegrees());
    constant(
        ++row, "Water freezes at, " + units.temperature(), WaterTable.FREEZING, units.freezing());
    constant(++row, "Milligrams in 1 " + units.mass(), MILLIGRAMS, units.milligramsPerMass());
    int first = row + 2;
    row++;
    for (InputsSheet.Rule rule : InputsSheet.Rule.values()) {
      page.put(++row, CONSTANTS_COLUMN, rule.words, Look.TEXT);
    }
    book.name(RULES, "'" + Layout.REFERENCE + "'!$AF$" + (first + 1) + ":$AF$" + (row + 1));
  }

  private void constant(int row, String label, String name, double value) {
    page.put(row, CONSTANTS_COLUMN, label, Look.LABEL);
    var cell = page.row(row).createCell(CONSTANTS_COLUMN + 1);
    cell.setCellStyle(book.styles().of(Look.RESULT, new Format("0.00##")));
    cell.setCellValue(value);
    book.name(name, "'" + Layout.REFERENCE + "'!$AG$" + (row + 1));
  }
}
