package dev.urnwright.input;

import dev.urnwright.problem.Location;
import java.util.LinkedHashMap;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** The entries of a mapping by their keys, each key once. */
final class Entries {
  private Entries() {}

  /** Reads a mapping; a key that isn't a word, or stands there twice, is a problem. */
  static Map<String, Entry> of(MappingNode mapping, Problems problems) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    for (NodeTuple tuple : mapping.getValue()) {
      Location place = problems.locationOf(tuple.getKeyNode());
      if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
        problems.at(place, "this key is not a single word", "expected a key such as name:");
        continue;
      }
      Entry first = entries.putIfAbsent(key.getValue(), new Entry(place, tuple.getValueNode()));
      if (first != null) {
        problems.at(
            place,
            "the key " + Words.quoted(key.getValue()) + " stands here twice",
            "expected once; the first is " + first.place().inWords());
      }
    }
    return entries;
  }

  /**
   * One entry.
   *
   * @param place where the key stands
   * @param value its value
   */
  record Entry(Location place, Node value) {}
}
