package dev.urnwright.xlsx;

import dev.urnwright.event.Event;
import dev.urnwright.event.Paper;
import dev.urnwright.xlsx.Styles.Look;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.FontFormatting;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** One sheet of the workbook: its title, its grids, its print set-up and its protection. */
final class Page {
  /** What a check says when nothing is wrong. */
  static final String OK = "ok";

  /** The row of the first item in a grid under the title and the header. */
  static final int FIRST_ITEM = 3;

  private static final int UNITS_PER_CHARACTER = 256;
  private static final float HEADING_POINTS = 26;
  private static final double SPACE = 0.5;
  private static final float POINTS_PER_LINE = 13.5f;

  private final Book book;
  private final XSSFSheet sheet;
  private final List<Integer> widths = new ArrayList<>();

  private Page(Book book, XSSFSheet sheet) {
    this.book = book;
    this.sheet = sheet;
  }

  /** A new last sheet. */
  static Page of(Book book, String name, boolean landscape) {
    Page page = new Page(book, book.workbook().createSheet(name));
    page.setUpPrint(landscape);
    page.protect();
    return page;
  }

  XSSFSheet sheet() {
    return sheet;
  }

  /** Sets the widths of the columns, in characters, from A on. */
  Page widths(List<Integer> characters) {
    widths.addAll(characters);
    for (int i = 0; i < characters.size(); i++) {
      sheet.setColumnWidth(i, characters.get(i) * UNITS_PER_CHARACTER);
    }
    return this;
  }

  /** The sheet's title in row 1 and what it is for in row 2, over all columns. */
  Page title(String title, String explanation) {
    return title(title, explanation, widths.size());
  }

  /** The same over so many columns from A on. */
  Page title(String title, String explanation, int columns) {
    put(0, 0, title, Look.TITLE);
    sheet.getRow(0).setHeightInPoints(24);
    return paragraph(1, explanation, columns);
  }

  /** Words over all columns. */
  Page paragraph(int row, String text) {
    return paragraph(row, text, widths.size());
  }

  private Page paragraph(int row, String text, int columns) {
    put(row, 0, text, Look.EXPLANATION);
    if (columns > 1) {
      sheet.addMergedRegion(new CellRangeAddress(row, row, 0, columns - 1));
    }
    int characters = widths.stream().limit(columns).mapToInt(Integer::intValue).sum();
    sheet.getRow(row).setHeightInPoints(lines(text, characters) * POINTS_PER_LINE + 6);
    return this;
  }

  /** Prints only the first columns; what helps the formulas stands to their right. */
  Page printColumns(int columns) {
    return print(columns, sheet.getLastRowNum() + 1);
  }

  /** Says in red, in row 1, that more rows are in use than are printed. */
  Page warnBeyond(int column, String used, int printed) {
    return warn(column, used + ">" + printed, "More rows than print: widen the print area");
  }

  /** Says something in red, in row 1, when a condition comes true that doesn't hold as planned. */
  Page warn(int column, String condition, String words) {
    XSSFCell cell = row(0).createCell(column);
    cell.setCellStyle(book.styles().of(Look.WARNING));
    cell.setCellFormula("IF(" + condition + ",\"" + words + "\",\"\")");
    cell.setCellValue("");
    return this;
  }

  /** Prints only the first columns and rows. */
  Page print(int columns, int rows) {
    int index = book.workbook().getSheetIndex(sheet);
    book.workbook().setPrintArea(index, 0, columns - 1, 0, rows - 1);
    return this;
  }

  /** A short line of words, as is. */
  Page put(int row, int column, String text, Look look) {
    XSSFCell cell = row(row).createCell(column);
    cell.setCellValue(Words.cell(text));
    cell.setCellStyle(book.styles().of(look));
    return this;
  }

  /** The headers of a grid: a row above the items, or, running across, a column before them. */
  Page header(Grid grid) {
    for (Column column : grid.columns()) {
      if (grid.across()) {
        put(
            grid.row(column.key(), 0),
            grid.firstColumn() - 1,
            column.header(),
            column.isHeading() ? Look.HEADING : Look.LABEL);
        if (column.isHeading()) {
          row(grid.row(column.key(), 0)).setHeightInPoints(HEADING_POINTS);
        }
      } else if (!column.header().isEmpty()) {
        put(grid.firstRow() - 1, grid.columnNumber(column.key(), 0), column.header(), Look.HEADER);
      }
    }
    return this;
  }

