package dev.urnwright.form;

import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A hidden sheet that remembers what the calculating sheets of a plan showed. Plans are made from
 * the sheets to fill in; what was changed elsewhere must not be lost without a word.
 */
final class Memory {
  private static final String NAME = "Urnwright";
  private static final int SHEET = 1;
  private static final int CELL = 2;
  private static final int VALUE = 3;

  private Memory() {}

  /** Remembers all sheets that there are, and what stands where the user may change it. */
  static void write(XSSFWorkbook workbook) {
    int sheets = workbook.getNumberOfSheets();
    XSSFSheet memory = workbook.createSheet(NAME);
    workbook.setSheetVisibility(sheets, SheetVisibility.HIDDEN);
    int row = 0;
    for (int i = 0; i < sheets; i++) {
      line(memory.createRow(row++), workbook.getSheetName(i), "", "");
    }
    for (int i = 0; i < sheets; i++) {
      Sheet sheet = workbook.getSheetAt(i);
      for (Row cells : sheet) {
        for (org.apache.poi.ss.usermodel.Cell cell : cells) {
          if (!cell.getCellStyle().getLocked() && cell.getCellType() != CellType.FORMULA) {
            line(
                memory.createRow(row++),
                sheet.getSheetName(),
                cell.getAddress().formatAsString(),
                shown(cell));
          }
        }
      }
    }
  }

  static boolean isMemory(Grid grid) {
    return grid.sheet().name().equals(NAME);
  }

  /** Whether a sheet is one that calculates. */
  static boolean knows(Grid memory, Grid other) {
    return memory.rows().values().stream()
        .anyMatch(
            row -> text(row, SHEET).equals(other.sheet().name()) && text(row, CELL).isEmpty());
  }

  /** A problem for each cell that no longer shows what it did. */
  static List<Problem> changes(Grid memory, List<Grid> grids) {
    List<Problem> problems = new ArrayList<>();
    for (Grid grid : grids) {
      for (NavigableMap<Integer, Cell> row : memory.rows().values()) {
        boolean here = text(row, SHEET).equals(grid.sheet().name()) && !grid.tooLong();
        if (here && !text(row, CELL).isEmpty()) {
          change(grid, text(row, CELL), text(row, VALUE)).ifPresent(problems::add);
        }
      }
    }
    return problems;
  }

  private static Optional<Problem> change(Grid grid, String address, String before) {
    CellReference place = new CellReference(address);
    int row = place.getRow() + 1;
    int column = place.getCol() + 1;
    String now = grid.at(row, column).map(Cell::text).orElse("");
    if (now.equals(before)) {
      return Optional.empty();
    }
    return Optional.of(
        new Problem(
            Location.ofCell(grid.file(), grid.sheet(), row, column),
            "here the plan's "
                + (before.isEmpty() ? "empty cell" : before)
                + " was changed to "
                + (now.isEmpty() ? "nothing" : now),
            "expected the change on the sheets whose names begin with My, from which plans are"
                + " made, and here what stood here"));
  }

  private static String shown(org.apache.poi.ss.usermodel.Cell cell) {
    return switch (cell.getCellType()) {
      case NUMERIC ->
          Shown.number(BigDecimal.valueOf(cell.getNumericCellValue()), cell.getCellStyle(), false);
      case BOOLEAN -> cell.getBooleanCellValue() ? "yes" : "no";
      case STRING -> Shown.stripped(cell.getStringCellValue());
      default -> "";
    };
  }

  private static void line(Row row, String sheet, String cell, String value) {
    row.createCell(0).setCellValue(sheet);
    row.createCell(1).setCellValue(cell);
    row.createCell(2).setCellValue(Shown.escaped(value));
  }

  private static String text(NavigableMap<Integer, Cell> row, int column) {
    Cell cell = row.get(column);
    return cell == null ? "" : cell.text();
  }
}
