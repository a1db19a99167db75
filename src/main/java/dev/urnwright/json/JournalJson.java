package dev.urnwright.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamReadException;
import dev.urnwright.journal.EntryReader;
import dev.urnwright.journal.EntryRow;
import dev.urnwright.problem.Location;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Journal entries as JSON: an object whose {@code entries} have the names of the CSV's columns. */
public final class JournalJson {
  private JournalJson() {}

  /** Writes the document and a line end; doesn't close. */
  public static void write(List<EntryRow> rows, Writer out) throws IOException {
    JsonDocument.write(
        out,
        fields ->
            fields.array(
                "entries",
                rows,
                row -> {
                  for (Map.Entry<String, String> cell : row.cells().entrySet()) {
                    fields.text(cell.getKey(), cell.getValue());
                  }
                }));
  }

  /**
   * Reads rows into a reader of entries.
   *
   * @param file what to call the file in problems
   */
  public static void read(Reader in, String file, EntryReader entries) throws IOException {
    try (JsonParser json = new JsonFactory().createParser(in)) {
      boolean found = false;
      if (json.nextToken() == JsonToken.START_OBJECT) {
        while (json.nextToken() == JsonToken.FIELD_NAME) {
          boolean ours = json.currentName().equals("entries");
          if (json.nextToken() == JsonToken.START_ARRAY && ours) {
            found = true;
            rows(json, file, entries);
          } else {
            json.skipChildren();
          }
        }
      }
      if (!found) {
        entries.refuse(
            Location.ofFile(file), "has no list of entries", "expected as exported, in JSON");
      }
    } catch (StreamReadException broken) {
      var at = broken.getLocation();
      entries.refuse(
          at == null
              ? Location.ofFile(file)
              : new Location(file, Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr())),
          "is not JSON here",
          "expected as exported");
    }
  }

  private static void rows(JsonParser json, String file, EntryReader entries) throws IOException {
    while (json.nextToken() == JsonToken.START_OBJECT) {
      var at = json.currentTokenLocation();
      Map<String, EntryReader.Cell> cells = new LinkedHashMap<>();
      while (json.nextToken() == JsonToken.FIELD_NAME) {
        String name = json.currentName();
        JsonToken value = json.nextToken();
        if (value.isStructStart()) {
          var list = json.currentTokenLocation();
          entries.refuse(
              new Location(file, list.getLineNr(), list.getColumnNr()),
              "'" + name + "' holds several values",
              "expected one text or number, such as \"1.81 1.80 1.81\"");
          json.skipChildren();
        } else if (value != JsonToken.VALUE_NULL) {
          var place = json.currentTokenLocation();
          cells.put(
              name,
              new EntryReader.Cell(
                  json.getText(), new Location(file, place.getLineNr(), place.getColumnNr())));
        }
      }
      entries.row(new Location(file, at.getLineNr(), at.getColumnNr()), cells);
    }
  }
}
