package dev.urnwright.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The table of all keys of one kind of mapping.
 *
 * @param what the mapping in words, such as {@code group}
 * @param fields in the order in which people would write them
 * @param names the names of these fields
 */
record Fields(String what, List<Field<?>> fields, List<String> names) {
  static Fields of(String what, Field<?>... fields) {
    List<Field<?>> table = List.of(fields);
    return new Fields(what, table, table.stream().<String>map(Field::name).toList());
  }

  Optional<String> unknown(String key) {
    return names.contains(key)
        ? Optional.empty()
        : Optional.of(Nearest.among(key, names, "known keys"));
  }

  Map<String, Field<?>> byName() {
    Map<String, Field<?>> map = new LinkedHashMap<>();
    fields.forEach(field -> map.put(field.name(), field));
    return map;
  }
}
