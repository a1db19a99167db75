package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was weighed at one event moves the plan of the next. */
class LearningTest {
  private static final String NAMED = ", journal: {coffee: House, brewer: Tall}";

  @TempDir private Path folder;

  private Path supper(String date) throws IOException {
    return ChoirSupper.write(folder, date, NAMED);
  }

  private Path journal() {
    return folder.resolve("brews.db");
  }

  private JsonNode planned(Path event) throws IOException {
    return Run.of("plan", event, "--json", "--no-sheets", "--journal", journal()).json();
  }

  private void brewed(Path event, String beverage, String reading) {
    Run run =
        Run.of(
            "adjust",
            event,
            "--journal",
            journal(),
            "--no-sheets",
            "--batch",
            "coffee-1",
            "--dose",
            "366",
            "--water",
            "4392",
            "--beverage",
            beverage,
            "--reading",
            reading,
            "--reading",
            reading,
            "--reading",
            reading);
    assertEquals(ExitCode.DONE, run.code(), run.err());
  }

  @Test
  void theNextSupperIsPlannedByWhatThisOneTaught() throws IOException {
    JsonNode before = planned(supper("2027-06-05"));
    assertFalse(before.has("journal"));
    assertTrue(notes(before).contains("There is no journal at " + journal() + " yet"));
    assertFalse(Files.exists(journal()));
    brewed(supper("2027-06-05"), "3477", "2.00");

    JsonNode now = planned(supper("2027-06-12"));
    // (4392 − 3477) / 366 = 2.5 g/g; 1/0.25² = 16 for the file's 2.0, 1/0.1² = 100 for the batch:
    // (16 × 2 + 100 × 2.5) / 116 = 2.431034; t of 4 degrees: 2.776445 / √116 = 0.257787
    JsonNode kept = now.at("/journal/coffees/0/absorption");
    assertEquals(2, kept.get("before").asDouble(), 1e-6);
    assertEquals(2.431034, kept.get("now").asDouble(), 1e-6);
    assertEquals(2.431034 - 0.257787, kept.get("low").asDouble(), 2e-6);
    assertEquals(2.431034 + 0.257787, kept.get("high").asDouble(), 2e-6);
    assertEquals(1, kept.get("entries").asInt());
    // 2.00 % × 3477 / 366 = 19.00 %; 0.9 of the point it is under 20 % count: 19.10 %
    JsonNode extracted = now.at("/journal/coffees/0/extraction/0");
    assertEquals(12, extracted.get("ratio").asDouble(), 1e-6);
    assertEquals(19.10, extracted.at("/percent/now").asDouble(), 1e-6);
    // The solids wanted are the same, so the dose goes up by 20 / 19.10; and more water is kept.
    assertEquals(
        20 / 19.10,
        number(now, "/coffees/0/needed/dose_g") / number(before, "/coffees/0/needed/dose_g"),
        1e-4);
    assertEquals(
        2.431034,
        number(now, "/coffees/0/needed/absorbed_g") / number(now, "/coffees/0/needed/dose_g"),
        1e-6);
    String notes = notes(now);
    assertTrue(
        notes.contains(
            "House: 1 batch in the journal moves what the grounds keep from 2.00 g/g to 2.43 g/g"
                + " (2.17 g/g to 2.69 g/g)."),
        notes);
    assertTrue(notes.contains("the extraction at 1:12.0 from 20.0 % to 19.1 %"), notes);
    // How surely that is known goes into how sure the strengths are: 0.257787 / 2.
    JsonNode budget = now.at("/coffees/0/certainty/budget");
    assertEquals(
        0.257787 / 2,
        Stream.iterate(0, i -> i + 1)
            .limit(budget.size())
            .map(budget::get)
            .filter(entry -> entry.get("source").asText().equals("absorption_learned"))
            .findFirst()
            .orElseThrow()
            .get("standard_uncertainty")
            .asDouble(),
        2e-6);
  }

  @Test
  void aPlanStaysTheSameWhileItsEventIsOn() throws IOException {
    Path event = supper("2027-06-05");
    JsonNode before = planned(event);
    brewed(event, "3477", "2.00");
    JsonNode after = planned(event);
    assertEquals(before.get("batches"), after.get("batches"));
    String notes = notes(after);
    assertTrue(
        notes.contains("House: the journal has no batches of 'House' on 'Tall' from before"),
        notes);
    Files.deleteIfExists(event);
  }

