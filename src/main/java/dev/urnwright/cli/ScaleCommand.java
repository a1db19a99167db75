package dev.urnwright.cli;

import dev.urnwright.input.EventFile;
import dev.urnwright.input.ScaleFile;
import dev.urnwright.input.ScaleReader;
import dev.urnwright.json.ScaleJson;
import dev.urnwright.pdf.ScaleSheet;
import dev.urnwright.pdf.TemplateFolder;
import dev.urnwright.plan.Plan;
import dev.urnwright.problem.Checked;
import dev.urnwright.scale.Scaled;
import dev.urnwright.scale.Scaler;
import dev.urnwright.text.ScaleText;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Scales a brew to another brewer, and plans a day's menu with it. */
@Command(
    header = "Scale a brew that tastes right to another brewer; plan a day's menu with it.",
    description = {
      "%nFrom a small brew that was weighed and read: dose, water, strength to expect and how"
          + " surely, the bed's depth, the contact time, and what to change first. Enter what the"
          + " first trials gave, and it says what this brewer really does.",
      "%nPrints that and writes beside the file, named after it:",
      "  NAME-scale.pdf   one page for the brewer",
      "  NAME-plan.pdf, NAME-plan.xlsx, NAME-run.ics   the day's sheets, if the file has a menu",
      "%n'urnwright begin --for scale FILE' writes a commented file to start from."
    },
    footer = {"  urnwright scale cafe.yaml", "  urnwright scale cafe.yaml --json --no-sheets"})
final class ScaleCommand extends Subcommand implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", description = "the brew and the brewer")
  private Path file;

  @Option(names = "--json", description = "print JSON, and nothing else, to standard output")
  private boolean json;

  @Mixin private OutputOptions output = new OutputOptions();

  ScaleCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    Checked<ScaleFile> read = new ScaleReader(output.languages()).open(file);
    Checked<Scaled> checked =
        read.value().isPresent()
            ? new Scaler().scale(read.value().get().request())
            : Checked.refused(read.problems());
    if (checked.value().isEmpty()) {
      return refuse(checked);
    }
    Scaled scaled = checked.value().get();
    Optional<Checked<EventFile>> menu = read.value().orElseThrow().day(scaled);
    Optional<Checked<Plan>> day = menu.map(Planning::plan);
    if (day.isPresent() && day.get().value().isEmpty()) {
      return refuse(day.get());
    }
    Optional<Plan> plan = day.flatMap(Checked::value);
    if (!output.writes()) {
      print(scaled, plan);
      return ExitCode.DONE;
    }
    write(scaled, plan, menu.flatMap(Checked::value));
    return ExitCode.DONE;
  }

  private Integer refuse(Checked<?> checked) {
    console().problems(checked.problems(), "nothing was written");
    return ExitCode.PROBLEMS;
  }

  private void write(Scaled scaled, Optional<Plan> plan, Optional<EventFile> event)
      throws IOException, RefusedException {
    TemplateFolder from = output.templates();
    ByteArrayOutputStream sheet = new ByteArrayOutputStream();
    ScaleSheet.write(scaled, from, sheet);
    List<Path> written = new ArrayList<>();
    try (OutputFile scaleSheet = output.file(file, "-scale.pdf")) {
      scaleSheet.writeAside(sheet.toByteArray());
      if (plan.isPresent()) {
        try (PlanFiles files =
            PlanFiles.of(plan.get(), event.orElseThrow().typed(), file, output)) {
          files.render(plan.get());
          scaleSheet.putInPlace();
          files.putInPlace();
          written.addAll(files.targets());
        }
      } else {
        scaleSheet.putInPlace();
      }
      written.add(0, scaleSheet.target());
    }
    print(scaled, plan);
    PrintWriter to = json ? console().err() : console().out();
    if (!json) {
      to.println();
    }
    written.forEach(target -> to.println("wrote " + target));
  }

  private void print(Scaled scaled, Optional<Plan> plan) throws IOException {
    if (json) {
      new ScaleJson(Version.number()).write(scaled, plan, console().out());
    } else {
      new ScaleText(console().palette()).write(scaled, plan, console().out());
    }
  }
}
