package dev.urnwright.cli;

import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalException;
import dev.urnwright.pdf.ReportSheets;
import dev.urnwright.plan.Plan;
import dev.urnwright.problem.Checked;
import dev.urnwright.report.EventReport;
import dev.urnwright.sheet.ReportView;
import dev.urnwright.text.ReportText;
import dev.urnwright.wording.Words;
import dev.urnwright.xlsx.ReportWorkbook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells what became of an event. */
@Command(
    header = "After the event: planned against measured, what came back, what that cost.",
    description = {
      "%nTakes what 'adjust' and 'journal served' wrote into the journal under the event's name and"
          + " day (today, when the event has none). Writes NAME-report.pdf and NAME-report.xlsx"
          + " beside the event.",
      "%nWhat was not measured is said to be so."
    },
    footer = "  urnwright report supper.yaml")
final class ReportCommand extends Subcommand implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", description = "the event file")
  private Path file = Path.of("");

  @Mixin private LearningOptions learning = new LearningOptions();

  @Mixin private OutputOptions output = new OutputOptions();

  ReportCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    Checked<Plan> checked = Planning.plan(file, output.languages(), learning);
    if (checked.value().isEmpty()) {
      console().problems(checked.problems(), "nothing was written");
      return ExitCode.PROBLEMS;
    }
    Plan plan = checked.value().get();
    EventReport report;
    try (Journal open = learning.open()) {
      EventJournal of = new EventJournal(plan, Clock.systemDefaultZone());
      report = EventReport.of(plan, open.brewsOf(of.occasion()), open.servicesOf(of.occasion()));
    } catch (JournalException e) {
      throw JournalOption.refused(e);
    }
    new ReportText(console().palette())
        .write(ReportView.of(report, Words.ENGLISH), console().out());
    if (output.writes()) {
      write(report);
    }
    return ExitCode.DONE;
  }

  private void write(EventReport report) throws IOException, RefusedException {
    try (OutputFile sheets = output.file(file, "-report.pdf");
        OutputFile workbook = output.file(file, "-report.xlsx")) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      ReportSheets.write(report, output.templates(), bytes);
      sheets.writeAside(bytes.toByteArray());
      bytes.reset();
      ReportWorkbook.write(report, bytes);
      workbook.writeAside(bytes.toByteArray());
      sheets.putInPlace();
      workbook.putInPlace();
      console().out().println("wrote " + sheets.target());
      console().out().println("wrote " + workbook.target());
    }
  }
}
