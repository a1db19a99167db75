package dev.urnwright.event;

import dev.urnwright.wording.Saying;

/**
 * Something assumed, used or noticed that the user should know.
 *
 * @param code a stable short name, such as {@code default-spill}
 * @param saying one sentence for people
 */
public record Note(String code, Saying saying) {
  /** The code of a question about what was hardly meant. */
  public static final String QUESTION = "question";

  /** In English. */
  public String text() {
    return saying.toString();
  }
}
