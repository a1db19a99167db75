package dev.urnwright.cli;

import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalException;
import java.util.UUID;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Removes an entry. */
@Command(
    name = "remove",
    header = "Remove an entry that is wrong; add it again as it should be.",
    description = "%nWhat it was is kept: 'urnwright journal list --removed' shows it.",
    footer = "  urnwright journal remove 6f1c1a62-6a5e-4b0e-9a51-0c0f6d1f6d52")
final class JournalRemoveCommand extends Subcommand implements Callable<Integer> {
  @Mixin private JournalOption journal = new JournalOption();

  @Parameters(paramLabel = "ID", description = "as 'list' shows it")
  private UUID id = new UUID(0, 0);

  JournalRemoveCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws RefusedException {
    try (Journal open = journal.open()) {
      if (!open.remove(id)) {
        throw new RefusedException(
            journal.address().shown()
                + ": has no entry "
                + id
                + "; 'journal list' shows what it has");
      }
      console().out().println("removed " + id);
      return ExitCode.DONE;
    } catch (JournalException e) {
      throw JournalOption.refused(e);
    }
  }
}
