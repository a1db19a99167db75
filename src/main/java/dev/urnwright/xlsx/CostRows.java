package dev.urnwright.xlsx;

import dev.urnwright.event.Purchases.Costing;
import dev.urnwright.plan.Costs;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import dev.urnwright.xlsx.Styles.Look;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFCell;

/** Under the shopping: other costs, the total, and the client's price with its margin to change. */
final class CostRows {
  private final Book book;
  private final Page page;
  private final Grid grid;
  private final int items;
  private final int labels;
  private final int amounts;
  private int row;

  /** Rows under so many items. */
  CostRows(Book book, Page page, int items) {
    this.book = book;
    this.page = page;
    this.grid = book.layout().shopping();
    this.items = items;
    this.labels = grid.columnNumber("item", 0);
    this.amounts = grid.columnNumber("cost", 0);
    this.row = grid.row("cost", items - 1) + 1;
  }

  void write(Costs costs) {
    int firstOther = row;
    for (Costs.Line other : costs.others()) {
      label(other.item(), Look.TEXT);
      cell(Look.INPUT, money()).setCellValue(number(other.cost()));
      Validation.decimal(0, 1e9, "A cost: 0 or more").on(page.sheet(), row, amounts);
      row++;
    }
    String bought = grid.fullRange("cost", 0, items);
    String others = costs.others().isEmpty() ? "" : "+SUM(" + range(firstOther, row - 1) + ")";
    String total =
        formula("Total", Look.TOTAL, "SUM(" + bought + ")" + others, number(costs.total()));
    page.put(
        row - 1, grid.columnNumber("currency", 0), costs.currency().getCurrencyCode(), Look.TOTAL);
    book.name("TotalCost", total);
    String leftOut = leftOut(costs);
    String cups = "SUM(" + groups("cups") + ")";
    formula(
        "Cost per cup planned",
        Look.RESULT,
        "IF(" + cups + "<=0,\"\"," + rounded(total + "/" + cups) + ")",
        number(costs.perCup()));
    book.plan()
        .event()
        .purchases()
        .costing()
        .margin()
        .ifPresent(margin -> quote(costs, margin, total, leftOut));
  }

  /** How many lines must be bought at a price that is not known. */
  private String leftOut(Costs costs) {
    return formula(
        "Lines without a price, left out of it",
        Look.RESULT,
        "SUM(" + grid.fullRange("unpriced", 0, items) + ")",
        costs.leftOut().size(),
        Format.COUNT);
  }

  private void quote(Costs costs, Share margin, String total, String leftOut) {
    Optional<Costs.Quote> quote = costs.quote();
    String share = input("Margin, share of the price", margin);
    String price =
        priced(
            "Price before tax",
            leftOut,
            rounded(total + "/(1-" + share + ")"),
            quote.map(Costs.Quote::price));
    Costing costing = book.plan().event().purchases().costing();
    String due = price;
    if (costing.tax().isPresent()) {
      String rate = input("Tax on it", costing.tax().get());
      String tax =
          priced(
              "Tax",
              leftOut,
              rounded(price + "*" + rate),
              quote.flatMap(Costs.Quote::tax).map(Costs.Tax::amount));
      due = priced("Price", leftOut, price + "+" + tax, quote.map(Costs.Quote::total));
    }
    book.name("Price", due);
  }

  private String input(String label, Share share) {
    label(label, Look.TEXT);
    cell(Look.INPUT, Format.SHARE).setCellValue(share.fraction());
    Validation.percent(0, 95, label).on(page.sheet(), row, amounts);
    return address(row++);
  }

  private String priced(String label, String leftOut, String formula, Optional<Money> planned) {
    label(label, Look.TOTAL);
    XSSFCell cell = cell(Look.TOTAL, money());
    cell.setCellFormula("IF(" + leftOut + ">0,\"\"," + formula + ")");
    planned.ifPresentOrElse(money -> cell.setCellValue(number(money)), () -> cell.setCellValue(""));
    return address(row++);
  }

  private String formula(String label, Look look, String formula, double planned) {
    return formula(label, look, formula, planned, money());
  }

  private String formula(String label, Look look, String formula, double planned, Format format) {
    label(label, look == Look.TOTAL ? Look.TOTAL : Look.TEXT);
    XSSFCell cell = cell(look, format);
    cell.setCellFormula(formula);
    cell.setCellValue(planned);
    return address(row++);
  }

  private void label(String words, Look look) {
    page.put(row, labels, words, look);
    if (look == Look.TOTAL) {
      for (int column = labels + 1; column < amounts; column++) {
        page.put(row, column, "", look);
      }
    }
  }

  private XSSFCell cell(Look look, Format format) {
    XSSFCell cell = page.row(row).createCell(amounts);
    cell.setCellStyle(book.styles().of(look, format));
    return cell;
  }

  private String groups(String key) {
    return book.layout().groups().fullRange(key, 0, book.plan().groups().size());
  }

  private String rounded(String formula) {
    return "ROUND(" + formula + "," + decimals() + ")";
  }

  private int decimals() {
    String code = money().code();
    int point = code.indexOf('.');
    return point < 0 ? 0 : code.length() - point - 1;
  }

  private Format money() {
    return grid.column("cost").format();
  }

  private static double number(Money money) {
    return money.amount().doubleValue();
  }

  private String address(int at) {
    return grid.fullAddress("cost", at - grid.firstRow());
  }

  private String range(int first, int last) {
    return grid.fullRange("cost", first - grid.firstRow(), last - first + 1);
  }
}
