package dev.urnwright.xlsx;

import dev.urnwright.input.EventReader;
import dev.urnwright.plan.Plan;
import dev.urnwright.plan.Planner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/** Plans of the event files that we ship, as they are or with other numbers. */
final class Samples {
  static final List<String> FILES =
      List.of(
          "samples/autumn-conference.yaml",
          "samples/harvest-supper.yaml",
          "samples/corner-cafe.yaml",
          "samples/office-carafes.yaml",
          "templates/event.yaml");

  private static final Pattern HEADCOUNT = Pattern.compile("(?m)^( *(?:- )?headcount: )(\\d+)");

  private Samples() {}

  static Plan plan(String file) {
    return plan(Path.of(file));
  }

  private static Plan plan(Path file) {
    return new Planner()
        .plan(new EventReader().read(file).value().orElseThrow())
        .value()
        .orElseThrow();
  }

  /**
   * The same with other headcounts, and as many cups as are drunk on average: POI's evaluator can't
   * sum over the odds of fractional cups.
   *
   * @param headcounts times this, rounded
   */
  static Plan plan(String file, double headcounts, Path folder) {
    String text = text(file).replaceAll("(?m)^service_level:.*$", "");
    return planText(
        HEADCOUNT
            .matcher(text)
            .replaceAll(
                found ->
                    found.group(1) + Math.round(Integer.parseInt(found.group(2)) * headcounts)),
        folder);
  }

  /** The text of a file that we ship. */
  static String text(String file) {
    try {
      return Files.readString(Path.of(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The plan of an event file with this text. */
  static Plan planText(String text, Path folder) {
    try {
      return plan(Files.writeString(folder.resolve("event.yaml"), text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
