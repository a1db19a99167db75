package dev.urnwright.plan;

import dev.urnwright.quantity.Mass;
import dev.urnwright.schedule.BrewerUnit;
import java.util.Optional;

/**
 * One batch decided on: what goes on which brewer.
 *
 * @param unit empty when the event lists no brewers
 * @param dose in whole steps of the scale
 */
record BrewOrder(Optional<BrewerUnit> unit, Mass dose) {}
