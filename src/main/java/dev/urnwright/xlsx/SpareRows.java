package dev.urnwright.xlsx;

/**
 * How many rows a sheet of the plan's items has, so that there may be more of them when inputs
 * change.
 *
 * @param planned items in the plan
 */
record SpareRows(int planned) {
  private static final int LEAST_SPARE = 20;

  /** Three times as many as planned, and twenty more at least. */
  int all() {
    return planned + Math.max(LEAST_SPARE, 2 * planned);
  }

  /** Planned rows and some more; blank pages help nobody. */
  int printed() {
    return planned + 3 + planned / 4;
  }
}
