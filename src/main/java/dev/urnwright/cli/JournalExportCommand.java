package dev.urnwright.cli;

import dev.urnwright.journal.EntryRow;
import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalCsv;
import dev.urnwright.journal.JournalException;
import dev.urnwright.json.JournalJson;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes all entries into a file. */
@Command(
    name = "export",
    header = "Write all entries into a file, CSV or JSON by its ending.",
    footer = {"  urnwright journal export brews.csv", "  urnwright journal export brews.json"})
final class JournalExportCommand extends Subcommand implements Callable<Integer> {
  @Mixin private JournalOption journal = new JournalOption();

  @Parameters(paramLabel = "FILE", description = "to write, ending in .csv or .json")
  private Path file = Path.of("");

  @Option(names = "--replace", description = "write over a file that is there")
  private boolean replace;

  JournalExportCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    List<EntryRow> rows = new ArrayList<>();
    try (Journal open = journal.open()) {
      open.brews().stream().map(EntryRow::of).forEach(rows::add);
      open.services().stream().map(EntryRow::of).forEach(rows::add);
    } catch (JournalException e) {
      throw JournalOption.refused(e);
    }
    StringWriter text = new StringWriter();
    if (isJson(file)) {
      JournalJson.write(rows, text);
    } else {
      JournalCsv.write(rows, text);
    }
    OutputFile.Existing existing = replace ? OutputFile.Existing.REPLACE : OutputFile.Existing.KEEP;
    try (OutputFile out = OutputFile.at(file, existing)) {
      out.writeAside(text.toString().getBytes(StandardCharsets.UTF_8));
      out.putInPlace();
    }
    console().out().println("wrote " + rows.size() + " entries to " + file);
    return ExitCode.DONE;
  }

  static boolean isJson(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(".json");
  }
}
