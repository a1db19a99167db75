package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Correcting a plan by options and by answering. */
class AdjustCommandTest {
  @TempDir private Path folder;
  private Path event;

  @BeforeEach
  void writeEvent() throws IOException {
    event = ChoirSupper.write(folder);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2.20", "2,20", "2.2 %", "2,2%"})
  void aReadingIsTakenAsItIsTyped(String reading) throws IOException {
    JsonNode json =
        Run.of(
                "adjust",
                event,
                "--json",
                "--no-sheets",
                "--batch",
                "coffee-1",
                "--reading",
                reading,
                "--reading",
                reading,
                "--reading",
                reading)
            .json();
    assertEquals(2.2, json.at("/coffees/0/measured/0/strength").asDouble(), 1e-9);
    // 30 cups of 200 ml at 75 °C (974.9 g/l) are 5849.2 g; at 1.25 % of 2.20 % that is 3323.4 g
    double concentrate = json.at("/coffees/0/fills/0/concentrate_g").asDouble();
    assertEquals(3324, concentrate, 1.001);
    assertEquals(1.25, json.at("/coffees/0/fills/0/strength").asDouble(), 0.002);
  }

  @Test
  void theSheetsOfWhatIsLeftArePrinted() throws IOException {
    Run run =
        Run.of(
            "adjust",
            event,
            "--batch",
            "coffee-1",
            "--beverage",
            "3500",
            "--reading",
            "2.1",
            "--reading",
            "2.1",
            "--reading",
            "2.1",
            "--filled",
            "coffee-F1");
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().endsWith("wrote " + folder.resolve("supper-left.pdf") + "\n"));
    run.out().lines().forEach(line -> assertTrue(line.length() <= 80 || line.startsWith("wrote")));
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("supper-left.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertTrue(text.contains("These sheets show what is left to do"), text);
      assertTrue(text.contains("Start brewing coffee-2"), text);
      // ready for 13:00, and not the first batch's hours before
      assertTrue(text.matches(".*first batch starts at 12:\\d\\d.*"), text);
      assertFalse(text.contains("Shopping") || text.contains("Packing list"), text);
      assertFalse(text.contains("Start brewing coffee-1") || text.contains("Fill coffee-F1"), text);
    }
  }

  @Test
  void theSheetsArePrintedWhenNothingIsLeftToBrew() throws IOException {
    Run run =
        Run.of(
            "adjust",
            event,
            "--no-journal",
            "--batch",
            "coffee-1",
            "--beverage",
            "3500",
            "--batch",
            "coffee-2",
            "--beverage",
            "3500",
            "--filled",
            "coffee-F1");
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("supper-left.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertFalse(text.contains("Start brewing"), text);
      assertTrue(text.contains("coffee-F2"), text);
    }
  }

  @Test
  void readingsThatDoNotStandChangeNothing() {
    Run run =
        Run.of(
            "adjust",
            event,
            "--batch",
            "coffee-1",
            "--reading",
            "2.1",
            "--reading",
            "2.2",
            "--reading",
            "2.1");
    assertEquals(ExitCode.PROBLEMS, run.code());
    String text = run.out().replace('\u00a0', ' ');
    assertTrue(text.contains("Read again: the last three are 0.10 % apart"), text);
    assertFalse(Files.exists(folder.resolve("supper-left.pdf")));
  }

  @Test
  void aFullUrnGetsSomeDrawnOffFirst() {
    Run run =
        Run.of(
            "adjust", event, "--no-journal", "--no-sheets", "--holds", "coffee-F1=7.7kg at 1,40");
    // Full: 8 l at 92 °C (963.97 g/l) are 7711.7 g. Kept: 7711.7 × 1.25/1.40 = 6885.5 g, so 815 g
    // off; then 6885 × 0.15/1.25 = 826.2 g of water.
    assertEquals(ExitCode.DONE, run.code(), run.err());
    String text = run.out().replace('\u00a0', ' ').replaceAll("\\s+", " ");
    assertTrue(text.contains("draw off 815 g first"), text);
    assertTrue(text.contains("add 826 g of water; that gives 1.25 %"), text);
  }

