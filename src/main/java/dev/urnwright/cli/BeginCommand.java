package dev.urnwright.cli;

import dev.urnwright.form.EventWorkbook;
import dev.urnwright.json.EventSchema;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes an event to start from. */
@Command(
    header = "Write an event to start from: a commented text, or a workbook to fill in.",
    description =
        "%nThe event in it is complete and can be planned as it stands; change what is different"
            + " at yours. A file that is there already is left alone. Beside the event is put a schema"
            + " by which many editors complete and check it as you write. A name that ends in .xlsx"
            + " gives an empty workbook to fill in, with an example beside everything.",
    footer = {
      "  urnwright begin breakfast.yaml",
      "  urnwright begin breakfast.xlsx",
      "  urnwright begin --for scale cafe.yaml",
      "  urnwright begin --for round coffee-service.yaml"
    })
final class BeginCommand extends Subcommand implements Callable<Integer> {
  private static final String TEMPLATE = "/templates/event.yaml";

  @Option(
      names = "--for",
      paramLabel = "WHAT",
      description =
          "plan (an event; the default), scale (a brew for another brewer) or round (a coffee"
              + " service's; a text and a table of sites, which is a workbook if FILE ends in"
              + " .xlsx)")
  private Purpose purpose = Purpose.PLAN;

  @Parameters(paramLabel = "FILE", description = "where to write it, such as breakfast.yaml")
  private Path file;

  @Option(names = "--no-schema", description = "write the event alone, no schema for editors")
  private boolean noSchema;

  BeginCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    if (purpose == Purpose.SCALE) {
      beginOther("/templates/scale.yaml", "urnwright scale ");
      return ExitCode.DONE;
    }
    if (purpose == Purpose.ROUND) {
      beginRound();
      return ExitCode.DONE;
    }
    if (EventFiles.hasEnding(file)) {
      beginWorkbook();
      return ExitCode.DONE;
    }
    if (noSchema) {
      write(file, OutputFile.Existing.KEEP, template(TEMPLATE));
    } else {
      beginWithSchema();
    }
    console().out().println("wrote " + file);
    console().out().println("Now change in it what is different at your event. Then:");
    console().out().println("  urnwright check " + file);
    console().out().println("  urnwright plan " + file);
    return ExitCode.DONE;
  }

  /** What a file is begun for. */
  enum Purpose {
    /** An event to be planned. */
    PLAN,
    /** A brew to be scaled. */
    SCALE,
    /** A coffee service's round. */
    ROUND
  }

  /** Both or, when the event can't be had, neither. */
  private void beginWithSchema() throws IOException, RefusedException {
    Path beside = file.resolveSibling(EventSchema.FILE);
    try (OutputFile event = OutputFile.at(file, OutputFile.Existing.KEEP);
        OutputFile schema = OutputFile.at(beside, OutputFile.Existing.REPLACE_OURS)) {
      event.writeAside(withSchema(template(TEMPLATE)));
      schema.writeAside(EventSchema.text().getBytes(StandardCharsets.UTF_8));
      event.putInPlace();
      schema.putInPlace();
    }
  }

  private void beginOther(String template, String command) throws IOException, RefusedException {
    write(file, OutputFile.Existing.KEEP, template(template));
    console().out().println("wrote " + file);
    console().out().println("Now change in it what is different at yours. Then:");
    console().out().println("  " + command + file);
  }

  private void beginRound() throws IOException, RefusedException {
    RoundBeginning round = RoundBeginning.at(file);
    round.write().forEach(path -> console().out().println("wrote " + path));
    console().out().println("Now change in them what is different at yours. Then:");
    console().out().println("  urnwright round " + round.round() + " --date tomorrow");
  }

  private void beginWorkbook() throws IOException, RefusedException {
    EventFiles.requireXlsx(file);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    EventWorkbook.write(EventWorkbook.blank(), bytes);
    write(file, OutputFile.Existing.KEEP, bytes.toByteArray());
    console().out().println("wrote " + file);
    console().out().println("Now fill in what is shaded in it. Then:");
    console().out().println("  urnwright check " + file);
    console().out().println("  urnwright plan " + file);
  }

  private static void write(Path target, OutputFile.Existing existing, byte[] content)
      throws RefusedException {
    try (OutputFile output = OutputFile.at(target, existing)) {
      output.writeAside(content);
      output.putInPlace();
    }
  }

  /** Begins with the comment by which editors find the schema. */
  private static byte[] withSchema(byte[] event) {
    String first = "# yaml-language-server: $schema=" + EventSchema.FILE + "\n";
    return (first + new String(event, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] template(String name) throws IOException {
    try (InputStream in = BeginCommand.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("the program was packed without " + name);
      }
      return in.readAllBytes();
    }
  }
}
