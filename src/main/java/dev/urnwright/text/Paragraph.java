package dev.urnwright.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Text wrapped to the columns of a terminal. Lines break at blanks; a no-break space holds number
 * and unit together, and only a word wider than the line is broken within.
 */
public final class Paragraph {
  private final int columns;
  private final List<String> lines = new ArrayList<>();
  private final StringBuilder line = new StringBuilder();
  private int used;

  private Paragraph(int columns) {
    this.columns = columns;
  }

  /**
   * The text in lines of at most so many columns, control characters left out. There is always one
   * line at least.
   *
   * @param columns 2 or more, since one letter may take two
   * @throws IllegalArgumentException if there are fewer
   */
  public static List<String> wrap(String text, int columns) {
    if (columns < 2) {
      throw new IllegalArgumentException("a line takes 2 columns or more: " + columns);
    }
    Paragraph paragraph = new Paragraph(columns);
    for (String word : ScreenText.clean(text).split(" +")) {
      paragraph.add(word);
    }
    paragraph.endLine();
    return List.copyOf(paragraph.lines);
  }

  /**
   * Wrapped like {@link #wrap}, with something before the first line and as many blanks before all
   * others.
   */
  public static List<String> hang(String before, String text, int columns) {
    int indent = ScreenText.width(before);
    List<String> wrapped = wrap(text, columns - indent);
    List<String> hung = new ArrayList<>();
    for (String each : wrapped) {
      hung.add((hung.isEmpty() ? before : " ".repeat(indent)) + each);
    }
    return hung;
  }

  private void add(String word) {
    int wide = ScreenText.width(word);
    if (used > 0 && used + 1 + wide > columns) {
      endLine();
    }
    if (used > 0) {
      append(' ');
    }
    if (used + wide <= columns) {
      line.append(word);
      used += wide;
    } else {
      word.codePoints().forEach(this::append);
    }
  }

  private void append(int point) {
    int wide = ScreenText.width(point);
    if (used + wide > columns) {
      endLine();
    }
    line.appendCodePoint(point);
    used += wide;
  }

  private void endLine() {
    if (line.length() > 0 || lines.isEmpty()) {
      lines.add(line.toString());
    }
    line.setLength(0);
    used = 0;
  }
}
