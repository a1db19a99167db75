package dev.urnwright.input;

import dev.urnwright.event.Circuit;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds one electrical circuit. */
final class CircuitBinder {
  private static final Field<String> NAME =
      Field.required("name", Words.name("kitchen A"), "what brewers call it by");
  private static final Field<Double> VOLTAGE =
      Field.required("voltage", Amounts.volts(), "its voltage");
  private static final Field<Double> BREAKER =
      Field.required("breaker", Amounts.amperes(), "what its breaker carries");
  static final Fields FIELDS = Fields.of("circuit", NAME, VOLTAGE, BREAKER);

  private final Problems problems;

  CircuitBinder(Problems problems) {
    this.problems = problems;
  }

  Optional<Circuit> bind(Node node, Names names, List<String> known) {
    return MapReader.of(node, FIELDS, problems)
        .flatMap(
            map -> {
              Optional<String> name = map.read(NAME);
              name.ifPresent(
                  given -> {
                    names.add(given, map.valueOf(NAME));
                    known.add(given);
                  });
              Optional<Double> volts = map.read(VOLTAGE);
              Optional<Double> amperes = map.read(BREAKER);
              if (name.isEmpty() || volts.isEmpty() || amperes.isEmpty()) {
                return Optional.empty();
              }
              return Optional.of(
                  new Circuit(name.get(), volts.get(), amperes.get(), map.valueOf(NAME)));
            });
  }
}
