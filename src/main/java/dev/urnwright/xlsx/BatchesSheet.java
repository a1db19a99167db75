package dev.urnwright.xlsx;

import dev.urnwright.brew.BrewBalance;
import dev.urnwright.brew.ExtractionCurve;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Plan;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;

/**
 * The batches of all coffees, with rows to spare. Each row finds its coffee by the numbers of
 * batches, so that a coffee may need more or fewer of them than planned.
 */
final class BatchesSheet {
  private static final int VISIBLE = 11;

  private static final String EQUAL =
      "What to weigh in, as equal as the scale allows. Batches appear and vanish as the dose asks;"
          + " which brewer brews which one does not follow: it is as planned, and a new batch goes"
          + " to any brewer that is free.";

  private static final String ON_A_CLOCK =
      "What to weigh in. Doses and water follow what the fills take; how many batches there are,"
          + " each one's share of its coffee, its brewer and its time do not: they are as planned."
          + " Red says that a brewer does not take its dose. After a change that matters, plan"
          + " again.";

  private final Book book;
  private final Page page;
  private final Layout layout;
  private final Units units;
  private double takenBefore;
  private double solidsBefore;

  private BatchesSheet(Book book, Page page) {
    this.book = book;
    this.page = page;
    this.layout = book.layout();
    this.units = book.units();
  }

  static Grid grid(Units units) {
    String mass = ", " + units.mass();
    return Grid.down(
        Layout.BATCHES,
        Page.FIRST_ITEM,
        List.of(
            new Column("id", "Batch", Format.TEXT, 14),
            new Column("coffee", "Coffee", Format.TEXT, 24),
            new Column("unit", "Brewer, as planned", Format.TEXT, 20),
            new Column("part", "Share of its coffee, as planned", Format.EXTRACTION, 11),
            new Column("dose", "Dose" + mass, units.weighed(), 12),
            new Column("water", "Brew water" + mass, units.weighed(), 12),
            new Column("byVolume", "Brew water as filled, " + units.volume(), units.volumes(), 13),
            new Column("beverage", "Concentrate to expect" + mass, units.exact(), 13),
            new Column("strength", "Strength to expect", Format.STRENGTH, 11),
            new Column("check", "Check", Format.TEXT, 26),
            new Column("gap", "", Format.TEXT, 3),
            new Column("row", "Row", Format.WHOLE, 6),
            new Column("coffeeNumber", "Coffee number", Format.WHOLE, 8),
            new Column("number", "Number in coffee", Format.WHOLE, 9),
            new Column("planned", "Row as planned", Format.WHOLE, 9),
            new Column("ratio", "Ratio", Format.RATIO, 9),
            new Column("knot", "Measured point", Format.WHOLE, 9),
            new Column("way", "Way to the next", Format.DENSITY, 9),
            new Column("dissolved", "Solids dissolved", new Format("0.00%"), 9),
            new Column("solids", "Solids" + mass, units.exact(), 9),
            new Column("taken", "To be taken from it" + mass, units.exact(), 10),
            new Column("from", "Taken before it" + mass, units.exact(), 12),
            new Column("solidsBefore", "Solids before it" + mass, units.exact(), 10),
            new Column("share", "Strength, 0 if unused", Format.STRENGTH, 9)));
  }

  /** The named range of one figure of all rows. */
  static String all(String key) {
    return "Batch_" + key;
  }

  /** The named range of one figure of the planned batches. */
  static String planned(String key) {
    return "Planned_" + key;
  }

  /** The named range of one figure of what brewers take. */
  static String range(String key) {
    return "Range_" + key;
  }

  static int rows(Plan plan) {
    return new SpareRows(plan.batches().size()).all();
  }

  static void write(Book book) {
    Grid grid = book.layout().batches();
    Page page =
        Page.of(book, Layout.BATCHES, true)
            .widths(grid.columns().stream().map(Column::width).toList())
            .title("Batches", book.isTimed() ? ON_A_CLOCK : EQUAL, VISIBLE - 1)
            .header(grid)
            .freeze(1, Page.FIRST_ITEM);
    BatchesSheet sheet = new BatchesSheet(book, page);
    sheet.writeAll();
    int printed = new SpareRows(book.plan().batches().size()).printed();
    page.warnBeyond(VISIBLE - 2, "SUM(" + CoffeesSheet.all("batches") + ")", printed)
        .print(VISIBLE - 1, Page.FIRST_ITEM + printed)
        .finish();
  }

