package dev.urnwright.input;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

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

  /** These and more, of a mapping that says more. */
  Fields and(String whatElse, Field<?>... more) {
    return of(
        whatElse, Stream.concat(fields.stream(), Arrays.stream(more)).toArray(Field<?>[]::new));
  }

  /** The same for those outside who write forms and schemas. */
  Table table() {
    return new Table(
        what,
        fields.stream()
            .map(
                field ->
                    new Table.Key(
                        field.name(), field.required(), field.help(), field.kind().shape()))
            .toList());
  }

  /** The mappings in words, from this one down, in which a key is known. */
  Set<String> homesOf(String key) {
    Set<String> homes = new LinkedHashSet<>();
    if (names.contains(key)) {
      homes.add(what);
    }
    for (Field<?> field : fields) {
      field.kind().inside().ifPresent(inside -> homes.addAll(inside.homesOf(key)));
    }
    return homes;
  }
}
