package dev.urnwright.cli;

import dev.urnwright.problem.Problem;
import dev.urnwright.text.Palette;
import dev.urnwright.text.Paragraph;
import dev.urnwright.text.PlanText;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.util.List;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Help.Ansi;

/**
 * What the program says, and to whom.
 *
 * @param in what people answer
 * @param out results
 * @param err what went wrong
 * @param ansi whether results are coloured
 * @param wrapsProblems whether lines on {@code err} are wrapped for a person, instead of one line a
 *     problem for a program
 * @param traces whether a fault shows where it happened
 */
record Console(
    BufferedReader in,
    PrintWriter out,
    PrintWriter err,
    Ansi ansi,
    boolean wrapsProblems,
    boolean traces) {
  /** Colours for the plan: none unless the terminal wants them. */
  Palette palette() {
    return ansi.enabled()
        ? new Palette(style("bold"), style("bold"), style("bold,yellow"), style("faint"))
        : Palette.PLAIN;
  }

  /** Prints the problems in their order, then how many there are. */
  void problems(List<Problem> problems, String consequence) {
    problems.forEach(problem -> complain(problem.toString()));
    String count = problems.size() == 1 ? "1 problem" : problems.size() + " problems";
    complain(count + "; " + consequence);
  }

  /** Prints the first of many problems, and how many there are. */
  void problems(List<Problem> problems, int most, String consequence) {
    if (problems.size() <= most) {
      problems(problems, consequence);
      return;
    }
    problems.stream().limit(most).forEach(problem -> complain(problem.toString()));
    complain("and " + (problems.size() - most) + " more");
    complain(problems.size() + " problems; " + consequence);
  }

  /** Says what is wrong on the error output. */
  void complain(String message) {
    if (!wrapsProblems) {
      err.println(oneLine(message));
      return;
    }
    List<String> lines = Paragraph.wrap(message, PlanText.COLUMNS - 2);
    err.println(lines.get(0));
    lines.stream().skip(1).forEach(line -> err.println("  " + line));
  }

  private UnaryOperator<String> style(String names) {
    String on = ansi.new Text("@|" + names + " x|@").toString();
    int at = on.indexOf('x');
    return text -> on.substring(0, at) + text + on.substring(at + 1);
  }

  private static String oneLine(String message) {
    return String.join(" ", Paragraph.wrap(message, Integer.MAX_VALUE));
  }
}
