package dev.urnwright.sheet;

import dev.urnwright.dispatch.LegDay;

/**
 * When a leg is brewed, filled and leaves.
 *
 * @param ready its last batch
 * @param from the first carafe
 * @param to the last lid
 * @param leave the van
 */
record LegTimes(String ready, String from, String to, String leave) {
  static LegTimes of(LegDay leg) {
    return new LegTimes(
        ClockText.of(leg.times().ready()),
        ClockText.of(leg.times().from()),
        ClockText.of(leg.times().to()),
        ClockText.of(leg.times().leave()));
  }
}
