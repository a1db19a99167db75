package dev.urnwright.cli;

/** What the program tells the shell when it ends. */
final class ExitCode {
  /** All done. */
  static final int DONE = 0;

  /** The event or its plan has problems, or a file can't be read or written. */
  static final int PROBLEMS = 1;

  /** The command line isn't understood. */
  static final int MISUSE = 2;

  /** A fault of the program. */
  static final int FAULT = 70;

  private ExitCode() {}
}
