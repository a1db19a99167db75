package dev.urnwright.input;

import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * What a field takes, and how it is read.
 *
 * @param <T> what it becomes
 */
interface Kind<T> {
  /** The value of a node; empty when it has been added to the problems. */
  Optional<T> read(Node node, Problems problems);

  /** What is expected, in words, with an example. */
  String expected();

  /** What it looks like, for those who write forms and schemas. */
  Shape shape();

  /** The table of the mappings that it holds, when it holds any. */
  default Optional<Fields> inside() {
    return Optional.empty();
  }
}
