package dev.urnwright.xlsx;

import dev.urnwright.event.Window;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.GroupPlan;
import java.util.List;

/**
 * The control chart, drawn from cells: what each coffee extracts and how strong each group's is.
 */
final class ChartSheet {
  private static final int CHART_ROWS = 27;
  private static final int[] RATIOS = {10, 12, 14, 16, 18, 20};

  /** The chart's frame, in percent, made larger when the plan leaves it. */
  record Frame(double leastExtraction, double mostExtraction, double weakest, double strongest) {
    static Frame around(Book book) {
      double least = 14;
      double most = 26;
      double weakest = 0.9;
      double strongest = 1.8;
      for (CoffeePlan coffee : book.plan().coffees()) {
        double extraction = coffee.needed().brew().extraction().percent();
        least = Math.min(least, 2 * Math.floor((extraction - 0.5) / 2));
        most = Math.max(most, 2 * Math.ceil((extraction + 0.5) / 2));
        strongest = Math.max(strongest, coffee.needed().brew().strength().percent() + 0.1);
        for (GroupPlan group : coffee.groups()) {
          weakest = Math.min(weakest, group.group().strength().percent() - 0.05);
        }
      }
      Window window = book.plan().event().print().window();
      weakest = Math.min(weakest, window.weakest().percent() - 0.05);
      strongest = Math.max(strongest, window.strongest().percent() + 0.05);
      return new Frame(
          Math.max(0, least),
          most,
          Math.max(0, Math.floor(weakest * 10) / 10),
          Math.ceil(strongest * 10) / 10);
    }
  }

  private final Book book;
  private final Page page;
  private final Grid points;
  private final Grid lines;

  private ChartSheet(Book book, Page page) {
    this.book = book;
    this.page = page;
    this.points = points();
    this.lines = lines();
  }

  private static Grid points() {
    return Grid.down(
        Layout.CHART,
        Page.FIRST_ITEM + CHART_ROWS,
        List.of(
            new Column("name", "Point", Format.TEXT, 34),
            new Column("coffee", "Coffee", Format.TEXT, 24),
            new Column("extraction", "Extraction", Format.EXTRACTION, 14),
            new Column("strength", "Strength", Format.STRENGTH, 14)));
  }

  /** The ends of the ratio lines and the corners of the window, beside the printed part. */
  private static Grid lines() {
    return new Grid(
        Layout.CHART,
        false,
        Page.FIRST_ITEM,
        5,
        List.of(
            new Column("name", "Line", Format.TEXT, 16),
            new Column("slope", "Extraction over strength", Format.PER_GRAM, 11),
            new Column("x1", "Extraction", Format.EXTRACTION, 10),
            new Column("x2", "to", Format.EXTRACTION, 10),
            new Column("y1", "Strength", Format.STRENGTH, 10),
            new Column("y2", "to", Format.STRENGTH, 10)));
  }

  static void write(Book book) {
    Page page =
        Page.of(book, Layout.CHART, false)
            .widths(List.of(34, 24, 14, 14, 3, 16, 11, 10, 10, 10, 10))
            .title(
                "Control chart",
                "Strength against extraction. Bypass moves a coffee straight down: weaker, and"
                    + " extracted as before. The box is the window of the Inputs sheet; slanted"
                    + " lines are brew ratios, at the absorption of the first coffee.",
                4);
    new ChartSheet(book, page).write();
    page.printColumns(4).finish();
  }

  private void write() {
    Frame frame = Frame.around(book);
    page.header(points).header(lines);
    ControlChart chart = new ControlChart(page.sheet(), frame, CHART_ROWS);
    for (int i = 0; i < RATIOS.length; i++) {
      ratioLine(i, frame);
      chart.ratioLine(lines, i);
    }
    int corners = window();
    chart.window(lines, corners);
    int row = 0;
    for (int c = 0; c < book.plan().coffees().size(); c++) {
      CoffeePlan coffee = book.plan().coffees().get(c);
      int first = row;
      Entry figures = book.layout().coffees().entry(c);
      page.line(points.entry(row++))
          .with("coffee", figures)
          .text("name", "Concentrate of " + Words.coffee(coffee.coffee()))
          .text("coffee", Words.coffee(coffee.coffee()))
          .formula(
              "extraction", "[coffee.extraction]", coffee.needed().brew().extraction().fraction())
          .formula("strength", "[coffee.strength]", coffee.needed().brew().strength().fraction());
      for (GroupPlan group : coffee.groups()) {
        page.line(points.entry(row))
            .with("coffee", figures)
            .with("dilution", book.layout().dilution().entry(row - c - 1))
            .text("name", group.group().name())
            .text("coffee", Words.coffee(coffee.coffee()))
            .formula(
                "extraction", "[coffee.extraction]", coffee.needed().brew().extraction().fraction())
            .formula("strength", "[dilution.strength]", group.group().strength().fraction());
        row++;
      }
      chart.coffee(points, c, first, row - first);
    }
    chart.draw();
  }

  private void ratioLine(int i, Frame frame) {
    CoffeePlan first = book.plan().coffees().get(0);
    double ratio = RATIOS[i];
    double slope =
        Math.max(
            0.1,
            ratio * (1 - first.coffee().profile().steamLoss().fraction())
                - book.plan().brewing(first).absorption().gramsPerGram());
    double low = Math.max(frame.weakest() / 100, frame.leastExtraction() / 100 / slope);
    double high =
        Math.max(low, Math.min(frame.strongest() / 100, frame.mostExtraction() / 100 / slope));
    page.line(lines.entry(i))
        .with("coffee", book.layout().coffees().entry(0))
        .text("name", "1:" + RATIOS[i])
        .formula(
            "slope", "MAX(0.1," + RATIOS[i] + "*(1-[coffee.steam])-[coffee.absorption])", slope)
        .formula(
            "y1",
            "MAX(" + frame.weakest() / 100 + "," + frame.leastExtraction() / 100 + "/[slope])",
            low)
        .formula(
            "y2",
            "MAX([y1],MIN("
                + frame.strongest() / 100
                + ","
                + frame.mostExtraction() / 100
                + "/[slope]))",
            high)
        .formula("x1", "[y1]*[slope]", low * slope)
        .formula("x2", "[y2]*[slope]", high * slope);
  }

  /** Its five corners, the first one twice; x1 and y1 only. */
  private int window() {
    Window window = book.plan().event().print().window();
    String[] x = {
      InputsSheet.WINDOW_LEAST,
      InputsSheet.WINDOW_MOST,
      InputsSheet.WINDOW_MOST,
      InputsSheet.WINDOW_LEAST,
      InputsSheet.WINDOW_LEAST
    };
    String[] y = {
      InputsSheet.WINDOW_WEAKEST,
      InputsSheet.WINDOW_WEAKEST,
      InputsSheet.WINDOW_STRONGEST,
      InputsSheet.WINDOW_STRONGEST,
      InputsSheet.WINDOW_WEAKEST
    };
    for (int i = 0; i < x.length; i++) {
      boolean right = x[i].equals(InputsSheet.WINDOW_MOST);
      boolean top = y[i].equals(InputsSheet.WINDOW_STRONGEST);
      page.line(lines.entry(RATIOS.length + i))
          .text("name", "Window")
          .formula(
              "x1", x[i], (right ? window.mostExtracted() : window.leastExtracted()).fraction())
          .formula("y1", y[i], (top ? window.strongest() : window.weakest()).fraction());
    }
    return RATIOS.length;
  }
}
