package dev.urnwright.chart;

import java.util.List;

/**
 * A closed polygon.
 *
 * @param corners three or more, in order
 */
public record Outline(List<Corner> corners) {
  /** Copies the list. */
  public Outline {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new IllegalArgumentException("a polygon has three corners or more: " + corners);
    }
  }

  /**
   * A corner.
   *
   * @param x to the right, in points
   * @param y down, in points
   */
  public record Corner(double x, double y) {}

  static Outline box(double left, double top, double right, double bottom) {
    return new Outline(
        List.of(
            new Corner(left, top),
            new Corner(right, top),
            new Corner(right, bottom),
            new Corner(left, bottom)));
  }
}
