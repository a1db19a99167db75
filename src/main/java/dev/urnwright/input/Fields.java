package dev.urnwright.input;

import java.util.List;

/**
 * The table of all keys of one kind of mapping.
 *
 * @param what the mapping in words, such as {@code group}
 * @param fields in the order in which people would write them
 * @param names the names of these fields
 * @param knownKeys these names in words
 */
record Fields(String what, List<Field<?>> fields, List<String> names, String knownKeys) {
  static Fields of(String what, Field<?>... fields) {
    List<Field<?>> table = List.of(fields);
    List<String> names = table.stream().<String>map(Field::name).toList();
    return new Fields(what, table, names, "known keys: " + String.join(", ", names));
  }
}
