package dev.urnwright.cli;

import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalAddress;
import dev.urnwright.journal.JournalException;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which journal. */
final class JournalOption {
  @Option(
      names = "--journal",
      paramLabel = "FILE-OR-URL",
      description =
          "a file, or jdbc:postgresql://… ; left out, URNWRIGHT_JOURNAL or your own journal")
  private Optional<String> named = Optional.empty();

  JournalAddress address() throws RefusedException {
    try {
      return JournalAddress.meant(named, System.getenv(), System.getProperty("os.name", ""));
    } catch (JournalException e) {
      throw refused(e);
    }
  }

  /** Opens it, and makes it where it is missing. */
  Journal open() throws RefusedException {
    try {
      return Journal.open(address());
    } catch (JournalException e) {
      throw refused(e);
    }
  }

  static RefusedException refused(JournalException e) {
    return new RefusedException(String.valueOf(e.getMessage()));
  }
}
