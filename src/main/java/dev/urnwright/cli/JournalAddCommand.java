package dev.urnwright.cli;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.Readings;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.day.Verdict;
import dev.urnwright.journal.BrewEntry;
import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalException;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.UnreadableException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Adds one weighed batch. */
@Command(
    name = "add",
    header = "Add a weighed batch to the journal.",
    description =
        "%nIt is on the disk when the command returns. A bare number is in grams. ('urnwright adjust'"
            + " adds the batches of an event by itself.)",
    footer = {
      "  urnwright journal add --coffee House --brewer Tall --dose 1065 \\",
      "      --water 14910 --beverage 12.4kg --reading 1.62 --reading 1.62 --reading 1.62"
    })
final class JournalAddCommand extends Subcommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private JournalOption journal = new JournalOption();

  @Option(names = "--coffee", required = true, description = "the coffee's name")
  private String coffee = "";

  @Option(names = "--brewer", description = "the kind of brewer")
  private Optional<String> brewer = Optional.empty();

  @Option(names = "--dose", required = true, description = "dry ground coffee")
  private String dose = "";

  @Option(names = "--water", required = true, description = "brew water")
  private String water = "";

  @Option(names = "--beverage", description = "what left the grounds, weighed")
  private Optional<String> beverage = Optional.empty();

  @Option(
      names = "--reading",
      paramLabel = "STRENGTH",
      description = "in the order taken; may be given again")
  private List<String> readings = new ArrayList<>();

  @Option(names = "--sample", paramLabel = "TEMPERATURE", description = "of the samples read")
  private Optional<String> sample = Optional.empty();

  @Option(names = "--steeped", description = "the grounds steeped in all of the water")
  private boolean steeped;

  @Option(names = "--event", description = "what it was brewed for")
  private Optional<String> event = Optional.empty();

  @Option(names = "--date", description = "the day, as year-month-day")
  private Optional<LocalDate> date = Optional.empty();

  JournalAddCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws RefusedException {
    WeighedBatch weighed = weighed();
    BrewEntry entry =
        new BrewEntry(
            UUID.randomUUID(),
            Instant.now(),
            new Occasion(event.orElse(""), date),
            "",
            coffee,
            brewer,
            steeped ? BrewMethod.IMMERSION : BrewMethod.PERCOLATION,
            Share.ofPercent(0),
            weighed);
    try (Journal open = journal.open()) {
      open.add(entry);
    } catch (JournalException e) {
      throw JournalOption.refused(e);
    }
    console().out().println("added " + entry.id() + " to " + journal.address().shown());
    Verdict.of(weighed.readings()).remarks().forEach(console().out()::println);
    return ExitCode.DONE;
  }

  private WeighedBatch weighed() {
    Spoken spoken = new Spoken(UnitSystem.METRIC);
    try {
      Optional<Temperature> at = sample.map(spoken::temperature);
      return new WeighedBatch(
          spoken.mass(dose),
          spoken.mass(water),
          beverage.map(spoken::mass),
          new Readings(readings.stream().map(text -> spoken.reading(text, at)).toList()));
    } catch (UnreadableException e) {
      throw new ParameterException(spec.commandLine(), e.wrong() + "; " + e.expected());
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()));
    }
  }
}
