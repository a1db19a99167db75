package dev.urnwright.input;

import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Volume;
import dev.urnwright.round.Carafe;
import dev.urnwright.wording.Saying;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds the kinds of carafe. */
final class CarafeBinder {
  private static final Field<String> NAME =
      Field.required("name", Words.name("Carafe 2 l"), "what the sheets call it");
  private static final Field<Integer> COUNT =
      Field.required("count", Numbers.count("180", 1, 100_000), "how many the service owns");
  private static final Field<Volume> CAPACITY =
      Field.required(
          "capacity", Amounts.volume("2.2 l", "100 ml", "100 l"), "what it holds to the brim");
  private static final Field<Volume> FILL =
      Field.optional("fill", Amounts.volume("2 l", "100 ml", "100 l"), "what is filled in, hot");
  private static final Field<Mass> TARE =
      Field.optional("tare", Amounts.mass("1.1 kg", "10 g", "50 kg"), "its own weight, with lid");
  private static final Field<Duration> HOLD =
      Field.required(
          "hold",
          Amounts.duration("6 h", "10 min", "24 h"),
          "how long coffee stays good in it, from the brewer on");

  private static final Field<Double> COOLING =
      Field.optional("cooling", Amounts.cooling(), "how far it cools in the first hour");

  private static final Fields FIELDS =
      Fields.of("carafe", NAME, COUNT, CAPACITY, FILL, TARE, HOLD, COOLING);

  static final Field<List<Node>> CARAFES =
      Field.required("carafes", Part.list(FIELDS), "kinds of carafe");

  /** Kelvins that a carafe loses in its first hour, as any dispenser does (assumed). */
  private static final double USUAL_COOLING = 5;

  /** Headroom for the lid, of the capacity. */
  private static final double USUAL_FILL = 0.95;

  /** Rounding adds at most a step of concentrate and one of water. */
  private static final int ROUNDING_STEPS = 2;

  private final Binding binding;
  private final List<String> names = new ArrayList<>();

  CarafeBinder(Binding binding) {
    this.binding = binding;
  }

  /** The names that rows may use, those of carafes with problems too. */
  List<String> names() {
    return List.copyOf(names);
  }

  List<Carafe> bind(MapReader round) {
    Names distinct = new Names("carafe", binding.problems());
    List<Carafe> carafes = new ArrayList<>();
    for (Node node : round.read(CARAFES).orElse(List.of())) {
      MapReader.of(node, FIELDS, binding.problems())
          .flatMap(map -> bind(map, distinct))
          .ifPresent(carafes::add);
    }
    return carafes;
  }

  private Optional<Carafe> bind(MapReader map, Names distinct) {
    Optional<String> name = map.read(NAME);
    name.ifPresent(
        given -> {
          distinct.add(given, map.valueOf(NAME));
          names.add(given);
        });
    Optional<Integer> count = map.read(COUNT);
    Optional<Volume> capacity = map.read(CAPACITY);
    Optional<Duration> hold = map.read(HOLD);
    Optional<Mass> tare = map.read(TARE);
    Optional<Volume> given = map.read(FILL);
    Optional<Double> cooling = map.read(COOLING);
    if (name.isEmpty() || count.isEmpty() || capacity.isEmpty() || hold.isEmpty()) {
      return Optional.empty();
    }
    Volume fill =
        binding
            .defaults()
            .fill(
                name.get(),
                given,
                capacity.get().times(USUAL_FILL),
                "default-fill",
                () -> Saying.of("round.default.fill"));
    // A gram is about a millilitre here; what is left over is for the lid.
    Volume slack =
        Volume.ofMillilitres(binding.display().scaleStep().grams() * ROUNDING_STEPS * 1.04);
    if (fill.plus(slack).compareTo(capacity.get()) > 0) {
      binding
          .problems()
          .at(
              given.isPresent() ? map.valueOf(FILL) : map.valueOf(CAPACITY),
              "this fill leaves no room for rounding to the scale",
              "expected "
                  + binding.display().volume(slack)
                  + " less than the capacity of "
                  + binding.display().volume(capacity.get())
                  + " at least, or a finer scale_step");
      return Optional.empty();
    }
    return Optional.of(
        new Carafe(
            name.get(),
            count.get(),
            capacity.get(),
            fill,
            tare,
            hold.get(),
            binding
                .defaults()
                .fill(
                    name.get(),
                    cooling,
                    USUAL_COOLING,
                    "default-carafe-cooling",
                    () -> Saying.of("round.default.cooling")),
            map.valueOf(NAME)));
  }
}
