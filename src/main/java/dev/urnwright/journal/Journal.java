package dev.urnwright.journal;

import dev.urnwright.journal.BrewEntry.Occasion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.postgresql.ds.PGSimpleDataSource;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;

/**
 * A journal that is open. What a method has written is durable when it returns; several programs
 * may use one journal at the same time.
 */
public final class Journal implements AutoCloseable {
  private static final int PATIENCE_MILLISECONDS = 20_000;

  /** The first bytes of every database of SQLite's (its file format, section 1.3.1). */
  private static final byte[] FILE_BEGINS = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

  /** Whose messages may hold what is secret; kept, or its level would be forgotten. */
  private static final Logger DRIVER = Logger.getLogger("org.postgresql");

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
    try {
      if (address.file().isPresent()) {
        makeFolder(address.file().get());
        refuseOthers(address.file().get());
      }
      DataSource source = address.file().isPresent() ? file(address.url()) : server(address.url());
      Connection connection = source.getConnection();
      try {
        Schema.update(connection, source, address.shown());
        if (address.file().isPresent()) {
          logAhead(connection);
        }
        connection.setAutoCommit(false);
        return new Journal(address, connection);
      } catch (JournalException | SQLException e) {
        connection.close();
        throw e;
      }
    } catch (SQLException | IOException e) {
      throw new JournalException(
          address.shown() + ": can't be opened as a journal: " + reason(e), e);
    }
  }

  /** Whether a journal stands at that place already. */
  public static boolean exists(JournalAddress address) {
    return address.file().map(Files::exists).orElse(true);
  }

  private static void makeFolder(Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
  }

  /** SQLite takes whatever is shorter than a page for empty, and would write over it. */
  private static void refuseOthers(Path file) throws IOException, JournalException {
    if (!Files.isRegularFile(file) || Files.size(file) == 0) {
      return;
    }
    try (InputStream in = Files.newInputStream(file)) {
      if (!Arrays.equals(in.readNBytes(FILE_BEGINS.length), FILE_BEGINS)) {
        throw new JournalException(
            file + ": is not a journal; expected a journal, or a file that isn't there yet");
      }
    }
  }

  /** Each commit is on the disk; a writer waits for another instead of failing. */
  private static DataSource file(String url) {
    SQLiteConfig config = new SQLiteConfig();
    config.setSynchronous(SynchronousMode.FULL);
    config.setTransactionMode(TransactionMode.IMMEDIATE);
    config.setBusyTimeout(PATIENCE_MILLISECONDS);
    config.enforceForeignKeys(true);
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl(url);
    return source;
  }

  /**
   * Readers and a writer don't wait for each other then. Only now that the file is known to be a
   * journal, and no matter if another program stands in the way: commits are durable either way.
   */
  private static void logAhead(Connection connection) {
    try (Statement statement = connection.createStatement()) {
      statement.execute("pragma journal_mode = wal");
    } catch (SQLException later) {
      // the next program to open it will
    }
  }

  private static DataSource server(String url) throws JournalException {
    DRIVER.setLevel(Level.OFF);
    PGSimpleDataSource source = new PGSimpleDataSource();
    try {
      source.setURL(url);
    } catch (IllegalArgumentException e) {
      // not the driver's own words, which repeat the whole URL
      throw new JournalException(
          "the journal's URL can't be read; expected such as jdbc:postgresql://server:5432/urnwright",
          e);
    }
    Optional.ofNullable(System.getenv("PGUSER"))
        .ifPresent(
            user -> {
              if (source.getUser() == null) {
                source.setUser(user);
              }
            });
    Optional.ofNullable(System.getenv("URNWRIGHT_JOURNAL_PASSWORD"))
        .or(() -> Optional.ofNullable(System.getenv("PGPASSWORD")))
        .ifPresent(source::setPassword);
    return source;
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
      throw new JournalException(address.shown() + ": " + reason(e), e);
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
      throw new JournalException(address.shown() + ": nothing was written: " + reason(e), e);
    }
  }

  private <T> T read(Question<T> question) throws JournalException {
    try {
      T answer = question.ask();
      connection.commit();
      return answer;
    } catch (SQLException | IllegalArgumentException | DateTimeException e) {
      rollBack();
      throw new JournalException(address.shown() + ": can't be read: " + reason(e), e);
    }
  }

  private void rollBack() {
    try {
      connection.rollback();
    } catch (SQLException lost) {
      // the connection is gone, and with it what was not committed
    }
  }

  private static String reason(Exception e) {
    return String.valueOf(e.getMessage()).lines().findFirst().orElse("no reason given");
  }
}
