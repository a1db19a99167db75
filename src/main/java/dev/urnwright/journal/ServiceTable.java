package dev.urnwright.journal;

import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.journal.ServiceEntry.Asked;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What groups drank, in the database. */
final class ServiceTable {
  private static final String COLUMNS =
      "id, recorded_at, event, event_date, kind, group_name, coffee, headcount, drinkers,"
          + " cups_each, cups_planned, cup_g, put_out_g, came_back_g";

  private final Connection connection;

  ServiceTable(Connection connection) {
    this.connection = connection;
  }

  void add(ServiceEntry entry) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into service ("
                + COLUMNS
                + ") values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"
                + " on conflict (id) do nothing")) {
      insert.setString(1, entry.id().toString());
      insert.setString(2, entry.recordedAt().toString());
      insert.setString(3, entry.occasion().event());
      insert.setString(4, entry.occasion().date().map(LocalDate::toString).orElse(null));
      insert.setString(5, entry.kind().orElse(null));
      insert.setString(6, entry.group());
      insert.setString(7, entry.coffee());
      insert.setInt(8, entry.asked().headcount());
      insert.setDouble(9, entry.asked().drinkers().fraction());
      insert.setDouble(10, entry.asked().cupsEach());
      insert.setInt(11, entry.asked().cups());
      insert.setDouble(12, entry.asked().cup().grams());
      insert.setDouble(13, entry.putOut().grams());
      insert.setDouble(14, entry.cameBack().grams());
      insert.executeUpdate();
    }
  }

  int remove(UUID id) throws SQLException {
    try (PreparedStatement delete =
        connection.prepareStatement("delete from service where id = ?")) {
      delete.setString(1, id.toString());
      return delete.executeUpdate();
    }
  }

  List<ServiceEntry> all() throws SQLException {
    List<ServiceEntry> entries = new ArrayList<>();
    try (PreparedStatement select =
            connection.prepareStatement(
                "select " + COLUMNS + " from service order by recorded_at, id");
        ResultSet row = select.executeQuery()) {
      while (row.next()) {
        entries.add(entry(row));
      }
    }
    return entries;
  }

  private static ServiceEntry entry(ResultSet row) throws SQLException {
    return new ServiceEntry(
        UUID.fromString(row.getString(1)),
        Instant.parse(row.getString(2)),
        new Occasion(row.getString(3), Optional.ofNullable(row.getString(4)).map(LocalDate::parse)),
        Optional.ofNullable(row.getString(5)),
        row.getString(6),
        row.getString(7),
        new Asked(
            row.getInt(8),
            Share.ofFraction(row.getDouble(9)),
            row.getDouble(10),
            row.getInt(11),
            Mass.ofGrams(row.getDouble(12))),
        Mass.ofGrams(row.getDouble(13)),
        Mass.ofGrams(row.getDouble(14)));
  }
}
