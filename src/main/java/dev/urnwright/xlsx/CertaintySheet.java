package dev.urnwright.xlsx;

import dev.urnwright.brew.Budget;
import dev.urnwright.brew.Estimate;
import dev.urnwright.event.Window;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Source;
import dev.urnwright.plan.StrengthAccount;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Unit;
import dev.urnwright.xlsx.Styles.Look;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How sure the strengths are. Uncertainties are inputs, and the intervals follow them; how much
 * each of them matters was worked out for the plan as it was made and stays.
 */
final class CertaintySheet {
  static final String NAME = "How sure";

  /** The number of a grid's lines that make up one coffee's budget, whether they matter or not. */
  private static final int SOURCES = Source.values().length;

  private static final Format CONTRIBUTION = new Format("0.000%");
  private static final Format PER_UNIT = new Format("0.0000%");
  private static final Format WHOLE_PERCENT = new Format("0%");
  private static final Format AMOUNT = new Format("0.0##");

  private final Book book;
  private final Page page;
  private final Certainty certainty;
  private final Grid sources;
  private final Grid groups;

  private CertaintySheet(Book book, Page page, Certainty certainty) {
    this.book = book;
    this.page = page;
    this.certainty = certainty;
    int coffees = book.plan().coffees().size();
    this.sources = sources();
    this.groups = groups(Page.FIRST_ITEM + coffees * SOURCES + 3);
  }

  static Grid sources() {
    return Grid.down(
        NAME,
        Page.FIRST_ITEM,
        List.of(
            new Column("coffee", "Coffee", Format.TEXT, 26),
            new Column("what", "What is unsure", Format.TEXT, 36),
            new Column("uncertainty", "Standard uncertainty", AMOUNT, 12),
            new Column("unit", "Unit", Format.TEXT, 7),
            new Column("per", "Strength for each unit", PER_UNIT, 12),
            new Column("contribution", "Strength unsure by it", CONTRIBUTION, 12),
            new Column("part", "Part of it", WHOLE_PERCENT, 9),
            new Column("without", "Without it, ±", Format.STRENGTH, 11)));
  }

  private static Grid groups(int firstRow) {
    return Grid.down(
        NAME,
        firstRow,
        List.of(
            new Column("coffee", "Coffee", Format.TEXT, 26),
            new Column("what", "Group", Format.TEXT, 36),
            new Column("strength", "Wanted strength", Format.STRENGTH, 12),
            new Column("times", "Times", new Format("0.00"), 7),
            new Column("uncertainty", "Standard uncertainty", CONTRIBUTION, 12),
            new Column("low", "Likely from", Format.STRENGTH, 12),
            new Column("high", "to", Format.STRENGTH, 9),
            new Column("chance", "Chance in the window", WHOLE_PERCENT, 11)));
  }

  static void write(Book book) {
    Page page =
        Page.of(book, NAME, true)
            .widths(sources().columns().stream().map(Column::width).toList())
            .title(
                "How sure",
                "Change an uncertainty, and see how much surer the cups become. Two times out of"
                    + " three the truth is nearer than a standard uncertainty. How much each one"
                    + " matters is that of the plan as it was made, for a cup of the group that"
                    + " drinks the most, and does not follow when other inputs change.");
    CertaintySheet sheet = new CertaintySheet(book, page, book.plan().certainty());
    page.header(sheet.sources).header(sheet.groups);
    for (int coffee = 0; coffee < book.plan().coffees().size(); coffee++) {
      sheet.budget(coffee);
    }
    page.put(
        sheet.groups.firstRow() - 2,
        0,
        "Cups of each group, within twice their standard uncertainty (k = 2)",
        Look.HEADING);
    for (int group = 0; group < book.plan().groups().size(); group++) {
      sheet.group(group);
    }
    Validation.decimal(0, 1000, "An uncertainty: 0 or more")
        .on(page.sheet(), sheet.sources, "uncertainty", 0, SOURCES * book.plan().coffees().size());
    page.finish();
  }

