package dev.urnwright.cli;

import dev.urnwright.journal.EntryReader;
import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalCsv;
import dev.urnwright.journal.JournalException;
import dev.urnwright.json.JournalJson;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Reads entries from a file. */
@Command(
    name = "import",
    header = "Read entries from a file, CSV or JSON by its ending.",
    description =
        "%nAll or none: when anything in the file is wrong, all of it is said and nothing is added."
            + " Entries that are there already, by their id, are not added again.",
    footer = "  urnwright journal import brews.csv")
final class JournalImportCommand extends Subcommand implements Callable<Integer> {
  @Mixin private JournalOption journal = new JournalOption();

  @Parameters(paramLabel = "FILE", description = "to read, ending in .csv or .json")
  private Path file = Path.of("");

  JournalImportCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws RefusedException {
    EntryReader entries = new EntryReader();
    try (Reader in = Files.newBufferedReader(file)) {
      if (JournalExportCommand.isJson(file)) {
        JournalJson.read(in, file.toString(), entries);
      } else {
        JournalCsv.read(in, file.toString(), entries);
      }
    } catch (CharacterCodingException e) {
      throw new RefusedException(file + ": is not text in UTF-8; save it anew as such");
    } catch (IOException e) {
      throw new RefusedException(file + ": can't be read; name a file in CSV or JSON");
    }
    if (!entries.problems().isEmpty()) {
      console().problems(entries.problems(), "nothing was added");
      return ExitCode.PROBLEMS;
    }
    try (Journal open = journal.open()) {
      open.addAll(entries.brews(), entries.services());
    } catch (JournalException e) {
      throw JournalOption.refused(e);
    }
    console()
        .out()
        .println("read " + (entries.brews().size() + entries.services().size()) + " entries");
    return ExitCode.DONE;
  }
}
