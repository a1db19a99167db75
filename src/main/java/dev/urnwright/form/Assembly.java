package dev.urnwright.form;

import dev.urnwright.input.Typed;
import dev.urnwright.problem.Location;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts values into nested mappings by their paths. */
final class Assembly {
  private final Location place;
  private final Map<String, Object> entries = new LinkedHashMap<>();

  /** An empty mapping. */
  Assembly(Location place) {
    this.place = place;
  }

  /**
   * Puts one value.
   *
   * @param path its keys, at least one
   * @param at where it was typed
   */
  void put(List<String> path, Location at, Typed value) {
    String key = path.get(0);
    if (path.size() == 1) {
      entries.put(key, new Typed.Entry(key, at, value));
      return;
    }
    Object inner = entries.computeIfAbsent(key, made -> new Assembly(at));
    if (inner instanceof Assembly assembly) {
      assembly.put(path.subList(1, path.size()), at, value);
    }
  }

  boolean isEmpty() {
    return entries.isEmpty();
  }

  Typed.Mapping typed() {
    List<Typed.Entry> typed = new ArrayList<>();
    entries.forEach(
        (key, value) ->
            typed.add(
                value instanceof Assembly inner
                    ? new Typed.Entry(key, inner.place, inner.typed())
                    : (Typed.Entry) value));
    return new Typed.Mapping(typed, place);
  }
}
