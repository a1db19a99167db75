package dev.urnwright.xlsx;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellReference;

/**
 * Where the figures of alike items stand: one item to a row, or, running across, one to a column.
 *
 * @param sheet the sheet's name
 * @param across whether items stand side by side
 * @param firstRow of the first item, counted from 0
 * @param firstColumn of the first item, counted from 0
 * @param columns the figures of an item, in order
 */
record Grid(String sheet, boolean across, int firstRow, int firstColumn, List<Column> columns) {
  Grid {
    columns = List.copyOf(columns);
  }

  /** One item to a row, from column A on. */
  static Grid down(String sheet, int firstRow, List<Column> columns) {
    return new Grid(sheet, false, firstRow, 0, columns);
  }

  /** One item to a column, from column B on; the labels stand in column A. */
  static Grid across(String sheet, int firstRow, List<Column> columns) {
    return new Grid(sheet, true, firstRow, 1, columns);
  }

  Column column(String key) {
    return columns.get(index(key));
  }

  /** The entry of one item, counted from 0. */
  Entry entry(int item) {
    return new Entry(this, item);
  }

  int row(String key, int item) {
    return firstRow + (across ? index(key) : item);
  }

  int columnNumber(String key, int item) {
    return firstColumn + (across ? item : index(key));
  }

  /** The cell, as formulas on its own sheet call it. */
  String address(String key, int item) {
    return new CellReference(row(key, item), columnNumber(key, item), true, true).formatAsString();
  }

  /** The cell, as formulas on any sheet may call it. */
  String fullAddress(String key, int item) {
    return qualified(address(key, item));
  }

  /** The figure of several items, as formulas on any sheet may call it. */
  String fullRange(String key, int firstItem, int items) {
    return qualified(address(key, firstItem) + ":" + address(key, firstItem + items - 1));
  }

  private String qualified(String address) {
    return "'" + sheet + "'!" + address;
  }

  private int index(String key) {
    return IntStream.range(0, columns.size())
        .filter(i -> columns.get(i).key().equals(key))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("the sheet " + sheet + " has no column " + key));
  }
}
