package dev.urnwright.input;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.Circuit;
import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Equipment;
import dev.urnwright.quantity.Figure;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.quantity.Volume;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds what there is to work with. */
final class EquipmentBinder {
  static final Field<List<Node>> BREWERS =
      Field.optional("brewers", Part.list(BrewerBinder.FIELDS), "kinds of brewer");
  static final Field<List<Node>> CIRCUITS =
      Field.optional("circuits", Part.list(CircuitBinder.FIELDS), "electrical circuits");
  static final Field<List<Node>> DISPENSERS =
      Field.optional(
          "dispensers", Part.list(DispenserBinder.FIELDS), "kinds of airpot, urn or carafe");
  static final Field<Mass> SCALE_STEP =
      Field.optional(
          "scale_step", Amounts.mass("5 g", "0.01 g", "1 kg"), "what the scale can tell apart");
  static final Field<Volume> JUG_MARK =
      Field.optional(
          "jug_mark",
          Amounts.volume("10 ml", "1 ml", "5 l"),
          "what the measuring jug can tell apart");

  private static final Mass METRIC_STEP = Mass.ofGrams(5);
  private static final Mass US_STEP = Mass.ofOunces(0.1);
  private static final Volume METRIC_MARK = Volume.ofMillilitres(10);
  private static final Volume US_MARK = Volume.ofFluidOunces(0.5);

  private final Binding binding;
  private final FilledWater filled;
  private final List<String> circuitNames = new ArrayList<>();
  private final List<String> dispenserNames = new ArrayList<>();

  EquipmentBinder(Binding binding, FilledWater filled) {
    this.binding = binding;
    this.filled = filled;
  }

  /** What the scale can tell apart, or the default of the unit system. */
  static Mass scaleStep(MapReader event, UnitSystem units, Defaults defaults) {
    boolean us = units == UnitSystem.US;
    return defaults.fill(
        event.read(SCALE_STEP),
        us ? US_STEP : METRIC_STEP,
        "default-scale-step",
        () ->
            Saying.of("default.scale-step")
                .with("step", us ? new Figure("0.1", "oz") : new Figure("5", "g")));
  }

  Equipment bind(MapReader event) {
    boolean us = binding.display().system() == UnitSystem.US;
    Volume jugMark =
        binding
            .defaults()
            .fill(
                event.read(JUG_MARK),
                us ? US_MARK : METRIC_MARK,
                "default-jug-mark",
                () ->
                    Saying.of("default.jug-mark")
                        .with("mark", binding.display().volume(us ? US_MARK : METRIC_MARK)));
    List<Circuit> circuits = circuits(event);
    return new Equipment(
        brewers(event),
        circuits,
        dispensers(event),
        binding.display().scaleStep(),
        jugMark,
        new UncertaintyBinder(binding).bind(event));
  }

  /** The kinds of dispenser that groups may name, those with problems too. */
  List<String> dispenserNames() {
    return List.copyOf(dispenserNames);
  }

  /** The circuits that heaters may name, those with problems too. */
  List<String> circuitNames() {
    return List.copyOf(circuitNames);
  }

  private List<Circuit> circuits(MapReader event) {
    CircuitBinder binder = new CircuitBinder(binding.problems());
    Names names = new Names("circuit", binding.problems());
    List<Circuit> circuits = new ArrayList<>();
    for (Node node : event.read(CIRCUITS).orElse(List.of())) {
      binder.bind(node, names, circuitNames).ifPresent(circuits::add);
    }
    return circuits;
  }

  private List<Brewer> brewers(MapReader event) {
    BrewerBinder binder = new BrewerBinder(binding, filled, circuitNames);
    Names names = new Names("brewer", binding.problems());
    List<Brewer> brewers = new ArrayList<>();
    for (Node node : event.read(BREWERS).orElse(List.of())) {
      binder.bind(node, names).ifPresent(brewers::add);
    }
    return brewers;
  }

  private List<Dispenser> dispensers(MapReader event) {
    DispenserBinder binder = new DispenserBinder(binding);
    Names names = new Names("dispenser", binding.problems());
    List<Dispenser> dispensers = new ArrayList<>();
    for (Node node : event.read(DISPENSERS).orElse(List.of())) {
      Optional<Dispenser> dispenser = binder.bind(node, names, dispenserNames);
      dispenser.ifPresent(dispensers::add);
    }
    return dispensers;
  }
}
