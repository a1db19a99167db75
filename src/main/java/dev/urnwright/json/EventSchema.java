package dev.urnwright.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import dev.urnwright.input.Shape;
import dev.urnwright.input.Table;
import java.io.IOException;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The JSON Schema of an event file, made of the tables that the reader reads by. Editors complete
 * keys and words with it, show what each is for, and mark what can't be read. It is never stricter
 * than the reader; what must agree with other parts of the file is left to the reader.
 *
 * <p>The dialect is draft-07, which all editors that know schemas for YAML understand.
 */
public final class EventSchema {
  /** What the shipped file is called. */
  public static final String FILE = "event.schema.json";

  private final JsonGenerator json;
  private final Map<Shape.Value, String> values = new LinkedHashMap<>();

  private EventSchema(JsonGenerator json) {
    this.json = json;
  }

  /** The schema. */
  public static String text() throws IOException {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(
          new DefaultPrettyPrinter(
                  Separators.createDefaultInstance()
                      .withObjectFieldValueSpacing(Separators.Spacing.AFTER))
              .withObjectIndenter(new DefaultIndenter("  ", "\n"))
              .withArrayIndenter(new DefaultIndenter("  ", "\n")));
      new EventSchema(json).write();
    }
    return out + "\n";
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeStringField("$schema", "http://json-schema.org/draft-07/schema#");
    json.writeStringField("title", "An event for Urnwright");
    mapping(Table.ofEvent());
    json.writeArrayFieldStart("oneOf");
    for (String one : List.of("coffee", "coffees")) {
      json.writeStartObject();
      strings("required", List.of(one));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeObjectFieldStart("definitions");
    for (Map.Entry<Shape.Value, String> value : values.entrySet()) {
      json.writeObjectFieldStart(value.getValue());
      constraints(value.getKey());
      json.writeEndObject();
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void mapping(Table table) throws IOException {
    json.writeStringField("type", "object");
    json.writeBooleanField("additionalProperties", false);
    List<String> required =
        table.keys().stream().filter(Table.Key::required).map(Table.Key::name).toList();
    if (!required.isEmpty()) {
      strings("required", required);
    }
    json.writeObjectFieldStart("properties");
    for (Table.Key key : table.keys()) {
      json.writeObjectFieldStart(key.name());
      json.writeStringField("description", key.help());
      shape(key.shape());
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private void shape(Shape shape) throws IOException {
    if (shape instanceof Shape.Value value) {
      value(value);
    } else if (shape instanceof Shape.Mapping mapping) {
      mapping(mapping.table());
    } else if (shape instanceof Shape.Rows rows) {
      list(() -> mapping(rows.table()));
    } else if (shape instanceof Shape.NamedRows rows) {
      named(() -> mapping(rows.table()));
    } else if (shape instanceof Shape.NamedValues named) {
      named(() -> value(named.value()));
    } else if (shape instanceof Shape.Shares shares) {
      either(() -> value(shares.name()), () -> named(() -> value(shares.share())));
    } else if (shape instanceof Shape.Parts parts) {
      either(() -> value(parts.word()), () -> list(() -> value(parts.part())));
    } else {
      throw new IllegalArgumentException("a shape without a schema: " + shape);
    }
  }

  private void list(Body each) throws IOException {
    json.writeStringField("type", "array");
    json.writeNumberField("minItems", 1);
    json.writeObjectFieldStart("items");
    each.write();
    json.writeEndObject();
  }

  private void named(Body each) throws IOException {
    json.writeStringField("type", "object");
    json.writeNumberField("minProperties", 1);
    json.writeObjectFieldStart("additionalProperties");
    each.write();
    json.writeEndObject();
  }

  private void either(Body one, Body other) throws IOException {
    json.writeArrayFieldStart("anyOf");
    for (Body body : List.of(one, other)) {
      json.writeStartObject();
      body.write();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** A reference, so that each pattern stands in the file once. */
  private void value(Shape.Value value) throws IOException {
    if (!value.example().isEmpty() && value.words().isEmpty()) {
      strings("examples", List.of(value.example()));
    }
    Shape.Value plain =
        new Shape.Value(
            value.pattern().isPresent() ? "" : value.expected(),
            value.pattern(),
            value.number(),
            value.words(),
            Optional.empty());
    String name = values.computeIfAbsent(plain, made -> "value" + (values.size() + 1));
    json.writeArrayFieldStart("allOf");
    json.writeStartObject();
    json.writeStringField("$ref", "#/definitions/" + name);
    json.writeEndObject();
    json.writeEndArray();
    if (value.pattern().isPresent()) {
      json.writeStringField("patternErrorMessage", value.expected());
    }
  }

  private void constraints(Shape.Value value) throws IOException {
    if (value.words().isEmpty()) {
      types(value);
      if (value.pattern().isPresent()) {
        json.writeStringField("pattern", value.pattern().get());
      }
      return;
    }
    json.writeStringField("description", value.expected());
    json.writeArrayFieldStart("anyOf");
    json.writeStartObject();
    strings("enum", value.words());
    json.writeEndObject();
    json.writeStartObject();
    json.writeStringField("type", "string");
    json.writeStringField("pattern", anyCase(value.words()));
    json.writeEndObject();
    if (value.words().contains("true")) {
      json.writeStartObject();
      json.writeStringField("type", "boolean");
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void types(Shape.Value value) throws IOException {
    if (!value.number()) {
      json.writeStringField("type", "string");
    } else {
      // A name may look like a number, or like yes and no, which YAML takes for something else.
      strings(
          "type",
          value.pattern().isPresent()
              ? List.of("number", "string")
              : List.of("string", "number", "boolean"));
    }
  }

  private static String anyCase(List<String> words) {
    StringBuilder pattern = new StringBuilder("^\\s*(?:");
    String mark = "";
    for (String word : words) {
      pattern.append(mark);
      mark = "|";
      for (char c : word.toCharArray()) {
        String letter = String.valueOf(c);
        String small = letter.toLowerCase(Locale.ROOT);
        String large = letter.toUpperCase(Locale.ROOT);
        pattern.append(small.equals(large) ? letter : "[" + small + large + "]");
      }
    }
    return pattern + ")\\s*$";
  }

  private void strings(String name, List<String> values) throws IOException {
    json.writeArrayFieldStart(name);
    for (String value : values) {
      json.writeString(value);
    }
    json.writeEndArray();
  }

  /** What stands inside of something. */
  @FunctionalInterface
  private interface Body {
    void write() throws IOException;
  }
}
