package dev.urnwright.wording;

/**
 * A number of things, for words that change with it.
 *
 * @param number how many
 * @param one whether the language takes the singular
 */
public record Counted(long number, boolean one) {
  @Override
  public String toString() {
    return Long.toString(number);
  }
}
