package dev.urnwright.xlsx;

import dev.urnwright.event.Coffee;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Money;
import dev.urnwright.xlsx.Styles.Look;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What to buy, with bags and prices to change. */
final class ShoppingSheet {

  private ShoppingSheet() {}

  static Grid grid(Units units) {
    return Grid.down(
        Layout.SHOPPING,
        Page.FIRST_ITEM,
        List.of(
            new Column("item", "Item", Format.TEXT, 32),
            new Column("amount", "Needed, " + units.mass(), units.weighed(), 12),
            new Column("bag", "Bag, " + units.mass(), units.weighed(), 11),
            new Column("bags", "Bags", Format.COUNT, 8),
            new Column("price", "Price of a bag", Format.MONEY, 12),
            new Column("cost", "Cost", Format.MONEY, 13),
            new Column("currency", "Currency", Format.TEXT, 10)));
  }

  static void write(Book book) {
    Grid grid = book.layout().shopping();
    Plan plan = book.plan();
    Page page =
        Page.of(book, Layout.SHOPPING, false)
            .widths(grid.columns().stream().map(Column::width).toList())
            .title("Shopping", "Coffee for all batches, and the ice that melts into cups.")
            .header(grid)
            .freeze(1, Page.FIRST_ITEM);
    int coffees = plan.coffees().size();
    for (int i = 0; i < coffees; i++) {
      coffee(book, page.line(grid.entry(i)), i);
    }
    ice(book, page.line(grid.entry(coffees)));
    Validation.decimal(0.001, 1e7, "A bag: more than 0 " + book.units().mass())
        .on(page.sheet(), grid, "bag", 0, coffees);
    Validation.decimal(0, 1e7, "A price: 0 or more").on(page.sheet(), grid, "price", 0, coffees);
    total(book, page, grid, coffees);
    page.finish();
  }

  private static void coffee(Book book, Line line, int item) {
    CoffeePlan plan = book.plan().coffees().get(item);
    Optional<Coffee.Bag> bag = plan.coffee().bag();
    Optional<ShoppingLine.Packs> packs = book.plan().shopping().get(item).packs();
    Optional<Money> price = bag.flatMap(Coffee.Bag::price);
    line.with("coffee", book.layout().coffees().entry(item))
        .text("item", Words.coffee(plan.coffee()))
        .formula("amount", "[coffee.brewedDose]", book.units().of(plan.brewed().brew().dose()))
        .text("currency", price.map(p -> p.currency().getCurrencyCode()).orElse(""));
    bag.ifPresentOrElse(
        b -> line.input("bag", book.units().of(b.size())), () -> line.blankInput("bag"));
    price.ifPresentOrElse(
        p -> line.input("price", p.amount().doubleValue()), () -> line.blankInput("price"));
    Cached cached =
        new Cached(line)
            .formula("bags", "IF(SUM([bag])<=0,\"\"," + Formulas.ceiling("[amount]/[bag]") + ")")
            .formula("cost", "IF(OR([bags]=\"\",[price]=\"\"),\"\",[bags]*[price])");
    packs.ifPresentOrElse(p -> cached.number("bags", p.count()), () -> cached.text("bags", ""));
    packs
        .flatMap(ShoppingLine.Packs::cost)
        .ifPresentOrElse(
            cost -> cached.number("cost", cost.amount().doubleValue()),
            () -> cached.text("cost", ""));
  }

  private static void ice(Book book, Line line) {
    double ice =
        book.plan().coffees().stream()
            .mapToDouble(coffee -> book.units().of(coffee.needed().blend().ice()))
            .sum();
    line.text("item", "Ice, of drinking water")
        .formula("amount", "SUM(" + CoffeesSheet.all("ice") + ")", ice);
  }

  /** Amounts of different currencies don't add. */
  private static void total(Book book, Page page, Grid grid, int coffees) {
    List<Money> costs =
        book.plan().shopping().stream()
            .flatMap(line -> line.packs().flatMap(ShoppingLine.Packs::cost).stream())
            .toList();
    if (costs.stream().map(Money::currency).distinct().count() != 1) {
      return;
    }
    int row = grid.row("cost", coffees) + 1;
    page.put(row, 0, "Total", Look.TOTAL);
    Stream.of(1, 2, 3, 4).forEach(column -> page.put(row, column, "", Look.TOTAL));
    var cell = page.row(row).createCell(grid.columnNumber("cost", 0));
    cell.setCellStyle(book.styles().of(Look.TOTAL, Format.MONEY));
    cell.setCellFormula("SUM(" + grid.fullRange("cost", 0, coffees) + ")");
    cell.setCellValue(costs.stream().mapToDouble(cost -> cost.amount().doubleValue()).sum());
    page.put(
        row,
        grid.columnNumber("currency", 0),
        costs.get(0).currency().getCurrencyCode(),
        Look.TOTAL);
    book.name("TotalCost", "'" + Layout.SHOPPING + "'!$F$" + (row + 1));
  }
}
