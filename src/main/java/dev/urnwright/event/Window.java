package dev.urnwright.event;

import dev.urnwright.quantity.Extraction;
import dev.urnwright.quantity.Strength;

/**
 * The part of the control chart in which a cup is usually liked.
 *
 * @param weakest the least strength, by default 1.15 %
 * @param strongest the greatest strength, by default 1.45 %
 * @param leastExtracted the least extraction, by default 18 %
 * @param mostExtracted the greatest extraction, by default 22 %
 */
public record Window(
    Strength weakest, Strength strongest, Extraction leastExtracted, Extraction mostExtracted) {
  /**
   * 1.15 to 1.45 % strong, 18 to 22 % extracted: the window of the Specialty Coffee Association's
   * certification of home brewers, 2018.
   */
  public static final Window USUAL =
      new Window(
          Strength.ofPercent(1.15),
          Strength.ofPercent(1.45),
          Extraction.ofPercent(18),
          Extraction.ofPercent(22));

  /** Refuses a window turned inside out. */
  public Window {
    if (weakest.compareTo(strongest) >= 0 || leastExtracted.compareTo(mostExtracted) >= 0) {
      throw new IllegalArgumentException("a window goes from the lesser to the greater value");
    }
  }
}
