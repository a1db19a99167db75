package dev.urnwright.xlsx;

/**
 * A figure of every item in a grid. Formulas call it by its key.
 *
 * @param key what formulas call it; distinct in its grid
 * @param header what people read, with the unit
 * @param format how it is shown
 * @param width in characters
 */
record Column(String key, String header, Format format, int width) {
  /** A line of words between the figures of a grid that runs across. */
  static Column heading(String text) {
    return new Column("#" + text, text, Format.TEXT, 0);
  }

  boolean isHeading() {
    return key.startsWith("#");
  }
}
