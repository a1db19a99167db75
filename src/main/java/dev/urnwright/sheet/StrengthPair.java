package dev.urnwright.sheet;

import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Figure;
import dev.urnwright.wording.Words;

/**
 * The strength that a group wants beside the one that the rounded quantities give.
 *
 * @param wanted by the event
 * @param reached by the rounded fills
 * @param likely from where to where a cup lies, at k = 2
 * @param inWindow how likely a cup lies in the event's window
 */
record StrengthPair(Figure wanted, Figure reached, Figure likely, String inWindow) {
  static StrengthPair of(GroupPlan group, Certainty certainty, Display display, Words words) {
    return new StrengthPair(
        display.strength(group.group().strength()),
        display.strength(group.strengthReached()),
        display.strengths(certainty.of(group).low(), certainty.of(group).high()),
        ChanceText.of(certainty.chanceInWindow(group), words));
  }
}
