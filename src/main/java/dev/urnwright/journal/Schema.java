package dev.urnwright.journal;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Brings a journal's tables up to this program's version. */
final class Schema {
  /** The last of the files in {@code journal/}. */
  static final int VERSION = 2;

  private static final int TRIES = 20;
  private static final long BETWEEN_TRIES_MILLISECONDS = 100;
  private static final int NONE = 0;

  private Schema() {}

  /**
   * Migrates where that is needed. Programs that start at the same time may stand in each other's
   * way here, so it is tried again; a journal that is up to date costs one query.
   */
  static void update(Connection connection, DataSource source, String shown)
      throws JournalException {
    for (int tries = 1; ; tries++) {
      int version = version(connection);
      if (version > VERSION) {
        throw new JournalException(
            shown + ": was written by a newer Urnwright; use that, or another journal");
      }
      if (version == VERSION) {
        return;
      }
      try {
        Flyway.configure()
            .dataSource(source)
            .locations("classpath:journal")
            .table("urnwright_schema")
            .baselineOnMigrate(false)
            .load()
            .migrate();
        return;
      } catch (FlywayException e) {
        if (tries == TRIES) {
          throw new JournalException(
              shown + ": its tables can't be made; is it a journal of Urnwright's?", e);
        }
        pause();
      }
    }
  }

  private static int version(Connection connection) {
    try (Statement statement = connection.createStatement();
        ResultSet found =
            statement.executeQuery(
                "select max(cast(version as integer)) from urnwright_schema where success")) {
      return found.next() ? found.getInt(1) : NONE;
    } catch (SQLException notThereYet) {
      return NONE;
    }
  }

  private static void pause() {
    try {
      Thread.sleep(BETWEEN_TRIES_MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
