package dev.urnwright.problem;

/**
 * One thing that stands in the way of a plan. Neither part is a sentence: no full stop.
 *
 * @param location where it was written
 * @param wrong what is wrong, with the value and its unit
 * @param expected what would be right, with the limit and its unit
 */
public record Problem(Location location, String wrong, String expected) {
  /** {@code file:line:column: what is wrong; what is expected}. */
  @Override
  public String toString() {
    return location + ": " + wrong + "; " + expected;
  }
}
