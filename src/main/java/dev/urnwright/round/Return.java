package dev.urnwright.round;

import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Volume;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What came back from one row on one day.
 *
 * @param date the day of the delivery
 * @param drop the row
 * @param delivered how many carafes, when it wasn't what the day asked for
 * @param back carafes that the driver took back that day, whenever they had been delivered
 * @param leftover coffee of this day's delivery that nobody drank, when it was measured
 * @param location where it stands
 */
public record Return(
    LocalDate date,
    Drop drop,
    OptionalInt delivered,
    int back,
    Optional<Volume> leftover,
    Location location) {}
