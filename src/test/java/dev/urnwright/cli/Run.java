package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import picocli.CommandLine.Help.Ansi;

/**
 * What one run of the program did.
 *
 * @param code its exit code
 * @param out what it printed
 * @param err what it complained of
 */
record Run(int code, String out, String err) {
  /** Runs without colour, as into a pipe. */
  static Run of(Object... arguments) {
    return of(Ansi.OFF, arguments);
  }

  /** Runs with colour or without. */
  static Run of(Ansi ansi, Object... arguments) {
    return of("", ansi, arguments);
  }

  /** Runs with those lines typed. */
  static Run answering(String typed, Object... arguments) {
    return of(typed, Ansi.OFF, arguments);
  }

  private static Run of(String typed, Ansi ansi, Object... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console =
        new Console(
            new BufferedReader(new StringReader(typed)),
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            ansi,
            false,
            false);
    int code =
        new Main(console)
            .run(List.of(arguments).stream().map(Object::toString).toArray(String[]::new));
    console.out().flush();
    console.err().flush();
    return new Run(code, lines(out), lines(err));
  }

  /** What was printed as JSON, by a run without problems. */
  JsonNode json() throws IOException {
    assertEquals(ExitCode.DONE, code, err);
    return new ObjectMapper().readTree(out);
  }

  /** That the command line wasn't understood, and that this was said. */
  void isMisuse(String message) {
    assertEquals(ExitCode.MISUSE, code, out + err);
    assertTrue(err.replace('\u00a0', ' ').contains(message), err);
  }

  private static String lines(StringWriter text) {
    return text.toString().replace(System.lineSeparator(), "\n");
  }
}
