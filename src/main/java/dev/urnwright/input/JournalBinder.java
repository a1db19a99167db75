package dev.urnwright.input;

import dev.urnwright.event.JournalName;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds what a coffee is called in the journal. */
final class JournalBinder {
  private static final Field<String> COFFEE =
      Field.required(
          "coffee", Words.name("Washed house filter"), "the coffee's name in the journal");
  private static final Field<String> BREWER =
      Field.optional(
          "brewer", Words.name("Batch brewer"), "the kind of brewer whose batches count; any");
  private static final Fields FIELDS = Fields.of("name in the journal", COFFEE, BREWER);

  static final Field<Node> JOURNAL =
      Field.optional(
          "journal", Part.mapping(FIELDS), "what it is called in the journal, to plan by that");

  private final Problems problems;

  JournalBinder(Problems problems) {
    this.problems = problems;
  }

  /** The name in the journal; empty when it is left out, or is a problem. */
  Optional<JournalName> bind(MapReader coffee) {
    return coffee
        .read(JOURNAL)
        .flatMap(node -> MapReader.of(node, FIELDS, problems))
        .flatMap(this::name);
  }

  private Optional<JournalName> name(MapReader map) {
    Optional<String> brewer = map.read(BREWER);
    return map.read(COFFEE).map(coffee -> new JournalName(coffee, brewer, map.valueOf(COFFEE)));
  }
}
