package dev.urnwright.cli;

import dev.urnwright.json.DocumentSchema;
import dev.urnwright.json.EventSchema;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints the schema of the plan's JSON. */
@Command(
    header = "Print the JSON Schema of what is printed with --json, or of an event file.",
    description =
        "%nThe plan's, and those of 'scale', 'round', 'adjust' and 'ladder', are for programs that read them, in the"
            + " dialect of 2020-12; the event's is"
            + " for editors that complete and check as you write, in draft-07.",
    footer = {
      "  urnwright schema > plan.schema.json",
      "  urnwright schema --event > event.schema.json",
      "  urnwright schema --adjust"
    })
final class SchemaCommand extends Subcommand implements Callable<Integer> {
  @Option(names = "--event", description = "the schema of an event file")
  private boolean event;

  @Option(names = "--scale", description = "the schema of what 'scale --json' prints")
  private boolean scale;

  @Option(names = "--round", description = "the schema of what 'round --json' prints")
  private boolean round;

  @Option(names = "--adjust", description = "the schema of what 'adjust --json' prints")
  private boolean adjust;

  @Option(names = "--ladder", description = "the schema of what 'ladder --json' prints")
  private boolean ladder;

  SchemaCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException {
    console().out().print(event ? EventSchema.text() : document().text());
    return ExitCode.DONE;
  }

  private DocumentSchema document() {
    if (scale) {
      return DocumentSchema.SCALE;
    }
    if (round) {
      return DocumentSchema.ROUND;
    }
    if (adjust) {
      return DocumentSchema.ADJUSTMENT;
    }
    return ladder ? DocumentSchema.LADDER : DocumentSchema.PLAN;
  }
}
