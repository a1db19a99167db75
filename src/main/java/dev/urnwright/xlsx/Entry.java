package dev.urnwright.xlsx;

/**
 * One item of a grid.
 *
 * @param grid which grid
 * @param item counted from 0
 */
record Entry(Grid grid, int item) {
  /** The cell, as formulas on that sheet may call it. */
  String address(String key, String fromSheet) {
    return grid.sheet().equals(fromSheet) ? grid.address(key, item) : grid.fullAddress(key, item);
  }
}
