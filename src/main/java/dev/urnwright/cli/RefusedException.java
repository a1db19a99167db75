package dev.urnwright.cli;

/** Something outside the event stands in the way, and the user can do something about it. */
final class RefusedException extends Exception {
  private static final long serialVersionUID = 1L;

  /** The message is printed as it is: what is wrong; what would help. */
  RefusedException(String message) {
    super(message);
  }
}
