package dev.urnwright.plan;

import dev.urnwright.brew.BrewBalance;
import dev.urnwright.quantity.Mass;

/**
 * What the batches give together, as rounded for the scale.
 *
 * @param brew their sum; its strength is that of all concentrate mixed
 * @param drawn the concentrate that the fills take
 * @param leftOver what stays in the brewers' vessels
 */
public record Brewed(BrewBalance brew, Mass drawn, Mass leftOver) {}
