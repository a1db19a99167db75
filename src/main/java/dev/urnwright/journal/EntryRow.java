package dev.urnwright.journal;

import dev.urnwright.brew.Readings.Reading;
import dev.urnwright.journal.BrewEntry.Occasion;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * An entry of either kind as a row of named texts, as it travels in CSV and JSON.
 *
 * @param cells by name, in the order of {@link #COLUMNS}; what is not known is left out
 */
public record EntryRow(Map<String, String> cells) {
  /** All names. */
  public static final List<String> COLUMNS =
      List.of(
          "entry",
          "id",
          "recorded_at",
          "event",
          "event_date",
          "batch",
          "coffee",
          "brewer",
          "method",
          "steam_loss_percent",
          "dose_g",
          "water_g",
          "beverage_g",
          "readings",
          "kind",
          "group",
          "headcount",
          "drinkers_percent",
          "cups_each",
          "cups_planned",
          "cup_g",
          "put_out_g",
          "came_back_g");

  static final String BREW = "brew";
  static final String SERVICE = "service";

  /** Copies the map, in its order. */
  public EntryRow {
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }

  /** A batch as a row. */
  public static EntryRow of(BrewEntry entry) {
    Cells cells = new Cells();
    cells.put("entry", BREW);
    cells.put("id", entry.id());
    cells.put("recorded_at", entry.recordedAt());
    cells.occasion(entry.occasion());
    cells.put("batch", entry.batch());
    cells.put("coffee", entry.coffee());
    entry.brewer().ifPresent(brewer -> cells.put("brewer", brewer));
    cells.put("method", entry.method().name().toLowerCase(Locale.ROOT));
    cells.number("steam_loss_percent", entry.steamLoss().percent());
    cells.number("dose_g", entry.weighed().dose().grams());
    cells.number("water_g", entry.weighed().brewWater().grams());
    entry.weighed().beverage().ifPresent(mass -> cells.number("beverage_g", mass.grams()));
    cells.put(
        "readings",
        entry.weighed().readings().taken().stream()
            .map(EntryRow::reading)
            .collect(Collectors.joining(" ")));
    return new EntryRow(cells.all);
  }

  /** What a group drank, as a row. */
  public static EntryRow of(ServiceEntry entry) {
    Cells cells = new Cells();
    cells.put("entry", SERVICE);
    cells.put("id", entry.id());
    cells.put("recorded_at", entry.recordedAt());
    cells.occasion(entry.occasion());
    cells.put("coffee", entry.coffee());
    entry.kind().ifPresent(kind -> cells.put("kind", kind));
    cells.put("group", entry.group());
    cells.put("headcount", entry.asked().headcount());
    cells.number("drinkers_percent", entry.asked().drinkers().percent());
    cells.number("cups_each", entry.asked().cupsEach());
    cells.put("cups_planned", entry.asked().cups());
    cells.number("cup_g", entry.asked().cup().grams());
    cells.number("put_out_g", entry.putOut().grams());
    cells.number("came_back_g", entry.cameBack().grams());
    return new EntryRow(cells.all);
  }

  private static String reading(Reading reading) {
    return plain(reading.strength().percent())
        + reading.sample().map(sample -> "@" + plain(sample.celsius())).orElse("");
  }

  /** More digits than any scale has, and one less than would show the rounding of a percent. */
  private static final MathContext DIGITS = new MathContext(12);

  /** A number without an exponent. */
  private static String plain(double number) {
    return BigDecimal.valueOf(number).round(DIGITS).stripTrailingZeros().toPlainString();
  }

  /** Collects cells. */
  private static final class Cells {
    private final Map<String, String> all = new LinkedHashMap<>();

    void put(String name, Object value) {
      all.put(name, value.toString());
    }

    void number(String name, double value) {
      all.put(name, plain(value));
    }

    void occasion(Occasion occasion) {
      put("event", occasion.event());
      Optional<LocalDate> date = occasion.date();
      date.ifPresent(day -> put("event_date", day));
    }
  }
}
