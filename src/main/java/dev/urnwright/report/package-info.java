/**
 * After the event: what was planned against what was measured and what came back.
 *
 * <p>{@link dev.urnwright.report.EventReport} sets a plan beside the journal's entries of its
 * event: each batch as it was to be and as it was, each group's cups planned and poured, what came
 * back and what that cost. What nobody measured is said to be so and never made up.
 */
package dev.urnwright.report;
