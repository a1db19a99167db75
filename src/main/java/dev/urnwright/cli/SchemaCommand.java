package dev.urnwright.cli;

import dev.urnwright.json.PlanSchema;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Prints the schema of the plan's JSON. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    header = "Print the JSON Schema of what 'plan --json' prints.",
    description = "%nFor programs that read a plan. The dialect is JSON Schema 2020-12.",
    optionListHeading = Help.OPTIONS,
    exitCodeListHeading = Help.EXIT_CODES,
    exitCodeList = {Help.DONE, Help.MISUSE, Help.FAULT},
    footerHeading = "%nExample:%n",
    footer = "  urnwright schema > plan.schema.json")
final class SchemaCommand implements Callable<Integer> {
  private final Console console;

  SchemaCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    console.out().print(PlanSchema.text());
    return ExitCode.DONE;
  }
}
