package dev.urnwright.cli;

import dev.urnwright.event.Note;
import dev.urnwright.pdf.TemplateFolder;
import dev.urnwright.plan.Plan;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import dev.urnwright.text.Paragraph;
import dev.urnwright.text.PlanText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what is wrong with events, or that they are ready. */
@Command(
    header = "Say what is wrong with an event, or that it is ready.",
    description =
        "%nReads and plans each event and writes nothing. All problems are printed at once, each"
            + " as file:line:column: what is wrong; what is expected.",
    footer = {"  urnwright check breakfast.yaml", "  urnwright check events/*.yaml"})
final class CheckCommand extends Subcommand implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", arity = "1..*", description = "the event files")
  private List<Path> files = List.of();

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "a folder of your own templates, whose languages and words are checked, too")
  private Optional<Path> templates = Optional.empty();

  @Mixin private LearningOptions learning = new LearningOptions();

  CheckCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    TemplateFolder folder = OutputOptions.folder(templates);
    List<Problem> problems = new ArrayList<>();
    for (Path file : files) {
      Checked<Plan> plan = Planning.plan(file, folder.languages(), learning);
      plan.value().ifPresent(ready -> report(file, ready));
      problems.addAll(plan.problems());
    }
    if (problems.isEmpty()) {
      return ExitCode.DONE;
    }
    console().out().flush();
    console().problems(problems, "mend the file and check again");
    return ExitCode.PROBLEMS;
  }

  private void report(Path file, Plan plan) {
    console().out().println(file + ": ready");
    plan.cautions().stream()
        .filter(caution -> caution.code().equals(Note.QUESTION))
        .map(question -> Paragraph.wrap("? " + question.text(), PlanText.COLUMNS))
        .forEach(lines -> lines.forEach(console().out()::println));
  }
}
