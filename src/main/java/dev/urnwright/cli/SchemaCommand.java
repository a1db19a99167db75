package dev.urnwright.cli;

import dev.urnwright.json.PlanSchema;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Prints the schema of the plan's JSON. */
@Command(
    name = "schema",
    header = "Print the JSON Schema of what 'plan --json' prints.",
    description = "%nFor programs that read a plan. The dialect is JSON Schema 2020-12.",
    footer = "  urnwright schema > plan.schema.json")
final class SchemaCommand extends Subcommand implements Callable<Integer> {
  SchemaCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException {
    console().out().print(PlanSchema.text());
    return ExitCode.DONE;
  }
}
