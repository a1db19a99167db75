package dev.urnwright.cli;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine;

/**
 * The commands by name, in the order of their help. Each is made when it is called for: reading the
 * annotations of all of them takes longer than planning a supper.
 */
final class Commands {
  private static final String HELP = "help";

  private final Map<String, Function<Console, Object>> makers = new LinkedHashMap<>();
  private final Console console;

  Commands(Console console) {
    this.console = console;
    makers.put("plan", PlanCommand::new);
    makers.put("check", CheckCommand::new);
    makers.put("begin", BeginCommand::new);
    makers.put("convert", ConvertCommand::new);
    makers.put("adjust", AdjustCommand::new);
    makers.put("journal", JournalCommand::with);
    makers.put("report", ReportCommand::new);
    makers.put("ladder", LadderCommand::new);
    makers.put("chart", ChartCommand::new);
    makers.put("scale", ScaleCommand::new);
    makers.put("round", RoundCommand::new);
    makers.put("templates", TemplatesCommand::new);
    makers.put("schema", SchemaCommand::new);
    makers.put(HELP, ignored -> new CommandLine.HelpCommand());
  }

  /** All names. */
  Collection<String> names() {
    return Collections.unmodifiableCollection(makers.keySet());
  }

  /**
   * The names that it takes to run a command line: one, or all to list them or tell what is near.
   */
  Collection<String> called(String... args) {
    return args.length > 0 && makers.containsKey(args[0]) && !args[0].equals(HELP)
        ? List.of(args[0])
        : names();
  }

  /**
   * A command that is ready to run.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  Object make(String name) {
    return Optional.ofNullable(makers.get(name))
        .orElseThrow(() -> new IllegalArgumentException("no command is called " + name))
        .apply(console);
  }
}
