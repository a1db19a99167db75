package dev.urnwright.input;

import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * What is seen of a file before it is bound: whether it is of the kind that is wanted, and whether
 * there are words in the language of its sheets.
 *
 * @param languages those that have words, as ISO codes; empty where no sheets are made
 */
record FirstLook(Optional<Set<String>> languages) {
  static final FirstLook WHATEVER_LANGUAGE = new FirstLook(Optional.empty());

  static FirstLook of(Set<String> languages) {
    return new FirstLook(Optional.of(Set.copyOf(languages)));
  }

  /**
   * What stands in a file.
   *
   * @param own the key that names what is wanted
   * @return empty when it is a file of another kind
   */
  Optional<Typed> at(Node root, String own, Problems problems) {
    Typed typed = Nodes.typed(root, problems);
    if (Document.isAnother(typed, own, problems)) {
      return Optional.empty();
    }
    language(typed, problems);
    return Optional.of(typed);
  }

  /** Complains of a language that has no words. */
  void language(Typed typed, Problems problems) {
    languages.ifPresent(known -> LanguageBinder.requireWords(typed, known, problems));
  }
}
