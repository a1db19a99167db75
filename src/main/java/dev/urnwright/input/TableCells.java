package dev.urnwright.input;

import dev.urnwright.problem.Location;
import java.util.List;
import java.util.SortedMap;

/**
 * The cells of a table that aren't blank, as typed, row by row.
 *
 * @param place the table as a whole
 * @param rows that aren't empty, their cells by the numbers of their columns, counted from 1
 */
public record TableCells(Location place, List<SortedMap<Integer, Typed.Text>> rows) {
  /** Copies the list. */
  public TableCells {
    rows = List.copyOf(rows);
  }
}
