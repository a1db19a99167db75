package dev.urnwright.input;

import dev.urnwright.problem.Location;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The rows of a table by the headings of its columns. What stands above the headings isn't read,
 * nor is a column whose heading begins with #. A heading is a key with spaces or without.
 */
final class TableRows {
  private static final String NOTE = "#";

  /** Headings stand near the top, or they aren't any. */
  private static final int LAST_ROW = 30;

  private final Fields fields;
  private final Problems problems;
  private final Map<Integer, Typed.Text> keys = new TreeMap<>();
  private final Set<Integer> notes = new HashSet<>();

  private TableRows(Fields fields, Problems problems) {
    this.fields = fields;
    this.problems = problems;
  }

  /** The rows as mappings; none where there are no headings, which is a problem. */
  static List<Typed.Mapping> of(TableCells table, Fields fields, Problems problems) {
    TableRows reader = new TableRows(fields, problems);
    int headings = reader.headings(table);
    if (headings < 0) {
      problems.at(
          table.place(),
          "this table has no headings",
          "expected a first row with " + String.join(", ", fields.names()));
      return List.of();
    }
    reader.take(table.rows().get(headings));
    List<Typed.Mapping> rows = new ArrayList<>();
    Set<Integer> unheaded = new HashSet<>();
    for (SortedMap<Integer, Typed.Text> cells :
        table.rows().subList(headings + 1, table.rows().size())) {
      reader.row(cells, unheaded).ifPresent(rows::add);
    }
    return rows;
  }

  /** The row among the first that has most headings; -1 when none has any. */
  private int headings(TableCells table) {
    int best = -1;
    long most = 0;
    for (int row = 0; row < Math.min(LAST_ROW, table.rows().size()); row++) {
      long known =
          table.rows().get(row).values().stream()
              .filter(cell -> key(cell.value()).isPresent())
              .count();
      if (known > most) {
        most = known;
        best = row;
      }
    }
    return best;
  }

  private Optional<String> key(String heading) {
    String plain = plain(heading);
    return fields.names().stream().filter(name -> plain(name).equals(plain)).findFirst();
  }

  private static String plain(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[\\s_\\p{Z}-]+", "");
  }

  private void take(SortedMap<Integer, Typed.Text> headings) {
    Set<String> taken = new HashSet<>();
    headings.forEach(
        (column, cell) -> {
          if (cell.value().startsWith(NOTE)) {
            notes.add(column);
            return;
          }
          Optional<String> key = key(cell.value());
          if (key.isEmpty()) {
            problems.at(
                cell.location(),
                "unknown heading " + Words.quoted(cell.value()),
                Nearest.among(
                        cell.value(),
                        fields.names(),
                        fields.knownKeys().replace("keys", "headings"))
                    + "; begin it with # if it is a note of your own");
            notes.add(column);
          } else if (!taken.add(key.get())) {
            problems.at(
                cell.location(),
                "a second column is headed " + Words.quoted(cell.value()),
                "expected one");
            notes.add(column);
          } else {
            keys.put(column, new Typed.Text(key.get(), cell.location()));
          }
        });
    for (Field<?> field : fields.fields()) {
      if (field.required() && !taken.contains(field.name())) {
        Location place = headings.values().iterator().next().location();
        problems.at(
            place,
            "this table has no column '" + field.name().replace('_', ' ') + "'",
            "expected one, " + field.help());
      }
    }
  }

  private Optional<Typed.Mapping> row(SortedMap<Integer, Typed.Text> cells, Set<Integer> unheaded) {
    List<Typed.Entry> entries = new ArrayList<>();
    cells.forEach(
        (column, cell) -> {
          Typed.Text key = keys.get(column);
          if (key != null) {
            entries.add(new Typed.Entry(key.value(), cell.location(), cell));
          } else if (!notes.contains(column) && unheaded.add(column)) {
            problems.at(
                cell.location(),
                "this column has no heading",
                "expected one in the first row, or # if it is for notes of your own");
          }
        });
    return entries.isEmpty()
        ? Optional.empty()
        : Optional.of(new Typed.Mapping(entries, entries.get(0).place()));
  }
}
