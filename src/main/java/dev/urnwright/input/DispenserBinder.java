package dev.urnwright.input;

import dev.urnwright.event.Dispenser;
import dev.urnwright.quantity.Volume;
import dev.urnwright.wording.Saying;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds one kind of dispenser. */
final class DispenserBinder {
  static final Field<String> NAME =
      Field.required("name", Words.name("Airpot"), "what the sheets call it");
  private static final Field<Integer> COUNT =
      Field.optional("count", Numbers.count("14", 1, 100_000), "how many of it there are");
  private static final Field<Volume> CAPACITY =
      Field.required("capacity", Amounts.volume("2.2 l", "50 ml", "1000 l"), "what it holds");
  private static final Field<Volume> HEEL =
      Field.optional(
          "heel", Amounts.volume("40 ml", "0 ml", "100 l"), "what can't be drawn from it");
  static final Field<Duration> HOLD =
      Field.optional(
          "hold", Amounts.duration("60 min", "1 min", "24 h"), "how long coffee stays good in it");
  private static final Field<Double> COOLING =
      Field.optional("cooling", Amounts.cooling(), "how far it cools in the first hour");
  private static final Field<Double> POUR =
      Field.optional("pour", Amounts.pour(), "how many cups guests get from it in a minute");
  static final Fields FIELDS =
      Fields.of("dispenser", NAME, COUNT, CAPACITY, HEEL, HOLD, COOLING, POUR);

  private final Binding binding;

  DispenserBinder(Binding binding) {
    this.binding = binding;
  }

  Optional<Dispenser> bind(Node node, Names names, List<String> known) {
    return MapReader.of(node, FIELDS, binding.problems())
        .flatMap(
            map -> {
              map.read(NAME)
                  .ifPresent(
                      given -> {
                        names.add(given, map.valueOf(NAME));
                        known.add(given);
                      });
              return bind(map);
            });
  }

  private Optional<Dispenser> bind(MapReader map) {
    Optional<String> name = map.read(NAME);
    String called = name.orElse("");
    int count =
        binding
            .defaults()
            .fill(
                called,
                map.read(COUNT),
                1,
                "default-dispenser-count",
                () -> Saying.of("default.dispenser-count"));
    Volume nothing = Volume.ofLitres(0);
    Volume heel =
        binding
            .defaults()
            .fill(
                called,
                map.read(HEEL),
                nothing,
                "default-heel",
                () -> Saying.of("default.heel").with("heel", binding.display().volume(nothing)));
    Optional<Volume> capacity = map.read(CAPACITY);
    Optional<Duration> hold = map.read(HOLD);
    Optional<Double> cooling = map.read(COOLING);
    Optional<Double> pour = map.read(POUR);
    if (capacity.isPresent() && heel.compareTo(capacity.get()) >= 0) {
      binding
          .problems()
          .at(
              map.valueOf(HEEL),
              "nothing can be drawn above this heel",
              "expected less than the capacity of " + binding.display().volume(capacity.get()));
      return Optional.empty();
    }
    return name.flatMap(
        given ->
            capacity.map(
                volume ->
                    new Dispenser(
                        given,
                        count,
                        volume,
                        heel,
                        hold,
                        cooling.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                        pour.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                        map.valueOf(NAME))));
  }
}
