package dev.urnwright.demand;

/**
 * How many cups are planned.
 *
 * @param cups the planned number
 * @param mean how many are drunk on average
 * @param chanceEnough the probability that no more than {@code cups} are wanted, from 0 to 1
 */
public record CupDemand(int cups, double mean, double chanceEnough) {}
