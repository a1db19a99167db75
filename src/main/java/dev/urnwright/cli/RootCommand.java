package dev.urnwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command: tells what it can do. */
@Command(
    name = "urnwright",
    synopsisSubcommandLabel = "COMMAND",
    description = {
      "%nPlans batch brewing for events: one concentrate of each coffee, diluted for"
          + " every group of guests.%n",
      "You write down the event (who comes, what cups, how strong, which brewers). Urnwright"
          + " works out what to weigh, brew and dilute, and prints the sheets for the people at"
          + " the brewers."
    },
    commandListHeading = "%nCommands:%n",
    footerHeading = "%nA first event:%n",
    footer = {
      "  urnwright begin breakfast.yaml    a commented event to start from",
      "  urnwright check breakfast.yaml    is anything wrong or missing?",
      "  urnwright plan breakfast.yaml     the plan, its sheets and its workbook",
      "",
      "'urnwright' stands for 'java -jar urnwright.jar', with the path to that file.",
      "'urnwright COMMAND --help' explains a command. Colour is used on a terminal",
      "only, and never when the environment has NO_COLOR."
    })
final class RootCommand extends Subcommand implements Runnable {
  @Spec private CommandSpec spec;

  RootCommand(Console console) {
    super(console);
  }

  @Override
  public void run() {
    console().err().print(spec.commandLine().getUsageMessage(console().ansi()));
    throw new CommandLine.ParameterException(spec.commandLine(), "name a command");
  }
}
