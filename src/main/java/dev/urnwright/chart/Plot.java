package dev.urnwright.chart;

import dev.urnwright.sheet.Axis;
import dev.urnwright.sheet.ControlChart;

/**
 * The inside of a chart: from percent to points.
 *
 * @param left edge
 * @param top edge
 * @param right edge
 * @param bottom edge
 * @param chart whose axes it has
 */
record Plot(double left, double top, double right, double bottom, ControlChart chart) {
  double x(double extraction) {
    Axis axis = chart.extraction();
    return left + (right - left) * axis.share(extraction);
  }

  double y(double strength) {
    Axis axis = chart.strength();
    return bottom - (bottom - top) * axis.share(strength);
  }
}
