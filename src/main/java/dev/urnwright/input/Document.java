package dev.urnwright.input;

import java.util.Map;

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

  private static final Map<String, String> COMMANDS =
      Map.of(
          "event", "an event: 'urnwright plan' plans it",
          "round", "a round of an office coffee service: 'urnwright round' plans it",
          "scale", "a brew to be scaled: 'urnwright scale' does that");

  /**
   * Complains of a file of another kind, instead of each of its keys.
   *
   * @param own the key that names what is read
   * @return whether it is of another kind
   */
  static boolean isAnother(Typed typed, String own, Problems problems) {
    if (!(typed instanceof Typed.Mapping file) || file.at(own).isPresent()) {
      return false;
    }
    for (Typed.Entry entry : file.entries()) {
      String kind = COMMANDS.get(entry.key());
      if (kind != null) {
        problems.at(
            entry.place(), "this file is " + kind, "expected one with the key '" + own + "'");
        return true;
      }
    }
    return false;
  }
}
