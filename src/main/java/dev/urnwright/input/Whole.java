package dev.urnwright.input;

import dev.urnwright.quantity.Share;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.snakeyaml.engine.v2.nodes.Node;

/** Shares that make up a whole. */
final class Whole {
  /** Shares written as fractions may miss the whole by this much, in percent. */
  private static final double SLACK_PERCENT = 0.001;

  private Whole() {}

  /** A problem unless these shares add up to 100 %. */
  static boolean isWhole(List<Share> shares, Node place, Problems problems) {
    double percent = shares.stream().mapToDouble(Share::percent).sum();
    if (Math.abs(percent - 100) <= SLACK_PERCENT) {
      return true;
    }
    problems.at(
        place,
        "these shares add up to "
            + BigDecimal.valueOf(percent)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString()
            + " %",
        "expected 100 % together");
    return false;
  }
}
