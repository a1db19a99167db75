/**
 * How many cups are wanted.
 *
 * <p>Guests are uncertain: some drink no coffee, some drink two. {@link
 * dev.urnwright.demand.CupsDrunk} is the exact distribution of the cups that a group drinks, and
 * {@link dev.urnwright.demand.CupDemand} the number planned for it, at a service level, with an
 * overage, or for the mean.
 */
package dev.urnwright.demand;
