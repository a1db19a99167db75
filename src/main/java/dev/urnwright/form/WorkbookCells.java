package dev.urnwright.form;

import dev.urnwright.form.Archive.RefusedException;
import dev.urnwright.input.TableCells;
import dev.urnwright.input.Typed;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A table that stands on a sheet of a workbook. */
public final class WorkbookCells {
  private static final String APPLICATION = "Urnwright";

  /** Wide enough for a name, in 256ths of a letter. */
  private static final int WIDTH = 18 * 256;

  private static final int COLUMNS = 16;

  private WorkbookCells() {}

  /**
   * Reads a table, in a stream and with the same guards as an event's workbook.
   *
   * @param file an .xlsx of 16 MiB at most
   * @param sheet the name of the sheet, whatever the case of its letters; a workbook's only sheet
   *     may have any, for a spreadsheet that opens a .csv calls it after the file
   * @return its cells as they show; or why they aren't read
   */
  public static Checked<TableCells> read(Path file, String sheet) {
    List<Grid> grids;
    try {
      grids = Source.grids(file);
    } catch (RefusedException refused) {
      return Checked.refused(
          List.of(
              new Problem(Location.ofFile(file.toString()), refused.wrong(), refused.expected())));
    }
    Optional<Grid> found =
        grids.stream()
            .filter(grid -> grid.sheet().name().strip().equalsIgnoreCase(sheet))
            .findFirst()
            .or(() -> grids.stream().filter(only -> grids.size() == 1).findFirst());
    if (found.isEmpty()) {
      return Checked.refused(
          List.of(
              new Problem(
                  Location.ofFile(file.toString()),
                  "this workbook has no sheet '" + sheet + "'",
                  "expected the table on a sheet of that name, or on the only one")));
    }
    return cells(found.get());
  }

  /**
   * Writes tables into a workbook, each on a sheet; the first row of each are its headings.
   *
   * @param tables by the names of their sheets
   * @param out where to; left open
   * @throws IOException if {@code out} can't be written to
   */
  public static void write(Map<String, TableCells> tables, OutputStream out) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      FormStyles styles = new FormStyles(workbook);
      tables.forEach((name, table) -> sheet(workbook.createSheet(name), table, styles));
      workbook.getProperties().getExtendedProperties().setApplication(APPLICATION);
      workbook.getProperties().getCoreProperties().setCreator(APPLICATION);
      workbook.write(out);
    }
  }

  private static void sheet(XSSFSheet sheet, TableCells table, FormStyles styles) {
    int number = 0;
    for (SortedMap<Integer, Typed.Text> cells : table.rows()) {
      XSSFRow row = sheet.createRow(number);
      for (Map.Entry<Integer, Typed.Text> cell : cells.entrySet()) {
        XSSFCell filled = row.createCell(cell.getKey() - 1);
        filled.setCellValue(Shown.escaped(cell.getValue().value()));
        filled.setCellStyle(
            styles.of(number == 0 ? FormStyles.Look.HEADING : FormStyles.Look.TEXT));
      }
      number++;
    }
    sheet.createFreezePane(0, 1);
    for (int column = 0; column < COLUMNS; column++) {
      sheet.setColumnWidth(column, WIDTH);
    }
  }

  private static Checked<TableCells> cells(Grid grid) {
    List<Problem> problems = new ArrayList<>();
    if (grid.tooLong()) {
      problems.add(
          new Problem(
              grid.place(),
              "this sheet has more rows than are read",
              "expected " + SheetXml.MOST_ROWS + " at most; a .csv may have more"));
    }
    for (CellRangeAddress range : grid.merged()) {
      problems.add(
          new Problem(
              Location.ofCell(
                  grid.file(), grid.sheet(), range.getFirstRow() + 1, range.getFirstColumn() + 1),
              "these cells are merged",
              "expected a cell for each value; unmerge them"));
    }
    List<SortedMap<Integer, Typed.Text>> rows = new ArrayList<>();
    for (NavigableMap<Integer, Cell> cells : grid.rows().values()) {
      SortedMap<Integer, Typed.Text> row = new TreeMap<>();
      for (Cell cell : cells.values()) {
        switch (cell.kind()) {
          case FORMULA ->
              problems.add(
                  new Problem(
                      grid.place(cell),
                      "here stands a formula",
                      "expected the value itself, typed"));
          case ERROR ->
              problems.add(
                  new Problem(
                      grid.place(cell),
                      "here stands the error " + cell.text(),
                      "expected a value"));
          default -> row.put(cell.column(), new Typed.Text(cell.text(), grid.place(cell)));
        }
      }
      if (!row.isEmpty()) {
        rows.add(row);
      }
    }
    return problems.isEmpty()
        ? Checked.of(new TableCells(grid.place(), rows))
        : Checked.refused(problems);
  }
}
