package dev.urnwright.xlsx;

import dev.urnwright.event.Event;
import dev.urnwright.event.Provision;
import dev.urnwright.event.Serving;
import dev.urnwright.event.Window;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.xlsx.Styles.Look;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;

/** What holds for the whole event, and how to use the workbook. */
final class InputsSheet {
  /** What can stand in the cell that says how cups are counted. */
  enum Rule {
    SERVICE_LEVEL("Service level"),
    OVERAGE("Overage"),
    MEAN("Mean");

    final String words;

    Rule(String words) {
      this.words = words;
    }
  }

  static final String WINDOW_WEAKEST = "WindowWeakest";
  static final String WINDOW_STRONGEST = "WindowStrongest";
  static final String WINDOW_LEAST = "WindowLeastExtracted";
  static final String WINDOW_MOST = "WindowMostExtracted";

  private static final String WRONG =
      "("
          + wrong(CoffeesSheet.all("check"), "COLUMNS(" + CoffeesSheet.all("check") + ")")
          + "+"
          + wrong(GroupsSheet.CHECKS, "ROWS(" + GroupsSheet.CHECKS + ")")
          + "+"
          + wrong(DilutionSheet.all("check"), "ROWS(" + DilutionSheet.all("check") + ")")
          + "+"
          + wrong(ServiceSheet.all("check"), "ROWS(" + ServiceSheet.all("check") + ")")
          + "+"
          + wrong(BatchesSheet.all("check"), "SUM(" + CoffeesSheet.all("batches") + ")")
          + "+"
          + wrong(FillsSheet.all("check"), "SUM(" + CoffeesSheet.all("fills") + ")")
          + ")";

  private static final double USUAL_SERVICE_LEVEL = 0.95;
  private static final double USUAL_OVERAGE = 0.1;

  private final Book book;
  private final Page page;
  private int row = 2;

  private InputsSheet(Book book, Page page) {
    this.book = book;
    this.page = page;
  }

  static void write(Book book) {
    Page page = Page.of(book, Layout.INPUTS, false).widths(List.of(34, 15, 8, 52));
    page.title(
        book.plan().event().name(),
        "Change what is shaded and the whole plan follows: cups, dose, brew water, bypass, batches,"
            + " fills, shopping. Nothing else needs to be touched, and the sheets are protected"
            + " against slips only (no password).");
    new InputsSheet(book, page).rows();
    page.finish();
  }

  private void rows() {
    legend();
    Units units = book.units();
    Event event = book.plan().event();
    Serving serving = event.serving();
    heading("Cups");
    XSSFCell rule =
        value(
            "How cups are counted",
            Inputs.PROVISION,
            Format.TEXT,
            "",
            "Service level: enough with that probability. Overage: so much more than the mean. Mean: the mean, rounded up.");
    rule.setCellValue(ruleOf(serving.provision()).words);
    Validation.listed(ReferenceSheet.RULES, "Service level, Overage or Mean")
        .on(page.sheet(), rule.getRowIndex(), 1);
    number(
        "Service level",
        Inputs.SERVICE_LEVEL,
        serviceLevel(serving.provision()),
        Format.SHARE,
        "",
        "The probability that the cups are enough; used when cups are counted by service level.",
        Validation.percent(1, 99.999, "A service level"));
    number(
        "Overage",
        Inputs.OVERAGE,
        overage(serving.provision()),
        Format.SHARE,
        "",
        "On top of the mean; used when cups are counted by overage.",
        Validation.percent(0, 1000, "An overage"));
    number(
        "Spill",
        Inputs.SPILL,
        serving.spill().fraction(),
        Format.SHARE,
        "",
        "Lost on the way to the cup, as a share of what is drunk.",
        Validation.percent(0, 100, "A spill"));

    heading("Temperatures");
    temperature(
        "Served at",
        Inputs.SERVICE_TEMPERATURE,
        units.of(serving.serviceTemperature()),
        "How warm the beverage is in the cup; groups may differ.");
    temperature(
        "Bypass water",
        Inputs.BYPASS_TEMPERATURE,
        units.of(serving.bypassTemperature()),
        "How warm bypass is when measured by volume, and a dispenser when it is filled.");
    temperature(
        "Brew water when filled in",
        Inputs.FILLING_TEMPERATURE,
        units.of(serving.fillingTemperature()),
        "How warm brew water is when it is measured by volume.");

    heading("Scale and jug");
    number(
        "Scale step",
        Inputs.SCALE_STEP,
        units.of(event.equipment().scaleStep()),
        new Format("0.###"),
        units.mass(),
        "What the scale can tell apart; doses and fills are whole steps.",
        Validation.decimal(0.001, 1000, "A scale step above 0 " + units.mass()));
    number(
        "Jug mark",
        Inputs.JUG_MARK,
        units.of(event.equipment().jugMark()),
        new Format("0.###"),
        units.volume(),
        "What the jug can tell apart.",
        Validation.decimal(0.001, 10000, "A jug mark above 0 " + units.volume()));

    Window window = event.print().window();
    heading("Window of the control chart");
    number(
        "Strength from",
        WINDOW_WEAKEST,
        window.weakest().fraction(),
        Format.STRENGTH,
        "",
        "",
        Validation.percent(0, 100, "A strength"));
    number(
        "Strength to",
        WINDOW_STRONGEST,
        window.strongest().fraction(),
        Format.STRENGTH,
        "",
        "",
        Validation.percent(0, 100, "A strength"));
    number(
        "Extraction from",
        WINDOW_LEAST,
        window.leastExtracted().fraction(),
        Format.EXTRACTION,
        "",
        "",
        Validation.percent(0, 100, "An extraction"));
    number(
        "Extraction to",
        WINDOW_MOST,
        window.mostExtracted().fraction(),
        Format.EXTRACTION,
        "",
        "",
        Validation.percent(0, 100, "An extraction"));
    tour();
  }