  @Test
  void whatCameBackMovesTheCups() throws IOException {
    Path event = supper("2027-06-05");
    Files.writeString(event, Files.readString(event) + "kind: choir supper\n");
    Run served =
        Run.of("journal", "served", event, "--journal", journal(), "--back", "Early=2925 g");
    assertEquals(ExitCode.DONE, served.code(), served.err());
    Path next = supper("2027-06-12");
    Files.writeString(next, Files.readString(next) + "kind: Choir Supper\n");
    JsonNode now = planned(next);
    JsonNode early = now.at("/journal/groups/0");
    assertEquals("Early", early.get("group").asText());
    assertEquals(1, early.at("/cups_per_guest/before").asDouble(), 1e-9);
    // 30 cups of 194.97 g stood ready, 2925 g of them came back: 15 cups of 30 guests.
    // λ₀ = 1: 1/0.3² = 11.1111 cups of as many guests. v = (0.25 × 2.776445 / 1.959964)² = 0.125416
    // φ = 1 + 30 v / λ; (11.1111 + 15/φ) / (11.1111 + 30/φ) = λ
    double rate = early.at("/cups_per_guest/now").asDouble();
    double alike = 1 + 30 * 0.125416 / rate;
    assertEquals((11.11111 + 15 / alike) / (11.11111 + 30 / alike), rate, 2e-4);
    assertTrue(rate > 0.5 && rate < 1, early::toString);
    JsonNode group = now.at("/groups/0");
    assertEquals(30 * rate, group.get("cups_mean").asDouble(), 1e-4);
    assertTrue(group.get("cups").asInt() < 30, group::toString);
    // Nothing is known of the late group, so all of that kind taught it.
    assertEquals(rate, now.at("/journal/groups/1/cups_per_guest/now").asDouble(), 1e-9);
    assertTrue(notes(now).contains("=Late: the journal has no group of that name"), notes(now));
  }

  /**
   * A published chart's example (4 oz of coffee, 64 oz of water, 1.5 g/g kept, 1.3 %: an extraction
   * of 18.85 %), brewed often enough to leave nothing of what the event says.
   */
  @Test
  void aPublishedBrewIsPlannedAsPublished() throws IOException {
    StringBuilder csv =
        new StringBuilder("coffee,brewer,dose_g,water_g,beverage_g,readings,batch\n");
    for (int i = 0; i < 80; i++) {
      csv.append("House,Tall,113.4,1814.4,1644.3,1.3 1.3 1.3,b").append(i).append('\n');
    }
    Path file = Files.writeString(folder.resolve("published.csv"), csv);
    assertEquals(ExitCode.DONE, Run.of("journal", "import", file, "--journal", journal()).code());
    JsonNode plan = planned(supper("2027-06-12"));
    assertEquals(1.5, plan.at("/journal/coffees/0/absorption/now").asDouble(), 0.005);
    assertEquals(18.85, plan.at("/coffees/0/needed/extraction").asDouble(), 0.02);
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "check", "adjust", "ladder", "chart", "report"})
  void aJournalThatCantBeReadIsAProblem(String command) throws IOException {
    Path notes = Files.writeString(folder.resolve("notes.txt"), "buy milk\n".repeat(200));
    Path event = supper("2027-06-05");
    Run run = Run.of(command, event, "--journal", notes);
    assertEquals(ExitCode.PROBLEMS, run.code(), run.err());
    assertTrue(
        run.err().startsWith(event + ":3:104: the journal can't be read: " + notes)
            && run.err().contains("--no-journal to plan without"),
        run.err());
    assertFalse(Files.exists(folder.resolve("supper-plan.pdf")));
  }

  @Test
  void itCanBeLeftOut() throws IOException {
    brewed(supper("2027-06-05"), "3477", "2.00");
    Path event = supper("2027-06-12");
    JsonNode plan = Run.of("plan", event, "--json", "--no-sheets", "--no-journal").json();
    assertFalse(plan.has("journal"));
    assertTrue(notes(plan).contains("The journal was left out, as --no-journal asks."));
  }

  @Test
  void theSampleIsPlannedByItsJournal() throws IOException {
    Run read =
        Run.of(
            "journal", "import", "samples/lakeside-planting-journal.csv", "--journal", journal());
    assertEquals("read 12 entries\n", read.out(), read.err());
    JsonNode plan = planned(Path.of("samples/lakeside-planting.yaml"));
    // of the seven batches, one was brewed on another brewer
    assertEquals(6, plan.at("/journal/coffees/0/absorption/entries").asInt());
    assertEquals(3, plan.at("/journal/groups/0/cups_per_guest/entries").asInt());
    assertEquals(2, plan.at("/journal/groups/1/cups_per_guest/entries").asInt());
  }

  private static double number(JsonNode plan, String at) {
    return plan.at(at).asDouble();
  }

  private static String notes(JsonNode plan) {
    StringBuilder notes = new StringBuilder();
    plan.get("notes").forEach(note -> notes.append(note.get("text").asText()).append('\n'));
    return notes.toString().replace('\u00a0', ' ');
  }
}
