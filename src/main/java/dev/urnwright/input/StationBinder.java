package dev.urnwright.input;

import dev.urnwright.event.Kitchen.Station;
import dev.urnwright.problem.Location;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds the stations where groups are served. */
final class StationBinder {
  private static final Field<String> NAME =
      Field.required("name", Words.name("Marquee"), "what groups and the run sheet call it");
  private static final Field<Duration> CARRY =
      Field.optional(
          "carry",
          Amounts.duration("5 min", "0 s", "12 h"),
          "how long a dispenser takes there, and back");
  private static final Fields FIELDS = Fields.of("station", NAME, CARRY);

  static final Field<List<Node>> STATIONS =
      Field.optional("stations", Part.list(FIELDS), "where groups are served");

  private final Problems problems;

  StationBinder(Problems problems) {
    this.problems = problems;
  }

  /** The stations of an event, those with problems left out unless they have a name. */
  List<Listed> bind(MapReader event) {
    Names names = new Names("station", problems);
    List<Listed> stations = new ArrayList<>();
    for (Node node : event.read(STATIONS).orElse(List.of())) {
      MapReader.of(node, FIELDS, problems)
          .flatMap(map -> bind(map, names))
          .ifPresent(stations::add);
    }
    return stations;
  }

  private static Optional<Listed> bind(MapReader map, Names names) {
    Optional<String> name = map.read(NAME);
    Optional<Duration> carry = map.read(CARRY);
    name.ifPresent(given -> names.add(given, map.valueOf(NAME)));
    return name.map(given -> new Listed(given, carry, map.valueOf(NAME)));
  }

  /**
   * A station as it is listed.
   *
   * @param name of it
   * @param carry to it, when given
   * @param location where it stands
   */
  record Listed(String name, Optional<Duration> carry, Location location) {
    /** The station, with the usual time where it has none of its own. */
    Station usually(Duration usual) {
      return new Station(name, carry.orElse(usual), location);
    }
  }
}
