package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine.Help.Ansi;

/** Whole runs of the program on files. */
class CommandsTest {
  private static final String EVENT =
      """
      event: Choir supper
      coffee:
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups:
        - name: Everybody
          headcount: 100
          cup: 200 ml
          strength: 1.25 %
      """;

  private static final String BREWER =
      "brewers: [{name: Tall brewer, dose: up to 1.2 kg, water: 15 l, cycle: 15 min}]\n";

  @TempDir private Path folder;

  private Path event;

  @BeforeEach
  void writeEvent() throws IOException {
    event = Files.writeString(folder.resolve("supper.yaml"), EVENT);
  }

  @Test
  void planPrintsAndWritesBothFilesBesideTheEvent() throws IOException {
    Run run = Run.of("plan", event);
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().startsWith("Choir supper\n"), run.out());
    assertTrue(
        run.out()
            .endsWith(
                "\nwrote "
                    + folder.resolve("supper-plan.pdf")
                    + "\nwrote "
                    + folder.resolve("supper-plan.xlsx")
                    + "\n"),
        run.out());
    assertEquals(List.of("supper-plan.pdf", "supper-plan.xlsx", "supper.yaml"), names(folder));
  }

  @Test
  void aRunOnADayIsWrittenAsACalendarToo() throws IOException {
    Files.writeString(event, EVENT + BREWER + "time: 19:30\n");
    assertEquals(ExitCode.DONE, Run.of("plan", event).code());
    assertEquals(List.of("supper-plan.pdf", "supper-plan.xlsx", "supper.yaml"), names(folder));
    Files.writeString(event, EVENT + BREWER + "time: 19:30\ndate: 2027-06-05\n");
    for (int time = 1; time <= 2; time++) {
      Run run = Run.of("plan", event);
      assertEquals("", run.err());
      assertTrue(
          run.out().endsWith("\nwrote " + folder.resolve("supper-run.ics") + "\n"), run.out());
    }
    String calendar = Files.readString(folder.resolve("supper-run.ics"));
    assertTrue(calendar.startsWith("BEGIN:VCALENDAR\r\n"), calendar);
    assertTrue(calendar.contains("\r\nDTSTART:20270605T"), calendar);
  }

  @Test
  void plannedAgainItsOwnFilesAreReplaced() {
    assertEquals(ExitCode.DONE, Run.of("plan", event).code());
    Run again = Run.of("plan", event);
    assertEquals("", again.err());
    assertEquals(ExitCode.DONE, again.code());
  }

  @Test
  void filesGoIntoAFolderThatIsMadeForThem() throws IOException {
    Path out = folder.resolve("sheets/today");
    assertEquals(ExitCode.DONE, Run.of("plan", event, "--out", out).code());
    assertEquals(List.of("supper-plan.pdf", "supper-plan.xlsx"), names(out));
  }

  @Test
  void anotherFileInTheWayStopsBothAndIsLeftAlone() throws IOException {
    Path theirs = Files.writeString(folder.resolve("supper-plan.xlsx"), "my own notes");
    Run run = Run.of("plan", event);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertEquals(
        theirs
            + ": was not written by Urnwright and was left alone; "
            + "move it away, or give --replace\n",
        run.err());
    assertEquals("my own notes", Files.readString(theirs));
    assertEquals(List.of("supper-plan.xlsx", "supper.yaml"), names(folder));
    assertEquals(ExitCode.DONE, Run.of("plan", event, "--replace").code());
  }

  @Test
  void theOutputFolderMustBeAFolder() {
    Run run = Run.of("plan", event, "--out", event);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(run.err().startsWith(event + ": can't be made or isn't a folder"), run.err());
  }

  @Test
  void jsonStandsAloneOnStandardOutput() throws IOException {
    Run run = Run.of("plan", event, "--json");
    assertEquals(ExitCode.DONE, run.code());
    JsonNode document = new ObjectMapper().readTree(run.out());
    assertEquals("Choir supper", document.at("/event/name").asText());
    assertTrue(run.err().startsWith("wrote " + folder.resolve("supper-plan.pdf")), run.err());
  }

  @Test
  void withoutSheetsNothingIsWritten() throws IOException {
    Run run = Run.of("plan", event, "--no-sheets");
    assertEquals(ExitCode.DONE, run.code());
    assertEquals(List.of("supper.yaml"), names(folder));
  }

  @Test
  void problemsGoToTheErrorOutputWithTheirPlaceAndNothingIsWritten() throws IOException {
    Files.writeString(event, EVENT.replace("headcount", "headcont").replace("1.25 %", "1.25 kg"));
    Run run = Run.of("plan", event);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertEquals("", run.out());
    List<String> lines = run.err().lines().toList();
    assertTrue(lines.get(0).startsWith(event + ":"), run.err());
    assertTrue(lines.stream().anyMatch(line -> line.contains("headcont")), run.err());
    assertTrue(lines.stream().anyMatch(line -> line.contains("1.25 kg")), run.err());
    assertEquals(lines.size() - 1 + " problems; nothing was written", lines.get(lines.size() - 1));
    assertEquals(List.of("supper.yaml"), names(folder));
  }

  @ParameterizedTest
  @CsvSource({"plan", "check", "chart"})
  void aMissingFileIsAProblem(String command) {
    Path missing = folder.resolve("nowhere.yaml");
    Run run = Run.of(command, missing);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(run.err().startsWith(missing + ": "), run.err());
  }

  @ParameterizedTest
  @CsvSource({"plan", "check", "chart"})
  void aFolderIsNoEvent(String command) {
    Run run = Run.of(command, folder);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(run.err().startsWith(folder + ": "), run.err());
  }

  @Test
  void checkGoesThroughAllFiles() throws IOException {
    Path bad = Files.writeString(folder.resolve("bad.yaml"), EVENT.replace("100", "-1"));
    Run run = Run.of("check", bad, event);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertEquals(event + ": ready\n", run.out());
    assertTrue(run.err().startsWith(bad + ":7:16: "), run.err());
    assertTrue(run.err().endsWith("1 problem; mend the file and check again\n"), run.err());
  }

  @Test
  void aBegunEventIsReadyAndIsNeverWrittenOver() throws IOException {
    Path begun = folder.resolve("new.yaml");
    Run run = Run.of("begin", begun);
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().startsWith("wrote " + begun + "\n"), run.out());
    assertEquals(begun + ": ready\n", Run.of("check", begun).out());
    assertEquals(
        "# yaml-language-server: $schema=event.schema.json", Files.readAllLines(begun).get(0));
    assertEquals(
        Run.of("schema", "--event").out(),
        Files.readString(begun.resolveSibling("event.schema.json")));
    Run again = Run.of("begin", event);
    assertEquals(ExitCode.PROBLEMS, again.code());
    assertEquals(event + ": is there already and was left alone; name another\n", again.err());
    assertEquals(EVENT, Files.readString(event));
  }

  @Test
  void aRefusedBeginningLeavesNoSchema() {
    assertEquals(ExitCode.PROBLEMS, Run.of("begin", event).code());
    Path tooLong = event.resolveSibling("x".repeat(300));
    assertEquals(ExitCode.PROBLEMS, Run.of("begin", tooLong).code());
    assertFalse(Files.exists(event.resolveSibling("event.schema.json")));
  }

  @Test
  void aBegunEventLeavesAForeignSchemaAlone() throws IOException {
    Path foreign = Files.writeString(folder.resolve("event.schema.json"), "{}");
    Path begun = folder.resolve("new.yaml");
    Run run = Run.of("begin", begun);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(run.err().startsWith(foreign + ": was not written by Urnwright"), run.err());
    assertFalse(Files.exists(begun));
    assertEquals(ExitCode.DONE, Run.of("begin", "--no-schema", begun).code());
    assertEquals("{}", Files.readString(foreign));
    assertTrue(Files.readString(begun).startsWith("# An event for Urnwright"));
  }

  /** The first bytes by which the kinds of file are known. */
  @ParameterizedTest
  @CsvSource({"pdf, %PDF-", "png, PNG", "svg, <svg"})
  void aChartIsDrawnAsAskedAndReplacedWhenDrawnAgain(String kind, String sign) throws IOException {
    for (int time = 1; time <= 2; time++) {
      Run run = Run.of("chart", event, "--as", kind);
      assertEquals("", run.err());
      assertEquals(ExitCode.DONE, run.code());
    }
    Path chart = folder.resolve("supper-chart." + kind);
    assertTrue(start(chart).contains(sign), start(chart));
  }

  @Test
  void aChartsNameTellsItsKind() throws IOException {
    Path chart = folder.resolve("mine.SVG");
    assertEquals(ExitCode.DONE, Run.of("chart", event, "--out", chart).code());
    assertTrue(start(chart).contains("<svg"));
    Run misnamed = Run.of("chart", event, "--as", "jpg");
    assertEquals(ExitCode.MISUSE, misnamed.code());
  }

  @Test
  void theSchemaIsPrintedAlone() throws IOException {
    Run run = Run.of("schema");
    assertEquals(ExitCode.DONE, run.code());
    assertEquals(Files.readString(Path.of("templates/plan.schema.json")), run.out());
  }

  @Test
  void colourOnlyAddsMarks() {
    String plain = Run.of("plan", event, "--no-sheets").out();
    String coloured = Run.of(Ansi.ON, "plan", event, "--no-sheets").out();
    assertFalse(plain.contains("\u001b"));
    assertTrue(coloured.contains("\u001b["));
    assertEquals(plain, coloured.replaceAll("\u001b\\[[0-9;]*m", ""));
  }

  private static String start(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    return new String(bytes, 0, Math.min(600, bytes.length), StandardCharsets.ISO_8859_1);
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
