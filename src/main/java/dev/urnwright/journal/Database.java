package dev.urnwright.journal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.postgresql.ds.PGSimpleDataSource;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;

/** Where a journal's tables are kept: a file of SQLite's, or PostgreSQL on a server. */
final class Database {
  private static final int PATIENCE_MILLISECONDS = 20_000;

  /** The first bytes of every database of SQLite's (its file format, section 1.3.1). */
  private static final byte[] FILE_BEGINS = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

  /** Whose messages may hold what is secret; kept, or its level would be forgotten. */
  private static final Logger DRIVER = Logger.getLogger("org.postgresql");

  private Database() {}

  /**
   * Connects, with the tables as this program knows them; a file that isn't there is made. Nothing
   * is committed but by a call to do so.
   *
   * @throws JournalException if it can't be had, or is of a newer program
   */
  static Connection connect(JournalAddress address) throws JournalException {
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
        return connection;
      } catch (JournalException | SQLException e) {
        connection.close();
        throw e;
      }
    } catch (SQLException | IOException e) {
      throw new JournalException(
          address.shown() + ": can't be opened as a journal: " + reason(e), e);
    }
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

  /** What a database says of a failure, on one line. */
  static String reason(Exception e) {
    return String.valueOf(e.getMessage()).lines().findFirst().orElse("no reason given");
  }
}
