package dev.urnwright.problem;

import java.util.Optional;

/**
 * A place in a file: {@code file:line:column} in a text, {@code file!sheet!B7} in a workbook, or
 * the file alone.
 *
 * @param file the file's name as the user gave it
 * @param sheet of a workbook; empty in a text
 * @param line or row, counted from 1; 0 where only the file or the sheet is known
 * @param column counted from 1; 0 where only the file or the sheet is known
 */
public record Location(String file, Optional<Sheet> sheet, int line, int column)
    implements Comparable<Location> {
  private static final int LETTERS = 26;

  /** A place in a text. */
  public Location(String file, int line, int column) {
    this(file, Optional.empty(), line, column);
  }

  /** A file as a whole. */
  public static Location ofFile(String file) {
    return new Location(file, 0, 0);
  }

  /** A cell of a workbook, row and column counted from 1; 0 for its sheet as a whole. */
  public static Location ofCell(String file, Sheet sheet, int row, int column) {
    return new Location(file, Optional.of(sheet), row, column);
  }

  /** Where this is, for another problem of the same file: {@code on line 7}, {@code in B7}. */
  public String inWords() {
    return sheet.isPresent() ? "in " + cell() : "on line " + line;
  }

  @Override
  public int compareTo(Location other) {
    if (!file.equals(other.file)) {
      return file.compareTo(other.file);
    }
    if (!sheet.equals(other.sheet)) {
      return Integer.compare(
          sheet.map(Sheet::number).orElse(0), other.sheet.map(Sheet::number).orElse(0));
    }
    return line != other.line
        ? Integer.compare(line, other.line)
        : Integer.compare(column, other.column);
  }

  @Override
  public String toString() {
    if (sheet.isPresent()) {
      return file + "!" + sheet.get().name() + (line == 0 ? "" : "!" + cell());
    }
    return line == 0 ? file : file + ":" + line + ":" + column;
  }

  private String cell() {
    StringBuilder letters = new StringBuilder();
    for (int rest = column; rest > 0; rest = (rest - 1) / LETTERS) {
      letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
    }
    return letters.toString() + line;
  }

  /**
   * A sheet of a workbook.
   *
   * @param number its place among the sheets, counted from 1
   * @param name of it
   */
  public record Sheet(int number, String name) {}
}
