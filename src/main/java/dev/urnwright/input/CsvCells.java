package dev.urnwright.input;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a table of comma-separated values (RFC 4180), as spreadsheets save it too: with semicolons
 * or tabs between values, with a byte order mark before the first. Places are a line and the number
 * of the value in it.
 */
final class CsvCells {
  private static final String DELIMITERS = ";\t,";
  private static final String FORMULA = "=+-@";
  private static final String APOSTROPHE = "'";
  private static final int MOST_ROWS = 200_000;

  private CsvCells() {}

  static Optional<TableCells> read(Path file, Problems problems) {
    return SourceFile.text(file, problems).flatMap(text -> cells(text, problems));
  }

  /** The cells of a text. */
  static Optional<TableCells> cells(String text, Problems problems) {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(delimiter(text)).setTrim(true).build();
    List<SortedMap<Integer, Typed.Text>> rows = new ArrayList<>();
    int line = 1;
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      for (CSVRecord record : parser) {
        SortedMap<Integer, Typed.Text> cells = new TreeMap<>();
        for (int i = 0; i < record.size(); i++) {
          if (!record.get(i).isBlank()) {
            cells.put(i + 1, new Typed.Text(bare(record.get(i).strip()), problems.at(line, i + 1)));
          }
        }
        line = (int) parser.getCurrentLineNumber() + 1;
        if (!cells.isEmpty()) {
          rows.add(cells);
        }
        if (rows.size() > MOST_ROWS) {
          problems.at(
              problems.at(line, 1),
              "this table has more rows than any round needs",
              "expected " + MOST_ROWS + " at most");
          return Optional.empty();
        }
      }
    } catch (IOException | IllegalArgumentException | UncheckedIOException broken) {
      problems.at(
          problems.at(line, 1),
          "from here on this is not a table of values",
          "expected values with commas or semicolons between them, and quotation marks in pairs");
      return Optional.empty();
    }
    return Optional.of(new TableCells(problems.wholeFile(), rows));
  }

  /** A text that a spreadsheet would take for a formula gets an apostrophe before it. */
  static String guarded(String text) {
    return isFormula(text) ? APOSTROPHE + text : text;
  }

  private static String bare(String text) {
    return text.startsWith(APOSTROPHE) && isFormula(text.substring(1)) ? text.substring(1) : text;
  }

  private static boolean isFormula(String text) {
    return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0;
  }

  /** What stands most often between the names of the first line. */
  private static char delimiter(String text) {
    String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    char best = ',';
    long most = 0;
    for (char delimiter : DELIMITERS.toCharArray()) {
      long count = first.chars().filter(c -> c == delimiter).count();
      if (count > most) {
        most = count;
        best = delimiter;
      }
    }
    return best;
  }
}
