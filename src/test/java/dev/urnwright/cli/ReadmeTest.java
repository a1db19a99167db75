package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What README.md says is so. */
class ReadmeTest {
  private static final String FIGURE =
      "\\d[\\d.:–]* (?:g|kg|l|%|°C)(?= |$)|(?<= )\\d\\d:\\d\\d(?=[ ,]|$)";

  /** A row to tick off: time, verb, batch or fill, place, some of the details. */
  private static final String ROW =
      "(?m)^   \\[ ]  (\\d\\d:\\d\\d)   ([A-Z]+) +(\\S+)  +(\\S.*?)  +(\\S.*)$";

  @TempDir private Path folder;

  @Test
  void everyEventInItCanBePlanned() throws IOException {
    List<String> events = found("(?ms)^```yaml\n(.*?)^```");
    assertFalse(events.isEmpty());
    for (String event : events) {
      Run run = plan(event);
      assertEquals("", run.err(), event);
      assertEquals(ExitCode.DONE, run.code(), event);
    }
  }

  @Test
  void theBrewInItCanBeScaled() throws IOException {
    String brew = found("(?ms)^<!-- a file for scale -->\n```\n(.*?)^```").get(0);
    Run run = Run.of("scale", Files.writeString(folder.resolve("cafe.yaml"), brew), "--no-sheets");
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
  }

  @Test
  void theOutputItQuotesIsPrinted() throws IOException {
    String printed = spaced(plan(found("(?ms)^```yaml\n(.*?)^```").get(0)).out());
    List<String> quoted = found("(?ms)^<!-- output of the event above -->\n```\n(.*?)^```");
    assertEquals(1, quoted.size());
    assertTrue(printed.contains(quoted.get(0)), printed);
  }

  @Test
  void theFiguresInItsPictureAreThoseOfTheSample() throws IOException {
    List<String> picture =
        found("(?ms)^<!-- figures of samples/harvest-supper.yaml -->\n```\n(.*?)^```");
    assertEquals(1, picture.size());
    String printed = spaced(Run.of("plan", "samples/harvest-supper.yaml", "--no-sheets").out());
    List<String> figures =
        Pattern.compile(FIGURE, Pattern.MULTILINE)
            .matcher(picture.get(0))
            .results()
            .map(MatchResult::group)
            .toList();
    assertFalse(figures.isEmpty());
    figures.forEach(figure -> assertTrue(printed.contains(" " + figure), figure));
  }

  @Test
  void theRowsOfTheRunInItsPictureAreActionsOfTheSample() throws IOException {
    JsonNode actions =
        new ObjectMapper()
            .readTree(Run.of("plan", "samples/harvest-supper.yaml", "--no-sheets", "--json").out())
            .at("/run/actions");
    List<MatchResult> rows =
        Pattern.compile(ROW).matcher(Files.readString(Path.of("README.md"))).results().toList();
    assertEquals(5, rows.size());
    for (MatchResult row : rows) {
      long found =
          StreamSupport.stream(actions.spliterator(), false)
              .filter(action -> action.get("at").asText().endsWith("T" + row.group(1) + ":00"))
              .filter(action -> action.get("kind").asText().equalsIgnoreCase(row.group(2)))
              .filter(action -> action.get("what").asText().equals(row.group(3)))
              .filter(action -> action.get("where").asText().equals(row.group(4)))
              .filter(
                  action ->
                      spaced(action.get("detail").asText())
                          .toLowerCase(Locale.ROOT)
                          .contains(row.group(5)))
              .count();
      assertEquals(1, found, row.group());
    }
  }

  @Test
  void theBudgetItQuotesIsPrinted() throws IOException {
    List<String> quoted =
        found("(?ms)^<!-- part of the plan of samples/harvest-supper.yaml -->\n```\n(.*?)^```");
    assertEquals(1, quoted.size());
    String printed = spaced(Run.of("plan", "samples/harvest-supper.yaml", "--no-sheets").out());
    assertTrue(printed.contains(quoted.get(0)), printed);
  }

  @Test
  void whatTheJournalTaughtIsPrintedAsItQuotes() throws IOException {
    Path journal = folder.resolve("planting.db");
    Run.of("journal", "import", "samples/lakeside-planting-journal.csv", "--journal", journal);
    Run plan =
        Run.of("plan", "samples/lakeside-planting.yaml", "--no-sheets", "--journal", journal);
    List<String> quoted =
        found("(?ms)^<!-- notes of samples/lakeside-planting.yaml, .*?-->\n```\n(.*?)^```");
    assertEquals(1, quoted.size());
    assertTrue(spaced(plan.out()).contains(quoted.get(0)), plan.out());
  }

  @Test
  void theRefusalItQuotesIsPrinted() throws IOException {
    List<String> quoted = found("(?ms)^<!-- refusal of samples/too-tight.yaml -->\n```\n(.*?)^```");
    assertEquals(1, quoted.size());
    Run run = Run.of("plan", "samples/too-tight.yaml", "--no-sheets");
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertEquals(
        quoted.get(0).replaceAll("\\s+", " ").strip(),
        spaced(run.err()).lines().findFirst().orElseThrow());
  }

  @Test
  void theCommandsItNamesExist() throws IOException {
    List<String> commands = found("(?m)java -jar target/urnwright\\.jar ([a-z]+)");
    assertTrue(commands.containsAll(List.of("plan", "check", "begin", "chart")));
    for (String command : commands) {
      assertEquals(ExitCode.DONE, Run.of(command, "--help").code(), command);
    }
  }

  @Test
  void everyExitCodeIsExplained() throws IOException {
    assertEquals(List.of("0", "1", "2", "70"), found("(?m)^\\| (\\d+) \\|"));
  }

  /** By hand: 100 cups and 5 % to spare are 105; 35 are there, so 70 are missing, in fifties. */
  @Test
  void theSuppliesFitTheSmallestEvent() throws IOException {
    List<String> lines = found("(?ms)^<!-- more lines of the smallest event -->\n```\n(.*?)^```");
    assertEquals(1, lines.size());
    String event = found("(?ms)^```yaml\n(.*?)^```").get(0) + lines.get(0);
    String printed = spaced(plan(event).out()).replaceAll(" +", " ");
    assertTrue(printed.contains("Paper cups 200 ml 105 35 2 × 50 6.90 EUR"), printed);
  }

  private Run plan(String event) throws IOException {
    Path file = Files.writeString(folder.resolve("event.yaml"), event);
    return Run.of("plan", file, "--no-sheets");
  }

  @Test
  void theRoundPrintsWhatIsQuoted() throws IOException {
    String quoted =
        found(
                "(?ms)^<!-- part of the round of samples/ferry-lane-round.yaml on 2027-03-02 -->\n"
                    + "```\n(.*?)^```")
            .get(0);
    String printed =
        spaced(
            Run.of("round", "samples/ferry-lane-round.yaml", "--date", "2027-03-02", "--no-sheets")
                .out());
    assertTrue(printed.contains(quoted), printed);
  }

  private static List<String> found(String pattern) throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    return Pattern.compile(pattern).matcher(readme).results().map(match -> match.group(1)).toList();
  }

  private static String spaced(String text) {
    return text.replace('\u00a0', ' ');
  }
}
