package dev.urnwright.input;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands under a key, for those who write forms to fill in and schemas to check with. */
public sealed interface Shape {
  /**
   * A single value.
   *
   * @param expected what is expected, in words, with an example
   * @param pattern a regular expression, the same in Java and in JSON Schema, that every text which
   *     can be read matches; empty when any text does
   * @param number whether a plain number may stand there
   * @param words what there is to choose from; empty unless it is a choice
   * @param namesOf the key of the event whose names may stand there
   */
  record Value(
      String expected,
      Optional<String> pattern,
      boolean number,
      List<String> words,
      Optional<String> namesOf)
      implements Shape {
    private static final Pattern SUCH_AS = Pattern.compile("such as (.+?)(?:, | or |$)");

    /** Copies the list. */
    public Value {
      words = List.copyOf(words);
    }

    static Value of(String pattern, String expected) {
      return new Value(expected, Optional.of(pattern), false, List.of(), Optional.empty());
    }

    static Value number(String pattern, String expected) {
      return new Value(expected, Optional.of(pattern), true, List.of(), Optional.empty());
    }

    /** Any text, which may look like a number. */
    static Value text(String expected) {
      return new Value(expected, Optional.empty(), true, List.of(), Optional.empty());
    }

    static Value choice(List<String> words, String expected) {
      return new Value(expected, Optional.empty(), false, words, Optional.empty());
    }

    /** The same, where the names under a key of the event may stand. */
    Value naming(String key) {
      return new Value(expected, pattern, number, words, Optional.of(key));
    }

    /** A value that would be right, except that its name may not exist. */
    public String example() {
      Matcher example = SUCH_AS.matcher(expected);
      return !words.isEmpty() ? words.get(0) : example.find() ? example.group(1) : "";
    }
  }

  /**
   * A mapping.
   *
   * @param table of its keys
   */
  record Mapping(Table table) implements Shape {}

  /**
   * A list of mappings.
   *
   * @param table of the keys of each
   */
  record Rows(Table table) implements Shape {}

  /**
   * A mapping from names of the user's choice to mappings.
   *
   * @param table of the keys of each
   */
  record NamedRows(Table table) implements Shape {}

  /**
   * A mapping from names of the user's choice to values.
   *
   * @param value each of them
   */
  record NamedValues(Value value) implements Shape {}

  /**
   * A name, or a mapping from several to the share of each.
   *
   * @param name the one
   * @param share of each of several
   */
  record Shares(Value name, Value share) implements Shape {}

  /**
   * A word, or a list.
   *
   * @param word the one
   * @param part each entry of the list
   */
  record Parts(Value word, Value part) implements Shape {}
}
