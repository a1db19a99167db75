package dev.urnwright.form;

import dev.urnwright.form.Archive.RefusedException;
import dev.urnwright.input.TableCells;
import dev.urnwright.input.Typed;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellRangeAddress;

/** A table that stands on a sheet of a workbook. */
public final class WorkbookCells {
  private WorkbookCells() {}

  /**
   * Reads a table, in a stream and with the same guards as an event's workbook.
   *
   * @param file an .xlsx of 16 MiB at most
   * @param sheet the name of the sheet, whatever the case of its letters
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
            .findFirst();
    if (found.isEmpty()) {
      return Checked.refused(
          List.of(
              new Problem(
                  Location.ofFile(file.toString()),
                  "this workbook has no sheet '" + sheet + "'",
                  "expected the table on a sheet of that name")));
    }
    return cells(found.get());
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
