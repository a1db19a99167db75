package dev.urnwright.input;

import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.UnreadableException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds the named strengths of an event, and then the strength of each group. */
final class StrengthBinder {
  private static final String EXPECTED_NAMES =
      "expected lines of a name and a percentage such as medium: 1.30 %";
  private static final Scalar<Strength> PERCENTAGE = Amounts.strength("1.30 %");
  private static final Pattern NUMERIC =
      Pattern.compile("[-+.,\\d½⅓⅔¼¾⅛⅜⅝⅞].*|.*%.*", Pattern.DOTALL);

  static final Field<Node> STRENGTHS =
      Field.optional(
          "strengths",
          Part.any(EXPECTED_NAMES, new Shape.NamedValues(PERCENTAGE.shape())),
          "names that groups may use");
  static final Field<Located<String>> STRENGTH =
      Field.required(
          "strength",
          Located.of(
              new Scalar<>(
                      "expected a percentage such as 1.30 %, or the name of a strength",
                      text -> text)
                  .naming("strengths")),
          "how strong its coffee is: a percentage, or one of the strengths");

  private final Problems problems;
  private final Map<String, Strength> named = new HashMap<>();
  private Set<String> names = Set.of();

  StrengthBinder(Problems problems) {
    this.problems = problems;
  }

  /** Takes up the named strengths. */
  void bindNames(MapReader event) {
    Optional<Node> node = event.read(STRENGTHS);
    if (node.isEmpty()) {
      return;
    }
    if (!(node.get() instanceof MappingNode mapping)) {
      problems.at(node.get(), "here are no named strengths", EXPECTED_NAMES);
      return;
    }
    Map<String, Entries.Entry> entries = new LinkedHashMap<>(Entries.of(mapping, problems));
    Names distinct = new Names("strength", problems);
    entries.forEach(
        (name, entry) -> {
          distinct.add(name, entry.place());
          checkName(name, entry);
          PERCENTAGE.read(entry.value(), problems).ifPresent(strength -> named.put(name, strength));
        });
    names = entries.keySet();
  }

  private void checkName(String name, Entries.Entry entry) {
    String expected = "expected a word such as medium";
    try {
      Words.parseName(name, expected);
    } catch (UnreadableException unreadable) {
      problems.at(entry.place(), unreadable);
      return;
    }
    if (NUMERIC.matcher(name).matches()) {
      problems.at(entry.place(), Words.quoted(name) + " would be read as a percentage", expected);
    }
  }

  /** The strength of a group; empty when it is a problem. */
  Optional<Strength> bind(MapReader group) {
    return group.read(STRENGTH).flatMap(wish -> resolve(wish, problems));
  }

  /** The names that may be used, those with problems too. */
  Set<String> names() {
    return names;
  }

  /** What a percentage or a name means; empty when it has been added to these problems. */
  Optional<Strength> resolve(Located<String> wish, Problems problems) {
    if (NUMERIC.matcher(wish.value()).matches()) {
      try {
        return Optional.of(PERCENTAGE.parse().apply(wish.value()));
      } catch (UnreadableException unreadable) {
        problems.at(wish.location(), unreadable);
        return Optional.empty();
      }
    }
    return References.check(
            wish,
            "strength",
            names,
            "list it under strengths, or write a percentage such as 1.30 %",
            problems)
        ? Optional.ofNullable(named.get(wish.value()))
        : Optional.empty();
  }
}
