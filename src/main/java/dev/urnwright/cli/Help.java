package dev.urnwright.cli;

/** What all help texts share. */
final class Help {
  /** The width that every terminal has. */
  static final int COLUMNS = 80;

  static final String PARAMETERS = "%nWhat to give it:%n";
  static final String OPTIONS = "%nOptions:%n";
  static final String EXIT_CODES = "%nExit codes:%n";
  static final String DONE = "0:done";
  static final String PROBLEMS = "1:the event or its plan has problems, or a file refuses";
  static final String MISUSE = "2:the command line isn't understood";
  static final String FAULT = "70:a fault of the program";

  private Help() {}
}
