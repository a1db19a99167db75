/**
 * Batches on brewers and beverage in dispensers.
 *
 * <p>{@link dev.urnwright.schedule.BatchSplit} finds how many batches a dose takes on the brewers
 * there are and how it is shared among them: as few as possible, and as equal as the scale allows.
 * {@link dev.urnwright.schedule.BrewerQueue} gives each batch to one brewer. {@link
 * dev.urnwright.schedule.DispenserChoice} finds which kind of dispenser serves a group and how many
 * of it.
 */
package dev.urnwright.schedule;
