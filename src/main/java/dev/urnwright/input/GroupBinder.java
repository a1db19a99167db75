package dev.urnwright.input;

import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.GuestGroup.Arrivals;
import dev.urnwright.event.GuestGroup.CoffeeShare;
import dev.urnwright.event.GuestGroup.Cup;
import dev.urnwright.event.GuestGroup.Guests;
import dev.urnwright.event.GuestGroup.OverIce;
import dev.urnwright.event.GuestGroup.Service;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Strength;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import dev.urnwright.wording.Saying;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds one group of guests. */
final class GroupBinder {
  private static final Field<String> NAME =
      Field.optional("name", Words.name("Visitors"), "what sheets and labels call it");
  private static final Field<Integer> HEADCOUNT =
      Field.required("headcount", Numbers.count("40", 1, 1_000_000), "how many guests come");
  private static final Field<Share> DRINKERS =
      Field.optional(
          "drinkers", Amounts.share("85 %", "0.1 %", "100 %"), "the share who drink coffee");
  private static final Field<Double> CUPS_EACH =
      Field.optional("cups_each", Numbers.number("1.5", "0.01", "50"), "cups for each drinker");
  private static final Field<Volume> CUP =
      Field.required(
          "cup",
          Slip.asked(
              Amounts.volume("240 ml", "20 ml", "5 l"),
              cup -> cup.litres() >= 0.1 && cup.litres() <= 0.7),
          "what the cup holds");
  private static final Field<Volume> ROOM =
      Field.optional(
          "room", Amounts.volume("20 ml", "0 ml", "5 l"), "left free in the cup, for milk");
  private static final Field<Temperature> SERVICE_TEMPERATURE =
      Field.optional(
          "service_temperature",
          Amounts.temperature("75 °C"),
          "how warm it is in the cup, where this group differs");
  private static final Field<TimeWindow> SERVE =
      Field.optional("serve", Times.A_WINDOW, "from when to when it is poured");
  private static final Field<Arrivals> ARRIVALS =
      Field.optional(
          "arrivals",
          new ArrivalsKind(),
          "whether more guests come early or late; or shares of equal parts of that time");
  private static final Field<Located<String>> STATION =
      Field.optional(
          "station", Located.of(Words.name("Marquee").naming("stations")), "where it is served");
  private static final Field<Located<String>> DISPENSER =
      Field.optional(
          "dispenser",
          Located.of(Words.name("Airpot").naming("dispensers")),
          "the kind of dispenser to fill for it");

  static final Fields FIELDS =
      Fields.of(
          "group",
          NAME,
          HEADCOUNT,
          DRINKERS,
          CUPS_EACH,
          CUP,
          ROOM,
          StrengthBinder.STRENGTH,
          CoffeeChoice.COFFEE,
          OverIceBinder.OVER_ICE,
          SERVICE_TEMPERATURE,
          SERVE,
          ARRIVALS,
          STATION,
          DISPENSER);

  private final Binding binding;
  private final StrengthBinder strengths;
  private final CoffeeChoice coffees;
  private final OverIceBinder ice;
  private final Places places;
  private final Temperature usualTemperature;

  GroupBinder(
      Binding binding,
      StrengthBinder strengths,
      CoffeeChoice coffees,
      Places places,
      Temperature usualTemperature) {
    this.binding = binding;
    this.strengths = strengths;
    this.coffees = coffees;
    this.ice = new OverIceBinder(binding.problems());
    this.places = places;
    this.usualTemperature = usualTemperature;
  }

  /** A group; empty when it has problems. */
  Optional<GuestGroup> bind(int number, Node node, Names names) {
    return MapReader.of(node, FIELDS, binding.problems()).flatMap(map -> bind(number, map, names));
  }

  private Optional<GuestGroup> bind(int number, MapReader map, Names names) {
    Optional<String> given = map.read(NAME);
    String name = given.orElse("Group " + number);
    names.add(name, map.valueOf(NAME));
    if (!map.has(NAME)) {
      binding.defaults().noteOf(name, "default-group-name", () -> Saying.of("default.group-name"));
    }
    Optional<Guests> guests = guests(name, map);
    Optional<OverIceBinder.Iced> iced = ice.bind(map, SERVICE_TEMPERATURE);
    Optional<Cup> cup = cup(map, iced);
    Optional<Strength> strength = strengths.bind(map);
    List<CoffeeShare> shares = coffees.bind(name, map);
    Service service = service(name, map);
    if (guests.isEmpty() || cup.isEmpty() || strength.isEmpty() || shares.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new GuestGroup(
            name,
            guests.get(),
            cup.get(),
            strength.get(),
            shares,
            iced.map(both -> new OverIce(both.pouredAt())),
            service,
            map.valueOf(NAME)));
  }

  private Optional<Guests> guests(String name, MapReader map) {
    Defaults defaults = binding.defaults();
    Share all = Share.ofPercent(100);
    Share drinkers =
        defaults.fill(
            name,
            map.read(DRINKERS),
            all,
            "default-drinkers",
            () -> Saying.of("default.drinkers").with("share", binding.display().share(all)));
    double cupsEach =
        defaults.fill(
            name,
            map.read(CUPS_EACH),
            1.0,
            "default-cups-each",
            () -> Saying.of("default.cups-each"));
    return map.read(HEADCOUNT).map(headcount -> new Guests(headcount, drinkers, cupsEach));
  }

  private Optional<Cup> cup(MapReader map, Optional<OverIceBinder.Iced> iced) {
    Optional<Volume> size = map.read(CUP);
    Volume room = map.read(ROOM).orElse(Volume.ofLitres(0));
    Temperature own = map.read(SERVICE_TEMPERATURE).orElse(usualTemperature);
    if (size.isPresent() && room.compareTo(size.get()) >= 0) {
      binding
          .problems()
          .at(
              map.valueOf(ROOM),
              "this room leaves no coffee in the cup",
              "expected less than the cup of " + binding.display().volume(size.get()));
      return Optional.empty();
    }
    return size.map(
        volume -> new Cup(volume, room, iced.map(OverIceBinder.Iced::servedAt).orElse(own)));
  }

  private Service service(String name, MapReader map) {
    Optional<TimeWindow> window = map.read(SERVE);
    Optional<Arrivals> arrivals = map.read(ARRIVALS);
    if (window.isPresent() && !map.has(ARRIVALS)) {
      binding.defaults().noteOf(name, "default-arrivals", () -> Saying.of("default.arrivals"));
    }
    if (!map.has(SERVE) && map.has(ARRIVALS)) {
      binding
          .problems()
          .at(
              map.keyOf(ARRIVALS),
              "nothing says over what time these guests arrive",
              "expected a window beside it, such as serve: 08:00-10:00");
    }
    Optional<Located<String>> station = map.read(STATION);
    if (!places.stations().isEmpty()) {
      station.ifPresent(
          named -> References.check(named, "station", places.stations(), binding.problems()));
    }
    Optional<Located<String>> dispenser = map.read(DISPENSER);
    dispenser.ifPresent(
        named -> References.check(named, "dispenser", places.dispensers(), binding.problems()));
    return new Service(
        window,
        arrivals.orElse(Arrivals.EVEN),
        station.map(Located::value),
        dispenser.map(Located::value));
  }

  /**
   * What groups may name.
   *
   * @param dispensers kinds of dispenser
   * @param stations where they are served; any place when none is listed
   */
  record Places(List<String> dispensers, List<String> stations) {}
}
