package dev.urnwright.form;

/**
 * What a cell holds.
 *
 * @param row counted from 1
 * @param column counted from 1
 * @param text as the user would have typed it; never blank
 * @param kind where it comes from
 */
record Cell(int row, int column, String text, Kind kind) {
  /** Where the content of a cell comes from. */
  enum Kind {
    /** Typed as a text. */
    TEXT,
    /** Typed as a number, a percentage, a date or a time. */
    NUMBER,
    /** Calculated. */
    FORMULA,
    /** A spreadsheet's error. */
    ERROR
  }
}
