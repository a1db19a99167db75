package dev.urnwright.chart;

/** Something to draw on, measured in points of 1/72 inch, right and down from the upper left. */
public interface Canvas {
  /** Draws a straight line. */
  void line(double fromX, double fromY, double toX, double toY, Pen pen);

  /** Fills a polygon. */
  void fill(Outline outline, double grey);

  /** Draws around a polygon. */
  void draw(Outline outline, Pen pen);

  /** Writes one line of text with its baseline at {@code y}. */
  void text(String text, double x, double y, Letters letters);

  /** How wide a text is, in points; where the typeface isn't known, rather too wide. */
  double width(String text, Letters letters);

  /**
   * How a line looks.
   *
   * @param grey 0 for black, 1 for white
   * @param width in points
   * @param dash length of the dashes and gaps in points; 0 for an unbroken line
   */
  record Pen(double grey, double width, double dash) {
    static Pen of(double grey, double width) {
      return new Pen(grey, width, 0);
    }
  }

  /**
   * How text looks.
   *
   * @param size in points
   * @param bold or regular
   * @param grey 0 for black, 1 for white
   * @param anchor which part of the text stands at {@code x}
   */
  record Letters(double size, boolean bold, double grey, Anchor anchor) {}

  /** Which part of a text stands at its place. */
  enum Anchor {
    /** Its beginning. */
    START,
    /** Its middle. */
    MIDDLE,
    /** Its end. */
    END
  }
}
