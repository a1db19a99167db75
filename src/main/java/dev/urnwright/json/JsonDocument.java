package dev.urnwright.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.Writer;

/** One JSON object with a line end, laid out for people and programs alike. */
final class JsonDocument {
  private static final Separators SEPARATORS =
      Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER);

  private JsonDocument() {}

  /** Writes the fields; doesn't close the writer. */
  static void write(Writer out, JsonFields.Body<JsonFields> body) throws IOException {
    JsonFactory factory =
        JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build();
    try (JsonGenerator json = factory.createGenerator(out)) {
      json.setPrettyPrinter(
          new DefaultPrettyPrinter(SEPARATORS).withObjectIndenter(new DefaultIndenter("  ", "\n")));
      json.writeStartObject();
      body.write(new JsonFields(json));
      json.writeEndObject();
      json.writeRaw('\n');
    }
  }
}
