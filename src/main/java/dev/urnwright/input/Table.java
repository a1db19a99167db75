package dev.urnwright.input;

import java.util.List;

/**
 * The keys of one kind of mapping in an event, as the reader knows them.
 *
 * @param what the mapping in words, such as {@code group}
 * @param keys in the order in which people would write them
 */
public record Table(String what, List<Key> keys) {
  /** Copies the list. */
  public Table {
    keys = List.copyOf(keys);
  }

  /** All keys of an event. */
  public static Table ofEvent() {
    return EventBinder.FIELDS.table();
  }

  /**
   * One key.
   *
   * @param name as it is written
   * @param required whether it must be there
   * @param help what it is for, in one line
   * @param shape what stands under it
   */
  public record Key(String name, boolean required, String help, Shape shape) {}
}
