package dev.urnwright.schedule;

import org.jspecify.annotations.Nullable;

/**
 * One batch on the clock, and those after it.
 *
 * @param later placed before it, since the search runs backward; null for the last batch of the day
 * @param leg it belongs to
 * @param choice of what it serves
 * @param kind that brews it
 * @param start minute
 * @param ready minute
 */
record Placement(
    @Nullable Placement later, Leg leg, Leg.Choice choice, int kind, int start, int ready) {
  int coffee() {
    return leg.coffee();
  }
}
