package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Events at the ends of what there can be, from the file to the printed plan. */
class OddEventsTest {
  private static final String SUPPER =
      """
      event: Choir supper
      coffee:
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - {name: Everybody, headcount: 100, cup: 200 ml, strength: 1.25 %}
      """;

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "headcount: 100 | headcount: 0 | 0 is out of range; expected a number from 1 to 1000000",
        "1.25 % | 14 % | 14 % is out of range; expected a percentage from 0.1 % to 10 %;"
            + " did you mean 1.4 %?",
        "ratio: 13 | ratio: 1:1.3 | '1:1.3' is not a ratio that coffee is brewed at;"
            + " expected from 1:2 to 1:50; did you mean 1:13?",
        "cup: 200 ml | cup: 240 g | 240 g is a mass; expected a volume such as 240 ml",
        "cup: 200 ml | cup: 1.234,5 ml | 1.234 has no unit; expected a volume such as 240 ml",
        "event: | 'date: 2027-02-29\\nevent:' | 2027-02-29 does not exist; February 2027 has 28 days",
      })
  void isRefused(String sane, String odd, String message) throws IOException {
    Run run = check(SUPPER.replace(sane, odd.replace("\\n", "\n")));
    assertEquals(ExitCode.PROBLEMS, run.code(), run.out());
    assertTrue(run.err().contains(": " + message), run.err());
  }

  /** 1 cup of 200 ml weighs 194.97 g at 75 °C; 194.97 × 1.25 / 1.787 = 136.4 g of concentrate. */
  @Test
  void oneGuestIsServed() throws IOException {
    JsonNode group = plan(SUPPER.replace("headcount: 100", "headcount: 1")).at("/groups/0");
    assertEquals(1, group.get("cups").asInt());
    assertEquals(136.4, group.get("concentrate_g").asDouble(), 0.1);
  }

  /** Two thousand times as much as for 100 guests, of whom README counts 13 637 g. */
  @Test
  void twoHundredThousandGuestsAreCounted() throws IOException {
    JsonNode group = plan(SUPPER.replace("headcount: 100", "headcount: 200000")).at("/groups/0");
    assertEquals(200_000, group.get("cups").asInt());
    assertEquals(13_637.0 * 2000, group.get("concentrate_g").asDouble(), 2000);
  }

  /**
   * Times are those of the clock on the wall, which the program can't know to jump; leap days and
   * the days that clocks change, in Europe and in the Americas, are days like others.
   */
  @ParameterizedTest
  @ValueSource(strings = {"2028-02-29", "2027-03-28", "2027-10-31", "2027-03-14", "2027-11-07"})
  void everyDayIsADay(String day) throws IOException {
    String cafe = Files.readString(Path.of("samples/corner-cafe.yaml"));
    String usual = plan(cafe).toString();
    String that = plan(cafe.replace("date: 2027-03-06", "date: " + day)).toString();
    assertTrue(usual.contains("2027-03-06T"), usual);
    assertEquals(usual.replace("2027-03-06", day), that);
  }

  /** Files are called after the event's file, never after what stands in it. */
  @ParameterizedTest
  @ValueSource(strings = {"../../x", "/etc/x", "C:\\x", "=cmd|' /C calc'!A0", "a/../../b", "~/x"})
  void namesAreNoPaths(String name) throws IOException {
    String quoted = "'" + name.replace("'", "''") + "'";
    Path event =
        Files.writeString(
            folder.resolve("supper.yaml"),
            SUPPER
                .replace("Choir supper", quoted)
                .replace("Everybody", quoted)
                .replace("coffee:", "coffee:\n  name: " + quoted));
    Path out = folder.resolve("out");
    Run run = Run.of("plan", event, "--out", out);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    try (Stream<Path> files = Files.walk(folder)) {
      assertEquals(
          List.of(out.resolve("supper-plan.pdf"), out.resolve("supper-plan.xlsx"), event),
          files.filter(Files::isRegularFile).sorted().toList());
    }
  }

  private Run check(String event) throws IOException {
    return Run.of("check", Files.writeString(folder.resolve("event.yaml"), event));
  }

  private JsonNode plan(String event) throws IOException {
    Path file = Files.writeString(folder.resolve("event.yaml"), event);
    Run run = Run.of("plan", file, "--json", "--no-sheets");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    return new ObjectMapper().readTree(run.out());
  }
}
