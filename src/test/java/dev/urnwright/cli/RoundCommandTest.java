package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import dev.urnwright.dispatch.Rounds;
import dev.urnwright.json.DocumentSchema;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine.Help.Ansi;

class RoundCommandTest {
  private static final String SAMPLE = "samples/ferry-lane-round.yaml";
  private static final String DAY = "2027-03-02";

  @TempDir private Path folder;

  @Test
  void theSampleIsPlannedAndPrinted() throws IOException {
    Run run = Run.of("round", SAMPLE, "--date", DAY, "--out", folder);

    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().startsWith("Ferry Lane coffee service, Tuesday 2 March 2027\n"));
    run.out().lines().forEach(line -> assertTrue(line.length() <= 80 || line.startsWith("wrote ")));
    Path day = folder.resolve("ferry-lane-round-" + DAY);
    assertEquals(
        Set.of(
            "brew-room.pdf",
            "1-quayside-pick-list.pdf",
            "1-quayside-labels.pdf",
            "1-quayside-slips.pdf",
            "2-hill-pick-list.pdf",
            "2-hill-labels.pdf",
            "2-hill-slips.pdf",
            "3-mill-road-pick-list.pdf",
            "3-mill-road-labels.pdf",
            "3-mill-road-slips.pdf",
            "returns.csv"),
        names(day));
  }

  /** A stop's carafes, counted on the pick list, on the labels and on the slip. */
  @Test
  void sheetsOfALegAgree() throws IOException {
    Run.of("round", SAMPLE, "--date", DAY, "--out", folder);
    JsonNode plan = Run.of("round", SAMPLE, "--date", DAY, "--json", "--no-sheets").json();
    Path day = folder.resolve("ferry-lane-round-" + DAY);

    JsonNode leg = plan.at("/legs/1");
    assertEquals("Hill", leg.get("name").asText());
    String pick = text(day.resolve("2-hill-pick-list.pdf"));
    String labels = text(day.resolve("2-hill-labels.pdf"));
    String slips = text(day.resolve("2-hill-slips.pdf"));
    assertEquals(leg.get("carafes").asInt(), count("use by", labels));
    for (JsonNode stop : leg.get("stops")) {
      for (JsonNode row : stop.get("deliveries")) {
        String line = row.get("carafes").asInt() + " × " + row.get("carafe").asText();
        assertTrue(pick.contains(line), line);
        assertTrue(slips.contains(line), line);
        assertTrue(slips.contains(row.get("use_by").asText().substring(11, 16)));
      }
      int carafes = count(stop.get("site").asText(), labels);
      assertEquals(
          IntStream.range(0, stop.get("deliveries").size())
              .map(i -> stop.get("deliveries").get(i).get("carafes").asInt())
              .sum(),
          carafes);
    }
    // decaf is said on each of its labels: 1 for the surveyors, 3 for the day ward
    assertEquals(4, count("DECAF", labels));
    assertTrue(slips.contains("scalds"));
    assertTrue(slips.contains("mg"));
  }

  @Test
  void theBrewRoomSeesEveryBatchAndFill() throws IOException {
    Run.of("round", SAMPLE, "--date", DAY, "--out", folder, "--only", "brew");
    JsonNode plan = Run.of("round", SAMPLE, "--date", DAY, "--json", "--no-sheets").json();
    Path day = folder.resolve("ferry-lane-round-" + DAY);

    assertEquals(Set.of("brew-room.pdf", "returns.csv"), names(day));
    String sheet = text(day.resolve("brew-room.pdf"));
    for (JsonNode batch : plan.get("batches")) {
      assertTrue(sheet.contains(batch.get("id").asText()));
      assertTrue(sheet.contains("start " + batch.get("start").asText().substring(11, 16)));
    }
    for (JsonNode leg : plan.get("legs")) {
      assertTrue(sheet.contains("leaves " + leg.get("leave").asText().substring(11, 16)));
    }
  }

  /** House goes at six and decaf at seven, out of the only brewer. */
  @ParameterizedTest
  @CsvSource({
    "en, 'before, rinse the brewer clean of House'",
    "de, vorher die Maschine von House sauber spülen",
    "es, 'antes, enjuague bien la cafetera, que hizo House'",
    "fr, 'avant, bien rincer la cafetière, qui a fait House'"
  })
  void aBrewerIsRinsedBeforeDecaf(String language, String words) throws IOException {
    Path round = Files.writeString(folder.resolve("two.yaml"), Rounds.WITH_DECAF);
    Files.writeString(
        folder.resolve("sites.csv"),
        """
      site,leg,stop,window,carafes,strength,coffee
      Lock House,North,1,06:30-07:00,4,medium,house
      Old Forge,South,1,07:30-08:00,4,strong,decaf
      """);
    JsonNode batches =
        Run.of("round", round, "--date", DAY, "--language", language, "--only", "brew", "--json")
            .json()
            .get("batches");
    assertEquals("house", batches.get(1).get("rinse_clean_of").asText());
    assertFalse(batches.get(0).has("rinse_clean_of"));
    String sheet = text(folder.resolve("two-" + DAY).resolve("brew-room.pdf"));
    assertEquals(1, count(words, sheet), sheet);
  }

  @Test
  void whatComesBackIsEnteredIntoATableThatIsNeverLost() throws IOException {
    Run.of("round", SAMPLE, "--date", DAY, "--out", folder, "--only", "brew");
    Path form = folder.resolve("ferry-lane-round-" + DAY).resolve("returns.csv");
    assertTrue(
        Files.readAllLines(form)
            .contains(DAY + ",Harbour Office,Ground floor,house,medium,Carafe 2 l,2,,"));
    // filled in, it is read, and a second run leaves it as it is
    String filled = Files.readString(form).replace("Carafe 2 l,2,,", "Carafe 2 l,2,3,0.4 l");
    Files.writeString(form, filled);

    Run again =
        Run.of("round", SAMPLE, "--date", "2027-03-03", "--returns", form, "--json", "--no-sheets");
    Run.of("round", SAMPLE, "--date", DAY, "--out", folder, "--only", "brew");

    assertEquals(ExitCode.DONE, again.code(), again.err());
    assertEquals(filled, Files.readString(form));
  }

  @Test
  void bothDocumentsKeepToTheSchema() throws IOException {
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(DocumentSchema.ROUND.text());
    for (String[] when :
        new String[][] {{"--date", DAY}, {"--date", "2027-03-15"}, {"--week", "2027-03-01"}}) {
      Run run = Run.of("round", SAMPLE, when[0], when[1], "--json", "--no-sheets");
      assertEquals(ExitCode.DONE, run.code(), run.err());
      assertEquals(List.of(), List.copyOf(schema.validate(run.out(), InputFormat.JSON)));
    }
    assertEquals(DocumentSchema.ROUND.text(), Run.of("schema", "--round").out());
  }

  @Test
  void aWeekIsOneList() throws IOException {
    Run run = Run.of("round", SAMPLE, "--week", "2027-03-01..2027-03-05", "--out", folder);

    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().contains("Friday 5 March 2027"));
    String sheet = text(folder.resolve("ferry-lane-round-shopping-2027-03-01.pdf"));
    assertTrue(sheet.contains("Ferry Lane house blend"));
    assertTrue(sheet.contains("Monday 1 March 2027"));
  }

  @Test
  void aDayMustBeGivenOnce() {
    Run without = Run.of("round", SAMPLE);
    assertEquals(ExitCode.MISUSE, without.code());
    assertTrue(without.err().contains("--date=DAY | --week=DAYS"), without.err());
    assertEquals(ExitCode.MISUSE, Run.of("round", SAMPLE, "--date", "2027-02-30").code());
    assertEquals(ExitCode.MISUSE, Run.of("round", SAMPLE, "--date", DAY, "--week", DAY).code());
    assertEquals(
        ExitCode.MISUSE, Run.of("round", SAMPLE, "--week", "2027-03-05..2027-03-01").code());
  }

  @Test
  void fiftyProblemsAreToldAndTheRestCounted() throws IOException {
    Path round = Files.copy(Path.of(SAMPLE), folder.resolve("round.yaml"));
    Files.writeString(
        folder.resolve("ferry-lane-sites.csv"),
        "site,leg,stop,carafe,carafes,strength,coffee\n"
            + IntStream.range(0, 70)
                .mapToObj(i -> "Site " + i + ",Nowhere,1,Carafe 2 l,1,mild,house\n")
                .collect(Collectors.joining()));
    Files.copy(Path.of("samples/ferry-lane-returns.csv"), folder.resolve("ferry-lane-returns.csv"));

    Run run = Run.of("round", round, "--date", DAY);

    assertEquals(ExitCode.PROBLEMS, run.code());
    List<String> lines = run.err().lines().toList();
    assertEquals(52, lines.size());
    assertEquals("and 20 more", lines.get(50));
    assertEquals("70 problems; nothing was written", lines.get(51));
    assertEquals(3, names(folder).size());
  }

  @Test
  void returnsOfASiteThatIsGoneAreNamedAndNoReasonToStop() throws IOException {
    Path returns =
        Files.writeString(
            folder.resolve("back.csv"), "date,site,carafes back\n2027-03-01,Harbor Office,3\n");

    Run run = Run.of("round", SAMPLE, "--date", DAY, "--returns", returns, "--no-sheets");

    assertEquals(ExitCode.DONE, run.code());
    assertTrue(
        run.err()
            .startsWith(
                returns
                    + ":2:2: no site is called 'Harbor Office'; did you mean 'Harbour Office'?"),
        run.err());
    assertTrue(run.err().contains("; the row counts for nothing"));
  }

  @Test
  void whatIsBegunCanBePlanned() throws IOException {
    for (String name : List.of("service.yaml", "table.xlsx")) {
      Run begun = Run.of("begin", "--for", "round", folder.resolve(name));
      assertEquals(ExitCode.DONE, begun.code(), begun.err());
      Path round = folder.resolve(name.replace(".xlsx", ".yaml"));
      Run planned = Run.of("round", round, "--date", "2027-03-01", "--no-sheets");
      assertEquals("", planned.err());
      // 3 + 24 · 1.5 · 0.2 l in 2 l, 4 carafes; 2 + 1; 4
      assertTrue(
          planned.out().replace('\u00a0', ' ').contains("3 sites, 14 carafes, 2 legs"),
          planned.out());
      assertEquals(
          ExitCode.PROBLEMS, Run.of("begin", "--for", "round", folder.resolve(name)).code());
    }
  }

  @Test
  void theBarIsDrawnOnATerminalAlone() {
    StringWriter shown = new StringWriter();
    try (Progress progress = Progress.of(new PrintWriter(shown), Ansi.OFF, true, 4)) {
      progress.step("brew room");
      progress.step("north, labels");
    }
    assertTrue(shown.toString().contains("[.......") && shown.toString().contains("2 of 4"));
    assertFalse(shown.toString().contains("\u001B"));
    assertTrue(shown.toString().endsWith(" \r"));
    StringWriter hidden = new StringWriter();
    try (Progress progress = Progress.of(new PrintWriter(hidden), Ansi.ON, false, 4)) {
      progress.step("brew room");
    }
    assertEquals("", hidden.toString());
  }

  private static int count(String words, String text) {
    return text.split(Pattern.quote(words), -1).length - 1;
  }

  private static Set<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
    }
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ");
    }
  }
}
