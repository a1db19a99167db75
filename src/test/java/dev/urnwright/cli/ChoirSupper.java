package dev.urnwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A small event for the day's commands, of round numbers: 20 % extracted and 2 g/g kept, so that
 * 1:12 gives 10 g of concentrate of 2.00 % for each gram. Two groups of 30 drink cups of 200 ml,
 * and each has a batch and an urn of its own.
 */
final class ChoirSupper {
  private static final String PROFILE =
      "extraction: 20 %, absorption: 2 g/g, concentrate: {ratio: 12}";
  private static final String URNS =
      """
      dispensers: [{name: Urn, count: 4, capacity: 8 l, hold: 60 min}]
      scale_step: 1 g
      """;

  private ChoirSupper() {}

  /** Of one coffee, on no day in particular. */
  static Path write(Path folder) throws IOException {
    return write(folder, "", "");
  }

  /**
   * The same on a day.
   *
   * @param date the event's
   * @param more what else is known of the coffee, each with a comma before it
   */
  static Path write(Path folder, String date, String more) throws IOException {
    return Files.writeString(
        folder.resolve("supper.yaml"),
        "event: Choir supper\n"
            + (date.isEmpty() ? "" : "date: " + date + "\n")
            + "coffee: {name: House, "
            + PROFILE
            + more
            + "}\n"
            + """
            groups:
              - {name: Early, headcount: 30, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30}
              - {name: "=Late", headcount: 30, cup: 200 ml, strength: 1.25 %, serve: 13:00-13:30}
            brewers: [{name: Tall, dose: 100 g to 400 g, water: 5 l, cycle: 12 min}]
            """
            + URNS);
  }

  /** Of two coffees, the late group's stronger. */
  static Path writeWithDecaf(Path folder) throws IOException {
    return Files.writeString(
        folder.resolve("supper.yaml"),
        "event: Choir supper\ncoffees:\n"
            + ("  house: {name: House, " + PROFILE + "}\n")
            + ("  decaf: {name: Decaf, " + PROFILE + "}\n")
            + """
            groups:
              - {name: Early, headcount: 30, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30,
                 coffee: {house: 90 %, decaf: 10 %}}
              - {name: Late, headcount: 30, cup: 200 ml, strength: 1.60 %, serve: 13:00-13:30,
                 coffee: house}
            brewers: [{name: Tall, dose: 10 g to 600 g, water: 7 l, cycle: 12 min}]
            """
            + URNS);
  }
}
