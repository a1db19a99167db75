package dev.urnwright.journal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What was removed, in the database. */
final class RemovalTable {
  private final Connection connection;

  RemovalTable(Connection connection) {
    this.connection = connection;
  }

  void add(Removal removal) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into removed (id, removed_at, number, name, value) values (?, ?, ?, ?, ?)")) {
      int number = 0;
      for (Map.Entry<String, String> cell : removal.entry().cells().entrySet()) {
        insert.setString(1, removal.id().toString());
        insert.setString(2, removal.at().toString());
        insert.setInt(3, ++number);
        insert.setString(4, cell.getKey());
        insert.setString(5, cell.getValue());
        insert.executeUpdate();
      }
    }
  }

  List<Removal> all() throws SQLException {
    Map<String, Map<String, String>> cells = new LinkedHashMap<>();
    List<Removal> removals = new ArrayList<>();
    try (PreparedStatement select =
            connection.prepareStatement(
                "select id, removed_at, name, value from removed order by removed_at, id, number");
        ResultSet row = select.executeQuery()) {
      while (row.next()) {
        cells
            .computeIfAbsent(
                row.getString(1) + " " + row.getString(2), first -> new LinkedHashMap<>())
            .put(row.getString(3), row.getString(4));
      }
    }
    cells.forEach(
        (key, entry) -> {
          String[] parts = key.split(" ", 2);
          removals.add(
              new Removal(UUID.fromString(parts[0]), Instant.parse(parts[1]), new EntryRow(entry)));
        });
    return removals;
  }
}
