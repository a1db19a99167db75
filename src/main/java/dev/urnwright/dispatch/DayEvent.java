package dev.urnwright.dispatch;

import static java.util.Objects.requireNonNull;

import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Equipment;
import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Kitchen;
import dev.urnwright.event.Provision;
import dev.urnwright.event.Serving;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.problem.Location;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Volume;
import dev.urnwright.round.BrewRoom;
import dev.urnwright.round.Carafe;
import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.DayOfRound.Delivery;
import dev.urnwright.round.Round;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A day's round as an event: each {@link LotKey} a group whose "cups" are carafes, each carafe a
 * dispenser filled once, all due when the filling of its leg begins. What a carafe may stand before
 * it is handed over is taken off its hold.
 */
final class DayEvent {
  /** Rounding adds at most a step of concentrate and one of water. */
  private static final int ROUNDING_STEPS = 2;

  /** Carafes leave together, so nobody queues for one. */
  private static final double ALL_AT_ONCE = 1e9;

  /** A window of time has a minute at least. */
  private static final int MINUTE = 1;

  private final Round round;
  private final DayOfRound day;
  private final NightClock clock;
  private final Map<String, FillingTimes.Slot> slots;
  private final Map<LotKey, Integer> lots = new LinkedHashMap<>();
  private final Map<LotKey, Location> places = new LinkedHashMap<>();
  private final Map<String, LocalDateTime> lastHanded = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  DayEvent(Round round, DayOfRound day, NightClock clock, Map<String, FillingTimes.Slot> slots) {
    this.round = round;
    this.day = day;
    this.clock = clock;
    this.slots = slots;
    for (String leg : slots.keySet()) {
      day.deliveries().stream()
          .filter(delivery -> delivery.drop().stop().leg().equals(leg))
          .forEach(this::take);
    }
  }

  /** Room in a carafe that is kept for rounding to the scale. */
  static Volume slack(BrewRoom room) {
    return Volume.ofWater(
        room.equipment().scaleStep().times(ROUNDING_STEPS), room.serving().bypassTemperature());
  }

  /** The lots in the order in which their legs leave, with their carafes. */
  Map<LotKey, Integer> lots() {
    return lots;
  }

  /** When the last stop of a leg is served, on the even day. */
  LocalDateTime lastHanded(String leg) {
    return requireNonNull(lastHanded.get(leg));
  }

  /** What stands in the way of an event. */
  List<Problem> problems() {
    return problems;
  }

  private void take(Delivery delivery) {
    LotKey key = LotKey.of(delivery.drop());
    lots.merge(key, delivery.carafes(), Integer::sum);
    places.putIfAbsent(key, delivery.drop().location());
    FillingTimes.Slot slot = slot(key);
    LocalDateTime handed = slot.leave();
    Optional<TimeWindow> window = delivery.drop().stop().window();
    if (window.isPresent()) {
      LocalDateTime end = clock.even(day.date().atTime(window.get().end()));
      if (end.isBefore(slot.leave())) {
        problems.add(
            new Problem(
                delivery.drop().location(),
                "the window "
                    + window.get()
                    + " is over when "
                    + key.leg()
                    + " leaves at "
                    + slot.leg().leave(),
                "expected a later window, or another leg"));
        return;
      }
      handed = end;
    }
    LocalDateTime last = handed;
    lastHanded.merge(key.leg(), last, (a, b) -> a.isAfter(b) ? a : b);
  }

  private FillingTimes.Slot slot(LotKey key) {
    return requireNonNull(slots.get(key.leg()));
  }

  /** The event. */
  Event event() {
    BrewRoom room = round.room();
    Map<String, Dispenser> dispensers = dispensers();
    List<GuestGroup> groups = new ArrayList<>();
    lots.forEach((key, carafes) -> groups.add(group(key, carafes)));
    Equipment equipment = room.equipment();
    return new Event(
        round.name(),
        Optional.of(day.date()),
        Optional.empty(),
        room.print(),
        new Serving(
            new Provision.Mean(),
            Share.ofPercent(0),
            room.serving().bypassTemperature(),
            room.serving().bypassTemperature(),
            room.serving().fillingTemperature()),
        room.coffees().stream()
            .filter(
                coffee ->
                    lots.keySet().stream()
                        .anyMatch(key -> key.content().coffee().equals(coffee.key())))
            .toList(),
        groups,
        new Equipment(
            equipment.brewers(),
            equipment.circuits(),
            List.copyOf(dispensers.values()),
            equipment.scaleStep(),
            equipment.jugMark(),
            equipment.uncertainties()),
        kitchen(room),
        room.purchases(),
        round.defaults(),
        round.location());
  }

