package dev.urnwright.problem;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Either a value or the problems that prevent it, in the order of the file.
 *
 * @param value the value, empty exactly when there are problems
 * @param problems all that is wrong, sorted by place; empty when there is a value
 * @param <T> what was wanted
 */
public record Checked<T>(Optional<T> value, List<Problem> problems) {
  /** Refuses both at once, or neither. */
  public Checked {
    problems = problems.stream().sorted(Comparator.comparing(Problem::location)).toList();
    if (value.isPresent() != problems.isEmpty()) {
      throw new IllegalArgumentException("either a value or problems: " + value + ", " + problems);
    }
  }

  /** A value without any problem. */
  public static <T> Checked<T> of(T value) {
    return new Checked<>(Optional.of(value), List.of());
  }

  /** At least one problem, and no value. */
  public static <T> Checked<T> refused(List<Problem> problems) {
    return new Checked<>(Optional.empty(), problems);
  }
}
