package dev.urnwright.sheet;

import java.util.ArrayList;
import java.util.List;

/** Splits what doesn't fit across a page into tables that do. */
final class Columns {
  private Columns() {}

  /**
   * The positions from 0 to {@code count}, as few parts as possible and as equal as they can be.
   *
   * @param count how many columns there are
   * @param most how many fit side by side, 1 or more
   */
  static List<Span> split(int count, int most) {
    int parts = (count + most - 1) / most;
    List<Span> spans = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      spans.add(new Span(count * part / parts, count * (part + 1) / parts));
    }
    return spans;
  }

  /**
   * Some neighbouring columns.
   *
   * @param from the first
   * @param to behind the last
   */
  record Span(int from, int to) {
    <T> List<T> of(List<T> all) {
      return all.subList(from, to);
    }
  }
}
