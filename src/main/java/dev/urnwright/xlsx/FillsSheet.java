package dev.urnwright.xlsx;

import dev.urnwright.brew.Blend;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Share;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;

/**
 * What to weigh into each dispenser, in the order in which they are filled, with rows to spare.
 *
 * <p>Concentrate is drawn from the batches one after the other. A fill that begins after {@code x}
 * of all concentrate and ends after {@code y} has the solids of the concentrate in between, which
 * the batches' running sums give.
 */
final class FillsSheet {
  private static final int VISIBLE = 15;

  private final Book book;
  private final Page page;
  private final Layout layout;
  private final Units units;

  private FillsSheet(Book book, Page page) {
    this.book = book;
    this.page = page;
    this.layout = book.layout();
    this.units = book.units();
  }

  static Grid grid(Units units) {
    String mass = ", " + units.mass();
    return Grid.down(
        Layout.FILLS,
        Page.FIRST_ITEM,
        List.of(
            new Column("id", "Fill", Format.TEXT, 13),
            new Column("group", "Group", Format.TEXT, 26),
            new Column("coffee", "Coffee", Format.TEXT, 24),
            new Column("dispenser", "Dispenser", Format.TEXT, 18),
            new Column("concentrate", "Concentrate" + mass, units.weighed(), 12),
            new Column("bypass", "Bypass water" + mass, units.weighed(), 10),
            new Column("total", "Together" + mass, units.weighed(), 10),
            new Column("ice", "Ice for it" + mass, units.exact(), 9),
            new Column("volume", "Looks like, " + units.volume(), units.volumes(), 9),
            new Column("full", "Full", new Format("0%"), 7),
            new Column("jug", "Water by jug, " + units.volume(), units.volumes(), 9),
            new Column("strength", "Strength reached", Format.STRENGTH, 10),
            new Column("short", "Cups short", Format.COUNT, 7),
            new Column("check", "Check", Format.TEXT, 22),
            new Column("gap", "", Format.TEXT, 3),
            new Column("row", "Row", Format.WHOLE, 6),
            new Column("place", "Place in the order", Format.WHOLE, 8),
            new Column("groupRow", "Row of the group", Format.WHOLE, 8),
            new Column("coffeeNumber", "Coffee number", Format.WHOLE, 8),
            new Column("filledAt", "Filled at", units.temperatures(), 8),
            new Column("wanted", "Wanted strength", Format.STRENGTH, 9),
            new Column("iceShare", "Ice share", Format.EXTRACTION, 8),
            new Column("plannedConcentrate", "Planned concentrate" + mass, units.weighed(), 11),
            new Column("from", "Drawn from" + mass, units.exact(), 11),
            new Column("to", "Drawn to" + mass, units.exact(), 11),
            new Column("drawnStrength", "Strength drawn", new Format("0.000%"), 9),
            new Column("plannedIce", "Planned ice" + mass, units.exact(), 9),
            new Column("plannedBypass", "Planned bypass" + mass, units.weighed(), 10),
            new Column("reading", "Reading", Format.STRENGTH, 9),
            new Column("forTotal", "Concentrate for the total" + mass, units.weighed(), 11)));
  }

  /** The named range of one figure of all rows. */
  static String all(String key) {
    return "Fill_" + key;
  }

  /** The named range of one figure of the order of filling. */
  static String order(String key) {
    return "Order_" + key;
  }

  static int rows(Plan plan) {
    return new SpareRows(plan.fills().size()).all();
  }

  static void write(Book book) {
    Grid grid = book.layout().fills();
    Page page =
        Page.of(book, Layout.FILLS, true)
            .widths(grid.columns().stream().map(Column::width).toList())
            .title(
                "Fills",
                "What to weigh into each dispenser, in the order of filling. Write the reading of"
                    + " the concentrate into Coffees: a stronger one is thinned further to the same"
                    + " total; of a weaker one the planned amount is taken with less water, which"
                    + " makes fewer cups. Hot: use two hands, keep the path clear."
                    + (book.isTimed()
                        ? " When each is filled stands in Run times and does not follow: after a"
                            + " change, plan again."
                        : ""),
                VISIBLE - 1)
            .header(grid)
            .freeze(1, Page.FIRST_ITEM);
    new FillsSheet(book, page).writeAll();
    int printed = new SpareRows(book.plan().fills().size()).printed();
    page.warnBeyond(VISIBLE - 2, "SUM(" + CoffeesSheet.all("fills") + ")", printed)
        .print(VISIBLE - 1, Page.FIRST_ITEM + printed)
        .finish();
  }

