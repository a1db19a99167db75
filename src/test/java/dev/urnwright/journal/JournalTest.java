package dev.urnwright.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Readings;
import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A journal in a file, and on a server where URNWRIGHT_TEST_POSTGRESQL names one. */
class JournalTest {
  @TempDir static Path folder;

  static List<JournalAddress> places() throws JournalException {
    List<JournalAddress> places = new ArrayList<>();
    places.add(JournalAddress.of(folder.resolve(UUID.randomUUID() + ".db").toString()));
    String server = System.getenv("URNWRIGHT_TEST_POSTGRESQL");
    if (server != null) {
      places.add(JournalAddress.of(server));
    }
    return places;
  }

  @ParameterizedTest
  @MethodSource("places")
  void givesBackWhatWasWritten(JournalAddress address) throws JournalException {
    BrewEntry brew = Entries.brew("house-1", 480, 6240, 5200.5);
    BrewEntry bare =
        new BrewEntry(
            UUID.randomUUID(),
            brew.recordedAt().plusSeconds(1),
            new BrewEntry.Occasion("Kaffee für 40 – ½ Liter 'x'; drop table", Optional.empty()),
            "b",
            "Ñandú",
            Optional.empty(),
            brew.method(),
            brew.steamLoss(),
            new WeighedBatch(
                brew.weighed().dose(),
                brew.weighed().brewWater(),
                Optional.empty(),
                Readings.NONE));
    ServiceEntry served = Entries.service("Early", 9000, 1200);
    try (Journal journal = Journal.open(address)) {
      journal.add(brew);
      journal.addAll(List.of(bare, brew), List.of(served));
    }
    try (Journal journal = Journal.open(address)) {
      assertTrue(journal.brews().containsAll(List.of(brew, bare)));
      assertEquals(1, journal.brews().stream().filter(brew::equals).count(), "once by its id");
      assertTrue(journal.services().contains(served));
      assertTrue(journal.brewsOf(Entries.SUPPER).contains(brew));
      assertFalse(journal.brewsOf(Entries.SUPPER).contains(bare));
      assertTrue(journal.remove(brew.id()));
      assertFalse(journal.remove(brew.id()));
      assertFalse(journal.brews().contains(brew));
      assertTrue(
          journal.removals().stream()
              .anyMatch(
                  removal ->
                      removal.id().equals(brew.id()) && removal.entry().equals(EntryRow.of(brew))));
      journal.add(brew); // and it may come back, and go again
      assertTrue(journal.remove(brew.id()));
      assertEquals(
          2, journal.removals().stream().filter(each -> each.id().equals(brew.id())).count());
      assertTrue(journal.remove(bare.id()) && journal.remove(served.id()));
    }
  }

  /** As it was before removals were kept. */
  @Test
  void aJournalOfAnOlderProgramIsBroughtUpToDate() throws Exception {
    JournalAddress address = JournalAddress.of(folder.resolve("older.db").toString());
    BrewEntry brew = Entries.brew("house-1", 480, 6240, 5200);
    try (Journal journal = Journal.open(address)) {
      journal.add(brew);
    }
    try (Connection connection = DriverManager.getConnection(address.url());
        Statement statement = connection.createStatement()) {
      statement.execute("drop table removed");
      statement.execute("delete from urnwright_schema where version = '2'");
    }
    try (Journal journal = Journal.open(address)) {
      assertEquals(List.of(brew), journal.brews());
      assertEquals(List.of(), journal.removals());
      assertTrue(journal.remove(brew.id()));
      assertEquals(1, journal.removals().size());
    }
  }

  @Test
  void aJournalOfANewerProgramIsLeftAlone() throws Exception {
    Path file = folder.resolve("newer.db");
    JournalAddress address = JournalAddress.of(file.toString());
    Journal.open(address).close();
    try (Connection connection = DriverManager.getConnection(address.url());
        Statement statement = connection.createStatement()) {
      statement.execute(
          "insert into urnwright_schema select installed_rank + 1, '99', description, type, script,"
              + " checksum, installed_by, installed_on, execution_time, success"
              + " from urnwright_schema where version = '2'");
    }
    JournalException refused =
        assertThrows(JournalException.class, () -> Journal.open(address).close());
    assertEquals(
        file + ": was written by a newer Urnwright; use that, or another journal",
        refused.getMessage());
  }

  @Test
  void whatIsNoJournalIsRefusedInWords() throws Exception {
    Path file = Files.writeString(folder.resolve("notes.txt"), "buy milk\n".repeat(200));
    JournalException refused =
        assertThrows(
            JournalException.class, () -> Journal.open(JournalAddress.of(file.toString())).close());
    assertTrue(refused.getMessage().startsWith(file + ": "), refused.getMessage());
    assertEquals("buy milk\n".repeat(200), Files.readString(file));
  }

