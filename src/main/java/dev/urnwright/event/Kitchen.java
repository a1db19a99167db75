package dev.urnwright.event;

import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Power;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Temperature;
import dev.urnwright.quantity.Volume;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How the work is done on the day: what the clock needs beyond the equipment itself.
 *
 * @param opens before this time nothing can be switched on, when given
 * @param people who work the run
 * @param handling how long the crew's hands take
 * @param stations where groups are served
 * @param heaters what heats water for bypass, rinsing and preheating
 * @param water how warm things are, and what rinsing takes
 */
public record Kitchen(
    Optional<LocalTime> opens,
    People people,
    Handling handling,
    List<Station> stations,
    List<Heater> heaters,
    WaterCare water) {
  /** Nothing said: unlimited time, no stations or heaters listed, usual handling. */
  public static final Kitchen USUAL =
      new Kitchen(
          Optional.empty(), People.USUAL, Handling.USUAL, List.of(), List.of(), WaterCare.USUAL);

  /** Copies the lists. */
  public Kitchen {
    stations = List.copyOf(stations);
    heaters = List.copyOf(heaters);
  }

  /** The same, opening at another time. */
  public Kitchen opening(LocalTime other) {
    return new Kitchen(Optional.of(other), people, handling, stations, heaters, water);
  }

  /** The carrying time to a station; the usual one when it isn't listed. */
  public Duration carryTo(Optional<String> station) {
    return stations.stream()
        .filter(s -> station.isPresent() && s.name().equals(station.get()))
        .map(Station::carry)
        .findFirst()
        .orElse(handling.carry());
  }

  /**
   * How long the crew's hands take.
   *
   * @param turnaround from the last drop until a brewer can start again: dump, rinse, reload
   * @param transfer from the brewer into a dispenser, bypass and lid included
   * @param carry to a station that is not listed
   * @param cleaning of a dispenser that came back, before it is filled again
   * @param cooling of concentrate for iced groups before it is poured
   */
  public record Handling(
      Duration turnaround, Duration transfer, Duration carry, Duration cleaning, Duration cooling) {
    /** Two, three, three, five and sixty minutes. */
    public static final Handling USUAL =
        new Handling(
            Duration.ofMinutes(2),
            Duration.ofMinutes(3),
            Duration.ofMinutes(3),
            Duration.ofMinutes(5),
            Duration.ofMinutes(60));
  }

  /**
   * Who works the run.
   *
   * @param count how many, 1 or more, when given
   * @param perWalk dispensers that one of them takes to a station, or back, at once; 1 or more
   */
  public record People(OptionalInt count, int perWalk) {
    /** Nobody knows how many; one dispenser in each hand, or what is heavy on a trolley. */
    public static final People USUAL = new People(OptionalInt.empty(), 2);
  }

  /**
   * Where groups are served.
   *
   * @param name distinct among the stations
   * @param carry how long a dispenser takes there, and back
   * @param location where it stands in the file
   */
  public record Station(String name, Duration carry, Location location) {}

  /**
   * What heats water: kettle, tower, boiler.
   *
   * @param name distinct among the heaters
   * @param count how many of it, 1 or more
   * @param capacity hot water that one holds
   * @param power of one
   * @param efficiency share of the power that reaches the water, above 0
   * @param circuit the name of its circuit, when given
   * @param location where it stands
   */
  public record Heater(
      String name,
      int count,
      Volume capacity,
      Power power,
      Share efficiency,
      Optional<String> circuit,
      Location location) {}

  /**
   * How warm things are, and what rinsing takes.
   *
   * @param tap the water that heaters are filled with
   * @param air around the dispensers
   * @param concentrate as it leaves the brewer
   * @param rinse hot water to rinse the filter of one batch
   * @param preheat whether dispensers are rinsed hot before they are filled
   */
  public record WaterCare(
      Temperature tap, Temperature air, Temperature concentrate, Volume rinse, boolean preheat) {
    /**
     * Tap at 15 °C, air at 20 °C, concentrate at 88 °C, no filter rinsing, preheated dispensers.
     */
    public static final WaterCare USUAL =
        new WaterCare(
            Temperature.ofCelsius(15),
            Temperature.ofCelsius(20),
            Temperature.ofCelsius(88),
            Volume.ofLitres(0),
            true);
  }
}
