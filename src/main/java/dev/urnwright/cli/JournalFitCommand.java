package dev.urnwright.cli;

import dev.urnwright.journal.BrewEntry;
import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalException;
import dev.urnwright.learn.JournalFits;
import dev.urnwright.learn.JournalFits.Brewed;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.text.FitText;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what the journal teaches of brewing. */
@Command(
    name = "fit",
    header = "Tell what the journal teaches of each coffee on each brewer.",
    description =
        "%nAbsorption and extraction with the interval that holds the true value 95 times of 100."
            + " While batches are few they stay near what is usual. A batch unlike the rest is named"
            + " with the reason and still counts; 'journal remove' takes it out.",
    footer = {"  urnwright journal fit", "  urnwright journal fit --coffee House"})
final class JournalFitCommand extends Subcommand implements Callable<Integer> {
  private static final Display DISPLAY = new Display(UnitSystem.METRIC, Mass.ofGrams(1));

  @Mixin private JournalOption journal = new JournalOption();

  @Option(names = "--coffee", description = "only of this coffee")
  private Optional<String> coffee = Optional.empty();

  JournalFitCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws RefusedException {
    List<BrewEntry> entries;
    try (Journal open = journal.open()) {
      entries =
          open.brews().stream()
              .filter(entry -> coffee.isEmpty() || coffee.get().equals(entry.coffee()))
              .toList();
    } catch (JournalException e) {
      throw JournalOption.refused(e);
    }
    var fits = JournalFits.of(entries, DISPLAY);
    console().out().println("Journal: " + journal.address().shown());
    new FitText(console().palette()).write(fits, console().out());
    fits.forEach(
        (brewed, fit) -> {
          if (!fit.teaches()) {
            console()
                .out()
                .println("  Nothing to learn of " + brewed.coffee() + on(brewed) + " yet.");
          }
        });
    if (fits.isEmpty()) {
      console()
          .out()
          .println("  No batches yet" + coffee.map(name -> " of " + name).orElse("") + ".");
    }
    return ExitCode.DONE;
  }

  private static String on(Brewed brewed) {
    return brewed.brewer().map(brewer -> " on " + brewer).orElse("");
  }
}
