package dev.urnwright.cli;

import dev.urnwright.problem.Problem;
import java.util.List;

/** Something outside the event stands in the way, and the user can do something about it. */
final class RefusedException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<String> messages;

  /** The message is printed as it is: what is wrong; what would help. */
  RefusedException(String message) {
    super(message);
    messages = List.of(message);
  }

  /** Several things are wrong. */
  RefusedException(List<Problem> problems) {
    super(problems.toString());
    messages = problems.stream().map(Problem::toString).toList();
  }

  /** What to print, each by itself. */
  List<String> messages() {
    return messages;
  }
}
