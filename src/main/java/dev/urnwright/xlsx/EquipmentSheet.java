package dev.urnwright.xlsx;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Dispenser;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.BrewRatio;
import dev.urnwright.schedule.BatchSplit;
import dev.urnwright.schedule.DoseRange;
import dev.urnwright.xlsx.Styles.Look;
import java.util.List;

/** The brewers and dispensers, and how much of each coffee a brewer takes at once. */
final class EquipmentSheet {
  private static final int ROWS_BETWEEN = 4;

  private final Book book;
  private final Page page;
  private final Layout layout;
  private final Units units;

  private EquipmentSheet(Book book, Page page) {
    this.book = book;
    this.page = page;
    this.layout = book.layout();
    this.units = book.units();
  }

  static Grid brewers(Units units) {
    return Grid.down(
        Layout.EQUIPMENT,
        Page.FIRST_ITEM + 1,
        List.of(
            new Column("name", "Brewer", Format.TEXT, 28),
            new Column("count", "How many", Format.COUNT, 12),
            new Column("least", "Least dose, " + units.mass(), units.weighed(), 12),
            new Column("greatest", "Greatest dose, " + units.mass(), units.weighed(), 12),
            new Column("water", "Greatest brew water, " + units.mass(), units.weighed(), 13),
            new Column("vessel", "Vessel under it, " + units.volume(), units.volumes(), 13)));
  }

  static Grid dispensers(Plan plan, Units units) {
    int brewers = plan.event().equipment().brewers().size();
    return Grid.down(
        Layout.EQUIPMENT,
        brewers(units).firstRow() + Math.max(1, brewers) + ROWS_BETWEEN,
        List.of(
            new Column("name", "Dispenser", Format.TEXT, 28),
            new Column("count", "How many", Format.COUNT, 12),
            new Column("capacity", "Capacity, " + units.volume(), units.volumes(), 12),
            new Column("heel", "Heel, " + units.volume(), units.volumes(), 12)));
  }

  static void write(Book book) {
    Layout layout = book.layout();
    Page page =
        Page.of(book, Layout.EQUIPMENT, false)
            .widths(layout.brewers().columns().stream().map(Column::width).toList())
            .title(
                "Equipment",
                "What there is to brew in and to serve from. A brewer's vessel may be left empty"
                    + " when it holds whatever the brewer brews.");
    new EquipmentSheet(book, page).write();
    page.finish();
  }

  private void write() {
    List<Brewer> brewers = book.plan().event().equipment().brewers();
    List<Dispenser> dispensers = book.plan().event().equipment().dispensers();
    page.put(layout.brewers().firstRow() - 2, 0, "Brewers", Look.HEADING).header(layout.brewers());
    page.put(layout.dispensers().firstRow() - 2, 0, "Dispensers", Look.HEADING)
        .header(layout.dispensers());
    for (int i = 0; i < brewers.size(); i++) {
      write(layout.brewers().entry(i), brewers.get(i));
    }
    for (int i = 0; i < dispensers.size(); i++) {
      write(layout.dispensers().entry(i), dispensers.get(i));
    }
    if (brewers.isEmpty()) {
      page.put(layout.brewers().firstRow(), 0, "None listed: one batch for each coffee", Look.TEXT);
    } else {
      validate(layout.brewers(), brewers.size(), List.of("least", "greatest", "water", "vessel"));
    }
    if (dispensers.isEmpty()) {
      page.put(
          layout.dispensers().firstRow(), 0, "None listed: one vessel for each group", Look.TEXT);
    } else {
      validate(layout.dispensers(), dispensers.size(), List.of("capacity", "heel"));
      book.name(
          ReferenceSheet.DISPENSERS, layout.dispensers().fullRange("name", 0, dispensers.size()));
    }
  }

  private void write(Entry entry, Brewer brewer) {
    Line line =
        page.line(entry)
            .text("name", brewer.name())
            .number("count", brewer.count())
            .input("least", units.of(brewer.leastDose()))
            .input("greatest", units.of(brewer.greatestDose()))
            .input("water", units.of(brewer.greatestWater()));
    brewer
        .vessel()
        .ifPresentOrElse(
            vessel -> line.input("vessel", units.of(vessel)), () -> line.blankInput("vessel"));
  }

  private void write(Entry entry, Dispenser dispenser) {
    page.line(entry)
        .text("name", dispenser.name())
        .input("count", dispenser.count())
        .input("capacity", units.of(dispenser.capacity()))
        .input("heel", units.of(dispenser.heel()));
  }

  private void validate(Grid grid, int items, List<String> keys) {
    keys.forEach(
        key ->
            Validation.decimal(0, 1e7, grid.column(key).header() + ": 0 or more")
                .on(page.sheet(), grid, key, 0, items));
    Validation.whole(0, 10_000, "How many").on(page.sheet(), grid, "count", 0, items);
  }

  /** What each brewer takes of a coffee, in scale steps; as planned. */
  static List<DoseRange> ranges(Plan plan, CoffeePlan coffee) {
    BrewRatio ratio = coffee.needed().brew().ratio();
    return BatchSplit.ranges(
        ratio,
        plan.brewing(coffee).beveragePerDose(ratio),
        plan.event().equipment(),
        plan.event().serving().bypassTemperature());
  }
}
