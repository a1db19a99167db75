package dev.urnwright.cli;

import dev.urnwright.input.EventFile;
import dev.urnwright.json.PlanJson;
import dev.urnwright.plan.Plan;
import dev.urnwright.problem.Checked;
import dev.urnwright.text.PlanText;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Works out the plan, prints it and writes its files. */
@Command(
    header = "Work out the plan; print it, write its sheets and its workbook.",
    description = {
      "%nPrints a summary and writes files beside the event, named after it:",
      "  NAME-plan.pdf    sheets: the run, brew, dilute, correct on the day, shop",
      "  NAME-plan.xlsx   the same as a workbook whose figures can be changed; its last sheets hold"
          + " the event as typed, so that it can be planned again",
      "  NAME-run.ics     the run for a calendar, if the event has a date",
      "%nA file that Urnwright wrote earlier is replaced; any other is left alone. When the event"
          + " has problems they are printed, each as file:line:column, and nothing is written."
    },
    footer = {
      "  urnwright plan breakfast.yaml",
      "  urnwright plan breakfast.yaml --out sheets",
      "  urnwright plan breakfast.yaml --json --no-sheets > plan.json"
    })
final class PlanCommand extends Subcommand implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", description = "the event: a text, or a workbook (.xlsx)")
  private Path file;

  @Option(
      names = "--json",
      description = "print the plan as JSON, and nothing else, to standard output")
  private boolean json;

  @Mixin private LearningOptions learning = new LearningOptions();
  @Mixin private OutputOptions output = new OutputOptions();

  PlanCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    Checked<EventFile> event = EventFiles.open(file, output.languages());
    Checked<Plan> checked = Planning.plan(event, learning);
    if (checked.value().isEmpty()) {
      console().problems(checked.problems(), "nothing was written");
      return ExitCode.PROBLEMS;
    }
    Plan plan = checked.value().get();
    if (!output.writes()) {
      print(plan);
      return ExitCode.DONE;
    }
    try (PlanFiles files = PlanFiles.of(plan, event.value().get().typed(), file, output)) {
      files.render(plan);
      print(plan);
      files.putInPlace();
      report(files);
    }
    return ExitCode.DONE;
  }

  private void print(Plan plan) throws IOException {
    if (json) {
      new PlanJson(Version.number()).write(plan, console().out());
    } else {
      new PlanText(console().palette()).write(plan, console().out());
    }
  }

  private void report(PlanFiles files) {
    PrintWriter to = json ? console().err() : console().out();
    if (!json) {
      to.println();
    }
    files.targets().forEach(target -> to.println("wrote " + target));
  }
}
