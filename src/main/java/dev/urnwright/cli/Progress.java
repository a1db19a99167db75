package dev.urnwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Help.Ansi;

/**
 * A bar that grows while files are made, on a terminal alone: where the error output goes to a file
 * or a program nothing is printed. It is taken away at the end.
 */
final class Progress implements AutoCloseable {
  private static final int CELLS = 28;
  private static final int COLUMNS = 79;

  private final PrintWriter err;
  private final Ansi ansi;
  private final boolean shown;
  private final int all;
  private int done; // guarded by this

  private Progress(PrintWriter err, Ansi ansi, boolean shown, int all) {
    this.err = err;
    this.ansi = ansi;
    this.shown = shown;
    this.all = all;
  }

  /**
   * A bar for so many steps.
   *
   * @param all steps, 1 or more
   */
  static Progress of(Console console, int all) {
    return new Progress(
        console.err(), console.ansi(), console.wrapsProblems() && isTerminal(), all);
  }

  /** The same, whose output is told to be a terminal or not. */
  static Progress of(PrintWriter err, Ansi ansi, boolean terminal, int all) {
    return new Progress(err, ansi, terminal, all);
  }

  /** One step begins. */
  synchronized void step(String what) {
    if (shown) {
      int filled = CELLS * done / all;
      String bar = "#".repeat(filled) + ".".repeat(CELLS - filled);
      String line = String.format(Locale.ROOT, "[%s] %d of %d  %s", bar, done + 1, all, what);
      String cut = line.length() > COLUMNS ? line.substring(0, COLUMNS) : line;
      String padded = cut + " ".repeat(COLUMNS - cut.length());
      err.print("\r" + (ansi.enabled() ? ansi.string("@|faint " + padded + "|@") : padded));
      err.flush();
    }
    done++;
  }

  @Override
  public void close() {
    if (shown) {
      err.print("\r" + " ".repeat(COLUMNS) + "\r");
      err.flush();
    }
  }

  /**
   * Whether the error output is a terminal. Java tells of both standard streams at once only, so
   * the shell is asked; where there is none, that both are is taken for enough.
   */
  private static boolean isTerminal() {
    if ("dumb".equals(System.getenv("TERM"))) {
      return false;
    }
    try {
      Process test =
          new ProcessBuilder("sh", "-c", "test -t 2")
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      return test.waitFor(2, TimeUnit.SECONDS) && test.exitValue() == 0;
    } catch (IOException noShell) {
      return true;
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
