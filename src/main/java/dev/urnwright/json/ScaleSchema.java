package dev.urnwright.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The JSON Schema of what {@code scale} writes. */
public final class ScaleSchema {
  private static final String RESOURCE = "/templates/scale.schema.json";

  private ScaleSchema() {}

  /**
   * The schema, in the dialect of 2020-12, as it is shipped with the program.
   *
   * @throws IOException if it can't be read
   */
  public static String text() throws IOException {
    try (InputStream in = ScaleSchema.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IOException("the program was packed without " + RESOURCE);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
