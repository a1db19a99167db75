/**
 * What gets printed: a plan arranged for people who weigh, pour and carry.
 *
 * <p>{@link dev.urnwright.sheet.PrepView} holds one record for each sheet, with every quantity
 * already written for the event's units; templates only arrange it. {@link
 * dev.urnwright.sheet.ControlChart} is the geometry of strength against extraction, in percent, for
 * whoever draws it, and {@link dev.urnwright.sheet.Timeline} that of the run. Nothing is planned
 * here: a sheet rounds and sorts what stands in the {@link dev.urnwright.plan.Plan}. No library for
 * paper, pictures or workbooks is known here.
 */
package dev.urnwright.sheet;
