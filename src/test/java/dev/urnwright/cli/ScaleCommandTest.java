package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import dev.urnwright.json.DocumentSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScaleCommandTest {
  private static final String SAMPLE = "samples/lantern-lane-cafe.yaml";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Nothing but what must be there. */
  private static final String SMALLEST =
      """
      scale: Bar filter
      reference: {dose: 20 g, water: 320 g, strength: 1.38 %}
      brewer: {name: Tall brewer, dose: up to 700 g, water: 9 kg}
      """;

  /** A basket so wide that water goes round the bed; timed; nothing weighed but the trial. */
  private static final String WIDE =
      """
      scale: Bar filter
      units: us
      reference: {dose: 20 g, water: 320 g, beverage: 277 g, strength: 1.38 %, time: 3 min}
      brewer: {name: Tall brewer, dose: up to 700 g, water: 6 kg, basket: 24 cm, cycle: 8 min}
      """;

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void write() throws IOException {
    file = Files.writeString(folder.resolve("cafe.yaml"), SMALLEST);
  }

  @Test
  void theSmallestFilePrintsAndWritesOnePage() throws IOException {
    Run run = Run.of("scale", file);
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().startsWith("Bar filter\n"), run.out());
    assertEquals(List.of("cafe-scale.pdf", "cafe.yaml"), names());
    assertEquals(ExitCode.DONE, Run.of("scale", file).code(), "its own page is replaced");
  }

  @Test
  void noLineIsWiderThanATerminal() throws IOException {
    Files.writeString(file, WIDE);
    for (Object each : List.of(file, SAMPLE)) {
      Run.of("scale", each, "--no-sheets")
          .out()
          .lines()
          .forEach(line -> assertTrue(line.length() <= 80, line));
    }
  }

  @Test
  void aMenuIsPlannedWithItsSheets() throws IOException {
    Path out = folder.resolve("out");
    Run run = Run.of("scale", SAMPLE, "--out", out);
    assertEquals("", run.err());
    try (Stream<Path> files = Files.list(out)) {
      assertEquals(
          List.of(
              "lantern-lane-cafe-plan.pdf",
              "lantern-lane-cafe-plan.xlsx",
              "lantern-lane-cafe-run.ics",
              "lantern-lane-cafe-scale.pdf"),
          files.map(each -> each.getFileName().toString()).sorted().toList());
    }
    assertTrue(run.out().contains("The day's menu\n"), run.out());
  }

  @Test
  void theSampleIsOnePageWithWhatIsToBeDone() throws IOException {
    Run.of("scale", SAMPLE, "--out", folder);
    JsonNode recipe = json(SAMPLE).get("recipe");
    try (PDDocument pages =
        Loader.loadPDF(folder.resolve("lantern-lane-cafe-scale.pdf").toFile())) {
      assertEquals(1, pages.getNumberOfPages());
      String text = new PDFTextStripper().getText(pages).replace('\u00a0', ' ');
      for (String figure : List.of("dose_g", "brew_water_g", "bloom_g")) {
        assertTrue(text.contains(recipe.get(figure).asInt() + " g"), figure + " in " + text);
      }
    }
  }

  @Test
  void theJsonIsAsItsSchemaSaysAndHasEveryFieldSomewhere() throws IOException {
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(DocumentSchema.SCALE.text());
    Path wide = Files.writeString(folder.resolve("wide.yaml"), WIDE);
    Set<String> written = new TreeSet<>();
    for (Object each : List.of(file, wide, SAMPLE)) {
      JsonNode document = json(each);
      assertEquals(Set.of(), Set.copyOf(schema.validate(document.toString(), InputFormat.JSON)));
      names(document, written);
    }
    Set<String> described = new TreeSet<>();
    described(MAPPER.readTree(DocumentSchema.SCALE.text()), described);
    assertEquals(described, written);
    assertEquals(DocumentSchema.SCALE.text(), Run.of("schema", "--scale").out());
  }

  @Test
  void nothingIsWrittenWhenTheFileHasAProblem() throws IOException {
    Files.writeString(file, SMALLEST.replace("320 g", "320"));
    Run run = Run.of("scale", file);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(
        run.err()
            .endsWith(
                "cafe.yaml:2:32: 320 has no unit; expected a mass or a volume such as 960 g\n"
                    + "1 problem; nothing was written\n"),
        run.err());
    assertEquals(List.of("cafe.yaml"), names());
  }

  @Test
  void beginForScaleGivesAFileThatCanBeScaled() throws IOException {
    Path begun = folder.resolve("begun.yaml");
    assertEquals(ExitCode.DONE, Run.of("begin", "--for", "scale", begun).code());
    assertEquals(ExitCode.DONE, Run.of("scale", begun, "--no-sheets").code());
    assertFalse(Files.exists(folder.resolve("event.schema.json")));
  }

  private static JsonNode json(Object file) throws IOException {
    Run run = Run.of("scale", file, "--json", "--no-sheets");
    assertEquals("", run.err());
    return MAPPER.readTree(run.out());
  }

  private static void names(JsonNode node, Set<String> names) {
    node.forEach(each -> names(each, names));
    node.fieldNames().forEachRemaining(names::add);
  }

  private static void described(JsonNode schema, Set<String> names) {
    schema.path("properties").fieldNames().forEachRemaining(names::add);
    schema.forEach(each -> described(each, names));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(each -> each.getFileName().toString()).sorted().toList();
    }
  }
}
