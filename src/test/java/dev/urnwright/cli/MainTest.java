package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Help.Ansi;

/** What the command line answers before any event is read. */
class MainTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--help",
        "plan --help",
        "check --help",
        "begin --help",
        "chart --help",
        "schema --help",
        "help plan"
      })
  void helpTeachesWithinTheScreen(String arguments) {
    assertEquals(ExitCode.DONE, run(arguments.split(" ")));
    assertEquals("", err.toString());
    List<String> lines = out.toString().lines().toList();
    lines.forEach(line -> assertTrue(line.length() <= 80, line));
    assertTrue(out.toString().contains("Exit codes:"), out.toString());
    assertTrue(
        out.toString().contains("Example") || out.toString().contains("A first event"),
        out.toString());
  }

  @Test
  void theHelpNamesEveryExitCode() {
    run("--help");
    for (int code : new int[] {ExitCode.DONE, ExitCode.PROBLEMS, ExitCode.MISUSE, ExitCode.FAULT}) {
      assertTrue(out.toString().contains("\n  " + code + " "), out.toString());
    }
  }

  @Test
  void theVersionIsOneLine() {
    assertEquals(ExitCode.DONE, run("--version"));
    assertTrue(out.toString().matches("Urnwright \\S+\\R"), out.toString());
  }

  @Test
  void aMisspelledCommandIsMisuseAndTheNearestIsNamed() {
    assertMisuse("urnwright: unknown command 'pln'; did you mean 'plan'?", "pln", "x");
  }

  @Test
  void aMisspelledOptionIsMisuseAndTheNearestIsNamed() {
    assertMisuse(
        "urnwright: unknown option '--jsn'; did you mean '--json'?", "plan", "x.yaml", "--jsn");
  }

  @Test
  void aMissingFileNameIsMisuse() {
    assertMisuse("urnwright: Missing required parameter: 'FILE'", "plan");
  }

  @Test
  void aSecondFileIsMisuse() {
    assertMisuse("urnwright: 'b' is more than this command takes", "plan", "a", "b");
  }

  @Test
  void noCommandIsMisuseAndShowsTheHelp() {
    assertEquals(ExitCode.MISUSE, run());
    assertTrue(err.toString().contains("Commands:"), err.toString());
    assertEquals("", out.toString());
  }

  private void assertMisuse(String message, String... arguments) {
    assertEquals(ExitCode.MISUSE, run(arguments));
    assertEquals("", out.toString());
    assertEquals(message, err.toString().lines().findFirst().orElseThrow());
  }

  private int run(String... arguments) {
    Console console =
        new Console(new PrintWriter(out), new PrintWriter(err), Ansi.OFF, false, false);
    int code = new Main(console).run(arguments);
    console.out().flush();
    console.err().flush();
    return code;
  }
}
