package dev.urnwright.input;

import dev.urnwright.problem.Location;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** The names of one kind of thing, which must differ by more than the case of their letters. */
final class Names {
  private final String what;
  private final Problems problems;
  private final Map<String, Location> taken = new HashMap<>();

  Names(String what, Problems problems) {
    this.what = what;
    this.problems = problems;
  }

  void add(String name, Location place) {
    Location first = taken.putIfAbsent(name.toLowerCase(Locale.ROOT), place);
    if (first != null) {
      problems.at(
          place,
          "a second " + what + " is called " + Words.quoted(name),
          "expected another name; the first is " + first.inWords());
    }
  }
}
