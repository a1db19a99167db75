package dev.urnwright.cli;

import dev.urnwright.day.Ladder;
import dev.urnwright.quantity.Measure;
import dev.urnwright.quantity.UnreadableException;
import java.util.List;

/**
 * The step that tasted right.
 *
 * @param groups for whom
 * @param step after how many steps, 0 or more
 */
record TastedStep(List<String> groups, double step) {
  /**
   * Reads {@code 5}, for all groups, or {@code Long tables=5}.
   *
   * @throws UnreadableException if it is neither
   */
  static TastedStep read(String text, List<String> groups) {
    int equals = text.lastIndexOf('=');
    double step =
        Measure.number(text.substring(equals + 1).strip(), "expected a step such as 5 or 5.5")
            .doubleValue();
    if (step < 0 || step > Ladder.MOST_STEPS) {
      throw new UnreadableException(
          "'" + text + "' is off the ladder", "expected a step from 0 to " + Ladder.MOST_STEPS);
    }
    if (equals < 0) {
      return new TastedStep(groups, step);
    }
    String name = text.substring(0, equals).strip();
    return new TastedStep(
        List.of(
            groups.stream()
                .filter(group -> group.equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(
                    () ->
                        new UnreadableException(
                            "no group '" + name + "' drinks what was tasted",
                            "expected one of " + String.join(", ", groups)))),
        step);
  }
}
