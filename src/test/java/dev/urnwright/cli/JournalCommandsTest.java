package dev.urnwright.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The journal from the command line, out into files and back. */
class JournalCommandsTest {
  @TempDir private Path folder;
  private Path journal;

  @BeforeEach
  void begin() {
    journal = folder.resolve("brews.db");
    done(
        Run.of(
            "journal",
            "add",
            "--journal",
            journal,
            "--coffee",
            "=1+1 House",
            "--brewer",
            "Tall",
            "--dose",
            "16",
            "--water",
            "208",
            "--beverage",
            "169",
            "--reading",
            "1,81",
            "--reading",
            "1.81 %",
            "--reading",
            "1.80",
            "--sample",
            "21",
            "--event",
            "Trial",
            "--date",
            "2027-06-05"));
  }

  private static String done(Run run) {
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    return run.out().replace('\u00a0', ' ');
  }

  @Test
  void listsWhatWasAdded() {
    String list = done(Run.of("journal", "list", "--journal", journal));
    // (208 − 169) / 16 = 2.44 g/g
    assertTrue(list.contains("16 g  208 g     169 g    1.81 %  2.44 g/g"), list);
    assertTrue(list.contains("2027-06-05 Trial"), list);
    list.lines()
        .forEach(line -> assertTrue(line.length() <= 80 || line.contains("Journal:"), line));
  }

  @ParameterizedTest
  @ValueSource(strings = {"brews.csv", "brews.json"})
  void goesOutAndComesBackTheSame(String name) throws IOException {
    Path event = Files.copy(Path.of("samples/corner-cafe.yaml"), folder.resolve("cafe.yaml"));
    String group =
        Files.readAllLines(event).stream()
            .filter(line -> line.startsWith("  - name: "))
            .findFirst()
            .orElseThrow()
            .substring(10);
    done(
        Run.of(
            "journal",
            "served",
            event,
            "--journal",
            journal,
            "--back",
            group + "=120 g",
            "--came",
            group + "=9",
            "--kind",
            "cafe"));
    Path file = folder.resolve(name);
    done(Run.of("journal", "export", file, "--journal", journal));
    Path other = folder.resolve("other.db");
    assertEquals("read 2 entries\n", done(Run.of("journal", "import", file, "--journal", other)));
    assertEquals("read 2 entries\n", done(Run.of("journal", "import", file, "--journal", other)));
    Path again = folder.resolve("again-" + name);
    done(Run.of("journal", "export", again, "--journal", other));
    assertEquals(Files.readString(file), Files.readString(again));
  }

  @Test
  void aNameThatIsAFormulaIsNoneInASpreadsheet() throws IOException {
    Path file = folder.resolve("brews.csv");
    done(Run.of("journal", "export", file, "--journal", journal));
    assertTrue(Files.readString(file).contains(",'=1+1 House,"), Files.readString(file));
  }

