package dev.urnwright.input;

import dev.urnwright.event.Brewer;
import dev.urnwright.quantity.Dimension;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Measure;
import dev.urnwright.quantity.MeasureRange;
import dev.urnwright.quantity.Power;
import dev.urnwright.quantity.Volume;
import dev.urnwright.wording.Saying;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds one kind of brewer. */
final class BrewerBinder {
  private static final Field<String> NAME =
      Field.required("name", Words.name("Twin brewer"), "what the sheets call it");
  private static final Field<Integer> COUNT =
      Field.optional("count", Numbers.count("2", 1, 1000), "how many of it there are");
  private static final Field<MeasureRange> DOSE =
      Field.required(
          "dose",
          Amounts.range(Dimension.MASS, "150 g to 480 g", "0 g", "100 kg"),
          "the least and the greatest dose; or up to the greatest");
  private static final Field<Measure> WATER =
      Field.required("water", Amounts.water("6 l", "10 g", "1000 kg"), "the most brew water");
  private static final Field<Volume> VESSEL =
      Field.optional(
          "vessel", Amounts.volume("6 l", "50 ml", "1000 l"), "what the vessel under it takes");
  private static final Field<Duration> CYCLE =
      Field.optional(
          "cycle", Amounts.duration("11 min", "10 s", "24 h"), "from start to the last drop");
  private static final Field<Power> POWER =
      Field.optional("power", Amounts.power(), "what it draws");
  static final Field<Located<String>> CIRCUIT =
      Field.optional(
          "circuit",
          Located.of(Words.name("kitchen A").naming("circuits")),
          "the circuit that it is plugged into");
  static final Fields FIELDS =
      Fields.of("brewer", NAME, COUNT, DOSE, WATER, VESSEL, CYCLE, POWER, CIRCUIT);

  private final Binding binding;
  private final FilledWater filled;
  private final List<String> circuits;

  BrewerBinder(Binding binding, FilledWater filled, List<String> circuits) {
    this.binding = binding;
    this.filled = filled;
    this.circuits = circuits;
  }

  Optional<Brewer> bind(Node node, Names names) {
    return MapReader.of(node, FIELDS, binding.problems()).flatMap(map -> bind(map, names));
  }

  /** Binds a brewer out of a mapping that may say more of it. */
  Optional<Brewer> bind(MapReader map, Names names) {
    Optional<String> name = map.read(NAME);
    name.ifPresent(given -> names.add(given, map.valueOf(NAME)));
    String called = name.orElse("");
    int count =
        binding
            .defaults()
            .fill(
                called,
                map.read(COUNT),
                1,
                "default-brewer-count",
                () -> Saying.of("default.brewer-count"));
    Optional<MeasureRange> dose = map.read(DOSE).filter(range -> someDose(range, map));
    Optional<Mass> water = map.read(WATER).map(given -> filled.weighed(given, called));
    Optional<Located<String>> circuit = map.read(CIRCUIT);
    circuit.ifPresent(named -> References.check(named, "circuit", circuits, binding.problems()));
    Brewer.Supply supply = new Brewer.Supply(map.read(POWER), circuit.map(Located::value));
    Optional<Volume> vessel = map.read(VESSEL);
    Optional<Duration> cycle = map.read(CYCLE);
    if (name.isEmpty() || dose.isEmpty() || water.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Brewer(
            called,
            count,
            dose.get().low().mass(),
            dose.get().high().mass(),
            water.get(),
            vessel,
            cycle,
            supply,
            map.valueOf(NAME)));
  }

  private boolean someDose(MeasureRange range, MapReader map) {
    boolean some = !range.high().mass().isZero();
    if (!some) {
      binding
          .problems()
          .at(map.valueOf(DOSE), "this brewer takes no coffee", DOSE.kind().expected());
    }
    return some;
  }
}
