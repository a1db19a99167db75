package dev.urnwright.learn;

import dev.urnwright.wording.Saying;
import java.util.UUID;

/**
 * An entry unlike the rest, for a person to look at.
 *
 * @param entry its id in the journal
 * @param name what people know it by: the event and the batch or group
 * @param why what is odd about it
 * @param counted whether it counts all the same; only what can't be so, or tells nothing, does not
 */
public record Oddity(UUID entry, String name, Saying why, boolean counted) {
  /** What is odd about it, in English. */
  public String reason() {
    return why.toString();
  }
}
