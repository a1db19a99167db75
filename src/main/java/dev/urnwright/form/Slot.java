package dev.urnwright.form;

import dev.urnwright.input.Shape;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A place in the form where one value is typed.
 *
 * @param path its keys, from its sheet's part of the event down; empty for the name of a row
 * @param heading how the form calls it
 * @param required whether it must be filled in wherever its row is
 * @param help what it is for
 * @param shape what is typed there
 */
record Slot(List<String> path, String heading, boolean required, String help, Shape shape) {
  static Slot of(List<String> path, boolean required, String help, Shape shape) {
    return new Slot(path, heading(path), required, help, shape);
  }

  /** The name under which a row stands in its mapping. */
  static Slot name(String heading, String help, Shape shape) {
    return new Slot(List.of(), heading, false, help, shape);
  }

  /** Keys as a heading: {@code reference dose}. */
  static String heading(List<String> path) {
    return String.join(" ", path).replace('_', ' ');
  }

  /** A heading as it is compared: case, underscores, stars and spaces don't matter. */
  static String plain(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[*_\\s\\u00a0]+", " ").strip();
  }

  boolean isName() {
    return path.isEmpty();
  }

  /** The single value that may stand here, alone or as one of several. */
  Shape.Value value() {
    if (shape instanceof Shape.Value value) {
      return value;
    }
    if (shape instanceof Shape.Shares shares) {
      return shares.name();
    }
    return shape instanceof Shape.Parts parts ? parts.word() : NOTHING;
  }

  String example() {
    if (shape instanceof Shape.Rows rows) {
      StringBuilder example = new StringBuilder();
      rows.table()
          .keys()
          .forEach(
              key ->
                  example
                      .append(example.length() == 0 ? "" : ", ")
                      .append(heading(List.of(key.name())))
                      .append(' ')
                      .append(key.shape() instanceof Shape.Value value ? value.example() : "…"));
      return example.toString();
    }
    return shape instanceof Shape.Shares shares
        ? shares.name().expected().replaceAll(".*\\{|\\}.*", "").replace(":", "")
        : value().example();
  }

  private static final Shape.Value NOTHING =
      new Shape.Value("", Optional.empty(), true, List.of(), Optional.empty());
}
