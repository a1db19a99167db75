package dev.urnwright.input;

import dev.urnwright.event.Kitchen;
import dev.urnwright.event.Kitchen.Handling;
import dev.urnwright.event.Kitchen.Heater;
import dev.urnwright.event.Kitchen.People;
import dev.urnwright.quantity.Figure;
import dev.urnwright.wording.Saying;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds how the work is done on the day. */
final class KitchenBinder {
  static final Field<LocalTime> OPENS =
      Field.optional("opens", Times.A_TIME, "nothing can be switched on before");
  private static final Field<Integer> PEOPLE =
      Field.optional("people", Numbers.count("2", 1, 1000), "how many work the run");
  private static final Field<Integer> PER_WALK =
      Field.optional(
          "per_walk", Numbers.count("2", 1, 100), "how many dispensers one person takes at once");
  static final Field<Duration> TURNAROUND =
      Field.optional(
          "turnaround", Amounts.duration("2 min", "0 s", "4 h"), "to empty and reload a brewer");
  private static final Field<Duration> TRANSFER =
      Field.optional(
          "transfer", Amounts.duration("3 min", "0 s", "4 h"), "to fill a dispenser, lid and all");
  private static final Field<Duration> CARRY =
      Field.optional(
          "carry",
          Amounts.duration("3 min", "0 s", "12 h"),
          "to a station that has no time of its own");
  private static final Field<Duration> CLEANING =
      Field.optional(
          "cleaning", Amounts.duration("5 min", "0 s", "4 h"), "of a dispenser that came back");
  private static final Field<Duration> COOLING =
      Field.optional(
          "cooling", Amounts.duration("60 min", "0 s", "12 h"), "of concentrate for iced groups");

  private static final Fields FIELDS =
      Fields.of(
          "kitchen",
          OPENS,
          PEOPLE,
          PER_WALK,
          TURNAROUND,
          TRANSFER,
          CARRY,
          CLEANING,
          COOLING,
          WaterCareBinder.PREHEAT,
          WaterCareBinder.TAP,
          WaterCareBinder.AIR,
          WaterCareBinder.CONCENTRATE,
          WaterCareBinder.RINSE);

  static final Field<Node> KITCHEN =
      Field.optional("kitchen", Part.mapping(FIELDS), "how the work is done on the day");

  private static final Handling USUAL = Handling.USUAL;

  private final Binding binding;
  private final KitchenUse use;

  KitchenBinder(Binding binding, KitchenUse use) {
    this.binding = binding;
    this.use = use;
  }

  Kitchen bind(MapReader event, List<StationBinder.Listed> stations, List<Heater> heaters) {
    Optional<MapReader> map =
        event.read(KITCHEN).flatMap(node -> MapReader.of(node, FIELDS, binding.problems()));
    Optional<LocalTime> opens = map.flatMap(kitchen -> kitchen.read(OPENS));
    if (opens.isEmpty() && use.timed()) {
      use.defaults().note("default-opens", Saying.of("default.opens"));
    }
    Handling handling = handling(map, stations);
    return new Kitchen(
        opens,
        people(map),
        handling,
        stations.stream().map(station -> station.usually(handling.carry())).toList(),
        heaters,
        new WaterCareBinder(binding, use).bind(map, !heaters.isEmpty()));
  }

  private People people(Optional<MapReader> map) {
    Optional<Integer> count = map.flatMap(kitchen -> kitchen.read(PEOPLE));
    return new People(
        count.stream().mapToInt(Integer::intValue).findFirst(),
        use.fill(
            use.dispensers(),
            map.flatMap(kitchen -> kitchen.read(PER_WALK)),
            People.USUAL.perWalk(),
            "default-per-walk",
            () -> Saying.of("default.per-walk").with("count", People.USUAL.perWalk())));
  }

  private Handling handling(Optional<MapReader> map, List<StationBinder.Listed> stations) {
    return new Handling(
        time(
            use.timed(),
            map.flatMap(kitchen -> kitchen.read(TURNAROUND)),
            USUAL.turnaround(),
            "default-turnaround"),
        time(
            use.timed(),
            map.flatMap(kitchen -> kitchen.read(TRANSFER)),
            USUAL.transfer(),
            "default-transfer"),
        time(
            use.elsewhere(stations),
            map.flatMap(kitchen -> kitchen.read(CARRY)),
            USUAL.carry(),
            "default-carry"),
        time(
            use.dispensers(),
            map.flatMap(kitchen -> kitchen.read(CLEANING)),
            USUAL.cleaning(),
            "default-cleaning"),
        time(
            use.iced(),
            map.flatMap(kitchen -> kitchen.read(COOLING)),
            USUAL.cooling(),
            "default-cooling"));
  }

  private Duration time(boolean matters, Optional<Duration> given, Duration usual, String code) {
    return use.fill(
        matters,
        given,
        usual,
        code,
        () ->
            Saying.of(code.replaceFirst("-", "."))
                .with("time", new Figure(Long.toString(usual.toMinutes()), "min")));
  }
}
