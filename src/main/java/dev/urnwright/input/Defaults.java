package dev.urnwright.input;

import dev.urnwright.event.Note;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Notes what was filled in because the user left it out, one sentence for each kind. */
final class Defaults {
  private static final int MOST_NAMED = 5;

  private final Map<String, String> sentences = new LinkedHashMap<>();
  private final Map<String, List<String>> whom = new LinkedHashMap<>();

  /** What was given, else the default, noted. */
  <T> T fill(Optional<T> given, T otherwise, String code, Supplier<String> sentence) {
    if (given.isPresent()) {
      return given.get();
    }
    note(code, sentence.get());
    return otherwise;
  }

  /** The same for one of several; the sentence ends with the names of all whom it concerns. */
  <T> T fill(String name, Optional<T> given, T otherwise, String code, Supplier<String> sentence) {
    if (given.isPresent()) {
      return given.get();
    }
    noteOf(name, code, sentence);
    return otherwise;
  }

  void note(String code, String sentence) {
    sentences.put(code, sentence);
  }

  void noteOf(String name, String code, Supplier<String> sentence) {
    sentences.computeIfAbsent(code, first -> sentence.get());
    whom.computeIfAbsent(code, first -> new ArrayList<>()).add(name);
  }

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    sentences.forEach(
        (code, sentence) ->
            notes.add(new Note(code, sentence + names(whom.getOrDefault(code, List.of())))));
    return notes;
  }

  private static String names(List<String> names) {
    if (names.isEmpty()) {
      return "";
    }
    String named = ": " + String.join("; ", names.subList(0, Math.min(MOST_NAMED, names.size())));
    return names.size() <= MOST_NAMED
        ? named
        : named + " and " + (names.size() - MOST_NAMED) + " more";
  }
}
