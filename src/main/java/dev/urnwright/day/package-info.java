/**
 * The day itself: what was weighed and read against what was planned, and what to do about it.
 *
 * <p>{@link dev.urnwright.day.Happened} is what the people at the brewers say, {@link
 * dev.urnwright.day.Adjuster} sets it against a {@link dev.urnwright.plan.Plan}, {@link
 * dev.urnwright.day.Adjustment} is the answer: a verdict on the readings, new fills, new batches,
 * and the plan of what is left. {@link dev.urnwright.day.Dilution} puts right a dispenser that is
 * diluted already, {@link dev.urnwright.day.Ladder} does without a refractometer. Nothing here
 * knows of files or screens.
 */
package dev.urnwright.day;
