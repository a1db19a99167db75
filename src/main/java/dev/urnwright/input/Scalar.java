package dev.urnwright.input;

import dev.urnwright.quantity.UnreadableException;
import java.util.Optional;
import java.util.function.Function;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * A single value, written as a text.
 *
 * @param shape what it looks like
 * @param parse reads the text or throws {@link UnreadableException}
 * @param <T> what it becomes
 */
record Scalar<T>(Shape.Value shape, Function<String, T> parse) implements Kind<T> {
  /** A value of any text that parses. */
  Scalar(String expected, Function<String, T> parse) {
    this(Shape.Value.text(expected), parse);
  }

  @Override
  public String expected() {
    return shape.expected();
  }

  /** The same, for the names under a key of the event. */
  Scalar<T> naming(String key) {
    return new Scalar<>(shape.naming(key), parse);
  }

  @Override
  public Optional<T> read(Node node, Problems problems) {
    if (!(node instanceof ScalarNode scalar)) {
      problems.at(node, "here stand several values", expected());
      return Optional.empty();
    }
    if (scalar.isPlain() && isNothing(scalar.getValue())) {
      problems.at(node, "no value is written here", expected());
      return Optional.empty();
    }
    try {
      return Optional.of(parse.apply(scalar.getValue()));
    } catch (UnreadableException unreadable) {
      problems.at(problems.locationOf(node), unreadable);
      return Optional.empty();
    }
  }

  private static boolean isNothing(String plain) {
    return plain.isEmpty() || plain.equals("~") || plain.equals("null");
  }
}
