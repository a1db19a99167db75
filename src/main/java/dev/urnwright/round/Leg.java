package dev.urnwright.round;

import dev.urnwright.problem.Location;
import java.time.LocalTime;
import java.util.Optional;

/**
 * One driver's way round.
 *
 * @param name distinct among the legs
 * @param driver when given
 * @param leave when the van leaves the brew room
 * @param location where it stands
 */
public record Leg(String name, Optional<String> driver, LocalTime leave, Location location) {}
