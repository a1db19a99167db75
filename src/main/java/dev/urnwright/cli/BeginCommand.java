package dev.urnwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes an event to start from. */
@Command(
    name = "begin",
    header = "Write a commented event file to start from.",
    description =
        "%nThe event in it is complete and can be planned as it stands; change what is different"
            + " at yours. A file that is there already is left alone.",
    footer = "  urnwright begin breakfast.yaml")
final class BeginCommand extends Subcommand implements Callable<Integer> {
  private static final String TEMPLATE = "/templates/event.yaml";

  @Parameters(paramLabel = "FILE", description = "where to write it, such as breakfast.yaml")
  private Path file;

  BeginCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    try (OutputFile output = OutputFile.at(file, OutputFile.Existing.KEEP)) {
      output.writeAside(template());
      output.putInPlace();
    }
    console().out().println("wrote " + file);
    console().out().println("Now change in it what is different at your event. Then:");
    console().out().println("  urnwright check " + file);
    console().out().println("  urnwright plan " + file);
    return ExitCode.DONE;
  }

  private static byte[] template() throws IOException {
    try (InputStream in = BeginCommand.class.getResourceAsStream(TEMPLATE)) {
      if (in == null) {
        throw new IOException("the program was packed without " + TEMPLATE);
      }
      return in.readAllBytes();
    }
  }
}
