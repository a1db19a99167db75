package dev.urnwright.cli;

import static java.util.Objects.requireNonNull;

import dev.urnwright.dispatch.Dispatch;
import dev.urnwright.dispatch.Dispatcher;
import dev.urnwright.dispatch.WeekShopping;
import dev.urnwright.form.WorkbookCells;
import dev.urnwright.input.RoundFile;
import dev.urnwright.input.RoundReader;
import dev.urnwright.json.RoundJson;
import dev.urnwright.pdf.RoundSheets;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Problem;
import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.Round;
import dev.urnwright.text.RoundText;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a day of an office coffee service's round. */
@Command(
    header = "Plan a day's round of an office coffee service, or what a week takes to buy.",
    description = {
      "%nThe round is a short text that names a table of sites, .csv or .xlsx: a row for each floor"
          + " of a site, with its leg, stop, window, carafes, coffee, strength and weekdays. What"
          + " came back is entered in a table of returns, and tunes what is delivered.",
      "%nOf a day it prints a summary and writes into a folder NAME-DATE beside the file:",
      "  brew-room.pdf          batches, fills for each leg, carafes, cautions",
      "  LEG-pick-list.pdf      what a driver loads, then stop by stop",
      "  LEG-labels.pdf         a label for each carafe, three across and eight down",
      "  LEG-slips.pdf          a slip for each site, two on a page",
      "  returns.csv            to enter what came back; never written over",
      "%nOf a week it writes NAME-shopping-DATE.pdf.",
      "%n'urnwright begin --for round FILE' writes a commented file to start from, and a table."
    },
    footer = {
      "  urnwright round ferry-lane.yaml --date tomorrow",
      "  urnwright round ferry-lane.yaml --date 2027-03-02 --only labels",
      "  urnwright round ferry-lane.yaml --week 2027-03-01"
    })
final class RoundCommand extends Subcommand implements Callable<Integer> {
  private static final int MOST_PROBLEMS = 50;
  private static final int MOST_STRANGERS = 5;

  @Parameters(paramLabel = "FILE", description = "the round")
  private Path file;

  @ArgGroup(exclusive = true, multiplicity = "1")
  private @Nullable When when;

  @Option(
      names = "--returns",
      paramLabel = "TABLE",
      description = "what came back, .csv or .xlsx, instead of the table that the round names")
  private Optional<Path> returns = Optional.empty();

  @Option(
      names = "--as-listed",
      description = "deliver what the table says; only tell what leftovers would change")
  private boolean asListed;

  @Option(
      names = "--only",
      paramLabel = "SHEETS",
      split = ",",
      description = "of a day make these sheets alone: brew, pick, labels, slips")
  private Set<RoundFiles.Sheet> only = EnumSet.noneOf(RoundFiles.Sheet.class);

  @Option(names = "--json", description = "print JSON, and nothing else, to standard output")
  private boolean json;

  @Mixin private OutputOptions output = new OutputOptions();

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
    Checked<RoundFile> read =
        new RoundReader(WorkbookCells::read, output.languages()).open(file, returns);
    if (read.value().isEmpty()) {
      return refuse(read.problems());
    }
    RoundFile round = read.value().get();
    strangers(round.strangers());
    Dispatcher dispatcher = new Dispatcher(round.round(), round.returns(), !asListed);
    When asked = requireNonNull(when);
    return asked.week.isPresent()
        ? week(round.round(), dispatcher, asked.week.get())
        : day(dispatcher, asked.date.orElseThrow().date());
  }

  private int day(Dispatcher dispatcher, LocalDate date) throws IOException, RefusedException {
    Checked<Dispatch> day = dispatcher.dispatch(date);
    if (day.value().isEmpty()) {
      return refuse(day.problems());
    }
    Dispatch planned = day.value().get();
    List<Path> written = output.writes() ? write(planned) : List.of();
    if (json) {
      new RoundJson(Version.number()).write(planned, console().out());
    } else {
      new RoundText(console().palette()).write(planned, console().out());
    }
    tell(written);
    return ExitCode.DONE;
  }

  private List<Path> write(Dispatch day) throws IOException, RefusedException {
    Path folder = output.folder(file, "-" + day.day().date());
    try (RoundFiles files = new RoundFiles(output, folder)) {
      files.render(
          day, output.templates(), only.isEmpty() ? RoundFiles.Sheet.ALL : only, console());
      List<Path> written = new ArrayList<>(files.putInPlace());
      files.returns(day).ifPresent(written::add);
      if (only.isEmpty()) {
        for (Path stale : files.stale()) {
          console().complain(stale + ": is left from an earlier run and no part of this day");
        }
      }
      return written;
    }
  }

  private void tell(List<Path> written) {
    PrintWriter to = json ? console().err() : console().out();
    if (!json && !written.isEmpty()) {
      to.println();
    }
    written.forEach(target -> to.println("wrote " + target));
  }

  private int week(Round round, Dispatcher dispatcher, DeliveryDays week)
      throws IOException, RefusedException {
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
    WeekShopping shopping = WeekShopping.of(days, idle);
    List<Path> written = output.writes() ? List.of(write(round, shopping, week)) : List.of();
    if (json) {
      new RoundJson(Version.number()).write(round, shopping, console().out());
    } else {
      new RoundText(console().palette()).write(round, shopping, console().out());
    }
    tell(written);
    return ExitCode.DONE;
  }

  private Path write(Round round, WeekShopping shopping, DeliveryDays week)
      throws IOException, RefusedException {
    ByteArrayOutputStream sheet = new ByteArrayOutputStream();
    new RoundSheets(output.templates(), round).week(round, shopping, sheet);
    try (OutputFile target = output.file(file, "-shopping-" + week.first() + ".pdf")) {
      target.writeAside(sheet.toByteArray());
      target.putInPlace();
      return target.target();
    }
  }

  /** What came back from sites that the table no longer has, or that are misspelt. */
  private void strangers(List<Problem> rows) {
    rows.stream()
        .limit(MOST_STRANGERS)
        .forEach(row -> console().complain(row + "; the row counts for nothing"));
    if (rows.size() > MOST_STRANGERS) {
      console().complain("and " + (rows.size() - MOST_STRANGERS) + " more rows like these");
    }
  }

  private int refuse(List<Problem> problems) {
    console().problems(problems, MOST_PROBLEMS, "nothing was written");
    return ExitCode.PROBLEMS;
  }
}
