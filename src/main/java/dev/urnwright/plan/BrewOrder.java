package dev.urnwright.plan;

import dev.urnwright.quantity.Mass;
import dev.urnwright.schedule.BrewerUnit;
import java.util.Optional;

/**
 * One batch decided on: what goes on which brewer.
 *
 * @param unit empty when the event lists no brewers
 * @param dose in whole steps of the scale
 * @param drawn of its beverage for fills, when a clock says so; otherwise as much as there is
 */
record BrewOrder(Optional<BrewerUnit> unit, Mass dose, Optional<Mass> drawn) {}
