package dev.urnwright.cli;

import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalException;
import dev.urnwright.journal.ServiceEntry;
import dev.urnwright.journal.ServiceEntry.Asked;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.Plan;
import dev.urnwright.problem.Checked;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.UnreadableException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Adds what came back unpoured from an event. */
@Command(
    name = "served",
    header = "Add what came back of an event, so that headcount turns into cups better.",
    description =
        "%nWeigh what stands in a group's dispensers when it is over (without the vessel), and say"
            + " how many guests came if it was not the planned number. Groups that are not named are"
            + " left out.",
    footer = {
      "  urnwright journal served supper.yaml --back \"Long tables=2.3 kg\" \\",
      "      --back Musicians=0.4kg --came Musicians=18 --kind supper"
    })
final class JournalServedCommand extends Subcommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private LearningOptions learning = new LearningOptions();

  @Parameters(paramLabel = "FILE", description = "the event file")
  private Path file = Path.of("");

  @Option(
      names = "--back",
      required = true,
      paramLabel = "GROUP=MASS",
      description = "what came back of a group's coffee, all its dispensers together")
  private Map<String, String> back = new LinkedHashMap<>();

  @Option(
      names = "--came",
      paramLabel = "GROUP=GUESTS",
      description = "how many came, if not as planned")
  private Map<String, Integer> came = new LinkedHashMap<>();

  @Option(
      names = "--kind",
      description = "what kind of event it was, such as conference; left out, as its file says")
  private Optional<String> kind = Optional.empty();

  JournalServedCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws RefusedException {
    Checked<Plan> checked = Planning.plan(file, learning);
    if (checked.value().isEmpty()) {
      console().problems(checked.problems(), "nothing was added");
      return ExitCode.PROBLEMS;
    }
    List<ServiceEntry> entries = entries(checked.value().get());
    try (Journal open = learning.open()) {
      open.addAll(List.of(), entries);
    } catch (JournalException e) {
      throw JournalOption.refused(e);
    }
    for (ServiceEntry entry : entries) {
      console()
          .out()
          .println(
              String.format(
                  Locale.ROOT,
                  "added: %s, %s: %.0f cups poured of %d planned",
                  entry.group(),
                  entry.coffee(),
                  entry.cupsPoured(),
                  entry.asked().cups()));
    }
    return ExitCode.DONE;
  }

  private List<ServiceEntry> entries(Plan plan) {
    List<ServiceEntry> entries = new ArrayList<>();
    came.keySet().stream()
        .filter(name -> !back.containsKey(name))
        .findFirst()
        .ifPresent(
            name -> {
              throw new ParameterException(
                  spec.commandLine(), "'" + name + "' came, and nothing is said of what came back");
            });
    Spoken spoken = new Spoken(plan.event().print().units());
    back.forEach(
        (name, text) -> {
          List<GroupPlan> rows =
              plan.groups().stream().filter(row -> row.group().name().equals(name)).toList();
          if (rows.isEmpty()) {
            throw new ParameterException(
                spec.commandLine(),
                "no group is called '"
                    + name
                    + "'; the plan has "
                    + String.join(
                        ", ",
                        plan.groups().stream().map(row -> row.group().name()).distinct().toList()));
          }
          try {
            entries.addAll(entries(plan, rows, spoken.mass(text)));
          } catch (UnreadableException e) {
            throw new ParameterException(spec.commandLine(), e.wrong() + "; " + e.expected());
          } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()));
          }
        });
    return entries;
  }

  /** A group of several coffees is said to have left of each as much as of the other. */
  private List<ServiceEntry> entries(Plan plan, List<GroupPlan> rows, Mass cameBack) {
    double all =
        rows.stream()
            .flatMap(row -> row.fills().stream())
            .mapToDouble(fill -> fill.blend().liquid().grams())
            .sum();
    return rows.stream()
        .map(
            row -> {
              Mass out =
                  row.fills().stream()
                      .map(Fill::blend)
                      .map(blend -> blend.liquid())
                      .reduce(Mass.ZERO, Mass::plus);
              return new ServiceEntry(
                  UUID.randomUUID(),
                  Instant.now(),
                  new EventJournal(plan, Clock.systemDefaultZone()).occasion(),
                  kind.or(plan.event()::kind),
                  row.group().name(),
                  row.coffee().nameInJournal(),
                  asked(row),
                  out,
                  cameBack.times(out.grams() / all));
            })
        .toList();
  }

  private Asked asked(GroupPlan row) {
    double share =
        row.group().coffees().stream()
            .filter(of -> of.coffee().equals(row.coffee().key()))
            .mapToDouble(of -> of.share().fraction())
            .sum();
    return new Asked(
        Optional.ofNullable(came.get(row.group().name())).orElse(row.group().guests().headcount()),
        Share.ofFraction(row.group().guests().drinkers().fraction() * share),
        row.group().guests().cupsEach(),
        row.demand().cups(),
        row.cup().blend().liquid());
  }
}
