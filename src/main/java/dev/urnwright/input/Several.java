package dev.urnwright.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A list of single values, or one of them by itself.
 *
 * @param each what each is: a single value
 * @param expected what is expected, in words, with an example
 * @param <T> what each becomes
 */
record Several<T>(Kind<T> each, String expected) implements Kind<List<T>> {
  @Override
  public Optional<List<T>> read(Node node, Problems problems) {
    if (!(node instanceof SequenceNode list)) {
      return each.read(node, problems).map(List::of);
    }
    if (list.getValue().isEmpty()) {
      problems.at(list, "this list is empty", expected);
      return Optional.empty();
    }
    List<T> values = new ArrayList<>();
    for (Node value : list.getValue()) {
      each.read(value, problems).ifPresent(values::add);
    }
    return values.size() == list.getValue().size() ? Optional.of(values) : Optional.empty();
  }

  @Override
  public Shape shape() {
    if (each.shape() instanceof Shape.Value value) {
      return new Shape.Parts(value, value);
    }
    throw new IllegalArgumentException("a list of single values: " + each.expected());
  }
}
