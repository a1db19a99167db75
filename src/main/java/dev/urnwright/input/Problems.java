package dev.urnwright.input;

import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.UnreadableException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/** Collects the problems of one file. */
final class Problems {
  private final String file;
  private final List<Problem> found = new ArrayList<>();

  Problems(String file) {
    this.file = file;
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
    return mark.map(place -> new Location(file, place.getLine() + 1, place.getColumn() + 1))
        .orElseGet(this::wholeFile);
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
