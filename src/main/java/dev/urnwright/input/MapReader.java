package dev.urnwright.input;

import dev.urnwright.problem.Location;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** One mapping of the file, read by its table of fields. */
final class MapReader {
  private final Map<String, Entries.Entry> entries;
  private final Set<String> meant;
  private final Location start;
  private final Problems problems;

  private MapReader(
      Map<String, Entries.Entry> entries, Set<String> meant, Location start, Problems problems) {
    this.entries = entries;
    this.meant = meant;
    this.start = start;
    this.problems = problems;
  }

  /** Takes up a mapping, with a problem for each key unknown, double or missing. */
  static Optional<MapReader> of(Node node, Fields fields, Problems problems) {
    if (Part.mapping(fields).read(node, problems).isEmpty()
        || !(node instanceof MappingNode mapping)) {
      return Optional.empty();
    }
    Map<String, Entries.Entry> entries = Entries.of(mapping, problems);
    Location start = problems.locationOf(node);
    Set<String> meant = new HashSet<>();
    entries.forEach(
        (key, entry) -> {
          if (!fields.names().contains(key)) {
            problems.at(
                entry.place(),
                "unknown key " + Words.quoted(key),
                elsewhere(key, problems) + Nearest.among(key, fields.names(), fields.knownKeys()));
            Nearest.to(key, fields.names()).ifPresent(meant::add);
          }
        });
    MapReader reader = new MapReader(entries, meant, start, problems);
    for (Field<?> field : fields.fields()) {
      if (field.required() && !reader.has(field) && !reader.meant(field)) {
        problems.at(
            start,
            "this " + fields.what() + " has no '" + field.name() + "'",
            field.kind() instanceof Part.Listing
                ? problems.expectedEntries(field.name(), field.kind().expected())
                : field.kind().expected());
      }
    }
    return Optional.of(reader);
  }

  /** Where a key is known when it isn't here, as with one indented too little. */
  private static String elsewhere(String key, Problems problems) {
    Set<String> homes = problems.document().fields().homesOf(key);
    return homes.isEmpty() ? "" : "it belongs in " + String.join(" or ", homes) + "; ";
  }

  /** The value of a field; empty when it is left out, or is a problem. */
  <T> Optional<T> read(Field<T> field) {
    return Optional.ofNullable(entries.get(field.name()))
        .flatMap(entry -> field.kind().read(entry.value(), problems));
  }

  boolean has(Field<?> field) {
    return entries.containsKey(field.name());
  }

  /** Whether an unknown key seems to mean this one, so that it isn't missed as well. */
  boolean meant(Field<?> field) {
    return meant.contains(field.name());
  }

  /** Where the mapping begins. */
  Location start() {
    return start;
  }

  /** Where a field's key stands; the beginning of the mapping when it is left out. */
  Location keyOf(Field<?> field) {
    Entries.Entry entry = entries.get(field.name());
    return entry == null ? start : entry.place();
  }

  /** Where a field's value stands; the beginning of the mapping when it is left out. */
  Location valueOf(Field<?> field) {
    Entries.Entry entry = entries.get(field.name());
    return entry == null ? start : problems.locationOf(entry.value());
  }

  /** A problem when both stand here. */
  void oneOf(Field<?> one, Field<?> other) {
    if (has(one) && has(other)) {
      Location later = keyOf(one).compareTo(keyOf(other)) > 0 ? keyOf(one) : keyOf(other);
      problems.at(
          later,
          "both '" + one.name() + "' and '" + other.name() + "' stand here",
          "expected one of them");
    }
  }
}
