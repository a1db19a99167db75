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

/** Finding the water by taste. */
class LadderCommandTest {
  @TempDir private Path folder;
  private Path event;

  @BeforeEach
  void writeEvent() throws IOException {
    event = ChoirSupper.writeWithDecaf(folder);
  }

  @Test
  void printsALadderForEachCoffee() {
    Run run = Run.of("ladder", event);
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    String text = run.out().replace('\u00a0', ' ');
    assertTrue(text.contains("House, by taste\n"), text);
    assertTrue(text.contains("DECAF: Decaf, by taste\n"), text);
    assertTrue(text.contains("an extraction of 20.0 %"), text);
    assertTrue(text.contains("scalds"), text);
    text.lines().forEach(line -> assertTrue(line.length() <= 80, line));
    assertFalse(Files.exists(folder.resolve("supper-left.pdf")));
  }

  /** Common practice, no source: 219 g at 1.397 %, 229 g at 1.336 %. */
  @Test
  void commonPracticeNoSource() throws IOException {
    JsonNode json =
        Run.of(
                "ladder",
                event,
                "--coffee",
                "house",
                "--sample",
                "169g",
                "--step",
                "10 g",
                "--steps",
                "8",
                "--from",
                "1,81",
                "--json")
            .json();
    assertEquals(219, json.at("/ladders/0/steps/4/together_g").asDouble(), 1e-9);
    assertEquals(1.397, json.at("/ladders/0/steps/4/strength").asDouble(), 5e-4);
    assertEquals(229, json.at("/ladders/0/steps/5/together_g").asDouble(), 1e-9);
    assertEquals(1.336, json.at("/ladders/0/steps/5/strength").asDouble(), 5e-4);
    assertEquals(8, json.at("/ladders/0/steps").size());
  }

  @Test
  void theTastedStepCorrectsThePlanAndPrintsWhatIsLeft() throws IOException {
    Run run = Run.of("ladder", event, "--coffee", "house", "--tasted", "early=8");
    assertEquals("", run.err());
    String text = run.out().replace('\u00a0', ' ');
    assertTrue(text.contains("after 8 steps"), text);
    assertTrue(text.contains("in proportion"), text);
    // 1.25 × 1.8 = 2.25 %
    assertTrue(text.replaceAll("\\s+", " ").contains("tastes as a concentrate of 2.25 %"), text);
    assertTrue(text.endsWith("wrote " + folder.resolve("supper-left.pdf") + "\n"), text);
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("supper-left.pdf").toFile())) {
      String sheets = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertTrue(sheets.contains("House is diluted by taste"), sheets);
      assertFalse(sheets.contains("Start brewing house-1"), sheets);
    }
  }

  @Test
  void jsonOfATastingHoldsTheAdjustment() throws IOException {
    JsonNode json =
        Run.of("ladder", event, "--coffee", "house", "--tasted", "8", "--json", "--no-sheets")
            .json();
    assertEquals(0.8, json.at("/tasted/groups/0/water_per_concentrate").asDouble(), 1e-9);
    assertEquals(0.8, json.at("/tasted/groups/1/water_per_concentrate").asDouble(), 1e-9);
    JsonNode fill = json.at("/tasted/adjustment/coffees/0/fills/0");
    assertEquals(0.8, fill.at("/bypass_g").asDouble() / fill.at("/concentrate_g").asDouble(), 1e-3);
  }

  @Test
  void aLadderCanBeMadeInADispenser() {
    Run run = Run.of("ladder", event, "--in", "HOUSE-f1", "--step", "500");
    assertEquals("", run.err());
    String text = run.out().replace('\u00a0', ' ').replaceAll("\\s+", " ");
    assertTrue(text.contains("by taste in house-F1"), text);
    assertTrue(text.contains("Add 500 g of water, stir, taste"), text);
  }

  @Test
  void whatIsNotUnderstoodIsMisuse() {
    Run.of("ladder", event, "--tasted", "5").isMisuse("the event has several coffees");
    Run.of("ladder", event, "--coffee", "house", "--tasted", "Nobody=5")
        .isMisuse("no group 'Nobody' drinks");
    Run.of("ladder", event, "--coffee", "house", "--tasted", "41").isMisuse("is off the ladder");
    Run.of("ladder", event, "--coffee", "house", "--tasted", "five")
        .isMisuse("expected a step such as 5");
    Run.of("ladder", event, "--coffee", "tea").isMisuse("no coffee is called 'tea'");
    Run.of("ladder", event, "--sample", "1,234 g").isMisuse("can be read in two ways");
    Run.of("ladder", event, "--in", "x").isMisuse("no fill is called 'x'");
    Run.of("ladder", event, "--steps", "0").isMisuse("no ladder");
  }
}
