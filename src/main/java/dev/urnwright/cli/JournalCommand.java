package dev.urnwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The journal of what was brewed and what came back. */
@Command(
    header = "Keep what was weighed, read and brought back, for the next plan.",
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n",
    description = {
      "%nA journal is a file of yours (see 'urnwright journal list --help' for how to name"
          + " another), or a PostgreSQL database that several sites share, named by its JDBC URL;"
          + " its password comes from URNWRIGHT_JOURNAL_PASSWORD or PGPASSWORD. Several programs"
          + " may use one at the same time."
    },
    footer = {
      "  urnwright journal add --coffee House --brewer Tall --dose 1065 \\",
      "      --water 14910 --beverage 12.4kg --reading 1.62 --reading 1.62 --reading 1.62",
      "  urnwright journal list",
      "  urnwright journal export brews.csv"
    })
final class JournalCommand extends Subcommand implements Runnable {
  @Spec private CommandSpec spec;

  JournalCommand(Console console) {
    super(console);
  }

  /** This command with all of its own. */
  static CommandLine with(Console console) {
    return new CommandLine(new JournalCommand(console))
        .addSubcommand(new JournalAddCommand(console))
        .addSubcommand(new JournalServedCommand(console))
        .addSubcommand(new JournalListCommand(console))
        .addSubcommand(new JournalFitCommand(console))
        .addSubcommand(new JournalRemoveCommand(console))
        .addSubcommand(new JournalExportCommand(console))
        .addSubcommand(new JournalImportCommand(console));
  }

  @Override
  public void run() {
    console().err().print(spec.commandLine().getUsageMessage(console().ansi()));
    throw new CommandLine.ParameterException(spec.commandLine(), "name a command of the journal");
  }
}
