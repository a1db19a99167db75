package dev.urnwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A table whose first column holds names, wrapped to whatever room is left, and whose other columns
 * hold figures, never cut; a column without any is left out. Where even a narrow first column
 * leaves too little room, each row is written as a list instead.
 */
final class Table {
  private static final String GAP = "  ";
  private static final int LEAST_NAME_COLUMNS = 10;

  /** A name that goes on longer than this is somebody's joke. */
  private static final int MOST_NAME_LINES = 4;

  private final List<String> headings;
  private final List<Row> rows = new ArrayList<>();

  /** The headings: that of the names first. */
  Table(List<String> headings) {
    this.headings = List.copyOf(headings);
  }

  /**
   * One row.
   *
   * @param cells as many as there are headings, the name first
   * @param strong whether it stands out, like a sum
   * @param detail a line in small print beneath; may be empty
   */
  private record Row(List<String> cells, boolean strong, String detail) {}

  void row(List<String> cells, String detail) {
    rows.add(new Row(clean(cells), false, detail));
  }

  void sum(List<String> cells) {
    rows.add(new Row(clean(cells), true, ""));
  }

  void print(Screen screen) {
    int[] widths = IntStream.range(0, headings.size()).map(this::natural).toArray();
    int room = screen.columns() - Screen.INDENT.length();
    int figures =
        IntStream.of(widths).skip(1).filter(width -> width > 0).map(w -> w + GAP.length()).sum();
    if (room - figures < Math.min(widths[0], LEAST_NAME_COLUMNS)) {
      rows.forEach(row -> printAsList(row, screen));
      return;
    }
    widths[0] = Math.min(widths[0], room - figures);
    screen.line(screen.palette().quiet().apply(line(headings.get(0), headings, widths)));
    rows.forEach(row -> printInColumns(row, widths, screen));
  }

  /** The columns that a column takes with all its cells whole; none when they are all empty. */
  private int natural(int column) {
    int widest = 0;
    for (Row row : rows) {
      widest = Math.max(widest, ScreenText.width(row.cells().get(column)));
    }
    return widest == 0 ? 0 : Math.max(widest, ScreenText.width(headings.get(column)));
  }

  private static void printInColumns(Row row, int[] widths, Screen screen) {
    List<String> name = name(row, widths[0]);
    String first = line(name.get(0), row.cells(), widths);
    screen.line(row.strong() ? screen.palette().figure().apply(first) : first);
    name.stream().skip(1).forEach(rest -> screen.line(Screen.INDENT + rest));
    printDetail(row, screen);
  }

  private void printAsList(Row row, Screen screen) {
    name(row, screen.columns() - Screen.INDENT.length())
        .forEach(line -> screen.line(Screen.INDENT + line));
    for (int i = 1; i < headings.size(); i++) {
      if (!row.cells().get(i).isEmpty()) {
        screen.line(Screen.INDENT + GAP + headings.get(i) + ": " + row.cells().get(i));
      }
    }
    printDetail(row, screen);
  }

  private static void printDetail(Row row, Screen screen) {
    if (!row.detail().isEmpty()) {
      Paragraph.hang(Screen.INDENT + GAP, row.detail(), screen.columns())
          .forEach(line -> screen.line(screen.palette().quiet().apply(line)));
    }
  }

  private static List<String> name(Row row, int columns) {
    List<String> lines = Paragraph.wrap(row.cells().get(0), columns);
    if (lines.size() <= MOST_NAME_LINES) {
      return lines;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, MOST_NAME_LINES - 1));
    kept.add("...");
    return kept;
  }

  private static String line(String name, List<String> cells, int[] widths) {
    StringBuilder line = new StringBuilder(Screen.INDENT).append(ScreenText.left(name, widths[0]));
    for (int i = 1; i < widths.length; i++) {
      if (widths[i] > 0) {
        line.append(GAP).append(ScreenText.right(cells.get(i), widths[i]));
      }
    }
    return line.toString().stripTrailing();
  }

  private static List<String> clean(List<String> cells) {
    return cells.stream().map(ScreenText::clean).toList();
  }
}
