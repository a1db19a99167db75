package dev.urnwright.input;

import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.UnreadableException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/** Collects the problems of one file. */
final class Problems {
  private final String file;
  private final Document document;
  private final Optional<UnaryOperator<String>> sheets;
  private final List<Problem> found = new ArrayList<>();

  /** Those of an event file. */
  Problems(String file) {
    this(file, Document.EVENT);
  }

  Problems(String file, Document document) {
    this(file, document, Optional.empty());
  }

  private Problems(String file, Document document, Optional<UnaryOperator<String>> sheets) {
    this.file = file;
    this.document = document;
    this.sheets = sheets;
  }

  /** Those of a workbook, whose marks name sheets and cells. */
  static Problems ofWorkbook(String file, UnaryOperator<String> sheets) {
    return new Problems(file, Document.EVENT, Optional.of(sheets));
  }

  /** Those of a table in a workbook, whose marks name sheets and cells. */
  static Problems ofTable(String file, Document document) {
    return new Problems(file, document, Optional.of(name -> name));
  }

  /** What kind of file it is. */
  Document document() {
    return document;
  }

  /** What is expected under a key with several entries, which in a workbook has its own sheet. */
  String expectedEntries(String key, String inText) {
    return sheets
        .map(names -> "expected a row at least on the sheet '" + names.apply(key) + "'")
        .orElse(inText);
  }

  void at(Location location, String wrong, String expected) {
    found.add(new Problem(location, wrong, expected));
  }

  void at(Node node, String wrong, String expected) {
    at(locationOf(node), wrong, expected);
  }

  void at(Location location, UnreadableException unreadable) {
    at(location, unreadable.wrong(), unreadable.expected());
  }

  /** Where a node begins. */
  Location locationOf(Node node) {
    return locationOf(node.getStartMark());
  }

  Location locationOf(Optional<Mark> mark) {
    return mark.map(this::location).orElseGet(this::wholeFile);
  }

  private Location location(Mark place) {
    int line = place.getLine() + 1;
    int column = place.getColumn() + 1;
    return sheets.isPresent()
        ? Location.ofCell(file, new Location.Sheet(place.getIndex(), place.getName()), line, column)
        : new Location(file, line, column);
  }

  Location at(int line, int column) {
    return new Location(file, line, column);
  }

  Location wholeFile() {
    return Location.ofFile(file);
  }

  boolean none() {
    return found.isEmpty();
  }

  List<Problem> all() {
    return List.copyOf(found);
  }
}
