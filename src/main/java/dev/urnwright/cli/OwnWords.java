package dev.urnwright.cli;

import dev.urnwright.input.Nearest;
import dev.urnwright.pdf.TemplateFolder;
import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import dev.urnwright.wording.WordFile;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** What is wrong with a firm's own words, before any sheet is made of them. */
final class OwnWords {
  private OwnWords() {}

  /** Keys that nothing is called by, and values that what is said doesn't have. */
  static List<Problem> problems(TemplateFolder folder) throws IOException {
    List<WordFile> shipped = folder.shippedWords();
    Set<String> known = new TreeSet<>();
    shipped.forEach(file -> known.addAll(file.lines().keySet()));
    Set<String> inTemplates = folder.wordsOfTemplates();
    List<Problem> problems = new ArrayList<>();
    for (WordFile own : folder.ownWords()) {
      for (Map.Entry<String, WordFile.Entry> line : own.lines().entrySet()) {
        String key = line.getKey();
        Location place = new Location(own.name(), line.getValue().line(), 1);
        if (!known.contains(key) && !inTemplates.contains(key)) {
          problems.add(unknown(key, place, known));
        } else if (!inTemplates.contains(key)) {
          problems.addAll(values(key, line.getValue(), place, shipped));
        }
      }
    }
    problems.sort((a, b) -> a.location().compareTo(b.location()));
    return problems;
  }

  private static Problem unknown(String key, Location place, Set<String> known) {
    return new Problem(
        place,
        "nothing is said by the words '" + key + "'",
        Nearest.to(key, known)
            .map(near -> "did you mean '" + near + "'?")
            .orElse("expected a key of words_en.properties, or one that your templates call for"));
  }

  /** What a template calls for may use all that is on its sheet; other words have their values. */
  private static List<Problem> values(
      String key, WordFile.Entry entry, Location place, List<WordFile> shipped) {
    Set<String> known = new TreeSet<>();
    for (WordFile file : shipped) {
      WordFile.Entry theirs = file.lines().get(key);
      if (theirs != null) {
        known.addAll(theirs.values());
      }
    }
    return entry.values().stream()
        .filter(value -> !known.contains(value))
        .map(
            value ->
                new Problem(
                    place,
                    "there is nothing called '" + value + "' in the words '" + key + "'",
                    known.isEmpty() ? "expected words alone" : Nearest.among(value, known)))
        .toList();
  }
}
