package dev.urnwright.journal;

import dev.urnwright.problem.Location;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
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
  private static final String BYTE_ORDER_MARK = "\uFEFF";
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
   * @param file what to call the file in problems
   */
  public static void read(Reader in, String file, EntryReader entries) throws IOException {
    String text = text(in);
    char delimiter = delimiter(text);
    CellPlaces places = new CellPlaces(file, text, delimiter);
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(delimiter)
            .setHeader()
            .setSkipHeaderRecord(true)
            .setTrim(true)
            .build();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      List<String> names = parser.getHeaderNames();
      each(names, places.from(0), entries::column);
      for (CSVRecord record : parser) {
        List<Location> at = places.from((int) record.getCharacterPosition());
        Location where = at.get(0);
        if (!record.isConsistent()) {
          entries.refuse(
              where,
              "this line has " + record.size() + " values",
              "expected as many as names in the first line");
          continue;
        }
        Map<String, EntryReader.Cell> cells = new LinkedHashMap<>();
        each(
            names,
            at,
            (place, name) -> {
              String value = record.get(name);
              if (!value.isEmpty() && EntryRow.COLUMNS.contains(name)) {
                cells.put(name, new EntryReader.Cell(unguarded(value), place));
              }
            });
        entries.row(where, cells);
      }
    } catch (IllegalArgumentException | UncheckedIOException broken) {
      entries.refuse(
          Location.ofFile(file), "is not a table of values", "expected as exported, in CSV");
    }
  }

  private static void each(
      List<String> names, List<Location> places, BiConsumer<Location, String> what) {
    for (int i = 0; i < names.size() && i < places.size(); i++) {
      what.accept(places.get(i), names.get(i));
    }
  }

  /** All of it, without a byte order mark. */
  private static String text(Reader in) throws IOException {
    StringWriter text = new StringWriter();
    in.transferTo(text);
    String all = text.toString();
    return all.startsWith(BYTE_ORDER_MARK) ? all.substring(1) : all;
  }

  /** What stands after the first name. */
  private static char delimiter(String text) {
    int at = 0;
    while (at < text.length() && ",;\n".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    return at < text.length() && text.charAt(at) == ';' ? ';' : ',';
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