  private void budget(int coffee) {
    StrengthAccount account = certainty.of(book.plan().coffees().get(coffee));
    String all = "SUMSQ(" + contributions(coffee) + ")";
    double variance = Math.pow(account.cup().uncertainty(), 2);
    for (Source source : Source.values()) {
      Optional<StrengthAccount.Entry> entry =
          account.entries().stream().filter(each -> each.source() == source).findFirst();
      Line line =
          page.line(sources.entry(coffee * SOURCES + source.ordinal()))
              .text("coffee", Words.coffee(account.group().coffee()))
              .text("what", source.words())
              .text(
                  "unit",
                  source.unit() == Unit.GRAM ? book.units().mass() : source.unit().symbol());
      double amount = entry.map(each -> amount(each)).orElse(0.0);
      double contribution = entry.map(each -> each.contribution().fraction()).orElse(0.0);
      if (entry.isPresent()) {
        line.input("uncertainty", amount);
      } else {
        line.blankInput("uncertainty");
      }
      line.number("per", amount == 0 ? 0 : contribution / amount)
          .formula("contribution", "SUM([uncertainty])*[per]", contribution)
          .formula(
              "part",
              "IF(" + all + "=0,0,[contribution]^2/" + all + ")",
              entry.map(each -> each.share().fraction()).orElse(0.0))
          .formula(
              "without",
              "2*SQRT(MAX(0," + all + "-[contribution]^2))",
              Budget.COVERAGE * Math.sqrt(Math.max(0, variance - contribution * contribution)));
    }
  }

  private double amount(StrengthAccount.Entry entry) {
    return entry.source().unit() == Unit.GRAM
        ? book.units().of(Mass.ofGrams(entry.amount()))
        : entry.amount();
  }

  private void group(int number) {
    GroupPlan group = book.plan().groups().get(number);
    int coffee = FillOrder.coffee(book.plan(), number);
    double ofTheLargest = certainty.of(book.plan().coffees().get(coffee)).cup().uncertainty();
    Window window = book.plan().event().print().window();
    Estimate cup = new Estimate(group.group().strength(), certainty.of(group).uncertainty());
    Line line =
        page.line(groups.entry(number))
            .with("group", book.layout().groups().entry(number))
            .text("coffee", Words.coffee(group.coffee()))
            .text("what", group.group().name())
            .formula("strength", "[group.strength]", cup.strength().fraction())
            .number("times", ofTheLargest == 0 ? 1 : cup.uncertainty() / ofTheLargest)
            .formula(
                "uncertainty",
                "[times]*SQRT(SUMSQ(" + contributions(coffee) + "))",
                cup.uncertainty())
            .formula("low", "MAX(0,[strength]-2*[uncertainty])", cup.low().fraction())
            .formula("high", "MIN(1,[strength]+2*[uncertainty])", cup.high().fraction());
    String from = percent(window.weakest());
    String to = percent(window.strongest());
    line.formula(
        "chance",
        "IF([uncertainty]=0,IF(AND([strength]>="
            + from
            + ",[strength]<="
            + to
            + "),1,0),NORMDIST("
            + to
            + ",[strength],[uncertainty],TRUE)-NORMDIST("
            + from
            + ",[strength],[uncertainty],TRUE))",
        cup.chanceBetween(window.weakest(), window.strongest()));
  }

  /** As a spreadsheet reads it, without the noise of binary fractions. */
  private static String percent(Strength strength) {
    return BigDecimal.valueOf(strength.percent()).setScale(6, RoundingMode.HALF_UP).toPlainString()
        + "%";
  }

  private String contributions(int coffee) {
    return Stream.of(0, SOURCES - 1)
        .map(at -> sources.address("contribution", coffee * SOURCES + at))
        .reduce((first, last) -> first + ":" + last)
        .orElseThrow();
  }
}