  private Kitchen kitchen(BrewRoom room) {
    Kitchen given = room.kitchen();
    Kitchen.Handling hands = given.handling();
    return new Kitchen(
        opening(room, day, firstLeave()).map(opens -> clock.even(opens).toLocalTime()),
        given.people(),
        new Kitchen.Handling(
            hands.turnaround(), Duration.ZERO, Duration.ZERO, hands.cleaning(), hands.cooling()),
        List.of(),
        given.heaters(),
        given.water());
  }

  private LocalTime firstLeave() {
    return slots.values().iterator().next().leg().leave();
  }

  /** When the brew room opens: the evening before if it opens later than the first leg leaves. */
  static Optional<LocalDateTime> opening(BrewRoom room, DayOfRound day, LocalTime firstLeave) {
    return room.kitchen()
        .opens()
        .map(
            opens ->
                opens.isBefore(firstLeave)
                    ? day.date().atTime(opens)
                    : day.date().minusDays(1).atTime(opens));
  }

  private GuestGroup group(LotKey key, int carafes) {
    LocalTime due = slot(key).from().toLocalTime();
    return new GuestGroup(
        key.name(),
        new GuestGroup.Guests(carafes, Share.ofPercent(100), 1),
        new GuestGroup.Cup(
            round.carafe(key.content().carafe()).fill(),
            Volume.ofLitres(0),
            round.room().serving().bypassTemperature()),
        key.content().strength(),
        List.of(new GuestGroup.CoffeeShare(key.content().coffee(), Share.ofPercent(100))),
        Optional.empty(),
        new GuestGroup.Service(
            Optional.of(new TimeWindow(due, due.plusMinutes(MINUTE))),
            GuestGroup.Arrivals.EVEN,
            Optional.empty(),
            Optional.of(dispenserName(key))),
        requireNonNull(places.get(key)));
  }

  private static String dispenserName(LotKey key) {
    return key.content().carafe() + " (" + key.leg() + ")";
  }

  private Map<String, Dispenser> dispensers() {
    Map<String, Dispenser> dispensers = new LinkedHashMap<>();
    for (LotKey key : lots.keySet()) {
      dispensers.computeIfAbsent(dispenserName(key), name -> dispenser(name, key));
    }
    return dispensers;
  }

  private Dispenser dispenser(String name, LotKey key) {
    Carafe carafe = round.carafe(key.content().carafe());
    int count =
        lots.entrySet().stream()
            .filter(lot -> dispenserName(lot.getKey()).equals(name))
            .mapToInt(Map.Entry::getValue)
            .sum();
    FillingTimes.Slot slot = slot(key);
    LocalDateTime good =
        lastHanded.getOrDefault(key.leg(), slot.leave()).plus(round.rules().fresh());
    Duration standing = Duration.between(slot.from(), good);
    Duration left = carafe.hold().minus(standing).plusMinutes(MINUTE);
    if (left.toMinutes() < MINUTE) {
      Mass step = round.room().equipment().scaleStep();
      Display display = new Display(round.room().print().units(), step);
      problems.add(
          new Problem(
              carafe.location(),
              "coffee in "
                  + carafe.name()
                  + " would be past its hold on "
                  + key.leg()
                  + ": from filling until it may be drunk it stands for "
                  + display.duration(standing),
              "expected a hold of more than that, later filling, earlier windows, or a shorter"
                  + " 'fresh'"));
      left = Duration.ofMinutes(MINUTE);
    }
    return new Dispenser(
        name,
        count,
        carafe.fill().plus(slack(round.room())),
        Volume.ofLitres(0),
        Optional.of(left),
        OptionalDouble.of(carafe.coolingKelvinsFirstHour()),
        OptionalDouble.of(ALL_AT_ONCE),
        carafe.location());
  }
}
