package dev.urnwright.event;

/**
 * A value learned, between what was believed before and what the entries say.
 *
 * @param before what the event file says or the planner assumes
 * @param value what is believed now
 * @param low the interval's lower end, at 95 %
 * @param high its upper end
 * @param entries so many taught it, 1 or more
 * @param <T> what kind of value
 */
public record Learned<T>(T before, T value, T low, T high, int entries) {
  /** Refuses to have learned from nothing. */
  public Learned {
    if (entries < 1) {
      throw new IllegalArgumentException("nothing is learned from no entries: " + entries);
    }
  }
}
