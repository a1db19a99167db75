package dev.urnwright.sheet;

import dev.urnwright.event.Note;
import dev.urnwright.plan.Plan;
import java.util.List;

/**
 * What to mind and what was assumed, in words.
 *
 * @param cautions what can hurt someone or disappoint them
 * @param notes assumptions made and defaults used
 */
record Remarks(List<String> cautions, List<String> notes) {
  static Remarks of(Plan plan) {
    return new Remarks(
        plan.cautions().stream().map(Note::text).toList(),
        plan.notes().stream().map(Note::text).toList());
  }
}
