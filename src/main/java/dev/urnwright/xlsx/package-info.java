/**
 * The plan as a workbook that goes on calculating.
 *
 * <p>{@link dev.urnwright.xlsx.PlanWorkbook} writes it; each sheet is a class of its own. A {@link
 * dev.urnwright.xlsx.Grid} says where the figures of alike items stand, all grids are settled in
 * {@link dev.urnwright.xlsx.Layout} before the first formula is written, and formulas call their
 * cells by name: {@code [dose]*[coffee.ratio]}. {@link dev.urnwright.xlsx.Line} writes a formula
 * together with the planner's own figure, which the cell shows until it is calculated anew. All
 * formulas use names that spreadsheets knew before 2010, and the event's units throughout.
 */
package dev.urnwright.xlsx;
