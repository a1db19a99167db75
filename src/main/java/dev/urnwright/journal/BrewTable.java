package dev.urnwright.journal;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.Readings;
import dev.urnwright.brew.Readings.Reading;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;

/** Batches and their readings in the database. */
final class BrewTable {
  private static final String INSERT =
      "insert into brew (id, recorded_at, event, event_date, batch, coffee, brewer, method,"
          + " steam_loss, dose_g, water_g, beverage_g) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"
          + " on conflict (id) do nothing";

  private final Connection connection;

  BrewTable(Connection connection) {
    this.connection = connection;
  }

  void add(BrewEntry entry) throws SQLException {
    WeighedBatch weighed = entry.weighed();
    try (PreparedStatement insert = connection.prepareStatement(INSERT)) {
      insert.setString(1, entry.id().toString());
      insert.setString(2, entry.recordedAt().toString());
      insert.setString(3, entry.occasion().event());
      insert.setString(4, entry.occasion().date().map(LocalDate::toString).orElse(null));
      insert.setString(5, entry.batch());
      insert.setString(6, entry.coffee());
      insert.setString(7, entry.brewer().orElse(null));
      insert.setString(8, entry.method().name());
      insert.setDouble(9, entry.steamLoss().fraction());
      insert.setDouble(10, weighed.dose().grams());
      insert.setDouble(11, weighed.brewWater().grams());
      set(insert, 12, weighed.beverage().map(Mass::grams));
      if (insert.executeUpdate() == 0) {
        return; // it is there already
      }
    }
    readings(entry);
  }

  private void readings(BrewEntry entry) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into reading (brew_id, number, percent, sample_c) values (?, ?, ?, ?)")) {
      int number = 0;
      for (Reading reading : entry.weighed().readings().taken()) {
        insert.setString(1, entry.id().toString());
        insert.setInt(2, ++number);
        insert.setDouble(3, reading.strength().percent());
        set(insert, 4, reading.sample().map(Temperature::celsius));
        insert.executeUpdate();
      }
    }
  }

  int remove(UUID id) throws SQLException {
    try (PreparedStatement delete = connection.prepareStatement("delete from brew where id = ?")) {
      delete.setString(1, id.toString());
      return delete.executeUpdate();
    }
  }

  List<BrewEntry> all() throws SQLException {
    Map<String, Readings> readings = readings();
    List<BrewEntry> entries = new ArrayList<>();
    try (PreparedStatement select =
            connection.prepareStatement(
                "select id, recorded_at, event, event_date, batch, coffee, brewer, method,"
                    + " steam_loss, dose_g, water_g, beverage_g from brew"
                    + " order by recorded_at, id");
        ResultSet row = select.executeQuery()) {
      while (row.next()) {
        entries.add(entry(row, readings.getOrDefault(row.getString(1), Readings.NONE)));
      }
    }
    return entries;
  }

  private Map<String, Readings> readings() throws SQLException {
    Map<String, Readings> readings = new HashMap<>();
    try (PreparedStatement select =
            connection.prepareStatement(
                "select brew_id, percent, sample_c from reading order by brew_id, number");
        ResultSet row = select.executeQuery()) {
      while (row.next()) {
        OptionalDouble sample = number(row, 3);
        Reading reading =
            new Reading(
                Strength.ofPercent(row.getDouble(2)),
                sample.isPresent()
                    ? Optional.of(Temperature.ofCelsius(sample.getAsDouble()))
                    : Optional.empty());
        readings.merge(
            row.getString(1),
            Readings.NONE.and(reading),
            (before, one) -> before.and(one.taken().get(0)));
      }
    }
    return readings;
  }

  private static BrewEntry entry(ResultSet row, Readings readings) throws SQLException {
    OptionalDouble beverage = number(row, 12);
    return new BrewEntry(
        UUID.fromString(row.getString(1)),
        Instant.parse(row.getString(2)),
        new Occasion(row.getString(3), Optional.ofNullable(row.getString(4)).map(LocalDate::parse)),
        row.getString(5),
        row.getString(6),
        Optional.ofNullable(row.getString(7)),
        BrewMethod.valueOf(row.getString(8)),
        Share.ofFraction(row.getDouble(9)),
        new WeighedBatch(
            Mass.ofGrams(row.getDouble(10)),
            Mass.ofGrams(row.getDouble(11)),
            beverage.isPresent()
                ? Optional.of(Mass.ofGrams(beverage.getAsDouble()))
                : Optional.empty(),
            readings));
  }

  private static OptionalDouble number(ResultSet row, int column) throws SQLException {
    double number = row.getDouble(column);
    return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(number);
  }

  private static void set(PreparedStatement statement, int column, Optional<Double> number)
      throws SQLException {
    if (number.isPresent()) {
      statement.setDouble(column, number.get());
    } else {
      statement.setNull(column, Types.DOUBLE);
    }
  }
}
