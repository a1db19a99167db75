package dev.urnwright.event;

/**
 * Something assumed, used or noticed that the user should know.
 *
 * @param code a stable short name, such as {@code default-spill}
 * @param text one sentence for people
 */
public record Note(String code, String text) {
  /** The code of a question about what was hardly meant. */
  public static final String QUESTION = "question";
}