  @Test
  void whatIsNotUnderstoodIsMisuse() {
    Run.of("adjust", event, "--no-journal", "--batch", "house-9")
        .isMisuse("no batch is called 'house-9'; the plan has");
    Run.of("adjust", event, "--no-journal", "--batch", "coffee-1", "--dose", "lots")
        .isMisuse("expected a mass");
    Run.of("adjust", event, "--no-journal", "--batch", "coffee-1", "--reading", "181")
        .isMisuse("expected a percentage above 0 %");
    Run.of("adjust", event, "--no-journal", "--batch", "coffee-1", "--beverage", "9kg")
        .isMisuse("more beverage than went in");
    Run.of("adjust", event, "--no-journal", "--filled", "x").isMisuse("no fill is called 'x'");
    Run.of("adjust", event, "--no-journal", "--holds", "coffee-F1")
        .isMisuse("such as house-F2=9100 g at 1.35 %");
  }

  @Test
  void asksOneThingAtATimeAndGoesBack() {
    Run run =
        Run.answering(
            String.join(
                "\n",
                "coffee-7", // there is none
                "", // the first
                "370",
                "u", // taken back
                "", // as planned
                "", // water as planned
                "3500 g",
                "2,10",
                "oops",
                "2.15",
                "2.10 %",
                "2.10",
                "2.10", // now the last three agree
                "", // no other batch
                "coffee-f1",
                "",
                ""),
            "adjust",
            event,
            "--no-journal",
            "--no-sheets");
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    String text = run.out().replace('\u00a0', ' ');
    assertTrue(text.contains("there is no batch 'coffee-7' left to measure"), text);
    assertTrue(text.contains("Taken back: 370"), text);
    assertTrue(text.contains("'oops'"), text);
    assertTrue(text.contains("Reading 5 of the concentrate, in %?"), text);
    assertTrue(text.contains("Strength      2.10 %"), text);
    text.lines().forEach(line -> assertTrue(line.length() <= 80, line));
  }

  @Test
  void leavingOrGoingSilentChangesNothing() {
    for (String typed : new String[] {"", "q\n", "\n\n"}) {
      Run run = Run.answering(typed, "adjust", event, "--no-journal");
      assertEquals(ExitCode.DONE, run.code(), run.err());
      assertTrue(run.out().endsWith("Nothing was changed.\n"), run.out());
    }
    assertFalse(Files.exists(folder.resolve("supper-left.pdf")));
  }

  @Test
  void aJournalThatCantBeHadDoesNotStandInTheWay() throws IOException {
    Path notes = Files.writeString(folder.resolve("notes.txt"), "buy milk\n".repeat(200));
    Run run =
        Run.of(
            "adjust",
            event,
            "--journal",
            notes,
            "--no-sheets",
            "--batch",
            "coffee-1",
            "--beverage",
            "3660");
    assertTrue(run.err().contains("nothing was written down"), run.err());
    assertTrue(run.out().contains("coffee-1"), run.out());
  }

  @Test
  void theSecondBatchOfTheMorningKnowsTheFirst() throws IOException {
    Path journal = folder.resolve("brews.db");
    Run first =
        Run.of(
            "adjust",
            event,
            "--journal",
            journal,
            "--no-sheets",
            "--batch",
            "coffee-1",
            "--beverage",
            "3660",
            "--reading",
            "1.8",
            "--reading",
            "1.8",
            "--reading",
            "1.8");
    assertEquals(ExitCode.DONE, first.code(), first.err());
    JsonNode second =
        Run.of(
                "adjust",
                event,
                "--journal",
                journal,
                "--no-sheets",
                "--json",
                "--batch",
                "coffee-2",
                "--reading",
                "1.9",
                "--reading",
                "1.9",
                "--reading",
                "1.9")
            .json();
    assertEquals(2, second.at("/coffees/0/measured").size());
    Run list = Run.of("journal", "list", "--journal", journal);
    assertTrue(list.out().contains("2\u00a0batches"), list.out());
  }
}
