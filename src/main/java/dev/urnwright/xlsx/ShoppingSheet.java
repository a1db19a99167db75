package dev.urnwright.xlsx;

import dev.urnwright.event.Supply;
import dev.urnwright.event.Supply.Use;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.ShoppingLine;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.Money;
import dev.urnwright.xlsx.Styles.Look;
import java.util.List;
import java.util.Optional;

/** What to buy, with packs, prices and what is on hand to change, and what it comes to. */
final class ShoppingSheet {
  private static final Format ANY = new Format("#,##0.##");
  private static final int USUAL_DECIMALS = 2;

  private final Book book;
  private final Page page;
  private final Grid grid;

  private ShoppingSheet(Book book, Page page) {
    this.book = book;
    this.page = page;
    this.grid = book.layout().shopping();
  }

  static Grid grid(Plan plan) {
    Format money = Format.decimals(decimals(plan));
    return Grid.down(
        Layout.SHOPPING,
        Page.FIRST_ITEM,
        List.of(
            new Column("item", "Item", Format.TEXT, 30),
            new Column("each", "Each takes", ANY, 8),
            new Column("per", "What", Format.TEXT, 10),
            new Column("cup", "Cup", ANY, 7),
            new Column("number", "How many", Format.COUNT, 9),
            new Column("share", "Share of them", Format.SHARE, 8),
            new Column("spare", "Spare", Format.SHARE, 7),
            new Column("amount", "Needed", Format.COUNT, 10),
            new Column("unit", "Unit", Format.TEXT, 9),
            new Column("onHand", "On hand", ANY, 9),
            new Column("bag", "Pack", ANY, 9),
            new Column("bags", "Packs", Format.COUNT, 7),
            new Column("price", "Price of a pack", new Format(money.code() + "##"), 10),
            new Column("cost", "Cost", money, 12),
            new Column("currency", "Currency", Format.TEXT, 9),
            new Column("unpriced", "Without a price", Format.WHOLE, 8)));
  }

  private static int decimals(Plan plan) {
    return plan.costs()
        .map(costs -> Math.max(0, costs.currency().getDefaultFractionDigits()))
        .orElse(USUAL_DECIMALS);
  }

  static void write(Book book) {
    Grid grid = book.layout().shopping();
    Page page =
        Page.of(book, Layout.SHOPPING, true)
            .widths(grid.columns().stream().map(Column::width).toList())
            .title(
                "Shopping",
                "Coffee for all batches, the ice that melts into cups, and supplies: each takes so"
                    + " much, times how many, times the share of them, and the spare. What is on"
                    + " hand is not bought; packs are whole.")
            .header(grid)
            .freeze(1, Page.FIRST_ITEM);
    new ShoppingSheet(book, page).writeAll();
    page.finish();
  }

  private void writeAll() {
    List<ShoppingLine> lines = book.plan().shopping();
    int coffees = book.plan().coffees().size();
    int item = 0;
    for (; item < coffees; item++) {
      coffee(item, lines.get(item));
    }
    List<ShoppingLine> rest = lines.subList(coffees, lines.size());
    if (rest.stream().noneMatch(ShoppingSheet::isAllIce)) {
      ice(item++);
    }
    for (ShoppingLine line : rest) {
      if (line.supply().isPresent()) {
        supply(item++, line, line.supply().get());
      }
    }
    validate(coffees, item);
    int items = item;
    book.plan().costs().ifPresent(costs -> new CostRows(book, page, items).write(costs));
  }

  private static boolean isAllIce(ShoppingLine line) {
    return line.supply().filter(supply -> supply.use() instanceof Use.AllIce).isPresent();
  }

  private void coffee(int item, ShoppingLine shopping) {
    CoffeePlan plan = book.plan().coffees().get(item);
    Line line = page.line(grid.entry(item)).with("coffee", book.layout().coffees().entry(item));
    line.text("item", Words.coffee(plan.coffee()))
        .text("unit", book.units().mass())
        .formula(
            "amount",
            "[coffee.brewedDose]",
            of(shopping.amount()),
            Look.RESULT,
            book.units().weighed());
    List.of("each", "per", "cup", "number", "share", "spare").forEach(line::blank);
    bought(line, shopping);
  }

