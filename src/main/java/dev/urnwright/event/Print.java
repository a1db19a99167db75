package dev.urnwright.event;

import dev.urnwright.quantity.UnitSystem;
import java.util.Locale;

/**
 * How the sheets print.
 *
 * @param units the unit system
 * @param paper the paper size
 * @param window the part of the control chart that the user aims for
 * @param language the words of the sheets and how they write numbers; of the country, if one is
 *     given
 */
public record Print(UnitSystem units, Paper paper, Window window, Locale language) {
  /** In English. */
  public Print(UnitSystem units, Paper paper, Window window) {
    this(units, paper, window, Locale.ENGLISH);
  }
}
