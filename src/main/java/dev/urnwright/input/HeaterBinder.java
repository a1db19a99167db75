package dev.urnwright.input;

import dev.urnwright.event.Kitchen.Heater;
import dev.urnwright.quantity.Power;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Volume;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds what heats water. */
final class HeaterBinder {
  private static final Field<String> NAME =
      Field.required("name", Words.name("Kettle"), "what the sheets call it");
  private static final Field<Integer> COUNT =
      Field.optional("count", Numbers.count("2", 1, 1000), "how many of it there are");
  private static final Field<Volume> CAPACITY =
      Field.required(
          "capacity", Amounts.volume("10 l", "100 ml", "1000 l"), "the hot water that one holds");
  private static final Field<Power> POWER =
      Field.required("power", Amounts.power(), "what one draws");
  private static final Field<Share> EFFICIENCY =
      Field.optional(
          "efficiency",
          Amounts.share("90 %", "10 %", "100 %"),
          "the share of its power that reaches the water");
  private static final Field<Located<String>> CIRCUIT =
      Field.optional(
          "circuit",
          Located.of(Words.name("kitchen A").naming("circuits")),
          "the circuit that it is plugged into");
  private static final Fields FIELDS =
      Fields.of("heater", NAME, COUNT, CAPACITY, POWER, EFFICIENCY, CIRCUIT);

  static final Field<List<Node>> HEATERS =
      Field.optional("heaters", Part.list(FIELDS), "what heats water: kettle, tower or boiler");

  private static final Share USUAL_EFFICIENCY = Share.ofPercent(90);

  private final Binding binding;
  private final List<String> circuits;
  private final KitchenUse use;

  HeaterBinder(Binding binding, List<String> circuits, KitchenUse use) {
    this.binding = binding;
    this.circuits = circuits;
    this.use = use;
  }

  List<Heater> bind(MapReader event) {
    Names names = new Names("heater", binding.problems());
    List<Heater> heaters = new ArrayList<>();
    for (Node node : event.read(HEATERS).orElse(List.of())) {
      MapReader.of(node, FIELDS, binding.problems())
          .flatMap(map -> bind(map, names))
          .ifPresent(heaters::add);
    }
    return heaters;
  }

  private Optional<Heater> bind(MapReader map, Names names) {
    Optional<String> name = map.read(NAME);
    name.ifPresent(given -> names.add(given, map.valueOf(NAME)));
    String called = name.orElse("");
    Optional<Volume> capacity = map.read(CAPACITY);
    Optional<Power> power = map.read(POWER);
    int count =
        use.fill(
            use.timed(),
            called,
            map.read(COUNT),
            1,
            "default-heater-count",
            () -> Saying.of("default.heater-count"));
    Share efficiency =
        use.fill(
            use.timed(),
            called,
            map.read(EFFICIENCY),
            USUAL_EFFICIENCY,
            "default-efficiency",
            () ->
                Saying.of("default.efficiency")
                    .with("share", binding.display().share(USUAL_EFFICIENCY)));
    Optional<Located<String>> circuit = map.read(CIRCUIT);
    circuit.ifPresent(named -> References.check(named, "circuit", circuits, binding.problems()));
    if (name.isEmpty() || capacity.isEmpty() || power.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Heater(
            called,
            count,
            capacity.get(),
            power.get(),
            efficiency,
            circuit.map(Located::value),
            map.valueOf(NAME)));
  }
}
