package dev.urnwright.problem;

/**
 * A place in a file: {@code file:line:column}, or the file alone.
 *
 * @param file the file's name as the user gave it
 * @param line counted from 1; 0 where only the file is known
 * @param column counted from 1; 0 where only the file is known
 */
public record Location(String file, int line, int column) implements Comparable<Location> {
  /** A file as a whole. */
  public static Location ofFile(String file) {
    return new Location(file, 0, 0);
  }

  @Override
  public int compareTo(Location other) {
    return line != other.line
        ? Integer.compare(line, other.line)
        : Integer.compare(column, other.column);
  }

  @Override
  public String toString() {
    return line == 0 ? file : file + ":" + line + ":" + column;
  }
}
