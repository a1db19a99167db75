package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.event.Note;
import dev.urnwright.input.EventReader;
import dev.urnwright.problem.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Events as a user writes them, and what their plans say.
 *
 * @param folder for the file
 */
record Written(Path folder) {
  Event event(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("event.yaml"), text);
    return value(new EventReader().read(file));
  }

  Plan plan(String text) throws IOException {
    return value(new Planner().plan(event(text)));
  }

  /** Cautions and notes of that code, in English, with ordinary spaces. */
  List<String> said(String code, String text) throws IOException {
    return said(code, plan(text));
  }

  static List<String> said(String code, Plan plan) {
    return Stream.concat(plan.cautions().stream(), plan.notes().stream())
        .filter(note -> note.code().equals(code))
        .map(Note::text)
        .map(words -> words.replace('\u00a0', ' '))
        .toList();
  }

  private static <T> T value(Checked<T> checked) {
    return checked.value().orElseThrow(() -> new AssertionError(checked.problems().toString()));
  }
}