  private void writeAll() {
    Plan plan = book.plan();
    int row = 0;
    int place = 0;
    int coffeeBefore = -1;
    double drawn = 0;
    for (FillOrder.Stretch stretch : FillOrder.of(plan)) {
      int groupRow = stretch.group();
      int coffee = FillOrder.coffee(plan, groupRow);
      if (coffee != coffeeBefore) {
        drawn = beverageBefore(coffee);
        coffeeBefore = coffee;
      }
      for (Fill fill : stretch.of(plan)) {
        used(row++, place, groupRow, coffee, fill, drawn);
        drawn += units.of(fill.blend().concentrate());
      }
      place++;
    }
    int rows = rows(plan);
    while (row < rows) {
      spare(row++);
    }
    for (String key : List.of("plannedConcentrate", "plannedBypass", "check")) {
      book.name(all(key), layout.fills().fullRange(key, 0, rows));
    }
    int checks = layout.fills().columnNumber("check", 0);
    page.markChecks(
        new CellRangeAddress(
            layout.fills().firstRow(), layout.fills().row("check", rows - 1), checks, checks));
  }

  private double beverageBefore(int coffee) {
    return book.plan().coffees().stream()
        .limit(coffee)
        .mapToDouble(coffeePlan -> units.of(book.taken().of(coffeePlan)))
        .sum();
  }

  private void used(int row, int place, int groupRow, int coffee, Fill fill, double drawn) {
    Blend blend = fill.blend();
    GroupPlan group = book.plan().groups().get(groupRow);
    Blend cup = group.cup().blend();
    double iceShare = cup.ice().grams() / cup.finished().grams();
    double concentrate = units.of(blend.concentrate());
    Cached cached = FillFormulas.of(line(row));
    cached
        .number("place", place + 1)
        .number("groupRow", groupRow + 1)
        .number("coffeeNumber", coffee + 1)
        .text("id", fill.id())
        .text("group", fill.groupName())
        .text("coffee", Words.coffee(group.coffee()))
        .text("dispenser", fill.dispenser().map(d -> d.name()).orElse("One vessel of your own"))
        .number("concentrate", concentrate)
        .number("bypass", units.of(blend.bypass()))
        .number("total", units.of(blend.liquid()))
        .number("ice", units.of(blend.ice()))
        .number("volume", units.of(fill.level().volume()))
        .number("jug", units.of(fill.byJug().bypass()))
        .number("strength", blend.strength().fraction())
        .number("short", 0)
        .text("check", Page.OK)
        .number(
            "filledAt",
            units.of(
                group
                    .group()
                    .ice()
                    .map(GuestGroup.OverIce::pouredAt)
                    .orElse(book.plan().event().serving().bypassTemperature())))
        .number("wanted", group.group().strength().fraction())
        .number("iceShare", iceShare)
        .number("plannedConcentrate", concentrate)
        .number("from", drawn)
        .number("to", drawn + concentrate)
        .number("drawnStrength", blend.concentrateStrength().fraction())
        .number("plannedIce", units.of(blend.ice()))
        .number("plannedBypass", units.of(blend.bypass()))
        .number("reading", 0);
    fill.level()
        .full()
        .map(Share::fraction)
        .ifPresentOrElse(full -> cached.number("full", full), () -> cached.text("full", ""));
    cached.text("forTotal", "");
  }

  private void spare(int row) {
    Cached cached = FillFormulas.of(line(row).spare());
    for (Column column : layout.fills().columns()) {
      if (!column.key().equals("row") && !column.key().equals("gap")) {
        cached.text(column.key(), "");
      }
    }
  }

  private Line line(int row) {
    Line line = page.line(layout.fills().entry(row)).number("row", row + 1);
    return row == 0 ? line : line.with("above", layout.fills().entry(row - 1));
  }
}
