package dev.urnwright.form;

import dev.urnwright.input.EventText;
import dev.urnwright.input.Shape;
import dev.urnwright.input.Table;
import dev.urnwright.input.Typed;
import dev.urnwright.problem.Location;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What stands in one cell. Several values stand there as people would write them: {@code house 85
 * %, decaf 15 %}, or {@code ratio 13, extraction 18.9 %; ratio 17, extraction 19.8 %}. What can't
 * be told that way stands in brackets, as in a text.
 */
final class Inline {
  private static final Pattern ENTRIES = Pattern.compile("\\s*[;\\n]\\s*");
  private static final Pattern PARTS = Pattern.compile("\\s*(?:[;\\n]|,(?=\\s|$))\\s*");
  private static final Pattern BRACKETED = Pattern.compile("(?s)[\\[{\"].*");
  private static final Location NOWHERE = Location.ofFile("");

  private Inline() {}

  /** The words of a cell that reads as what was typed. */
  static String write(Shape shape, Typed typed) {
    String plain = plain(typed);
    if (same(read(shape, plain, NOWHERE), typed)) {
      return plain;
    }
    return EventText.onOneLine(
        typed instanceof Typed.Text text ? new Typed.Listing(List.of(text), NOWHERE) : typed);
  }

  /** What a cell says; what it makes no sense of is left to the reader to refuse. */
  static Typed read(Shape shape, String text, Location place) {
    if (!(shape instanceof Shape.Value) && BRACKETED.matcher(text).matches()) {
      Optional<Typed> bracketed = EventText.parse(text, place);
      if (bracketed.isPresent()) {
        return bracketed.get();
      }
    }
    if (shape instanceof Shape.Rows rows) {
      return rows(rows.table(), text, place);
    }
    if (shape instanceof Shape.Shares || shape instanceof Shape.NamedValues) {
      return named(text, place).orElseGet(() -> new Typed.Text(text, place));
    }
    return shape instanceof Shape.Parts parts
        ? parts(parts, text, place)
        : new Typed.Text(text, place);
  }

  private static Typed parts(Shape.Parts shape, String text, Location place) {
    List<Typed> parts = new ArrayList<>();
    for (String part : PARTS.split(text)) {
      parts.add(new Typed.Text(part, place));
    }
    boolean one = parts.size() == 1;
    boolean list =
        !one
            || (!shape.word().words().isEmpty()
                && shape.part().pattern().filter(known -> matches(known, text)).isPresent());
    return list ? new Typed.Listing(parts, place) : new Typed.Text(text, place);
  }

  private static boolean matches(String pattern, String text) {
    return Pattern.compile(pattern).matcher(text).find();
  }

  /** A name and a value, several times; empty when it is a name alone. */
  private static Optional<Typed> named(String text, Location place) {
    List<Typed.Entry> entries = new ArrayList<>();
    for (String part : PARTS.split(text)) {
      String[] pair = part.split("\\s+", 2);
      if (pair.length < 2) {
        return Optional.empty();
      }
      entries.add(new Typed.Entry(pair[0], place, new Typed.Text(pair[1], place)));
    }
    return Optional.of(new Typed.Mapping(entries, place));
  }

  private static Typed rows(Table table, String text, Location place) {
    List<Typed> rows = new ArrayList<>();
    for (String row : ENTRIES.split(text)) {
      List<Typed.Entry> entries = new ArrayList<>();
      for (String pair : PARTS.split(row)) {
        entries.add(entry(table, pair, place));
      }
      rows.add(new Typed.Mapping(entries, place));
    }
    return new Typed.Listing(rows, place);
  }

  private static Typed.Entry entry(Table table, String pair, Location place) {
    String key = pair.split("\\s+", 2)[0];
    int end = key.length();
    for (Table.Key known : table.keys()) {
      String heading = Slot.heading(List.of(known.name()));
      boolean begins = pair.regionMatches(true, 0, heading + " ", 0, heading.length() + 1);
      if (begins && heading.length() >= end) {
        key = known.name();
        end = heading.length();
      }
    }
    return new Typed.Entry(key, place, new Typed.Text(pair.substring(end).strip(), place));
  }

  private static String plain(Typed typed) {
    StringBuilder text = new StringBuilder();
    if (typed instanceof Typed.Listing listing) {
      for (Typed part : listing.parts()) {
        text.append(text.length() == 0 ? "" : part instanceof Typed.Mapping ? "; " : ", ");
        text.append(plain(part));
      }
      return text.toString();
    }
    if (typed instanceof Typed.Mapping mapping) {
      for (Typed.Entry entry : mapping.entries()) {
        text.append(text.length() == 0 ? "" : ", ");
        text.append(entry.key().replace('_', ' ')).append(' ').append(plain(entry.value()));
      }
      return text.toString();
    }
    return ((Typed.Text) typed).value();
  }

  /** Whether two say the same, wherever they stand. */
  static boolean same(Typed one, Typed other) {
    if (one instanceof Typed.Listing a && other instanceof Typed.Listing b) {
      boolean same = a.parts().size() == b.parts().size();
      for (int i = 0; same && i < a.parts().size(); i++) {
        same = same(a.parts().get(i), b.parts().get(i));
      }
      return same;
    }
    if (one instanceof Typed.Mapping a && other instanceof Typed.Mapping b) {
      boolean same = a.entries().size() == b.entries().size();
      for (int i = 0; same && i < a.entries().size(); i++) {
        same =
            a.entries().get(i).key().equals(b.entries().get(i).key())
                && same(a.entries().get(i).value(), b.entries().get(i).value());
      }
      return same;
    }
    return one instanceof Typed.Text a
        && other instanceof Typed.Text b
        && a.value().equals(b.value());
  }
}
