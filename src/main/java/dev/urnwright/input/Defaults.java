package dev.urnwright.input;

import dev.urnwright.event.Note;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Notes what was filled in because the user left it out, one sentence for each kind. */
final class Defaults {
  private static final int MOST_NAMED = 5;

  private final Map<String, Saying> sentences = new LinkedHashMap<>();
  private final Map<String, List<String>> whom = new LinkedHashMap<>();

  /** What was given, else the default, noted. */
  <T> T fill(Optional<T> given, T otherwise, String code, Supplier<Saying> sentence) {
    if (given.isPresent()) {
      return given.get();
    }
    note(code, sentence.get());
    return otherwise;
  }

  /** The same for one of several; the sentence ends with the names of all whom it concerns. */
  <T> T fill(String name, Optional<T> given, T otherwise, String code, Supplier<Saying> sentence) {
    if (given.isPresent()) {
      return given.get();
    }
    noteOf(name, code, sentence);
    return otherwise;
  }

  void note(String code, Saying sentence) {
    sentences.put(code, sentence);
  }

  void noteOf(String name, String code, Supplier<Saying> sentence) {
    sentences.computeIfAbsent(code, first -> sentence.get());
    whom.computeIfAbsent(code, first -> new ArrayList<>()).add(name);
  }

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    sentences.forEach(
        (code, sentence) ->
            notes.add(new Note(code, concerning(sentence, whom.getOrDefault(code, List.of())))));
    return notes;
  }

  private static Saying concerning(Saying sentence, List<String> names) {
    if (names.isEmpty()) {
      return sentence;
    }
    int more = Math.max(0, names.size() - MOST_NAMED);
    return Saying.of("default.concerning")
        .with("sentence", sentence)
        .with("names", names.subList(0, names.size() - more))
        .with("others", more > 0)
        .with("more", more);
  }
}
