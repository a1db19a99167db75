package dev.urnwright.cli;

import dev.urnwright.plan.Plan;
import dev.urnwright.problem.Checked;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws the control chart alone. */
@Command(
    header = "Draw the control chart of a plan on its own.",
    description = {
      "%nStrength against extraction: each concentrate and, straight below it, the cups of each"
          + " group after bypass.",
      "%nWrites NAME-chart.pdf beside the event, or as told. A chart that Urnwright drew earlier"
          + " is replaced; any other file is left alone."
    },
    footer = {
      "  urnwright chart breakfast.yaml",
      "  urnwright chart breakfast.yaml --as png",
      "  urnwright chart breakfast.yaml --out chart.svg"
    })
final class ChartCommand extends Subcommand implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", description = "the event file")
  private Path file;

  @Option(
      names = "--as",
      paramLabel = "KIND",
      description = "pdf, png or svg; if left out, as the name given with --out ends, else pdf")
  private Optional<ChartKind> kind = Optional.empty();

  @Option(
      names = {"-o", "--out"},
      paramLabel = "FILE",
      description = "write the chart to this file")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--replace", description = "write over a file that Urnwright didn't write, too")
  private boolean replace;

  @Mixin private LearningOptions learning = new LearningOptions();

  ChartCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    Checked<Plan> plan = Planning.plan(file, learning);
    if (plan.value().isEmpty()) {
      console().problems(plan.problems(), "nothing was written");
      return ExitCode.PROBLEMS;
    }
    ChartKind as = kind.or(this::named).orElse(ChartKind.PDF);
    Path target =
        out.orElseGet(() -> FileNames.of(file, Optional.empty(), "-chart." + as.ending()));
    try (OutputFile output =
        OutputFile.at(
            target, replace ? OutputFile.Existing.REPLACE : OutputFile.Existing.REPLACE_OURS)) {
      output.writeAside(as.draw(plan.value().get()));
      output.putInPlace();
    }
    console().out().println("wrote " + target);
    return ExitCode.DONE;
  }

  private Optional<ChartKind> named() {
    return out.flatMap(path -> ChartKind.ofName(path.toString()));
  }
}
