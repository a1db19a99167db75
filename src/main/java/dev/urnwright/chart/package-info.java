/**
 * Draws the control chart: lines, markers and numbers on a {@link dev.urnwright.chart.Canvas}.
 *
 * <p>{@link dev.urnwright.chart.ChartDrawing} knows where everything goes, in points from the upper
 * left corner, and nothing of files. A canvas puts it down: as SVG or as a picture in this package,
 * as vectors on a page in the package for PDF. All of it is grey, told apart by shape, number and
 * dash, since prep sheets are printed and wiped. {@link dev.urnwright.chart.ChartSvg} and {@link
 * dev.urnwright.chart.ChartPng} write a plan's charts with their legends on their own.
 */
package dev.urnwright.chart;
