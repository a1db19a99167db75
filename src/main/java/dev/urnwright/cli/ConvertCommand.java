package dev.urnwright.cli;

import dev.urnwright.form.EventWorkbook;
import dev.urnwright.input.EventFile;
import dev.urnwright.input.EventText;
import dev.urnwright.input.Typed;
import dev.urnwright.problem.Checked;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Turns a text into a workbook that says the same, or back. */
@Command(
    header = "Turn an event from a text into a workbook to fill in, or back.",
    description =
        "%nWhat the file is to be is told by its name: .xlsx is a workbook, anything else a text."
            + " Every value is kept as it was typed; comments of a text, and notes and further"
            + " sheets of a workbook, stay behind in the file that they are in, which is left as it"
            + " is. A file that is there already is left alone.",
    footer = {
      "  urnwright convert breakfast.yaml breakfast.xlsx",
      "  urnwright convert breakfast-plan.xlsx breakfast.yaml"
    })
final class ConvertCommand extends Subcommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "FROM", description = "the event")
  private Path from;

  @Parameters(index = "1", paramLabel = "TO", description = "the file to write")
  private Path to;

  ConvertCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    Checked<EventFile> event = EventFiles.open(from);
    if (event.value().isEmpty()) {
      console().problems(event.problems(), "nothing was written");
      return ExitCode.PROBLEMS;
    }
    try (OutputFile output = OutputFile.at(to, OutputFile.Existing.KEEP)) {
      output.writeAside(content(event.value().get().typed()));
      output.putInPlace();
    }
    console().out().println("wrote " + to);
    if (EventFiles.isWorkbook(from) != EventFiles.hasEnding(to)) {
      console()
          .out()
          .println(
              "Every value went along as typed; "
                  + (EventFiles.hasEnding(to) ? "comments" : "notes and further sheets")
                  + " stayed in "
                  + from);
    }
    return ExitCode.DONE;
  }

  private byte[] content(Typed.Mapping event) throws IOException, RefusedException {
    if (!EventFiles.hasEnding(to)) {
      return EventText.of(event).getBytes(StandardCharsets.UTF_8);
    }
    EventFiles.requireXlsx(to);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    EventWorkbook.write(event, bytes);
    return bytes.toByteArray();
  }
}
