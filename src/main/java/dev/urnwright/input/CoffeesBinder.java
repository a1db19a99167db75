package dev.urnwright.input;

import dev.urnwright.event.Coffee;
import dev.urnwright.problem.Location;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds the one coffee of an event, or its several coffees by their keys. */
final class CoffeesBinder {
  private static final String ONLY_KEY = "coffee";
  private static final Pattern KEY = Pattern.compile("\\p{L}[\\p{L}\\p{N}_-]{0,19}");
  private static final String EXPECTED_SEVERAL =
      "expected a short name for each coffee with its own lines under it, such as house:";

  static final Field<Node> COFFEE =
      Field.optional("coffee", Part.mapping(CoffeeBinder.FIELDS), "the coffee of the event");
  static final Field<Node> COFFEES =
      Field.optional(
          "coffees",
          Part.named(CoffeeBinder.FIELDS, EXPECTED_SEVERAL),
          "several coffees by short names");

  private final Binding binding;
  private final CoffeeBinder binder;
  private final List<String> keys = new ArrayList<>();

  CoffeesBinder(Binding binding, FilledWater filled) {
    this.binding = binding;
    this.binder = new CoffeeBinder(binding, filled);
  }

  List<Coffee> bind(MapReader event) {
    event.oneOf(COFFEE, COFFEES);
    if (!event.has(COFFEE)
        && !event.has(COFFEES)
        && !event.meant(COFFEE)
        && !event.meant(COFFEES)) {
      binding
          .problems()
          .at(
              event.start(),
              "this event has no 'coffee'",
              binding
                  .problems()
                  .expectedEntries(
                      COFFEES.name(), "expected coffee: for one, or coffees: for several"));
    }
    List<Coffee> coffees = new ArrayList<>();
    if (event.has(COFFEE)) {
      keys.add(ONLY_KEY);
      event
          .read(COFFEE)
          .flatMap(node -> binder.bind(ONLY_KEY, event.keyOf(COFFEE), node))
          .ifPresent(coffees::add);
    }
    event
        .read(COFFEES)
        .map(MappingNode.class::cast)
        .ifPresent(several -> coffees.addAll(several(several)));
    return coffees;
  }

  /** The keys that groups may name, those of coffees with problems too. */
  List<String> keys() {
    return List.copyOf(keys);
  }

  private List<Coffee> several(MappingNode mapping) {
    Problems problems = binding.problems();
    List<Coffee> coffees = new ArrayList<>();
    Names names = new Names("coffee", problems);
    Names distinctKeys = new Names("coffee", problems);
    for (Map.Entry<String, Entries.Entry> entry : Entries.of(mapping, problems).entrySet()) {
      Location place = entry.getValue().place();
      if (!KEY.matcher(entry.getKey()).matches()) {
        problems.at(
            place,
            Words.quoted(entry.getKey()) + " can't be the short name of a coffee",
            "expected a letter and up to 19 letters, digits, _ or - after it, such as house");
      }
      keys.add(entry.getKey());
      distinctKeys.add(entry.getKey(), place);
      Optional<Coffee> coffee = binder.bind(entry.getKey(), place, entry.getValue().value());
      coffee.ifPresent(bound -> names.add(bound.name(), bound.location()));
      coffee.ifPresent(coffees::add);
    }
    return coffees;
  }
}
