package dev.urnwright.cli;

import dev.urnwright.brew.Readings;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.day.Adjuster;
import dev.urnwright.day.Adjustment;
import dev.urnwright.day.Happened;
import dev.urnwright.day.Happened.Standing;
import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalException;
import dev.urnwright.json.AdjustmentJson;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.Plan;
import dev.urnwright.problem.Checked;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.text.AdjustmentText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Corrects a plan by what was weighed and read. */
@Command(
    header = "Correct a plan on the day, by what was weighed and read.",
    description = {
      "%nTells what goes into each dispenser still to fill, what to add to one that is diluted"
          + " already, and how to brew the batches to come. Without --batch or --holds it asks,"
          + " one thing at a time.",
      "%nEach batch goes into the journal, and those of the same event that were measured before"
          + " count too (--no-journal for neither).",
      "%nWrites NAME-left.pdf, the sheets of what is left to do, unless --no-sheets. A bare number"
          + " is in grams, or in ounces with US units; 1.81, 1,81 and 1.81 %% are the same reading."
    },
    footer = {
      "  urnwright adjust supper.yaml",
      "  urnwright adjust supper.yaml --batch house-1 --dose 1065 --water 14910 \\",
      "      --beverage 12.4kg --reading 1.62 --reading 1.61 --reading 1.62",
      "  urnwright adjust supper.yaml --holds \"house-F2=9100 g at 1.35 %%\" \\",
      "      --filled house-F1"
    })
final class AdjustCommand extends Subcommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "the event file")
  private Path file;

  @ArgGroup(exclusive = false, multiplicity = "0..*", heading = "%nFor each batch measured:%n")
  private List<BatchOptions> batches = new ArrayList<>();

  @Option(
      names = "--filled",
      paramLabel = "FILL",
      description = "a dispenser that is filled and stays as it is; may be given again")
  private List<String> filled = List.of();

  @Option(
      names = "--holds",
      paramLabel = "FILL=MASS [at STRENGTH]",
      description =
          "a dispenser that is diluted already, how much is in it, and how strong it reads; may be"
              + " given again")
  private List<String> holds = List.of();

  @Option(names = "--json", description = "print the result as JSON, and nothing else")
  private boolean json;

  @Mixin private OutputOptions output = new OutputOptions();

  @Mixin private LearningOptions learning = new LearningOptions();

  AdjustCommand(Console console) {
    super(console);
  }

  /** What was measured of one batch; empty what was not. */
  static final class BatchOptions {
    @Option(names = "--batch", required = true, paramLabel = "ID", description = "such as house-1")
    private String id = "";

    @Option(names = "--dose", description = "coffee weighed in; left out, as planned")
    private String dose = "";

    @Option(names = "--water", description = "brew water; left out, as planned")
    private String water = "";

    @Option(names = "--beverage", description = "what left the grounds, weighed")
    private String beverage = "";

    @Option(
        names = "--reading",
        paramLabel = "STRENGTH",
        description = "in the order taken; three in a row must agree within 0.01 %%")
    private List<String> readings = new ArrayList<>();

    @Option(
        names = "--sample",
        paramLabel = "TEMPERATURE",
        description = "of the samples, if not room temperature")
    private String sample = "";
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    Checked<Plan> checked = Planning.plan(file, output.languages(), learning);
    if (checked.value().isEmpty()) {
      console().problems(checked.problems(), "nothing was adjusted");
      return ExitCode.PROBLEMS;
    }
    Plan plan = checked.value().get();
    Optional<Happened> happened =
        batches.isEmpty() && holds.isEmpty() && filled.isEmpty()
            ? new AdjustDialogue(plan, console()).ask()
            : Optional.of(happened(plan));
    if (happened.isEmpty()) {
      console().out().println("Nothing was changed.");
      return ExitCode.DONE;
    }
    Adjustment adjustment = new Adjuster(plan).adjust(inJournal(plan, happened.get()));
    if (json) {
      new AdjustmentJson(Version.number()).write(adjustment, console().out());
    } else {
      new AdjustmentText(console().palette()).write(adjustment, console().out());
    }
    if (output.writes() && adjustment.left().isPresent()) {
      new LeftSheets(file, output)
          .write(adjustment.left().get(), json ? console().err() : console().out());
    }
    return adjustment.stands() ? ExitCode.DONE : ExitCode.PROBLEMS;
  }

  /**
   * Written down first: a batch that was measured is never lost again. A journal that can't be had
   * is said and doesn't stand in the way, for the guests are there already.
   */
  private Happened inJournal(Plan plan, Happened now) {
    if (!learning.isWanted()) {
      return now;
    }
    EventJournal of = new EventJournal(plan, Clock.systemDefaultZone());
    try (Journal open = learning.open()) {
      of.write(now, open);
      return of.withEarlier(now, open);
    } catch (RefusedException | JournalException e) {
      console()
          .complain(
              e.getMessage()
                  + "; nothing was written down, and only what is said here counts. Note it on"
                  + " paper.");
      return now;
    }
  }

  private Happened happened(Plan plan) {
    PlanOptions options = new PlanOptions(spec.commandLine(), plan);
    Map<String, WeighedBatch> weighed = new LinkedHashMap<>();
    for (BatchOptions batch : batches) {
      Batch planned = options.known(batch.id, plan.batches(), Batch::id, "batch");
      weighed.put(planned.id(), options.understood(() -> weighed(plan, planned, batch)));
    }
    Set<String> gone = new LinkedHashSet<>();
    filled.forEach(id -> gone.add(options.fill(id).id()));
    Spoken spoken = new Spoken(plan.event().print().units());
    List<Standing> standing =
        holds.stream()
            .map(text -> options.understood(() -> Holding.read(text, spoken)))
            .map(
                each ->
                    new Standing(options.fill(each.fillId()).id(), each.holds(), each.strength()))
            .toList();
    return new Happened(weighed, gone, standing);
  }

  private static Optional<String> given(String option) {
    return Optional.of(option).filter(text -> !text.isEmpty());
  }

  private static WeighedBatch weighed(Plan plan, Batch planned, BatchOptions batch) {
    Spoken spoken = new Spoken(plan.event().print().units());
    Optional<Temperature> sample = given(batch.sample).map(spoken::temperature);
    return new WeighedBatch(
        given(batch.dose).map(spoken::mass).orElse(planned.brew().dose()),
        given(batch.water).map(spoken::mass).orElse(planned.brew().water()),
        given(batch.beverage).map(spoken::mass),
        new Readings(batch.readings.stream().map(text -> spoken.reading(text, sample)).toList()));
  }
}
