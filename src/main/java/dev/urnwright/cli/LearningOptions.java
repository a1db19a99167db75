package dev.urnwright.cli;

import dev.urnwright.event.Event;
import dev.urnwright.event.Note;
import dev.urnwright.journal.Journal;
import dev.urnwright.journal.JournalAddress;
import dev.urnwright.journal.JournalException;
import dev.urnwright.learn.Lessons;
import dev.urnwright.learn.Teaching;
import dev.urnwright.problem.Checked;
import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import dev.urnwright.wording.Saying;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which journal an event is planned by, where it names one. */
final class LearningOptions {
  @Mixin private JournalOption journal = new JournalOption();

  @Option(
      names = "--no-journal",
      description = "plan as if there were no journal, and write nothing into it")
  private boolean none;

  /** Whether there is a journal for this command. */
  boolean isWanted() {
    return !none;
  }

  /** Opens it to write into it, and makes it where it is missing. */
  Journal open() throws RefusedException {
    return journal.open();
  }

  /**
   * The event, taught by the journal where it asks for that. A journal that isn't there is a note;
   * one that can't be read is a problem, since the plan would be another without it.
   *
   * @throws RefusedException if what was named can't be a journal's place
   */
  Checked<Event> taught(Event event) throws RefusedException {
    Optional<Location> named = event.journalNamedAt();
    if (named.isEmpty()) {
      return Checked.of(event);
    }
    if (none) {
      return Checked.of(event.noting(new Note(Lessons.NOTE, Saying.of("journal.left-out"))));
    }
    return taught(event, named.get(), journal.address());
  }

  private static Checked<Event> taught(Event event, Location named, JournalAddress address) {
    if (!Journal.exists(address)) {
      return Checked.of(
          event.noting(
              new Note(Lessons.NOTE, Saying.of("journal.none").with("place", address.shown()))));
    }
    try (Journal open = Journal.open(address)) {
      return Checked.of(Teaching.of(event, LocalDate.now(), open.brews(), open.services()));
    } catch (JournalException e) {
      return Checked.refused(
          List.of(
              new Problem(
                  named,
                  "the journal can't be read: " + e.getMessage(),
                  "expected one that can be, or --no-journal to plan without")));
    }
  }
}
