package dev.urnwright.input;

import dev.urnwright.event.Coffee;
import dev.urnwright.event.Equipment;
import dev.urnwright.event.Kitchen;
import dev.urnwright.event.Print;
import dev.urnwright.event.Provision;
import dev.urnwright.event.Purchases;
import dev.urnwright.event.Serving;
import dev.urnwright.event.Supply;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.UnreadableException;
import dev.urnwright.round.BrewRoom;
import dev.urnwright.round.Filling;
import dev.urnwright.wording.Saying;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds where a round is brewed: coffees, equipment, hands, purchases. */
final class BrewRoomBinder {
  private static final Field<Duration> FILL_EACH =
      Field.optional(
          "fill_each", Amounts.duration("45 s", "1 s", "30 min"), "to fill and close one carafe");
  private static final Field<Integer> FILLERS =
      Field.optional(
          "fillers", Numbers.count("2", 1, 100), "how many people fill at the same time");
  private static final Field<Duration> LOADING =
      Field.optional(
          "loading",
          Amounts.duration("15 min", "0 s", "4 h"),
          "from the last lid until the van leaves");

  private static final Fields KITCHEN_FIELDS =
      Fields.of(
          "kitchen",
          KitchenBinder.OPENS,
          KitchenBinder.TURNAROUND,
          FILL_EACH,
          FILLERS,
          LOADING,
          WaterCareBinder.PREHEAT,
          WaterCareBinder.TAP,
          WaterCareBinder.AIR,
          WaterCareBinder.CONCENTRATE,
          WaterCareBinder.RINSE);

  static final Field<Node> KITCHEN =
      Field.optional("kitchen", Part.mapping(KITCHEN_FIELDS), "how the work is done");
  static final Field<List<Node>> BREWERS =
      Field.required("brewers", Part.list(BrewerBinder.FIELDS), "kinds of brewer");
  static final Field<ZoneId> TIME_ZONE =
      Field.optional(
          "time_zone",
          new Scalar<>("expected a zone by its city such as Europe/Lisbon", BrewRoomBinder::zone),
          "for the nights in which clocks are changed");

  private static final Filling USUAL_FILLING =
      new Filling(Duration.ofSeconds(45), 2, Duration.ofMinutes(15));
  private static final Duration USUAL_TURNAROUND = Kitchen.Handling.USUAL.turnaround();
  private static final Temperature USUAL_BYPASS = Temperature.ofCelsius(92);
  private static final Temperature USUAL_WATER = Temperature.ofCelsius(20);

  private final Binding binding;
  private CoffeesBinder coffees;

  BrewRoomBinder(Binding binding) {
    this.binding = binding;
    this.coffees = new CoffeesBinder(binding, new FilledWater(binding, USUAL_WATER));
  }

  private static ZoneId zone(String text) {
    try {
      return ZoneId.of(text.strip());
    } catch (DateTimeException unknown) {
      throw new UnreadableException(
          Words.quoted(text) + " is no time zone",
          "expected a zone by its city such as Europe/Lisbon");
    }
  }

  /** The keys of coffees that rows may name, those with problems too; after {@link #bind}. */
  List<String> coffeeKeys() {
    return coffees.keys();
  }

  BrewRoom bind(MapReader map, Optional<Locale> language) {
    Print print = new PrintBinder(binding, language).bind(map);
    Serving serving = serving(map);
    FilledWater filled = new FilledWater(binding, serving.fillingTemperature());
    coffees = new CoffeesBinder(binding, filled);
    List<Coffee> bound = coffees.bind(map);
    EquipmentBinder equipmentBinder = new EquipmentBinder(binding, filled);
    Equipment equipment = equipmentBinder.bind(map);
    KitchenUse use = new KitchenUse(binding.defaults(), List.of(), equipment, true);
    List<Kitchen.Heater> heaters =
        new HeaterBinder(binding, equipmentBinder.circuitNames(), use).bind(map);
    Optional<MapReader> kitchen =
        map.read(KITCHEN).flatMap(node -> MapReader.of(node, KITCHEN_FIELDS, binding.problems()));
    return new BrewRoom(
        print,
        serving,
        bound,
        equipment,
        kitchen(kitchen, heaters, use),
        purchases(map, equipment),
        filling(kitchen),
        map.read(TIME_ZONE));
  }

