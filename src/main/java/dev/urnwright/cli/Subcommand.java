package dev.urnwright.cli;

import picocli.CommandLine.Command;

/** What all commands share: where they print, and how their help is laid out. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    parameterListHeading = "%nWhat to give it:%n",
    optionListHeading = "%nOptions:%n",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:the event or its plan has problems, or a file can't be read or written",
      "2:the command line isn't understood",
      "70:a fault of the program"
    },
    footerHeading = "%nExamples:%n")
abstract class Subcommand {
  private final Console console;

  Subcommand(Console console) {
    this.console = console;
  }

  Console console() {
    return console;
  }
}
