package dev.urnwright.input;

import dev.urnwright.quantity.UnreadableException;
import java.time.LocalTime;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Cups asked for by the hour.
 *
 * @param byHour how many from each time on, for an hour; times whole hours apart, one or more
 */
record HourlyCups(TreeMap<LocalTime, Integer> byHour) {
  static final String EXPECTED =
      "expected lines of a time and a number such as 08:00: 24, an hour each";
  static final Scalar<Integer> COUNT = Numbers.count("24", 0, 100_000);

  private static final int MINUTES = 60;

  /** Reads them; empty when that is a problem. */
  static Optional<HourlyCups> read(Node node, Problems problems) {
    if (!(node instanceof MappingNode mapping) || mapping.getValue().isEmpty()) {
      problems.at(node, "here are no cups by the hour", EXPECTED);
      return Optional.empty();
    }
    TreeMap<LocalTime, Integer> byHour = new TreeMap<>();
    Map<String, Entries.Entry> entries = Entries.of(mapping, problems);
    for (Map.Entry<String, Entries.Entry> entry : entries.entrySet()) {
      Optional<LocalTime> time = time(entry.getKey(), entry.getValue(), problems);
      Optional<Integer> cups = COUNT.read(entry.getValue().value(), problems);
      if (time.isPresent() && cups.isPresent()) {
        byHour.put(time.get(), cups.get());
      }
    }
    if (byHour.size() < entries.size()) {
      return Optional.empty();
    }
    for (LocalTime time : byHour.keySet()) {
      if (time.getMinute() != byHour.firstKey().getMinute()) {
        problems.at(
            node,
            time + " is not a whole number of hours after " + byHour.firstKey(),
            "expected times that are hours apart");
        return Optional.empty();
      }
    }
    if (byHour.values().stream().allMatch(cups -> cups == 0)) {
      problems.at(node, "no cup is asked for at any hour", EXPECTED);
      return Optional.empty();
    }
    return Optional.of(new HourlyCups(byHour));
  }

  private static Optional<LocalTime> time(String key, Entries.Entry entry, Problems problems) {
    try {
      return Optional.of(Times.time(key));
    } catch (UnreadableException unreadable) {
      problems.at(entry.place(), unreadable);
      return Optional.empty();
    }
  }

  /** All of them. */
  int total() {
    return byHour.values().stream().mapToInt(Integer::intValue).sum();
  }

  LocalTime first() {
    return byHour.firstKey();
  }

  LocalTime end() {
    return byHour.lastKey().plusMinutes(MINUTES);
  }

  /** How many in each hour from the first to the last. */
  int[] each() {
    int hours = (byHour.lastKey().toSecondOfDay() - first().toSecondOfDay()) / (60 * MINUTES) + 1;
    int[] cups = new int[hours];
    byHour.forEach(
        (time, count) ->
            cups[(time.toSecondOfDay() - first().toSecondOfDay()) / (60 * MINUTES)] = count);
    return cups;
  }
}
