package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Finding the water by taste. */
class LadderCommandTest {
  /** 20 % extracted, 2 g/g kept: 1:12 gives 10 g of concentrate of 2.00 % for each gram. */
  private static final String EVENT =
      """
      event: Choir supper
      coffees:
        house: {name: House, extraction: 20 %, absorption: 2 g/g, concentrate: {ratio: 12}}
        decaf: {name: Decaf, extraction: 20 %, absorption: 2 g/g, concentrate: {ratio: 12}}
      groups:
        - {name: Early, headcount: 30, cup: 200 ml, strength: 1.25 %, serve: 10:00-10:30,
           coffee: {house: 90 %, decaf: 10 %}}
        - {name: Late, headcount: 30, cup: 200 ml, strength: 1.60 %, serve: 13:00-13:30,
           coffee: house}
      brewers: [{name: Tall, dose: 10 g to 600 g, water: 7 l, cycle: 12 min}]
      dispensers: [{name: Urn, count: 4, capacity: 6.5 l, hold: 60 min}]
      scale_step: 1 g
      """;

  @TempDir private Path folder;
  private Path event;

  @BeforeEach
  void writeEvent() throws IOException {
    event = Files.writeString(folder.resolve("supper.yaml"), EVENT);
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
        json(
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
                "--json"));
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
        json(
            Run.of("ladder", event, "--coffee", "house", "--tasted", "8", "--json", "--no-sheets"));
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
    assertMisuse("the event has several coffees", "--tasted", "5");
    assertMisuse("no group 'Nobody' drinks", "--coffee", "house", "--tasted", "Nobody=5");
    assertMisuse("is off the ladder", "--coffee", "house", "--tasted", "41");
    assertMisuse("expected a step such as 5", "--coffee", "house", "--tasted", "five");
    assertMisuse("no coffee is called 'tea'", "--coffee", "tea");
    assertMisuse("can be read in two ways", "--sample", "1,234 g");
    assertMisuse("no fill is called 'x'", "--in", "x");
    assertMisuse("no ladder", "--steps", "0");
  }

  private void assertMisuse(String message, String... options) {
    Object[] arguments =
        Stream.concat(Stream.of("ladder", event), Stream.of(options)).toArray(Object[]::new);
    Run run = Run.of(arguments);
    assertEquals(ExitCode.MISUSE, run.code(), run.out() + run.err());
    assertTrue(run.err().replace('\u00a0', ' ').contains(message), run.err());
  }

  private static JsonNode json(Run run) throws IOException {
    assertEquals(ExitCode.DONE, run.code(), run.err());
    return new ObjectMapper().readTree(run.out());
  }
}
