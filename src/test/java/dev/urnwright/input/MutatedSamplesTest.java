package dev.urnwright.input;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Event;
import dev.urnwright.problem.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever befalls a file, reading it gives an event or problems with places inside the file. */
class MutatedSamplesTest {
  private static final int MUTANTS = 600;

  private static final List<String> PIECES =
      List.of(
          "-",
          ":",
          "- ",
          ": ",
          "\n",
          "  ",
          "%",
          "°C",
          "&a ",
          "*a",
          "!x ",
          "{",
          "}",
          "[",
          "]",
          "#",
          "\"",
          "'",
          "|",
          ">",
          "?",
          "~",
          "null",
          "1e400",
          "NaN",
          "-1",
          "0",
          "99999999999999999999",
          "1,500",
          "½",
          "to",
          "–",
          " g",
          " ml",
          " cups",
          "\t",
          "\u0000",
          "\uFFFE",
          "\uD83D\uDE00",
          "---\n",
          "...",
          "<<: ",
          "%YAML 9.9\n---\n",
          "\\u0007",
          "é",
          "\r",
          ",",
          "@",
          "`");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "samples/autumn-conference.yaml",
        "samples/harvest-supper.yaml",
        "samples/corner-cafe.yaml",
        "samples/office-carafes.yaml",
        "templates/event.yaml"
      })
  void neverFails(String sample) throws IOException {
    String text = Files.readString(Path.of(sample));
    Random random = new Random(sample.hashCode());
    Path file = folder.resolve("mutant.yaml");
    int refused = 0;
    for (int i = 0; i < MUTANTS; i++) {
      String mutant = mutate(text, random);
      Files.writeString(file, mutant);
      Checked<Event> read = new EventReader().read(file);
      refused += read.problems().size();
      long lines = mutant.chars().filter(c -> c == '\n' || c == '\r').count() + 1;
      read.problems()
          .forEach(
              problem -> {
                assertTrue(problem.location().line() <= lines, () -> problem + "\n" + mutant);
                assertFalse(problem.toString().matches("(?s).*[\\p{Cc}].*"), problem::toString);
                assertFalse(problem.wrong().isBlank() || problem.expected().isBlank());
                assertFalse(endsLikeASentence(problem.toString()), problem::toString);
              });
    }
    assertTrue(refused > MUTANTS / 4, "hardly any mutant was refused: " + refused);
  }

  /** Three dots are one of the {@link #PIECES}, and may end a name that a message quotes. */
  private static boolean endsLikeASentence(String message) {
    return message.endsWith(".") && !message.endsWith("...");
  }

  private static String mutate(String text, Random random) {
    String mutant = text;
    for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
      mutant =
          switch (random.nextInt(4)) {
            case 0 -> insert(mutant, random);
            case 1 -> cut(mutant, random);
            case 2 -> swapLines(mutant, random);
            default -> replaceValue(mutant, random);
          };
    }
    return mutant;
  }

  private static String insert(String text, Random random) {
    int at = random.nextInt(text.length() + 1);
    return text.substring(0, at) + piece(random) + text.substring(at);
  }

  private static String cut(String text, Random random) {
    int from = random.nextInt(text.length());
    int to = Math.min(text.length(), from + 1 + random.nextInt(12));
    return text.substring(0, from) + text.substring(to) + " ";
  }

  private static String swapLines(String text, Random random) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    String moved = lines.remove(random.nextInt(lines.size()));
    lines.add(random.nextInt(lines.size() + 1), moved);
    return String.join("\n", lines) + "\n";
  }

  private static String replaceValue(String text, Random random) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    int at = random.nextInt(lines.size());
    String line = lines.get(at);
    int colon = line.indexOf(": ");
    lines.set(
        at, (colon < 0 ? line : line.substring(0, colon + 2)) + piece(random) + piece(random));
    return String.join("\n", lines) + "\n";
  }

  private static String piece(Random random) {
    return PIECES.get(random.nextInt(PIECES.size()));
  }
}
