package dev.urnwright.sheet;

import dev.urnwright.event.Note;
import dev.urnwright.wording.Words;
import java.util.List;

/**
 * What to mind and what was assumed, in words.
 *
 * @param cautions what can hurt someone or disappoint them
 * @param notes assumptions made and defaults used
 */
record Remarks(List<String> cautions, List<String> notes) {
  static Remarks of(List<Note> cautions, List<Note> notes, Words words) {
    return new Remarks(in(words, cautions), in(words, notes));
  }

  private static List<String> in(Words words, List<Note> notes) {
    return notes.stream().map(Note::saying).map(words::text).toList();
  }
}
