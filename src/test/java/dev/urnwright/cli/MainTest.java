package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.text.PlanText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the command line answers before any event is read. */
class MainTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "--help",
        "plan --help",
        "check --help",
        "begin --help",
        "convert --help",
        "chart --help",
        "schema --help",
        "help plan"
      })
  void helpTeachesWithinTheScreen(String arguments) {
    Run run = Run.of((Object[]) arguments.split(" "));
    assertEquals(ExitCode.DONE, run.code());
    assertEquals("", run.err());
    run.out().lines().forEach(line -> assertTrue(line.length() <= PlanText.COLUMNS, line));
    assertTrue(run.out().contains("Exit codes:"), run.out());
    assertTrue(run.out().contains("Example") || run.out().contains("A first event"), run.out());
  }

  @Test
  void theHelpNamesEveryExitCode() {
    String help = Run.of("--help").out();
    for (int code : new int[] {ExitCode.DONE, ExitCode.PROBLEMS, ExitCode.MISUSE, ExitCode.FAULT}) {
      assertTrue(help.contains("\n  " + code + " "), help);
    }
  }

  @Test
  void theVersionIsOneLine() {
    Run run = Run.of("--version");
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().matches("Urnwright \\S+\n"), run.out());
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
  void whatIsNoDayOrIdIsSaidInWords() {
    assertMisuse(
        "urnwright: Invalid value for option '--date': "
            + "'June' is not a day; expected year-month-day such as 2027-06-05",
        "journal",
        "add",
        "--coffee=House",
        "--dose=16",
        "--water=208",
        "--date=June");
    assertMisuse(
        "urnwright: Invalid value for positional parameter at index 0 (ID): "
            + "'17' is not the id of an entry; 'urnwright journal list' shows them",
        "journal",
        "remove",
        "17");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a\u001b[31m.yaml", "two\nlines.yaml", "\u202Etxt.yaml"})
  void aNameThatWouldMoveTheCursorIsRefused(String name) {
    assertMisuse(
        "urnwright: Invalid value for positional parameter at index 0 (FILE): "
            + "this file's name has letters that can't be printed; give it another name",
        "plan",
        name);
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
    Run run = Run.of();
    assertEquals(ExitCode.MISUSE, run.code());
    assertTrue(run.err().contains("Commands:"), run.err());
    assertEquals("", run.out());
  }

  private static void assertMisuse(String message, Object... arguments) {
    Run run = Run.of(arguments);
    assertEquals(ExitCode.MISUSE, run.code());
    assertEquals("", run.out());
    assertEquals(message, run.err().lines().findFirst().orElseThrow());
  }
}
