package dev.urnwright.form;

import dev.urnwright.input.Nearest;
import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.poi.ss.util.CellRangeAddress;

/**
 * Where on a sheet which values are typed. What stands above the headings isn't read, nor is a
 * column whose heading begins with #.
 *
 * @param row of the headings
 * @param columns what is typed in which column, of a sheet with rows
 * @param item the column that names each line, of a sheet with lines
 * @param value the column that holds its value
 */
record Headings(int row, Map<Integer, Slot> columns, int item, int value) {
  static final String ITEM = "item";
  static final String VALUE = "value";

  /** Headings stand near the top, or they aren't any. */
  private static final int LAST_ROW = 30;

  private static final String NOTE = "#";

  /** The headings of a sheet with lines; empty when it has none, which is a problem. */
  static Optional<Headings> ofLines(Grid grid, List<Problem> problems) {
    for (NavigableMap<Integer, Cell> cells : top(grid)) {
      int item = 0;
      int value = 0;
      for (Cell cell : cells.values()) {
        String heading = Slot.plain(cell.text());
        item = item == 0 && heading.equals(ITEM) ? cell.column() : item;
        value = value == 0 && heading.equals(VALUE) ? cell.column() : value;
      }
      if (item > 0 && value > 0) {
        return Optional.of(
            new Headings(cells.firstEntry().getValue().row(), Map.of(), item, value));
      }
    }
    problems.add(
        new Problem(
            grid.place(),
            "this sheet has no headings",
            "expected a row with the headings '" + ITEM + "' and '" + VALUE + "'"));
    return Optional.empty();
  }

  /** The headings of a sheet with rows; empty when it has none, which is a problem. */
  static Optional<Headings> ofRows(Grid grid, FormSheet sheet, List<Problem> problems) {
    NavigableMap<Integer, Cell> best = new TreeMap<>();
    long most = 0;
    for (NavigableMap<Integer, Cell> cells : top(grid)) {
      long known = cells.values().stream().filter(cell -> known(cell, sheet).isPresent()).count();
      if (known > most) {
        most = known;
        best = cells;
      }
    }
    if (best.isEmpty()) {
      problems.add(
          new Problem(
              grid.place(), "this sheet has no headings", "expected a row with " + names(sheet)));
      return Optional.empty();
    }
    int row = best.firstEntry().getValue().row();
    Map<Integer, Slot> columns = new TreeMap<>();
    for (Cell cell : best.values()) {
      if (!cell.text().startsWith(NOTE)) {
        column(grid, sheet, cell, columns, problems);
      }
    }
    refuseUnheaded(grid, best, row, problems);
    return Optional.of(new Headings(row, columns, 0, 0));
  }

  /** What a heading stands for; the nearest when it is unknown, which is a problem. */
  static Optional<Slot> slot(Grid grid, Cell cell, FormSheet sheet, List<Problem> problems) {
    Optional<Slot> known = known(cell, sheet);
    if (known.isPresent()) {
      return known;
    }
    List<String> names = sheet.slots().stream().map(Slot::heading).toList();
    problems.add(
        new Problem(
            grid.place(cell),
            "unknown " + (sheet.hasRows() ? "heading" : "item") + " '" + cell.text() + "'",
            Nearest.among(cell.text(), names) + "; begin it with # if it is a note of your own"));
    return Nearest.to(cell.text(), names)
        .flatMap(
            near -> sheet.slots().stream().filter(slot -> slot.heading().equals(near)).findFirst());
  }

  /** The columns of a sheet with lines that are read. */
  Collection<Integer> lineColumns() {
    return List.of(item, value);
  }

  /** A problem for each range of merged cells that values may hide in. */
  static void refuseMerged(
      Grid grid, int row, Collection<Integer> columns, List<Problem> problems) {
    for (CellRangeAddress range : grid.merged()) {
      boolean read =
          columns.stream().anyMatch(column -> range.isInRange(range.getFirstRow(), column - 1));
      if (range.getLastRow() >= row && read) {
        problems.add(
            new Problem(
                Location.ofCell(
                    grid.file(), grid.sheet(), range.getFirstRow() + 1, range.getFirstColumn() + 1),
                "these cells are merged",
                "expected a cell for each value; unmerge them"));
      }
    }
  }

  private static void column(
      Grid grid, FormSheet sheet, Cell cell, Map<Integer, Slot> columns, List<Problem> problems) {
    Optional<Slot> slot = slot(grid, cell, sheet, problems);
    boolean known = known(cell, sheet).isPresent();
    if (slot.isPresent() && columns.containsValue(slot.get())) {
      if (known) {
        problems.add(
            new Problem(
                grid.place(cell),
                "a second column is headed '" + slot.get().heading() + "'",
                "expected one"));
      }
      return;
    }
    slot.ifPresent(meant -> columns.put(cell.column(), meant));
  }

  private static void refuseUnheaded(
      Grid grid, NavigableMap<Integer, Cell> headings, int row, List<Problem> problems) {
    TreeSet<Integer> refused = new TreeSet<>();
    for (NavigableMap<Integer, Cell> cells : grid.below(row).values()) {
      for (Cell cell : cells.values()) {
        if (!headings.containsKey(cell.column()) && refused.add(cell.column())) {
          problems.add(
              new Problem(
                  grid.place(cell),
                  "this column has no heading",
                  "expected one in row " + row + ", or # if it is for notes of your own"));
        }
      }
    }
  }

  private static Optional<Slot> known(Cell cell, FormSheet sheet) {
    String heading = Slot.plain(cell.text());
    return sheet.slots().stream()
        .filter(slot -> Slot.plain(slot.heading()).equals(heading))
        .findFirst();
  }

  private static Collection<NavigableMap<Integer, Cell>> top(Grid grid) {
    return grid.rows().headMap(LAST_ROW, true).values();
  }

  private static String names(FormSheet sheet) {
    return String.join(", ", sheet.slots().stream().map(Slot::heading).toList());
  }
}