  Line line(Entry entry) {
    return new Line(sheet, book.styles(), entry);
  }

  /** Checks that don't say {@link #OK} turn red and bold. */
  Page markChecks(CellRangeAddress cells) {
    var formatting = sheet.getSheetConditionalFormatting();
    String first = new CellReference(cells.getFirstRow(), cells.getFirstColumn()).formatAsString();
    ConditionalFormattingRule rule =
        formatting.createConditionalFormattingRule(
            "AND(" + first + "<>\"\"," + first + "<>\"" + OK + "\")");
    FontFormatting font = rule.createFontFormatting();
    font.setFontColorIndex(IndexedColors.RED.getIndex());
    font.setFontStyle(false, true);
    formatting.addConditionalFormatting(new CellRangeAddress[] {cells}, rule);
    return this;
  }

  /** Keeps rows above and columns left of a cell in sight, and repeats a header row in print. */
  Page freeze(int columns, int rows) {
    sheet.createFreezePane(columns, rows);
    if (rows > 0) {
      sheet.setRepeatingRows(new CellRangeAddress(rows - 1, rows - 1, -1, -1));
    }
    return this;
  }

  /** Makes every row as high as its longest words need. */
  void finish() {
    List<CellRangeAddress> merged = sheet.getMergedRegions();
    for (Row row : sheet) {
      int lines = 1;
      for (Cell cell : row) {
        if (cell.getCellStyle().getWrapText()
            && merged.stream().noneMatch(region -> region.isInRange(cell))) {
          lines = Math.max(lines, lines(shown(cell), widths.get(cell.getColumnIndex())));
        }
      }
      if (lines > 1) {
        row.setHeightInPoints(lines * POINTS_PER_LINE + 3);
      } else if (row.getHeight() == sheet.getDefaultRowHeight()) {
        row.setHeightInPoints(16);
      }
    }
  }

  private static String shown(Cell cell) {
    boolean text =
        cell.getCellType() == CellType.STRING
            || (cell.getCellType() == CellType.FORMULA
                && cell.getCachedFormulaResultType() == CellType.STRING);
    return text ? cell.getStringCellValue() : "";
  }

  /** How many lines the words take, broken between words; some room is left for the indent. */
  private static int lines(String text, int characters) {
    double room = Math.max(1, characters - 1.5);
    int lines = 1;
    double used = 0;
    for (String word : text.split(" ")) {
      double width = TextWidth.of(word);
      if (used > 0 && used + SPACE + width > room) {
        lines++;
        used = 0;
      }
      used += (used > 0 ? SPACE : 0) + width;
      while (used > room) {
        lines++;
        used -= room;
      }
    }
    return lines;
  }

  XSSFRow row(int number) {
    XSSFRow row = sheet.getRow(number);
    return row == null ? sheet.createRow(number) : row;
  }

  private void setUpPrint(boolean landscape) {
    Event event = book.plan().event();
    PrintSetup print = sheet.getPrintSetup();
    print.setPaperSize(
        event.print().paper() == Paper.A4 ? PrintSetup.A4_PAPERSIZE : PrintSetup.LETTER_PAPERSIZE);
    print.setLandscape(landscape);
    print.setFitWidth((short) 1);
    print.setFitHeight((short) 0);
    sheet.setFitToPage(true);
    sheet.setMargin(PageMargin.LEFT, 0.5);
    sheet.setMargin(PageMargin.RIGHT, 0.5);
    sheet.setMargin(PageMargin.TOP, 0.8);
    sheet.setMargin(PageMargin.BOTTOM, 0.7);
    sheet.getHeader().setLeft(Words.foot(event.name()));
    sheet.getHeader().setRight(event.date().map(Object::toString).orElse(""));
    sheet.getFooter().setLeft("&A");
    sheet.getFooter().setRight("Page &P of &N");
  }

  /** No password: it guards against slips, not against people. */
  private void protect() {
    sheet.enableLocking();
    sheet.lockFormatColumns(false);
    sheet.lockFormatRows(false);
    sheet.lockFormatCells(false);
  }
}
