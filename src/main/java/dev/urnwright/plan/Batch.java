package dev.urnwright.plan;

import dev.urnwright.brew.BrewBalance;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.BrewerUnit;
import java.util.Optional;

/**
 * One batch, rounded: what to do.
 *
 * @param id distinct in the plan, such as {@code house-3}
 * @param number counted from 1 within the coffee
 * @param unit the brewer it is brewed on; empty when the event lists no brewers
 * @param brew dose and brew water to weigh in, beverage and strength to expect
 * @param waterByVolume the brew water as a volume at the event's filling temperature
 */
public record Batch(
    String id, int number, Optional<BrewerUnit> unit, BrewBalance brew, Volume waterByVolume) {}
