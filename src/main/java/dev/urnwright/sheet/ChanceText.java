package dev.urnwright.sheet;

import dev.urnwright.wording.Saying;
import dev.urnwright.wording.Words;

/** A chance, or a part of a whole, in whole percent; never rounded to none or to all. */
final class ChanceText {
  private static final double HALF = 0.005;

  private ChanceText() {}

  /**
   * In words.
   *
   * @param fraction from 0 to 1
   */
  static String of(double fraction, Words words) {
    if (fraction > 0 && fraction < HALF) {
      return words.text("chance.low");
    }
    if (fraction >= 1 - HALF && fraction < 1) {
      return words.text("chance.high");
    }
    return words.text(Saying.of("chance").with("percent", Math.round(100 * fraction)));
  }
}
