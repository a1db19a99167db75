package dev.urnwright.xlsx;

/**
 * How a cell shows what it holds.
 *
 * @param code a spreadsheet's number format
 */
record Format(String code) {
  static final Format TEXT = new Format("General");
  static final Format COUNT = new Format("#,##0");
  static final Format CUPS = new Format("0.##");
  static final Format STRENGTH = new Format("0.00%");
  static final Format EXTRACTION = new Format("0.0%");
  static final Format SHARE = new Format("0.##%");
  static final Format RATIO = new Format("\"1:\"0.0##");
  static final Format PER_COFFEE = new Format("\"1:\"0.0");
  static final Format PER_GRAM = new Format("0.00");
  static final Format DENSITY = new Format("0.0000");
  static final Format EXACT = new Format("0.0000000");
  static final Format MONEY = new Format("#,##0.00");
  static final Format WHOLE = new Format("0");

  /** A number with so many decimals. */
  static Format decimals(int decimals) {
    return new Format(decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals));
  }

  /** Whether this shows text, which starts at the left. */
  boolean isText() {
    return equals(TEXT);
  }
}
