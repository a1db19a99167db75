package dev.urnwright.input;

import dev.urnwright.quantity.UnreadableException;
import java.util.Optional;
import java.util.function.Function;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * A single value, written as a text.
 *
 * @param expected what is expected, in words, with an example
 * @param parse reads the text or throws {@link UnreadableException}
 * @param <T> what it becomes
 */
record Scalar<T>(String expected, Function<String, T> parse) implements Kind<T> {
  @Override
  public Optional<T> read(Node node, Problems problems) {
    if (!(node instanceof ScalarNode scalar)) {
      problems.at(node, "here stand several values", expected);
      return Optional.empty();
    }
    if (scalar.isPlain() && isNothing(scalar.getValue())) {
      problems.at(node, "no value is written here", expected);
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
