package dev.urnwright.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The JSON Schemas of the program's documents, in the dialect of 2020-12. */
public enum DocumentSchema {
  /** Of the plan. */
  PLAN("plan"),
  /** Of recipes brought to another size. */
  SCALE("scale"),
  /** Of a day of a round, or of a week's purchases. */
  ROUND("round"),
  /** Of what to do now, by what was measured. */
  ADJUSTMENT("adjustment"),
  /** Of taste ladders. */
  LADDER("ladder");

  private final String name;

  DocumentSchema(String name) {
    this.name = name;
  }

  /**
   * The schema as it is shipped with the program.
   *
   * @throws IOException if it can't be read
   */
  public String text() throws IOException {
    String resource = "/templates/" + name + ".schema.json";
    try (InputStream in = DocumentSchema.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IOException("the program was packed without " + resource);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