  @Test
  void anotherProgramsDatabaseIsLeftAsItIs() throws Exception {
    Path file = folder.resolve("stock.db");
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.execute("create table shelf (milk)");
    }
    byte[] before = Files.readAllBytes(file);
    JournalException refused =
        assertThrows(
            JournalException.class, () -> Journal.open(JournalAddress.of(file.toString())).close());
    assertEquals(
        file + ": its tables can't be made; is it a journal of Urnwright's?", refused.getMessage());
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void aFileKeepsItsLogAhead() throws Exception {
    Path file = folder.resolve("ahead.db");
    Journal.open(JournalAddress.of(file.toString())).close();
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement();
        ResultSet mode = statement.executeQuery("pragma journal_mode")) {
      assertEquals("wal", mode.getString(1));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "'', ''",
    "'  ', '  '",
    "jdbc:mysql://h/db?password=pw, jdbc:mysql://h/db",
    "postgresql://ana:pw@h/db, postgresql://h/db",
    "jdbc:sqlite:x.db, jdbc:sqlite:x.db"
  })
  void whatIsNeitherFileNorServerIsRefusedInWords(String text, String shown) {
    JournalException refused =
        assertThrows(JournalException.class, () -> JournalAddress.of(text), text);
    assertEquals(
        "'"
            + shown
            + "' is no journal; expected a file, or a URL that begins with jdbc:postgresql://",
        refused.getMessage());
  }

  @Test
  void aPasswordIsNeverRepeated() {
    for (String url :
        List.of(
            "jdbc:postgresql://ana:pw@127.0.0.1:1/db",
            "jdbc:postgresql://127.0.0.1:port/db?password=pw",
            "jdbc:postgresql://127.0.0.1:1/db?user=ana&password=pw")) {
      JournalException refused =
          assertThrows(
              JournalException.class, () -> Journal.open(JournalAddress.of(url)).close(), url);
      assertFalse(refused.getMessage().contains("pw"), refused.getMessage());
    }
  }

  @Test
  void aFileOfSomethingElseIsLeftAsItIs() throws Exception {
    Path notes = folder.resolve("notes.txt");
    for (String text : List.of("1", "x".repeat(100), "x".repeat(100_000))) {
      Files.writeString(notes, text);
      JournalException refused =
          assertThrows(
              JournalException.class,
              () -> Journal.open(JournalAddress.of(notes.toString())).close());
      assertEquals(
          notes + ": is not a journal; expected a journal, or a file that isn't there yet",
          refused.getMessage());
      assertEquals(text, Files.readString(notes));
    }
  }

  @Test
  void aFilesNameIsNoDriversOption() throws Exception {
    // The driver would keep :memory: in memory, and lose it.
    Path file = JournalAddress.of(":memory:").file().orElseThrow();
    assertEquals("jdbc:sqlite:" + file.toAbsolutePath(), JournalAddress.of(":memory:").url());
  }

  @ParameterizedTest
  @CsvSource({"0, 1, 200", "-5, 1, 200", "40, 0, 200", "40, NaN, 200", "40, 1, 0"})
  void noOneIsAskedForNothing(int headcount, double cupsEach, double cup) {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new ServiceEntry.Asked(
                headcount, Share.ofPercent(85), cupsEach, 40, Mass.ofGrams(cup)));
  }

  @Test
  void isKeptWhereThatSystemKeepsThings() throws JournalException {
    assertEquals(
        Path.of("/home/ana/.local/share/urnwright/journal.db"),
        place(Map.of("HOME", "/home/ana"), "Linux"));
    assertEquals(
        Path.of("/data/urnwright/journal.db"),
        place(Map.of("HOME", "/home/ana", "XDG_DATA_HOME", "/data"), "Linux"));
    assertEquals(
        Path.of("/Users/ana/Library/Application Support/Urnwright/journal.db"),
        place(Map.of("HOME", "/Users/ana"), "Mac OS X"));
    assertEquals(
        Path.of("/x.db"), place(Map.of("HOME", "/h", "URNWRIGHT_JOURNAL", "/x.db"), "Linux"));
  }

  @Test
  void aServerIsShownWithoutWhatMayBeSecret() throws JournalException {
    assertEquals(
        "jdbc:postgresql://db/urn",
        JournalAddress.of("jdbc:postgresql://db/urn?user=a&password=b").shown());
  }

  private static Path place(Map<String, String> environment, String system)
      throws JournalException {
    return JournalAddress.meant(Optional.empty(), environment, system).file().orElseThrow();
  }
}
