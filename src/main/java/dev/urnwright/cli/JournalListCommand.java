package dev.urnwright.cli;

import dev.urnwright.journal.BrewEntry;
import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalException;
import dev.urnwright.journal.ServiceEntry;
import dev.urnwright.text.JournalText;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists entries. */
@Command(
    name = "list",
    header = "List what is in the journal, the oldest first.",
    footer = {
      "  urnwright journal list",
      "  urnwright journal list --coffee House",
      "  urnwright journal list --removed"
    })
final class JournalListCommand extends Subcommand implements Callable<Integer> {
  @Mixin private JournalOption journal = new JournalOption();

  @Option(names = "--coffee", description = "only of this coffee")
  private Optional<String> coffee = Optional.empty();

  @Option(names = "--removed", description = "what was removed instead, and when")
  private boolean removed;

  JournalListCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws RefusedException {
    try (Journal open = journal.open()) {
      if (removed) {
        console().out().println("Journal: " + journal.address().shown());
        new JournalText(console().palette())
            .write(
                open.removals().stream()
                    .filter(each -> isWanted(each.entry().cells().getOrDefault("coffee", "")))
                    .toList(),
                console().out());
        return ExitCode.DONE;
      }
      List<BrewEntry> brews =
          open.brews().stream().filter(entry -> isWanted(entry.coffee())).toList();
      List<ServiceEntry> services =
          open.services().stream().filter(entry -> isWanted(entry.coffee())).toList();
      console().out().println("Journal: " + journal.address().shown());
      new JournalText(console().palette()).write(brews, services, console().out());
      return ExitCode.DONE;
    } catch (JournalException e) {
      throw JournalOption.refused(e);
    }
  }

  private boolean isWanted(String name) {
    return coffee.isEmpty() || coffee.get().equals(name);
  }
}
