package dev.urnwright.input;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Kinds that hold others, left to the binder of what they hold. */
final class Part {
  private Part() {}

  /** A mapping of these fields. */
  static Kind<Node> mapping(Fields fields) {
    return new Mapping(fields);
  }

  /** A list of such mappings. */
  static Kind<List<Node>> list(Fields fields) {
    return new Listing(fields);
  }

  /** A mapping from names of the user's choice to mappings of these fields. */
  static Kind<Node> named(Fields fields, String expected) {
    return new Named(fields, expected);
  }

  /** Whatever the binder makes of it. */
  static Kind<Node> any(String expected, Shape shape) {
    return new Any(expected, shape);
  }

  /**
   * A mapping.
   *
   * @param fields its table
   */
  record Mapping(Fields fields) implements Kind<Node> {
    @Override
    public Optional<Node> read(Node node, Problems problems) {
      if (node instanceof MappingNode) {
        return Optional.of(node);
      }
      problems.at(node, "this " + fields.what() + " has no keys", expected());
      return Optional.empty();
    }

    @Override
    public Optional<Fields> inside() {
      return Optional.of(fields);
    }

    @Override
    public Shape shape() {
      return new Shape.Mapping(fields.table());
    }

    @Override
    public String expected() {
      return "expected indented lines of key and value: " + String.join(", ", fields.names());
    }
  }

  /**
   * A list of mappings.
   *
   * @param fields the table of each
   */
  record Listing(Fields fields) implements Kind<List<Node>> {
    @Override
    public Optional<List<Node>> read(Node node, Problems problems) {
      if (node instanceof SequenceNode sequence && !sequence.getValue().isEmpty()) {
        return Optional.of(sequence.getValue());
      }
      problems.at(
          node,
          node instanceof SequenceNode ? "this list is empty" : "this is not a list",
          expected());
      return Optional.empty();
    }

    @Override
    public Optional<Fields> inside() {
      return Optional.of(fields);
    }

    @Override
    public Shape shape() {
      return new Shape.Rows(fields.table());
    }

    @Override
    public String expected() {
      return "expected one or more entries that begin with a dash, such as - "
          + fields.names().get(0)
          + ": …";
    }
  }

  /**
   * A mapping from names to mappings.
   *
   * @param fields the table of each
   * @param expected what is expected, in words
   */
  record Named(Fields fields, String expected) implements Kind<Node> {
    @Override
    public Optional<Node> read(Node node, Problems problems) {
      if (node instanceof MappingNode mapping && !mapping.getValue().isEmpty()) {
        return Optional.of(node);
      }
      problems.at(node, "here is no " + fields.what(), expected);
      return Optional.empty();
    }

    @Override
    public Optional<Fields> inside() {
      return Optional.of(fields);
    }

    @Override
    public Shape shape() {
      return new Shape.NamedRows(fields.table());
    }
  }

  /**
   * Anything.
   *
   * @param expected what is expected, in words
   * @param shape what it looks like
   */
  record Any(String expected, Shape shape) implements Kind<Node> {
    @Override
    public Optional<Node> read(Node node, Problems problems) {
      return Optional.of(node);
    }
  }
}
