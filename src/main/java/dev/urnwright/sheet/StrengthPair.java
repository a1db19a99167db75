package dev.urnwright.sheet;

import dev.urnwright.plan.GroupPlan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;

/**
 * The strength that a group wants beside the one that the rounded quantities give.
 *
 * @param wanted by the event
 * @param reached by the rounded fills
 */
record StrengthPair(Figure wanted, Figure reached) {
  static StrengthPair of(GroupPlan group, Display display) {
    return new StrengthPair(
        display.strength(group.group().strength()), display.strength(group.strengthReached()));
  }
}
