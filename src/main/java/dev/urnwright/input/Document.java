package dev.urnwright.input;

/**
 * A kind of file that we read.
 *
 * @param file what is expected of a file, in words
 * @param parts what is expected in it, in words
 * @param fields its keys
 */
record Document(String file, String parts, Fields fields) {
  static final Document EVENT =
      new Document(
          "expected an event file in YAML",
          "expected an event, a coffee and groups",
          EventBinder.FIELDS);

  static final Document SCALE =
      new Document(
          "expected a file for 'scale' in YAML",
          "expected a reference and a brewer",
          ScaleBinder.FIELDS);

  static final Document ROUND =
      new Document(
          "expected a file for 'round' in YAML",
          "expected a round, a coffee, carafes, legs and sites",
          RoundBinder.FIELDS);

  static final Document SITES =
      new Document("expected a table of sites in CSV", "expected rows of sites", DropBinder.FIELDS);

  static final Document RETURNS =
      new Document(
          "expected a table of returns in CSV", "expected rows of returns", ReturnBinder.FIELDS);
}
