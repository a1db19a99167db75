package dev.urnwright.input;

import dev.urnwright.event.Coffee;
import dev.urnwright.event.Equipment;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Kitchen;
import dev.urnwright.event.Print;
import dev.urnwright.event.Purchases;
import dev.urnwright.event.Serving;
import dev.urnwright.event.Taught;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.UnitSystem;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds a whole event. */
final class EventBinder {
  private static final Field<String> EVENT =
      Field.required("event", Words.name("Orchard Road breakfast"), "what the event is called");
  private static final Field<LocalDate> DATE =
      Field.optional("date", Times.A_DATE, "the day of the event");
  private static final Field<LocalTime> TIME =
      Field.optional("time", Times.A_TIME, "when groups that have no time of their own are due");
  private static final Field<String> KIND =
      Field.optional(
          "kind",
          Words.name("conference"),
          "what kind of event it is, so that the journal tells how much its guests drink");
  private static final Field<List<Node>> GROUPS =
      Field.required("groups", Part.list(GroupBinder.FIELDS), "who drinks what");

  static final Fields FIELDS =
      Fields.of(
          "event",
          EVENT,
          DATE,
          TIME,
          KIND,
          LanguageBinder.LANGUAGE,
          PrintBinder.UNITS,
          PrintBinder.PAPER,
          PrintBinder.WINDOW,
          ServingBinder.SERVICE_LEVEL,
          ServingBinder.OVERAGE,
          ServingBinder.SPILL,
          ServingBinder.SERVICE_TEMPERATURE,
          ServingBinder.BYPASS_TEMPERATURE,
          ServingBinder.FILLING_TEMPERATURE,
          CoffeesBinder.COFFEE,
          CoffeesBinder.COFFEES,
          StrengthBinder.STRENGTHS,
          GROUPS,
          EquipmentBinder.BREWERS,
          EquipmentBinder.CIRCUITS,
          EquipmentBinder.DISPENSERS,
          KitchenBinder.KITCHEN,
          StationBinder.STATIONS,
          HeaterBinder.HEATERS,
          PurchasesBinder.SUPPLIES,
          PurchasesBinder.COSTS,
          PurchasesBinder.BRING,
          EquipmentBinder.SCALE_STEP,
          EquipmentBinder.JUG_MARK,
          UncertaintyBinder.UNCERTAINTY);

  private final Problems problems;

  EventBinder(Problems problems) {
    this.problems = problems;
  }

  /** The event of a file's root node; empty exactly when there are problems. */
  Optional<Event> bind(Node root) {
    return MapReader.of(root, FIELDS, problems).flatMap(this::bind).filter(e -> problems.none());
  }

  private Optional<Event> bind(MapReader map) {
    Optional<String> name = map.read(EVENT);
    Optional<LocalDate> date = map.read(DATE);
    Optional<LocalTime> time = map.read(TIME);
    Optional<String> kind = map.read(KIND);
    Defaults defaults = new Defaults();
    Optional<Locale> language = map.read(LanguageBinder.LANGUAGE);
    UnitSystem units = PrintBinder.units(map, language, defaults);
    Mass scaleStep = EquipmentBinder.scaleStep(map, units, defaults);
    Binding binding =
        new Binding(problems, defaults, new Display(units, scaleStep), new Currencies());

    Print print = new PrintBinder(binding, language).bind(map);
    Serving serving = new ServingBinder(binding).bind(map);
    FilledWater filled = new FilledWater(binding, serving.fillingTemperature());
    CoffeesBinder coffeesBinder = new CoffeesBinder(binding, filled);
    List<Coffee> coffees = coffeesBinder.bind(map);
    EquipmentBinder equipmentBinder = new EquipmentBinder(binding, filled);
    Equipment equipment = equipmentBinder.bind(map);
    StrengthBinder strengths = new StrengthBinder(problems);
    strengths.bindNames(map);
    List<StationBinder.Listed> stations = new StationBinder(problems).bind(map);
    List<Node> groupNodes = map.read(GROUPS).orElse(List.of());
    List<GuestGroup> groups =
        groups(
            groupNodes,
            new GroupBinder(
                binding,
                strengths,
                new CoffeeChoice(binding, coffeesBinder.keys()),
                new GroupBinder.Places(
                    equipmentBinder.dispenserNames(),
                    stations.stream().map(StationBinder.Listed::name).toList()),
                serving.serviceTemperature()));
    KitchenUse use = KitchenUse.of(defaults, groups, equipment, time);
    Kitchen kitchen =
        new KitchenBinder(binding, use)
            .bind(
                map,
                stations,
                new HeaterBinder(binding, equipmentBinder.circuitNames(), use).bind(map));
    Purchases purchases =
        new PurchasesBinder(binding)
            .bind(
                map,
                new SupplyBinder.Known(
                    groups, groups.size() == groupNodes.size(), equipment.brewers()));
    if (name.isEmpty() || !problems.none()) {
      return Optional.empty();
    }
    return Optional.of(
        new Event(
            name.get(),
            date,
            time,
            print,
            serving,
            coffees,
            groups,
            equipment,
            kitchen,
            purchases,
            defaults.notes(),
            kind,
            Taught.NOTHING,
            map.valueOf(EVENT)));
  }

  private List<GuestGroup> groups(List<Node> nodes, GroupBinder binder) {
    Names names = new Names("group", problems);
    List<GuestGroup> groups = new ArrayList<>();
    for (int i = 0; i < nodes.size(); i++) {
      binder.bind(i + 1, nodes.get(i), names).ifPresent(groups::add);
    }
    return groups;
  }
}
