package dev.urnwright.input;

import dev.urnwright.quantity.Temperature;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds how a group is served over ice. */
final class OverIceBinder {
  private static final Field<Temperature> POURED_AT =
      Field.required(
          "poured_at", Amounts.temperature("25 °C"), "how warm it is when it meets the ice");
  private static final Field<Temperature> SERVED_AT =
      Field.required("served_at", Amounts.temperature("5 °C"), "how cold it is served");
  private static final Fields FIELDS = Fields.of("over_ice", POURED_AT, SERVED_AT);

  static final Field<Node> OVER_ICE =
      Field.optional("over_ice", Part.mapping(FIELDS), "poured over ice that melts into the cup");

  private final Problems problems;

  OverIceBinder(Problems problems) {
    this.problems = problems;
  }

  /** The temperatures of an iced group; empty when it isn't one, or is a problem. */
  Optional<Iced> bind(MapReader group, Field<Temperature> warm) {
    if (group.has(OVER_ICE) && group.has(warm)) {
      problems.at(
          group.keyOf(warm),
          "an iced group is not served warm",
          "expected no " + warm.name() + " beside over_ice, whose served_at counts");
    }
    return group
        .read(OVER_ICE)
        .flatMap(node -> MapReader.of(node, FIELDS, problems))
        .flatMap(this::iced);
  }

  private Optional<Iced> iced(MapReader map) {
    Optional<Temperature> poured = map.read(POURED_AT);
    Optional<Temperature> served = map.read(SERVED_AT);
    if (poured.isEmpty() || served.isEmpty()) {
      return Optional.empty();
    }
    if (served.get().compareTo(poured.get()) >= 0) {
      problems.at(
          map.valueOf(SERVED_AT),
          "ice does not warm: served_at is not below poured_at",
          "expected a colder one, such as poured_at: 25 °C and served_at: 5 °C");
      return Optional.empty();
    }
    return Optional.of(new Iced(poured.get(), served.get()));
  }

  /**
   * Both temperatures.
   *
   * @param pouredAt when it meets the ice
   * @param servedAt when the ice has melted
   */
  record Iced(Temperature pouredAt, Temperature servedAt) {}
}