  private void writeAll() {
    int row = 0;
    int coffee = 0;
    for (CoffeePlan plan : book.plan().coffees()) {
      boolean equal = BatchShares.of(book, plan).equal();
      for (Batch batch : plan.batches()) {
        Cached cached = used(row++, coffee, plan, batch);
        if (equal) {
          cached.text("part", "");
        } else {
          cached.number("part", book.taken().part(plan, batch));
        }
      }
      coffee++;
    }
    int rows = rows(book.plan());
    while (row < rows) {
      spare(row++);
    }
    for (String key :
        List.of(
            "coffeeNumber",
            "dose",
            "water",
            "beverage",
            "solids",
            "from",
            "solidsBefore",
            "share",
            "check")) {
      book.name(all(key), layout.batches().fullRange(key, 0, rows));
    }
    int checks = layout.batches().columnNumber("check", 0);
    page.markChecks(
        new CellRangeAddress(
            layout.batches().firstRow(), layout.batches().row("check", rows - 1), checks, checks));
  }

  private Cached used(int row, int coffee, CoffeePlan plan, Batch batch) {
    BrewBalance brew = batch.brew();
    ExtractionCurve curve = book.plan().brewing(plan).curve();
    double strength = brew.strength().fraction();
    double solids = units.of(brew.solids());
    double taken = units.of(book.taken().of(batch));
    Line line = line(row);
    Cached cached =
        BatchFormulas.of(
            line, !book.plan().event().equipment().brewers().isEmpty(), book.isTimed());
    cached
        .text("id", batch.id())
        .text("coffee", Words.coffee(plan.coffee()))
        .text("unit", batch.unit().map(unit -> unit.label()).orElse("–"))
        .number("dose", units.of(brew.dose()))
        .number("water", units.of(brew.water()))
        .number("byVolume", units.of(batch.waterByVolume()))
        .number("beverage", units.of(brew.beverage()))
        .number("strength", strength)
        .text("check", Page.OK)
        .number("coffeeNumber", coffee + 1)
        .number("number", batch.number())
        .number("planned", row + 1)
        .number("ratio", brew.ratio().gramsPerGram())
        .number("knot", knot(coffee, curve, brew.ratio().gramsPerGram()))
        .number("way", Extractions.wayAt(curve, brew.ratio().gramsPerGram()))
        .number("dissolved", curve.at(brew.ratio()).fraction())
        .number("solids", solids)
        .number("taken", taken)
        .number("from", takenBefore)
        .number("solidsBefore", solidsBefore)
        .number("share", strength);
    takenBefore += taken;
    solidsBefore += taken * strength;
    return cached;
  }

  private int knot(int coffee, ExtractionCurve curve, double ratio) {
    int before =
        book.plan().coffees().stream()
            .limit(coffee)
            .mapToInt(c -> Math.max(2, book.plan().brewing(c).curve().knots().size()))
            .sum();
    return before + 1 + Extractions.pieceAt(curve, ratio);
  }

  private void spare(int row) {
    Cached cached =
        BatchFormulas.of(
            line(row).spare(),
            !book.plan().event().equipment().brewers().isEmpty(),
            book.isTimed());
    for (String key :
        List.of(
            "id",
            "coffee",
            "unit",
            "part",
            "dose",
            "water",
            "byVolume",
            "beverage",
            "strength",
            "check",
            "coffeeNumber",
            "number",
            "planned",
            "ratio",
            "knot",
            "way",
            "dissolved",
            "solids",
            "taken")) {
      cached.text(key, "");
    }
    cached.number("from", takenBefore).number("solidsBefore", solidsBefore).number("share", 0);
  }

  private Line line(int row) {
    Line line = page.line(layout.batches().entry(row)).number("row", row + 1);
    return row == 0 ? line : line.with("above", layout.batches().entry(row - 1));
  }
}
