package dev.urnwright.input;

import dev.urnwright.problem.Location;
import java.util.List;
import java.util.Optional;

/** An event as the user typed it, in a text or in a workbook: words and their places. */
public sealed interface Typed {
  /** Where it begins. */
  Location location();

  /**
   * A single value.
   *
   * @param value as typed
   * @param location where
   */
  record Text(String value, Location location) implements Typed {}

  /**
   * A list.
   *
   * @param parts in their order
   * @param location where
   */
  record Listing(List<Typed> parts, Location location) implements Typed {
    /** Copies the list. */
    public Listing {
      parts = List.copyOf(parts);
    }
  }

  /**
   * A mapping.
   *
   * @param entries in their order
   * @param location where
   */
  record Mapping(List<Entry> entries, Location location) implements Typed {
    /** Copies the list. */
    public Mapping {
      entries = List.copyOf(entries);
    }

    /** What stands under a key. */
    public Optional<Typed> at(String key) {
      return entries.stream()
          .filter(entry -> entry.key().equals(key))
          .map(Entry::value)
          .findFirst();
    }
  }

  /**
   * One line of a mapping.
   *
   * @param key its key
   * @param place where the key stands
   * @param value what stands under it
   */
  record Entry(String key, Location place, Typed value) {}
}