  @Test
  void whatIsWrongInAFileIsAllSaidAndNothingIsAdded() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("bad.csv"),
            "coffee,dose_g,water_g,beverage_g,readings,colour\n"
                + "House,16,208,169,1.81 1.81 1.81,\n"
                + "House,lots,208,169,,\n"
                + "House,16,208,999,,\n"
                + "House,16,208,169,oops,red\n");
    Run run = Run.of("journal", "import", file, "--journal", folder.resolve("new.db"));
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(run.err().contains(file + ":3:7: dose_g: 'lots' can't be read"), run.err());
    assertTrue(run.err().contains(file + ":4:1: more beverage than went in"), run.err());
    assertTrue(run.err().contains(file + ":5:18: readings: 'oops' can't be read"), run.err());
    assertTrue(run.err().contains(file + ":1:43: unknown column 'colour'"), run.err());
    assertTrue(run.err().contains("4 problems; nothing was added"), run.err());
    assertTrue(
        done(Run.of("journal", "list", "--journal", folder.resolve("new.db")))
            .contains("0 batches"));
  }

  @Test
  void aPlaceIsRightAfterQuotesAndLineEndsWithinThem() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("quoted.csv"),
            "coffee,event,dose_g,water_g\r\n"
                + "House,\"Supper, \"\"late\"\"\r\nand cold\",lots,208\r\n"
                + "House,,16,much\r\n");
    Run run = Run.of("journal", "import", file, "--journal", journal);
    assertTrue(run.err().contains(file + ":3:11: dose_g: 'lots'"), run.err());
    assertTrue(run.err().contains(file + ":4:11: water_g: 'much'"), run.err());
  }

  @Test
  void readsWhatASpreadsheetSaved() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("saved.csv"),
            "\uFEFFcoffee;dose_g;water_g;beverage_g\r\nHouse;16;208;169\r\n");
    Path other = folder.resolve("other.db");
    assertEquals("read 1 entries\n", done(Run.of("journal", "import", file, "--journal", other)));
    assertTrue(done(Run.of("journal", "list", "--journal", other)).contains("2.44 g/g"));
  }

  @Test
  void aListOfReadingsInJsonIsNotDropped() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("lists.json"),
            "{\"entries\": [\n"
                + "{\"coffee\": \"House\", \"dose_g\": 16, \"water_g\": 208,\n"
                + " \"readings\": [1.81, 1.81, 1.81]}]}");
    Run run = Run.of("journal", "import", file, "--journal", journal);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(run.err().contains(file + ":3:14: 'readings' holds several values"), run.err());
  }

  @Test
  void whatIsNotUtf8IsRefused() throws IOException {
    Path file = folder.resolve("latin.csv");
    Files.write(file, "coffee,dose_g,water_g\nCaf\u00e9,16,208\n".getBytes(ISO_8859_1));
    Run run = Run.of("journal", "import", file, "--journal", journal);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(run.err().contains("is not text in UTF-8"), run.err());
  }

  @Test
  void numbersComeOutAsTheyWentIn() throws IOException {
    Path file = folder.resolve("brews.csv");
    done(Run.of("journal", "export", file, "--journal", journal));
    assertTrue(Files.readString(file).contains(",1.81@21 1.81@21 1.8@21,"), Files.readString(file));
  }

  @Test
  void whatIsNoTableIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("bad.json"), "{\"entries\": [{]}");
    Run run = Run.of("journal", "import", file, "--journal", journal);
    assertEquals(ExitCode.PROBLEMS, run.code());
    assertTrue(run.err().contains("is not JSON here"), run.err());
  }

  @Test
  void tellsWhatItTeaches() {
    String fit = done(Run.of("journal", "fit", "--journal", journal));
    assertTrue(fit.contains("=1+1 House on Tall, 1 batch"), fit);
    // One batch kept (208 − 169) / 16 = 2.44 g/g, 2.1 g/g is usual: what was learned lies between.
    double kept =
        Double.parseDouble(fit.replaceAll("(?s).*kept by the grounds +([0-9.]+) g/g.*", "$1"));
    assertTrue(kept > 2.1 && kept < 2.44, fit);
    assertTrue(
        done(Run.of("journal", "fit", "--journal", journal, "--coffee", "None"))
            .contains("No batches yet of None."));
  }

  @Test
  void aWrongEntryIsRemoved() {
    String list = done(Run.of("journal", "list", "--journal", journal));
    String id = list.replaceAll("(?s).*Trial ([0-9a-f-]{36}).*", "$1");
    assertEquals(
        "removed " + id + "\n", done(Run.of("journal", "remove", id, "--journal", journal)));
    Run again = Run.of("journal", "remove", id, "--journal", journal);
    assertEquals(ExitCode.PROBLEMS, again.code());
    assertTrue(done(Run.of("journal", "list", "--journal", journal)).contains("0 batches"));
    String removed = done(Run.of("journal", "list", "--removed", "--journal", journal));
    assertTrue(removed.contains("1 removed entry"), removed);
    String all = removed.replaceAll("\\s+", " ");
    assertTrue(all.contains("=1+1 House " + LocalDate.now(ZoneOffset.UTC)), removed);
    assertTrue(all.contains("dose_g 16, water_g 208, beverage_g 169"), removed);
    assertTrue(all.contains(id), removed);
  }
}
