package dev.urnwright.input;

import dev.urnwright.problem.Location;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A value and where it stands, for what can be checked only later.
 *
 * @param value what was read
 * @param location where
 * @param <T> what it is
 */
record Located<T>(T value, Location location) {
  /** The same kind, with the place kept. */
  static <T> Kind<Located<T>> of(Kind<T> kind) {
    return new Kind<>() {
      @Override
      public Optional<Located<T>> read(Node node, Problems problems) {
        return kind.read(node, problems)
            .map(value -> new Located<>(value, problems.locationOf(node)));
      }

      @Override
      public Shape shape() {
        return kind.shape();
      }

      @Override
      public String expected() {
        return kind.expected();
      }
    };
  }
}
