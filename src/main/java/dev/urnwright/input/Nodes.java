package dev.urnwright.input;

import dev.urnwright.problem.Location;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** What was typed, as the nodes that the binders read, and back. */
final class Nodes {
  private Nodes() {}

  /** The words of a node, with their places. */
  static Typed typed(Node node, Problems problems) {
    Location place = problems.locationOf(node);
    if (node instanceof SequenceNode sequence) {
      List<Typed> parts = new ArrayList<>();
      sequence.getValue().forEach(part -> parts.add(typed(part, problems)));
      return new Typed.Listing(parts, place);
    }
    if (node instanceof MappingNode mapping) {
      List<Typed.Entry> entries = new ArrayList<>();
      for (NodeTuple tuple : mapping.getValue()) {
        String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
        entries.add(
            new Typed.Entry(
                key,
                problems.locationOf(tuple.getKeyNode()),
                typed(tuple.getValueNode(), problems)));
      }
      return new Typed.Mapping(entries, place);
    }
    return new Typed.Text(node instanceof ScalarNode scalar ? scalar.getValue() : "", place);
  }

  /** The node that says what was typed; its texts never count as nothing. */
  static Node of(Typed typed) {
    Optional<Mark> mark = mark(typed.location());
    if (typed instanceof Typed.Listing listing) {
      List<Node> parts = listing.parts().stream().map(Nodes::of).toList();
      return new SequenceNode(Tag.SEQ, true, parts, FlowStyle.AUTO, mark, mark);
    }
    if (typed instanceof Typed.Mapping mapping) {
      List<NodeTuple> tuples =
          mapping.entries().stream()
              .map(
                  entry ->
                      new NodeTuple(scalar(entry.key(), mark(entry.place())), of(entry.value())))
              .toList();
      return new MappingNode(Tag.MAP, true, tuples, FlowStyle.AUTO, mark, mark);
    }
    return scalar(((Typed.Text) typed).value(), mark);
  }

  private static Node scalar(String value, Optional<Mark> mark) {
    return new ScalarNode(Tag.STR, true, value, ScalarStyle.DOUBLE_QUOTED, mark, mark);
  }

  /** Keeps a place: a sheet's name and number stand for the text's name and index. */
  private static Optional<Mark> mark(Location place) {
    if (place.sheet().isEmpty() && place.line() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Mark(
            place.sheet().map(Location.Sheet::name).orElse(place.file()),
            place.sheet().map(Location.Sheet::number).orElse(0),
            place.line() - 1,
            place.column() - 1,
            new int[0],
            0));
  }
}