  /** Ice that nobody listed: it has no price. */
  private void ice(int item) {
    double ice =
        book.plan().coffees().stream()
            .mapToDouble(coffee -> book.units().of(coffee.needed().blend().ice()))
            .sum();
    page.line(grid.entry(item))
        .text("item", "Ice, of drinking water")
        .text("unit", book.units().mass())
        .formula("amount", "SUM(" + CoffeesSheet.all("ice") + ")", ice)
        .formula("unpriced", "IF([amount]>1E-9,1,0)", ice > 0 ? 1 : 0);
  }

  private void supply(int item, ShoppingLine shopping, Supply supply) {
    Line line = page.line(grid.entry(item));
    line.text("item", supply.name())
        .text("per", SupplyNumber.words(supply))
        .text("unit", unit(supply.use().kind()));
    if (supply.use() instanceof Use.Each each) {
      line.input("each", of(each.amount())).input("share", supply.takers().share().fraction());
    } else {
      line.blank("each").blank("share");
    }
    supply
        .takers()
        .cup()
        .ifPresentOrElse(cup -> line.input("cup", book.units().of(cup)), () -> line.blank("cup"));
    line.input("spare", supply.takers().spare());
    boolean counted = supply.use() instanceof Use.Each;
    String needed = (counted ? "[each]*[number]*[share]" : "[number]") + "*(1+[spare])";
    boolean pieces = supply.use().kind() == Amount.Kind.PIECES;
    line.formula(
            "number",
            new SupplyNumber(book).formula(supply),
            counted ? shopping.times() : of(shopping.amount()) / (1 + supply.takers().spare()))
        .formula("amount", pieces ? Formulas.ceiling(needed) : needed, of(shopping.amount()));
    bought(line, shopping);
  }

  private void bought(Line line, ShoppingLine shopping) {
    Optional<ShoppingLine.Packs> packs = shopping.packs();
    Optional<Money> price = packs.flatMap(ShoppingLine.Packs::price);
    line.input("onHand", of(shopping.onHand()))
        .text("currency", price.map(p -> p.currency().getCurrencyCode()).orElse(""));
    packs.ifPresentOrElse(p -> line.input("bag", of(p.size())), () -> line.blankInput("bag"));
    price.ifPresentOrElse(
        p -> line.input("price", p.amount().doubleValue()), () -> line.blankInput("price"));
    Cached cached =
        new Cached(line)
            .formula(
                "bags",
                "IF(SUM([bag])<=0,\"\"," + Formulas.ceiling("MAX(0,[amount]-[onHand])/[bag]") + ")")
            .formula(
                "cost",
                "IF(OR([bags]=\"\",[price]=\"\"),\"\",ROUND([bags]*[price],"
                    + decimals(book.plan())
                    + "))");
    packs.ifPresentOrElse(p -> cached.number("bags", p.count()), () -> cached.text("bags", ""));
    packs
        .flatMap(ShoppingLine.Packs::cost)
        .ifPresentOrElse(
            cost -> cached.number("cost", cost.amount().doubleValue()),
            () -> cached.text("cost", ""));
    line.formula(
        "unpriced",
        "IF(AND([amount]-[onHand]>1E-9,[cost]=\"\"),1,0)",
        shopping.isUnpriced() ? 1 : 0);
  }

  private void validate(int coffees, int items) {
    on("bag", 0, items, Validation.decimal(0.001, 1e7, "A pack: more than 0"));
    on("price", 0, items, Validation.decimal(0, 1e7, "A price: 0 or more"));
    on("onHand", 0, items, Validation.decimal(0, 1e9, "What there is: 0 or more"));
    int supplies = items - coffees;
    if (supplies > 0) {
      on("each", coffees, supplies, Validation.decimal(0, 1e7, "What each takes: 0 or more"));
      on("share", coffees, supplies, Validation.percent(0, 100, "A share"));
      on("spare", coffees, supplies, Validation.percent(0, 1000, "A spare"));
    }
  }

  private void on(String key, int first, int items, Validation validation) {
    validation.on(page.sheet(), grid, key, first, items);
  }

  private String unit(Amount.Kind kind) {
    return switch (kind) {
      case PIECES -> kind.unit();
      case MASS -> book.units().mass();
      case VOLUME -> book.units().volume();
    };
  }

  private double of(Amount amount) {
    return switch (amount.kind()) {
      case PIECES -> amount.value();
      case MASS -> book.units().of(amount.mass());
      case VOLUME -> book.units().of(amount.volume());
    };
  }
}
