package dev.urnwright.xlsx;

import dev.urnwright.event.Note;
import dev.urnwright.xlsx.Styles.Look;
import java.util.List;

/** Cautions, assumptions and defaults, in the planner's words. */
final class NotesSheet {
  private NotesSheet() {}

  static void write(Book book) {
    Page page =
        Page.of(book, Layout.NOTES, false)
            .widths(List.of(100))
            .title(
                "Notes",
                "Written for the plan as it was made; they do not follow when inputs change.");
    int row = list(page, 3, "Cautions", book.plan().cautions());
    list(page, row + 1, "Assumptions and defaults", book.plan().notes());
    page.finish();
  }

  private static int list(Page page, int first, String heading, List<Note> notes) {
    int row = first;
    page.put(row++, 0, heading, Look.HEADING);
    for (Note note : notes) {
      page.put(row++, 0, note.text(), Look.TEXT);
    }
    return row;
  }
}