  private Serving serving(MapReader map) {
    Temperature bypass =
        binding
            .defaults()
            .fill(
                map.read(ServingBinder.BYPASS_TEMPERATURE),
                USUAL_BYPASS,
                "default-bypass-temperature",
                () ->
                    Saying.of("round.default.bypass-temperature")
                        .with("temperature", binding.display().temperature(USUAL_BYPASS)));
    Temperature water =
        binding
            .defaults()
            .fill(
                map.read(ServingBinder.FILLING_TEMPERATURE),
                USUAL_WATER,
                "default-filling-temperature",
                () ->
                    Saying.of("default.filling-temperature")
                        .with("temperature", binding.display().temperature(USUAL_WATER)));
    return new Serving(new Provision.Mean(), Share.ofPercent(0), bypass, bypass, water);
  }

  private Kitchen kitchen(Optional<MapReader> map, List<Kitchen.Heater> heaters, KitchenUse use) {
    Optional<LocalTime> opens = map.flatMap(kitchen -> kitchen.read(KitchenBinder.OPENS));
    if (opens.isEmpty()) {
      binding.defaults().note("default-opens", Saying.of("default.opens"));
    }
    Duration turnaround =
        binding
            .defaults()
            .fill(
                map.flatMap(kitchen -> kitchen.read(KitchenBinder.TURNAROUND)),
                USUAL_TURNAROUND,
                "default-turnaround",
                () ->
                    Saying.of("default.turnaround")
                        .with("time", binding.display().duration(USUAL_TURNAROUND)));
    if (map.filter(kitchen -> kitchen.has(WaterCareBinder.PREHEAT)).isEmpty()) {
      binding.defaults().note("default-preheat", Saying.of("round.default.preheat"));
    }
    Kitchen.Handling usual = Kitchen.Handling.USUAL;
    return new Kitchen(
        opens,
        Kitchen.People.USUAL,
        new Kitchen.Handling(
            turnaround, usual.transfer(), usual.carry(), usual.cleaning(), usual.cooling()),
        List.of(),
        heaters,
        new WaterCareBinder(binding, use).bind(map, !heaters.isEmpty()));
  }

  private Filling filling(Optional<MapReader> map) {
    Defaults defaults = binding.defaults();
    return new Filling(
        defaults.fill(
            map.flatMap(kitchen -> kitchen.read(FILL_EACH)),
            USUAL_FILLING.each(),
            "default-fill-each",
            () -> Saying.of("round.default.fill-each")),
        defaults.fill(
            map.flatMap(kitchen -> kitchen.read(FILLERS)),
            USUAL_FILLING.hands(),
            "default-fillers",
            () -> Saying.of("round.default.fillers")),
        defaults.fill(
            map.flatMap(kitchen -> kitchen.read(LOADING)),
            USUAL_FILLING.loading(),
            "default-loading",
            () -> Saying.of("round.default.loading")));
  }

  private Purchases purchases(MapReader map, Equipment equipment) {
    Purchases purchases =
        new PurchasesBinder(binding)
            .bind(map, new SupplyBinder.Known(List.of(), false, equipment.brewers()));
    for (Supply supply : purchases.supplies()) {
      boolean byCup =
          supply.use() instanceof Supply.Use.Each each
              && (each.per() == Supply.Per.CUP || each.per() == Supply.Per.GUEST);
      if (byCup || supply.takers().cup().isPresent() || !supply.takers().groups().isEmpty()) {
        binding
            .problems()
            .at(
                supply.location(),
                "a round knows carafes, no cups, guests or groups",
                "expected a use per carafe, batch or day, such as 1 per carafe");
      }
    }
    return purchases;
  }
}
