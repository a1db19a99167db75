package dev.urnwright.cli;

import dev.urnwright.json.EventSchema;
import dev.urnwright.json.PlanSchema;
import dev.urnwright.json.ScaleSchema;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints the schema of the plan's JSON. */
@Command(
    name = "schema",
    header = "Print the JSON Schema of what 'plan --json' prints, or of an event file.",
    description =
        "%nThe plan's is for programs that read a plan, in the dialect of 2020-12; the event's is"
            + " for editors that complete and check as you write, in draft-07.",
    footer = {
      "  urnwright schema > plan.schema.json",
      "  urnwright schema --event > event.schema.json"
    })
final class SchemaCommand extends Subcommand implements Callable<Integer> {
  @Option(names = "--event", description = "the schema of an event file")
  private boolean event;

  @Option(names = "--scale", description = "the schema of what 'scale --json' prints")
  private boolean scale;

  SchemaCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException {
    console()
        .out()
        .print(event ? EventSchema.text() : scale ? ScaleSchema.text() : PlanSchema.text());
    return ExitCode.DONE;
  }
}
