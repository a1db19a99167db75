package dev.urnwright.form;

import dev.urnwright.problem.Location;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;

/**
 * The cells of a sheet that aren't blank.
 *
 * @param file it is in
 * @param sheet which one
 * @param rows by their numbers, their cells by the numbers of their columns
 * @param merged ranges of cells that are one
 * @param tooLong whether it has more rows than are read
 */
record Grid(
    String file,
    Location.Sheet sheet,
    NavigableMap<Integer, NavigableMap<Integer, Cell>> rows,
    List<CellRangeAddress> merged,
    boolean tooLong) {
  Optional<Cell> at(int row, int column) {
    return Optional.ofNullable(rows.get(row)).map(cells -> cells.get(column));
  }

  Location place(Cell cell) {
    return Location.ofCell(file, sheet, cell.row(), cell.column());
  }

  /** The sheet as a whole. */
  Location place() {
    return Location.ofCell(file, sheet, 0, 0);
  }

  /** The cells below a row, row by row. */
  Map<Integer, NavigableMap<Integer, Cell>> below(int row) {
    return rows.tailMap(row, false);
  }
}
