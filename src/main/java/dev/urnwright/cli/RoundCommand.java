package dev.urnwright.cli;

import dev.urnwright.dispatch.Dispatch;
import dev.urnwright.dispatch.Dispatcher;
import dev.urnwright.dispatch.WeekShopping;
import dev.urnwright.form.WorkbookCells;
import dev.urnwright.input.RoundFile;
import dev.urnwright.input.RoundReader;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.Round;
import dev.urnwright.text.RoundText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a day of an office coffee service's round. */
@Command(
    name = "round",
    header = "Plan a day's round of an office coffee service, or what a week takes to buy.",
    description = {
      "%nThe round is a short text that names a table of sites, .csv or .xlsx: a row for each floor"
          + " of a site, with its leg, stop, window, carafes, coffee, strength and weekdays. What"
          + " came back is entered in a table of returns, and tunes what is delivered.",
      "%n'urnwright begin --for round FILE' writes a commented file to start from, and a table."
    },
    footer = {
      "  urnwright round ferry-lane.yaml --date tomorrow",
      "  urnwright round ferry-lane.yaml --week 2027-03-01"
    })
final class RoundCommand extends Subcommand implements Callable<Integer> {
  private static final int MOST_PROBLEMS = 50;

  @Parameters(paramLabel = "FILE", description = "the round")
  private Path file;

  @ArgGroup(exclusive = true, multiplicity = "1")
  private When when = new When();

  @Option(
      names = "--returns",
      paramLabel = "TABLE",
      description = "what came back, .csv or .xlsx, instead of the table that the round names")
  private Optional<Path> returns = Optional.empty();

  @Option(
      names = "--as-listed",
      description = "deliver what the table says; only tell what leftovers would change")
  private boolean asListed;

  RoundCommand(Console console) {
    super(console);
  }

  /** One day, or several. */
  private static final class When {
    @Option(
        names = "--date",
        paramLabel = "DAY",
        converter = DeliveryDay.Converter.class,
        description = "plan this day: 2027-03-02, today or tomorrow")
    private Optional<DeliveryDay> date = Optional.empty();

    @Option(
        names = "--week",
        paramLabel = "DAYS",
        converter = DeliveryDays.Converter.class,
        description =
            "one list of what to buy for the seven days from this one on, or for"
                + " 2027-03-01..2027-03-12")
    private Optional<DeliveryDays> week = Optional.empty();
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    Checked<RoundFile> read = new RoundReader(WorkbookCells::read).open(file, returns);
    if (read.value().isEmpty()) {
      return refuse(read.problems());
    }
    RoundFile round = read.value().get();
    Dispatcher dispatcher = new Dispatcher(round.round(), round.returns(), !asListed);
    return when.week.isPresent()
        ? week(round.round(), dispatcher, when.week.get())
        : day(dispatcher, when.date.orElseThrow().date());
  }

  private int day(Dispatcher dispatcher, LocalDate date) {
    Checked<Dispatch> day = dispatcher.dispatch(date);
    if (day.value().isEmpty()) {
      return refuse(day.problems());
    }
    new RoundText(console().palette()).write(day.value().get(), console().out());
    return ExitCode.DONE;
  }

  private int week(Round round, Dispatcher dispatcher, DeliveryDays week) {
    List<WeekShopping.Day> days = new ArrayList<>();
    List<LocalDate> idle = new ArrayList<>();
    for (LocalDate date : week.dates()) {
      if (DayOfRound.of(round, date).deliveries().isEmpty()) {
        idle.add(date);
        continue;
      }
      Checked<Dispatch> day = dispatcher.dispatch(date);
      if (day.value().isEmpty()) {
        return refuse(day.problems());
      }
      days.add(WeekShopping.Day.of(day.value().get()));
    }
    if (days.isEmpty()) {
      return refuse(
          List.of(
              new Problem(
                  round.location(),
                  "nothing is delivered from " + week.first() + " to " + week.last(),
                  "expected days that are among the weekdays of a row")));
    }
    new RoundText(console().palette()).write(round, WeekShopping.of(days, idle), console().out());
    return ExitCode.DONE;
  }

  private int refuse(List<Problem> problems) {
    console().problems(problems, MOST_PROBLEMS, "nothing was written");
    return ExitCode.PROBLEMS;
  }
}
