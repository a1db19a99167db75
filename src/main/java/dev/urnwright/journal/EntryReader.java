package dev.urnwright.journal;

import dev.urnwright.brew.BrewMethod;
import dev.urnwright.brew.Readings;
import dev.urnwright.brew.Readings.Reading;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.journal.ServiceEntry.Asked;
import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;

/** Makes entries of rows, and problems of what can't be one. */
public final class EntryReader {
  private final List<BrewEntry> brews = new ArrayList<>();
  private final List<ServiceEntry> services = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  /** Batches so far. */
  public List<BrewEntry> brews() {
    return List.copyOf(brews);
  }

  /** What groups drank, so far. */
  public List<ServiceEntry> services() {
    return List.copyOf(services);
  }

  /** What is wrong so far; with any, nothing should be kept. */
  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** Takes up a problem of the file itself. */
  public void refuse(Location where, String wrong, String expected) {
    problems.add(new Problem(where, wrong, expected));
  }

  /**
   * A value of a row.
   *
   * @param text it says
   * @param place where it stands
   */
  public record Cell(String text, Location place) {}

  /**
   * Takes up the name of a column, which may not exist.
   *
   * @param where it stands
   */
  public void column(Location where, String name) {
    if (!EntryRow.COLUMNS.contains(name)) {
      refuse(
          where,
          "unknown column '" + name + "'",
          "known columns: " + String.join(", ", EntryRow.COLUMNS));
    }
  }

  /**
   * Takes up a row.
   *
   * @param where it begins
   * @param values by the names of their columns
   */
  public void row(Location where, Map<String, Cell> values) {
    int before = problems.size();
    values.forEach((name, cell) -> column(cell.place(), name));
    Row row = new Row(where, values);
    String kind = row.cells().getOrDefault("entry", EntryRow.BREW);
    try {
      switch (kind) {
        case EntryRow.BREW -> brew(row).ifPresent(entry -> add(entry, brews, before));
        case EntryRow.SERVICE -> service(row).ifPresent(entry -> add(entry, services, before));
        default ->
            refuse(
                row.place("entry"),
                "'" + kind + "' is no kind of entry",
                "expected brew or service");
      }
    } catch (IllegalArgumentException impossible) {
      refuse(
          where, String.valueOf(impossible.getMessage()), "expected an entry that can have been");
    }
  }

  private <T> void add(T entry, List<T> to, int before) {
    if (problems.size() == before) {
      to.add(entry);
    }
  }

  private Optional<BrewEntry> brew(Row row) {
    Optional<Double> dose = row.needed("dose_g", Double::valueOf, "grams such as 480");
    Optional<Double> water = row.needed("water_g", Double::valueOf, "grams such as 6240");
    Optional<String> coffee = row.needed("coffee", text -> text, "the coffee's name");
    Optional<Double> beverage = row.given("beverage_g", Double::valueOf, "grams such as 5200");
    Optional<Readings> readings =
        row.given("readings", EntryReader::readings, "readings such as 1.81 1.80@21 1.81");
    Optional<BrewMethod> method =
        row.given(
            "method",
            text -> BrewMethod.valueOf(text.toUpperCase(Locale.ROOT)),
            "percolation or immersion");
    Optional<Double> steam =
        row.given("steam_loss_percent", Double::valueOf, "a percentage such as 0.5");
    if (dose.isEmpty() || water.isEmpty() || coffee.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new BrewEntry(
            row.id(),
            row.recordedAt(),
            row.occasion(),
            row.cells().getOrDefault("batch", ""),
            coffee.get(),
            Optional.ofNullable(row.cells().get("brewer")),
            method.orElse(BrewMethod.PERCOLATION),
            Share.ofPercent(steam.orElse(0.0)),
            new WeighedBatch(
                Mass.ofGrams(dose.get()),
                Mass.ofGrams(water.get()),
                beverage.map(Mass::ofGrams),
                readings.orElse(Readings.NONE))));
  }

  private Optional<ServiceEntry> service(Row row) {
    Optional<Integer> headcount = row.needed("headcount", Integer::valueOf, "guests such as 40");
    Optional<Double> cup = row.needed("cup_g", Double::valueOf, "grams such as 215");
    Optional<Double> out = row.needed("put_out_g", Double::valueOf, "grams such as 9000");
    Optional<Double> back = row.needed("came_back_g", Double::valueOf, "grams such as 1200");
    Optional<Double> drinkers =
        row.given("drinkers_percent", Double::valueOf, "a percentage such as 85");
    Optional<Double> each = row.given("cups_each", Double::valueOf, "cups such as 1.5");
    Optional<Integer> cups = row.given("cups_planned", Integer::valueOf, "cups such as 58");
    if (headcount.isEmpty() || cup.isEmpty() || out.isEmpty() || back.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new ServiceEntry(
            row.id(),
            row.recordedAt(),
            row.occasion(),
            Optional.ofNullable(row.cells().get("kind")),
            row.cells().getOrDefault("group", ""),
            row.cells().getOrDefault("coffee", ""),
            new Asked(
                headcount.get(),
                Share.ofPercent(drinkers.orElse(100.0)),
                each.orElse(1.0),
                cups.orElse(0),
                Mass.ofGrams(cup.get())),
            Mass.ofGrams(out.get()),
            Mass.ofGrams(back.get())));
  }

  private static Readings readings(String text) {
    Readings readings = Readings.NONE;
    for (String each : text.strip().split("\\s+")) {
      String[] parts = each.split("@", 2);
      readings =
          readings.and(
              new Reading(
                  Strength.ofPercent(Double.parseDouble(parts[0])),
                  parts.length == 1
                      ? Optional.empty()
                      : Optional.of(Temperature.ofCelsius(Double.parseDouble(parts[1])))));
    }
    return readings;
  }

  /** One row while it is read. */
  private final class Row {
    private final Location where;
    private final Map<String, Cell> values;
    private final Map<String, String> cells = new LinkedHashMap<>();

    Row(Location where, Map<String, Cell> values) {
      this.where = where;
      this.values = values;
      values.forEach((name, cell) -> cells.put(name, cell.text()));
    }

    Location place(String name) {
      Cell cell = values.get(name);
      return cell == null ? where : cell.place();
    }

    Map<String, String> cells() {
      return cells;
    }

    <T> Optional<T> needed(String name, Function<String, T> read, String expected) {
      if (!cells.containsKey(name)) {
        refuse(where, "this entry has no '" + name + "'", "expected " + expected);
        return Optional.empty();
      }
      return given(name, read, expected);
    }

    <T> Optional<T> given(String name, Function<String, T> read, String expected) {
      String text = cells.get(name);
      if (text == null) {
        return Optional.empty();
      }
      try {
        return Optional.of(read.apply(text.strip()));
      } catch (IllegalArgumentException | DateTimeException unreadable) {
        refuse(place(name), name + ": '" + text + "' can't be read", "expected " + expected);
        return Optional.empty();
      }
    }

    /** The same for the same row, where it says none: so that reading it in twice adds it once. */
    UUID id() {
      return given("id", UUID::fromString, "an id as exported")
          .orElseGet(
              () -> UUID.nameUUIDFromBytes(cells.toString().getBytes(StandardCharsets.UTF_8)));
    }

    Instant recordedAt() {
      return given("recorded_at", Instant::parse, "a moment such as 2027-06-05T06:30:00Z")
          .orElse(Instant.EPOCH);
    }

    Occasion occasion() {
      return new Occasion(
          cells.getOrDefault("event", ""),
          given("event_date", LocalDate::parse, "a day such as 2027-06-05"));
    }
  }
}
