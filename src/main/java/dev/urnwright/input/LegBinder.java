package dev.urnwright.input;

import dev.urnwright.round.Leg;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds the legs of a round. */
final class LegBinder {
  private static final Field<String> NAME =
      Field.required("name", Words.name("North bank"), "what the sheets call it");
  private static final Field<String> DRIVER =
      Field.optional("driver", Words.name("Ida"), "who drives");
  private static final Field<LocalTime> LEAVE =
      Field.required("leave", Times.A_TIME, "when the van leaves");
  private static final Fields FIELDS = Fields.of("leg", NAME, DRIVER, LEAVE);

  static final Field<List<Node>> LEGS =
      Field.required("legs", Part.list(FIELDS), "the ways of the drivers");

  private final Problems problems;
  private final List<String> names = new ArrayList<>();

  LegBinder(Problems problems) {
    this.problems = problems;
  }

  /** The names that rows may use, those of legs with problems too. */
  List<String> names() {
    return List.copyOf(names);
  }

  List<Leg> bind(MapReader round) {
    Names distinct = new Names("leg", problems);
    List<Leg> legs = new ArrayList<>();
    for (Node node : round.read(LEGS).orElse(List.of())) {
      MapReader.of(node, FIELDS, problems).flatMap(map -> bind(map, distinct)).ifPresent(legs::add);
    }
    return legs;
  }

  private Optional<Leg> bind(MapReader map, Names distinct) {
    Optional<String> name = map.read(NAME);
    name.ifPresent(
        given -> {
          distinct.add(given, map.valueOf(NAME));
          names.add(given);
        });
    Optional<String> driver = map.read(DRIVER);
    Optional<LocalTime> leave = map.read(LEAVE);
    return name.flatMap(
        given -> leave.map(time -> new Leg(given, driver, time, map.valueOf(NAME))));
  }
}
