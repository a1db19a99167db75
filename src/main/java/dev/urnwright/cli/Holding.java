package dev.urnwright.cli;

import dev.urnwright.day.Happened.Standing;
import dev.urnwright.quantity.UnreadableException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code house-F2=9100 g at 1.35 %}. */
final class Holding {
  private static final Pattern FORM =
      Pattern.compile("\\s*(\\S+?)\\s*(?:=|\\s)\\s*(.+?)(?:\\s+at\\s+(.+?))?\\s*");

  private Holding() {}

  /**
   * A dispenser that is diluted already.
   *
   * @throws UnreadableException if it isn't one
   */
  static Standing read(String text, Spoken spoken) {
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      throw new UnreadableException(
          "'" + text + "' does not say what a dispenser holds",
          "expected such as house-F2=9100 g at 1.35 %");
    }
    return new Standing(
        form.group(1),
        spoken.mass(form.group(2)),
        Optional.ofNullable(form.group(3)).map(spoken::strength));
  }
}
