package dev.urnwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.urnwright.input.GrammarEvents;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Journals and files of entries that somebody changed, broke or made up. */
final class HostileJournals implements Fuzz.Hostile {
  private static final Pattern VALUE = Pattern.compile("[^,\"\\r\\n:{}]+");

  private String csv = "";
  private String json = "";
  private byte[] database = new byte[0];
  private Random random = new Random(0);

  @Override
  public List<Object> lay(long seed, Path folder) throws IOException {
    if (database.length == 0) {
      keep();
    }
    random = new Random(seed * 31 + 3);
    Path journal = folder.resolve("j.db");
    int how = random.nextInt(10);
    if (how < 6) {
      if (how % 2 == 0) {
        Files.write(journal, database);
      }
      boolean comma = how < 3;
      Path file = folder.resolve(comma ? "f.csv" : "f.json");
      Files.write(file, encoded(changed(comma ? csv : json)));
      return List.of("journal", "import", file, "--journal", journal);
    }
    if (how < 9) {
      Files.write(journal, damaged(database));
    } else {
      Files.write(
          journal, pick(List.of("notes", "no journal", "SQLite format 3\0", csv)).getBytes(UTF_8));
    }
    Path good = Files.writeString(folder.resolve("good.csv"), csv);
    return switch (random.nextInt(6)) {
      case 0 -> List.of("journal", "list", "--journal", journal);
      case 1 -> List.of("journal", "fit", "--journal", journal);
      case 2 -> List.of("journal", "export", folder.resolve("out.json"), "--journal", journal);
      case 3 -> List.of("journal", "import", good, "--journal", journal);
      case 4 ->
          List.of(
              "journal", "remove", "01234567-89ab-cdef-0123-456789abcdef", "--journal", journal);
      default ->
          List.of(
              "journal",
              "add",
              "--coffee",
              "House",
              "--dose",
              "16",
              "--water",
              "208",
              "--journal",
              journal);
    };
  }

  /** A journal of a few entries, and the same as text. */
  private void keep() throws IOException {
    Path folder = Files.createTempDirectory("journal");
    Path journal = folder.resolve("j.db");
    for (String coffee : List.of("House", "Late decaf", "=1+1")) {
      done(
          "journal",
          "add",
          "--journal",
          journal,
          "--coffee",
          coffee,
          "--dose",
          "480",
          "--water",
          "6240",
          "--beverage",
          "5200",
          "--reading",
          "1.81",
          "--reading",
          "1.80",
          "--sample",
          "21",
          "--brewer",
          "Tall",
          "--event",
          "Trial",
          "--date",
          "2027-06-05");
    }
    done(
        "journal",
        "served",
        "samples/corner-cafe.yaml",
        "--journal",
        journal,
        "--back",
        "To go=120 g");
    done("journal", "export", folder.resolve("j.csv"), "--journal", journal);
    done("journal", "export", folder.resolve("j.json"), "--journal", journal);
    csv = Files.readString(folder.resolve("j.csv"));
    json = Files.readString(folder.resolve("j.json"));
    database = Files.readAllBytes(journal);
  }

  private static void done(Object... command) {
    Run run = Run.of(command);
    if (run.code() != ExitCode.DONE) {
      throw new IllegalStateException(Arrays.toString(command) + run.err());
    }
  }

  private String changed(String text) {
    StringBuilder changed = new StringBuilder(text);
    for (int changes = random.nextInt(4); changes > 0; changes--) {
      int at = random.nextInt(changed.length());
      int to = Math.min(changed.length(), at + random.nextInt(6));
      switch (random.nextInt(6)) {
        case 0 -> changed.delete(at, to);
        case 1 -> changed.insert(at, changed.substring(at, to));
        case 2 -> changed.insert(at, ",;\"'\n{}[]:\u0000\u001b\u202e".charAt(random.nextInt(13)));
        case 3 -> changed.insert(at, "[".repeat(1 << random.nextInt(14)));
        default -> {
          List<MatchResult> values = VALUE.matcher(changed).results().toList();
          MatchResult value = values.get(random.nextInt(values.size()));
          changed.replace(value.start(), value.end(), value());
        }
      }
    }
    return changed.toString();
  }

  private String value() {
    return random.nextInt(8) == 0
        ? pick(
            List.of(
                "1e9",
                "1e308",
                "0x1p3",
                "-999999999-01-01",
                "+999999999-12-31",
                "+1000000000-12-31T23:59:59.999999999Z",
                "9".repeat(400),
                "x".repeat(1 << 16)))
        : pick(GrammarEvents.HOSTILE);
  }

  private byte[] encoded(String text) {
    return switch (random.nextInt(12)) {
      case 0 -> ("\uFEFF" + text).getBytes(UTF_8);
      case 1 -> text.getBytes(java.nio.charset.StandardCharsets.UTF_16);
      case 2 -> damaged(text.getBytes(UTF_8));
      case 3 -> text.replace(',', ';').getBytes(UTF_8);
      default -> text.getBytes(UTF_8);
    };
  }

  private byte[] damaged(byte[] whole) {
    if (random.nextInt(3) == 0) {
      return Arrays.copyOf(whole, random.nextInt(whole.length));
    }
    byte[] bytes = whole.clone();
    int reach = random.nextBoolean() ? 120 : bytes.length;
    for (int i = 1 + random.nextInt(random.nextBoolean() ? 3 : 300); i > 0; i--) {
      bytes[random.nextInt(Math.min(reach, bytes.length))] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private <T> T pick(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
