package dev.urnwright.journal;

import dev.urnwright.problem.Location;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * Entries as comma-separated values (RFC 4180). A text that a spreadsheet would take for a formula
 * gets an apostrophe before it on the way out, which is taken off on the way in.
 */
public final class JournalCsv {
  private static final int BYTE_ORDER_MARK = '\uFEFF';
  private static final int LONGEST_NAME = 1000;
  private static final String FORMULA = "=+-@\t\r";
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader(EntryRow.COLUMNS.toArray(String[]::new))
          .setRecordSeparator("\r\n")
          .build();

  private JournalCsv() {}

  /** Writes a line of names and a line for each row; doesn't close. */
  public static void write(List<EntryRow> rows, Appendable out) throws IOException {
    CSVPrinter printer = new CSVPrinter(out, FORMAT);
    for (EntryRow row : rows) {
      printer.printRecord(
          EntryRow.COLUMNS.stream().map(name -> guarded(row.cells().get(name))).toList());
    }
    printer.flush();
  }

  /**
   * Reads rows into a reader of entries, as spreadsheets save them too: with semicolons between
   * values, or with a byte order mark before the first.
   *
   * @param in which supports marks
   * @param file what to call the file in problems
   */
  public static void read(Reader in, String file, EntryReader entries) throws IOException {
    skipMark(in);
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(delimiter(in))
            .setHeader()
            .setSkipHeaderRecord(true)
            .setTrim(true)
            .build();
    try (CSVParser parser = CSVParser.parse(in, format)) {
      entries.columns(new Location(file, 1, 1), parser.getHeaderNames());
      for (CSVRecord record : parser) {
        Location where = new Location(file, (int) parser.getCurrentLineNumber(), 1);
        if (!record.isConsistent()) {
          entries.refuse(
              where,
              "this line has " + record.size() + " values",
              "expected as many as names in the first line");
          continue;
        }
        Map<String, String> cells = new LinkedHashMap<>();
        record
            .toMap()
            .forEach(
                (name, text) -> {
                  if (!text.isEmpty() && EntryRow.COLUMNS.contains(name)) {
                    cells.put(name, unguarded(text));
                  }
                });
        entries.row(where, cells);
      }
    } catch (IllegalArgumentException | UncheckedIOException broken) {
      entries.refuse(
          Location.ofFile(file), "is not a table of values", "expected as exported, in CSV");
    }
  }

  private static void skipMark(Reader in) throws IOException {
    in.mark(1);
    if (in.read() != BYTE_ORDER_MARK) {
      in.reset();
    }
  }

  /** What stands after the first name; the reader stays where it is. */
  private static char delimiter(Reader in) throws IOException {
    in.mark(LONGEST_NAME);
    int next = in.read();
    for (int i = 1; i < LONGEST_NAME && next >= 0 && ",;\n".indexOf(next) < 0; i++) {
      next = in.read();
    }
    in.reset();
    return next == ';' ? ';' : ',';
  }

  private static String guarded(@Nullable String text) {
    if (text == null) {
      return "";
    }
    String bare = text.replaceFirst("^'+", "");
    boolean formula =
        !bare.isEmpty() && FORMULA.indexOf(bare.charAt(0)) >= 0 && !text.matches("-?[0-9.]+");
    return formula ? "'" + text : text;
  }

  private static String unguarded(String text) {
    String bare = text.replaceFirst("^'+", "");
    return text.startsWith("'") && !bare.isEmpty() && FORMULA.indexOf(bare.charAt(0)) >= 0
        ? text.substring(1)
        : text;
  }
}
