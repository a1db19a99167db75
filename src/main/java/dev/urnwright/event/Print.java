package dev.urnwright.event;

import dev.urnwright.quantity.UnitSystem;

/**
 * How the sheets print.
 *
 * @param units the unit system
 * @param paper the paper size
 * @param window the part of the control chart that the user aims for
 */
public record Print(UnitSystem units, Paper paper, Window window) {}
