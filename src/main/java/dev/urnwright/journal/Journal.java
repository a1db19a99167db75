package dev.urnwright.journal;

import dev.urnwright.journal.BrewEntry.Occasion;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A journal that is open. What a method has written is durable when it returns; several programs
 * may use one journal at the same time.
 */
public final class Journal implements AutoCloseable {
  private final JournalAddress address;
  private final Connection connection;
  private final BrewTable brews;
  private final ServiceTable services;
  private final RemovalTable removals;

  private Journal(JournalAddress address, Connection connection) {
    this.address = address;
    this.connection = connection;
    this.brews = new BrewTable(connection);
    this.services = new ServiceTable(connection);
    this.removals = new RemovalTable(connection);
  }

  /**
   * Opens a journal; a file that isn't there is made.
   *
   * @throws JournalException if it can't be had, or is of a newer program
   */
  public static Journal open(JournalAddress address) throws JournalException {
    return new Journal(address, Database.connect(address));
  }

  /** Whether a journal stands at that place already. */
  public static boolean exists(JournalAddress address) {
    return address.file().map(Files::exists).orElse(true);
  }

  /** Adds a batch. An entry that is there already, by its id, is left as it is. */
  public void add(BrewEntry entry) throws JournalException {
    write(() -> brews.add(entry));
  }

  /** Adds many, all or none. */
  public void addAll(List<BrewEntry> entries, List<ServiceEntry> served) throws JournalException {
    write(
        () -> {
          for (BrewEntry entry : entries) {
            brews.add(entry);
          }
          for (ServiceEntry entry : served) {
            services.add(entry);
          }
        });
  }

  /** Adds what a group drank. */
  public void add(ServiceEntry entry) throws JournalException {
    write(() -> services.add(entry));
  }

  /** Puts batches in the place of those with their ids, all or none. */
  public void putAll(List<BrewEntry> entries) throws JournalException {
    write(
        () -> {
          for (BrewEntry entry : entries) {
            brews.remove(entry.id());
            brews.add(entry);
          }
        });
  }

  /** Removes an entry of either kind, and keeps what it was; false when none has that id. */
  public boolean remove(UUID id) throws JournalException {
    boolean[] found = new boolean[1];
    write(
        () -> {
          Optional<EntryRow> entry = row(id);
          found[0] = entry.isPresent();
          if (entry.isPresent()) {
            removals.add(new Removal(id, Instant.now(), entry.get()));
            brews.remove(id);
            services.remove(id);
          }
        });
    return found[0];
  }

  private Optional<EntryRow> row(UUID id) throws SQLException {
    Optional<EntryRow> brew =
        brews.all().stream().filter(each -> each.id().equals(id)).map(EntryRow::of).findFirst();
    return brew.isPresent()
        ? brew
        : services.all().stream()
            .filter(each -> each.id().equals(id))
            .map(EntryRow::of)
            .findFirst();
  }

  /** What was removed, the first removed first. */
  public List<Removal> removals() throws JournalException {
    return read(removals::all);
  }

  /** All batches, the oldest first. */
  public List<BrewEntry> brews() throws JournalException {
    return read(brews::all);
  }

  /** The batches of one event, the oldest first. */
  public List<BrewEntry> brewsOf(Occasion occasion) throws JournalException {
    return brews().stream().filter(entry -> entry.occasion().equals(occasion)).toList();
  }

  /** All that groups drank, the oldest first. */
  public List<ServiceEntry> services() throws JournalException {
    return read(services::all);
  }

  /** What the groups of one event drank, the oldest first. */
  public List<ServiceEntry> servicesOf(Occasion occasion) throws JournalException {
    return services().stream().filter(entry -> entry.occasion().equals(occasion)).toList();
  }

  @Override
  public void close() throws JournalException {
    try {
      connection.close();
    } catch (SQLException e) {
      throw new JournalException(address.shown() + ": " + Database.reason(e), e);
    }
  }

  /** What is done with the tables. */
  private interface Work {
    void run() throws SQLException;
  }

  /** What is asked of them. */
  private interface Question<T> {
    T ask() throws SQLException;
  }

  private void write(Work work) throws JournalException {
    try {
      work.run();
      connection.commit();
    } catch (SQLException e) {
      rollBack();
      throw new JournalException(
          address.shown() + ": nothing was written: " + Database.reason(e), e);
    }
  }

  private <T> T read(Question<T> question) throws JournalException {
    try {
      T answer = question.ask();
      connection.commit();
      return answer;
    } catch (SQLException | IllegalArgumentException | DateTimeException e) {
      rollBack();
      throw new JournalException(address.shown() + ": can't be read: " + Database.reason(e), e);
    }
  }

  private void rollBack() {
    try {
      connection.rollback();
    } catch (SQLException lost) {
      // the connection is gone, and with it what was not committed
    }
  }
}
