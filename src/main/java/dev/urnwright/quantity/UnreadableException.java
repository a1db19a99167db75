package dev.urnwright.quantity;

/** A text that isn't what was wanted, with words for the person who wrote it. */
public final class UnreadableException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String wrong;
  private final String expected;

  /**
   * Neither part is a sentence: no full stop.
   *
   * @param wrong what is wrong, with the value and its unit
   * @param expected what would be right
   */
  public UnreadableException(String wrong, String expected) {
    super(wrong + "; " + expected);
    this.wrong = wrong;
    this.expected = expected;
  }

  /** What is wrong, with the value and its unit. */
  public String wrong() {
    return wrong;
  }

  /** What would be right. */
  public String expected() {
    return expected;
  }
}
