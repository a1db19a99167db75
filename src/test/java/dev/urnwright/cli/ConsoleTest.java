package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import dev.urnwright.text.PlanText;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.io.Writer;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.Help.Ansi;

class ConsoleTest {
  private static final Problem LONG =
      new Problem(
          new Location("breakfast.yaml", 14, 9),
          "the strength of 'Early setup crew' is 1.25\u00a0kg, which is a mass",
          "a percentage such as 1.25\u00a0%, or one of the names mild, medium and strong");

  private final StringWriter err = new StringWriter();

  @Test
  void aProgramGetsOneLineForEachProblem() {
    console(false, false).problems(List.of(LONG), "nothing was written");
    assertEquals(List.of(LONG.toString(), "1 problem; nothing was written"), lines());
  }

  @Test
  void aPersonGetsLinesThatFitTheScreen() {
    console(true, false).problems(List.of(LONG, LONG), "nothing was written");
    List<String> once =
        List.of(
            "breakfast.yaml:14:9: the strength of 'Early setup crew' is 1.25\u00a0kg, which is a",
            "  mass; a percentage such as 1.25\u00a0%, or one of the names mild, medium and strong");
    assertEquals(once, lines().subList(0, 2));
    assertEquals(once, lines().subList(2, 4));
    assertEquals("2 problems; nothing was written", lines().get(4));
    lines().forEach(line -> assertTrue(line.length() <= PlanText.COLUMNS, line));
  }

  @Test
  void aFaultIsOneLineAndItsOwnExitCode() {
    int code = new Main(console(false, false)).run("schema");
    assertEquals(ExitCode.FAULT, code);
    assertEquals(
        List.of(
            "urnwright: a fault of the program, not of your event:"
                + " java.lang.IllegalStateException: out of ink"
                + " (with URNWRIGHT_DEBUG=1 it says where)"),
        lines());
  }

  @Test
  void whereItHappenedIsShownOnRequest() {
    new Main(console(false, true)).run("schema");
    assertTrue(lines().stream().anyMatch(line -> line.startsWith("\tat dev.urnwright")), "" + err);
  }

  /** A console on whose output nothing can be printed. */
  private Console console(boolean wraps, boolean traces) {
    PrintWriter broken =
        new PrintWriter(Writer.nullWriter()) {
          @Override
          public void write(String text, int from, int count) {
            throw new IllegalStateException("out of ink");
          }
        };
    return new Console(
        new BufferedReader(Reader.nullReader()),
        broken,
        new PrintWriter(err, true),
        Ansi.OFF,
        wraps,
        traces);
  }

  private List<String> lines() {
    return err.toString().lines().toList();
  }
}
