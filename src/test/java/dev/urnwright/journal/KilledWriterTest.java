package dev.urnwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Programs that write are killed at any moment, and several write at once. */
public class KilledWriterTest {
  private static final int KILLS = 12;
  private static final int LONGEST_LIFE_MILLISECONDS = 120;

  @TempDir Path folder;

  /** Adds batches for ever, and says each id when the journal has it. */
  public static final class Writer {
    private Writer() {}

    /** Takes the journal, and how many to add; 0 for ever. */
    public static void main(String[] args) throws Exception {
      int wanted = Integer.parseInt(args[1]);
      try (Journal journal = Journal.open(JournalAddress.of(args[0]))) {
        for (int i = 0; wanted == 0 || i < wanted; i++) {
          BrewEntry entry = Entries.brew("house-" + i, 480, 6240, 5200);
          journal.add(entry);
          System.out.println(entry.id());
          System.out.flush();
        }
      }
    }
  }

  @Test
  void nothingAcknowledgedIsLostAndNothingIsHalfThere() throws Exception {
    assertEquals(0, kill(folder.resolve("killed.db"), KILLS, new Random(3)));
  }

  @Test
  void severalAtOnceLoseNothing() throws Exception {
    Path file = folder.resolve("shared.db");
    List<Process> writers = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      writers.add(start(file, 40, folder.resolve("said-" + i)));
    }
    Set<String> said = new HashSet<>();
    for (int i = 0; i < 3; i++) {
      assertEquals(0, writers.get(i).waitFor());
      said.addAll(said(folder.resolve("said-" + i)));
    }
    assertEquals(120, said.size());
    assertEquals(said, ids(file));
  }

  /** More kills than the test has time for: how many, and a seed. */
  public static void main(String[] args) throws Exception {
    Path file = Files.createTempDirectory("journal").resolve("killed.db");
    int kills = Integer.parseInt(args[0]);
    int lost = kill(file, kills, new Random(Long.parseLong(args[1])));
    System.out.println(kills + " kills, " + ids(file).size() + " entries, " + lost + " lost");
  }

  private static int kill(Path file, int kills, Random random) throws Exception {
    Set<String> acknowledged = new HashSet<>();
    int lost = 0;
    for (int i = 0; i < kills; i++) {
      Path said = file.resolveSibling("said-" + i);
      Process writer = start(file, 0, said);
      while (Files.size(said) == 0 && writer.isAlive()) {
        TimeUnit.MILLISECONDS.sleep(1);
      }
      TimeUnit.MILLISECONDS.sleep(random.nextInt(LONGEST_LIFE_MILLISECONDS));
      writer.destroyForcibly().waitFor();
      acknowledged.addAll(said(said));
      Set<String> found = ids(file);
      lost += (int) acknowledged.stream().filter(id -> !found.contains(id)).count();
      assertWhole(file);
    }
    assertTrue(acknowledged.size() >= kills, "each writer got to write");
    return lost;
  }

  /** Every batch has its three readings, and the database finds itself sound. */
  private static void assertWhole(Path file) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      try (ResultSet sound = statement.executeQuery("pragma integrity_check")) {
        sound.next();
        assertEquals("ok", sound.getString(1));
      }
      try (ResultSet half =
          statement.executeQuery(
              "select count(*) from brew where (select count(*) from reading where brew_id = id) <> 3")) {
        half.next();
        assertEquals(0, half.getInt(1));
      }
    }
  }

  private static Set<String> ids(Path file) throws JournalException {
    try (Journal journal = Journal.open(JournalAddress.of(file.toString()))) {
      return journal.brews().stream()
          .map(entry -> entry.id().toString())
          .collect(Collectors.toSet());
    }
  }

  /** Whole ids: a line that the kill cut off was not said. */
  private static Set<String> said(Path file) throws IOException {
    return Files.readString(file)
        .lines()
        .filter(line -> line.length() == UUID.randomUUID().toString().length())
        .collect(Collectors.toSet());
  }

  private static Process start(Path file, int wanted, Path said) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Writer.class.getName(),
            file.toString(),
            String.valueOf(wanted))
        .redirectOutput(said.toFile())
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
