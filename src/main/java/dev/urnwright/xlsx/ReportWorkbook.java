package dev.urnwright.xlsx;

import dev.urnwright.day.MeasuredBatch;
import dev.urnwright.report.EventReport;
import dev.urnwright.report.EventReport.BatchReport;
import dev.urnwright.report.EventReport.CoffeeReport;
import dev.urnwright.report.EventReport.GroupReport;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * What became of an event, as numbers to go on with: grams, percent, cups. Texts are written as
 * texts, whatever they look like.
 */
public final class ReportWorkbook {
  private static final int WIDE = 26 * 256;
  private static final int NARROW = 15 * 256;

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final CellStyle bold = workbook.createCellStyle();

  private ReportWorkbook() {
    Font font = workbook.createFont();
    font.setBold(true);
    bold.setFont(font);
    bold.setWrapText(true);
  }

  /**
   * Writes a sheet of batches and a sheet of groups.
   *
   * @param out where to; left open
   * @throws IOException if {@code out} can't be written to
   */
  public static void write(EventReport report, OutputStream out) throws IOException {
    ReportWorkbook book = new ReportWorkbook();
    try (XSSFWorkbook workbook = book.workbook) {
      workbook
          .getProperties()
          .getExtendedProperties()
          .getUnderlyingProperties()
          .setApplication(PlanWorkbook.APPLICATION);
      book.batches(report);
      book.groups(report);
      workbook.write(out);
    }
  }

  private void batches(EventReport report) {
    Rows rows =
        rows(
            "Batches",
            List.of(
                "Coffee",
                "Batch",
                "Dose planned, g",
                "Dose, g",
                "Brew water planned, g",
                "Brew water, g",
                "Beverage planned, g",
                "Beverage, g",
                "Strength planned, %",
                "Strength, %",
                "Extraction planned, %",
                "Extraction, %",
                "Absorption planned, g/g",
                "Absorption, g/g"));
    for (CoffeeReport coffee : report.coffees()) {
      for (BatchReport batch : coffee.batches()) {
        var plan = batch.planned().brew();
        Optional<MeasuredBatch> was = batch.measured();
        Optional<MeasuredBatch> weighed = was.filter(MeasuredBatch::isBeverageWeighed);
        Optional<MeasuredBatch> read = was.filter(MeasuredBatch::isRead);
        rows.add(
            List.of(coffee.coffee().name(), batch.planned().id()),
            List.of(
                Optional.of(plan.dose().grams()),
                was.map(b -> b.weighed().dose().grams()),
                Optional.of(plan.water().grams()),
                was.map(b -> b.weighed().brewWater().grams()),
                Optional.of(plan.beverage().grams()),
                weighed.map(b -> b.beverage().grams()),
                Optional.of(plan.strength().percent()),
                read.map(b -> b.strength().percent()),
                Optional.of(plan.extraction().percent()),
                read.map(b -> b.extraction().percent()),
                Optional.of(plan.absorption().gramsPerGram()),
                weighed.map(b -> b.absorption().gramsPerGram())));
      }
    }
  }

  private void groups(EventReport report) {
    Rows rows =
        rows(
            "Groups",
            List.of(
                "Coffee",
                "Group",
                "Guests planned",
                "Guests",
                "Cups planned",
                "Cups poured",
                "Came back, g",
                "Coffee in it cost"));
    for (CoffeeReport coffee : report.coffees()) {
      for (GroupReport group : coffee.groups()) {
        var served = group.served();
        rows.add(
            List.of(coffee.coffee().name(), group.group().group().name()),
            List.of(
                Optional.of((double) group.group().group().guests().headcount()),
                served.map(s -> (double) s.guests()),
                Optional.of((double) group.group().demand().cups()),
                served.map(s -> s.cupsPoured()),
                served.map(s -> s.cameBack().grams()),
                served.flatMap(s -> s.cost()).map(money -> money.amount().doubleValue())));
      }
    }
  }

  private Rows rows(String name, List<String> headings) {
    XSSFSheet sheet = workbook.createSheet(name);
    XSSFRow row = sheet.createRow(0);
    for (int i = 0; i < headings.size(); i++) {
      XSSFCell cell = row.createCell(i);
      cell.setCellValue(headings.get(i));
      cell.setCellStyle(bold);
      sheet.setColumnWidth(i, i < 2 ? WIDE : NARROW);
    }
    sheet.createFreezePane(2, 1);
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
    return new Rows(sheet);
  }

  /** Rows of a sheet, two texts and then numbers. */
  private record Rows(XSSFSheet sheet) {
    void add(List<String> texts, List<Optional<Double>> numbers) {
      XSSFRow row = sheet.createRow(sheet.getLastRowNum() + 1);
      int column = 0;
      for (String text : texts) {
        row.createCell(column++).setCellValue(text);
      }
      for (Optional<Double> number : numbers) {
        XSSFCell cell = row.createCell(column++);
        number.map(value -> Math.round(value * 1000) / 1000.0).ifPresent(cell::setCellValue);
      }
    }
  }
}