  private void legend() {
    row++;
    Cell input = page.row(row).createCell(0);
    input.setCellStyle(book.styles().of(Look.INPUT));
    input.setCellValue("Shaded: yours to change");
    page.put(row, 1, "Not shaded: follows from the shaded cells", Look.FORMULA_TEXT);
    page.sheet().addMergedRegion(new CellRangeAddress(row, row, 1, 3));
    row++;
    page.put(row, 0, "All checks", Look.LABEL);
    XSSFCell all = page.row(row).createCell(1);
    all.setCellStyle(book.styles().of(Look.CHECK));
    all.setCellFormula(
        "IF(" + WRONG + "=0,\"" + Page.OK + "\"," + WRONG + "&\" need a look: find what is red\")");
    all.setCellValue(Page.OK);
    page.sheet().addMergedRegion(new CellRangeAddress(row, row, 1, 3));
    page.markChecks(new CellRangeAddress(row, row, 1, 1));
    book.name("AllChecks", "'" + Layout.INPUTS + "'!$B$" + (row + 1));
    row++;
  }

  private void tour() {
    heading("The sheets");
    if (book.isTimed()) {
      page.paragraph(
          ++row,
          "Run and Run times: what is done when, by the clock. They do not follow changes, nor do"
              + " the number of batches and their shares of a coffee: after a change that matters,"
              + " plan again.");
    }
    List.of(
            "Coffees: ratio, extraction, absorption and what each coffee takes. Here goes the reading of the concentrate on the day.",
            "Groups: who drinks how much of what, and the cups planned for them.",
            "Dilution: concentrate, bypass and ice of each group.",
            "Batches and Fills: what to weigh, rounded to the scale. Which brewer brews which batch stays as planned.",
            "Shopping, Chart, Correction (bypass for other readings), Notes, and the tables behind the formulas.")
        .forEach(text -> page.paragraph(++row, text));
    page.paragraph(
        ++row,
        "The last sheets, My event and so on, hold the event as it was typed. What is changed here"
            + " and on the calculating sheets shows what would be; to plan anew (times, batches,"
            + " brewers), change it there and run: urnwright plan THIS-FILE");
  }

  private void heading(String text) {
    row++;
    page.put(row, 0, text, Look.HEADING);
    row++;
  }

  private void temperature(String label, String name, double value, String note) {
    Units units = book.units();
    double boiling = units.of(Temperature.ofCelsius(99.9));
    number(
        label,
        name,
        value,
        units.temperatures(),
        units.temperature(),
        note,
        Validation.decimal(
            units.freezing(), boiling, "A temperature of liquid water in " + units.temperature()));
  }

  private void number(
      String label,
      String name,
      double value,
      Format format,
      String unit,
      String note,
      Validation validation) {
    XSSFCell cell = value(label, name, format, unit, note);
    cell.setCellValue(value);
    validation.on(page.sheet(), cell.getRowIndex(), 1);
  }

  private XSSFCell value(String label, String name, Format format, String unit, String note) {
    page.put(row, 0, label, Look.LABEL);
    XSSFCell cell = page.row(row).createCell(1);
    cell.setCellStyle(book.styles().of(Look.INPUT, format));
    page.put(row, 2, unit, Look.LABEL);
    page.put(row, 3, note, Look.LABEL);
    book.name(name, "'" + Layout.INPUTS + "'!$B$" + (row + 1));
    row++;
    return cell;
  }

  private static String wrong(String checks, String all) {
    return all + "-COUNTIF(" + checks + ",\"" + Page.OK + "\")";
  }

  private static Rule ruleOf(Provision provision) {
    if (provision instanceof Provision.ServiceLevel) {
      return Rule.SERVICE_LEVEL;
    }
    return provision instanceof Provision.Overage ? Rule.OVERAGE : Rule.MEAN;
  }

  private static double serviceLevel(Provision provision) {
    return provision instanceof Provision.ServiceLevel level
        ? level.level().fraction()
        : USUAL_SERVICE_LEVEL;
  }

  private static double overage(Provision provision) {
    return provision instanceof Provision.Overage overage ? overage.extra() : USUAL_OVERAGE;
  }
}
