package dev.urnwright.event;

import dev.urnwright.problem.Location;

/**
 * An electrical circuit.
 *
 * @param name distinct among the circuits
 * @param volts its voltage, above 0
 * @param breakerAmperes what its breaker carries, above 0
 * @param location where it stands
 */
public record Circuit(String name, double volts, double breakerAmperes, Location location) {}
