package dev.urnwright.dispatch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.urnwright.form.WorkbookCells;
import dev.urnwright.input.RoundFile;
import dev.urnwright.input.RoundReader;
import dev.urnwright.problem.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Rounds for tests, written to a folder and read from it. */
public final class Rounds {
  /**
   * A round that can be followed by hand: the coffee of the README (a reference of 60 g with 960 g
   * of water gave 831 g at 1.40 %, brewed at 1:13), carafes of 2 l filled at 75 °C.
   */
  public static final String SMALL =
      """
      round: Small round
      sites: sites.csv
      legs:
        - {name: North, driver: Ida, leave: 06:00}
        - {name: South, leave: 07:00}
      carafes:
        - {name: Carafe, count: 40, capacity: 2.2 l, fill: 2 l, tare: 1 kg, hold: 4 h}
      fresh: 1 h
      coffee:
        name: Reference coffee
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
        bag: 1 kg
        price: 20 EUR
      strengths: {medium: 1.30 %, strong: 1.40 %}
      bypass_temperature: 75 °C
      brewers:
        - {name: Tower, count: 1, dose: 200 g to 2 kg, water: 28 l, cycle: 18 min}
      kitchen: {fill_each: 1 min, fillers: 2, loading: 15 min, turnaround: 2 min}
      supplies:
        - {name: Labels, use: 1 per carafe, pack: 100, price: 3 EUR}
      scale_step: 10 g
      """;

  private static final String PROFILE =
      "reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %},"
          + " concentrate: {ratio: 13}";

  /** The same with two coffees alike, of which one is decaf. */
  public static final String WITH_DECAF =
      SMALL.replaceFirst(
          "(?s)coffee:.*?strengths:",
          "coffees:\n  house: {name: House, "
              + PROFILE
              + "}\n  decaf: {name: Night, decaf: yes, "
              + PROFILE
              + "}\nstrengths:");

  private Rounds() {}

  /** Reads a round out of a folder, with its tables. */
  public static Checked<RoundFile> read(Path folder, String round, String sites)
      throws IOException {
    Files.writeString(folder.resolve("sites.csv"), sites);
    Path file = Files.writeString(folder.resolve("round.yaml"), round);
    return new RoundReader(WorkbookCells::read).open(file, Optional.empty());
  }

  /** The same, without a problem. */
  public static RoundFile good(Path folder, String round, String sites) throws IOException {
    Checked<RoundFile> read = read(folder, round, sites);
    assertEquals(List.of(), read.problems());
    return read.value().orElseThrow();
  }

  /** A day of it, without a problem. */
  public static Dispatch day(RoundFile file, LocalDate date) {
    Checked<Dispatch> day = new Dispatcher(file.round(), file.returns(), true).dispatch(date);
    assertEquals(List.of(), day.problems());
    return day.value().orElseThrow();
  }
}
