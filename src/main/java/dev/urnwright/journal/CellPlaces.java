package dev.urnwright.journal;

import dev.urnwright.problem.Location;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds where the values of a table stand in its text. Values in quotation marks may hold
 * delimiters and line ends.
 *
 * @param file what to call the file
 * @param text of the table
 * @param delimiter between values
 */
record CellPlaces(String file, String text, char delimiter) {
  /** The places of the values of the line that begins there. */
  List<Location> from(int offset) {
    List<Location> places = new ArrayList<>();
    int start = offset;
    boolean quoted = false;
    for (int i = offset; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == delimiter || c == '\n' || c == '\r')) {
        places.add(place(start));
        start = i + 1;
        if (c != delimiter) {
          return places;
        }
      }
    }
    places.add(place(start));
    return places;
  }

  private Location place(int offset) {
    String before = text.substring(0, offset);
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    return new Location(file, line, offset - before.lastIndexOf('\n'));
  }
}
