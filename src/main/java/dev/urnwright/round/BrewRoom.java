package dev.urnwright.round;

import dev.urnwright.event.Coffee;
import dev.urnwright.event.Equipment;
import dev.urnwright.event.Kitchen;
import dev.urnwright.event.Print;
import dev.urnwright.event.Purchases;
import dev.urnwright.event.Serving;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * Where the coffee is brewed.
 *
 * @param print how the sheets print
 * @param serving how warm things are; carafes are filled at the temperature of the bypass
 * @param coffees one or more, of distinct keys
 * @param equipment brewers, circuits, scale and jug; its dispensers are the round's carafes
 * @param kitchen how the work is done
 * @param purchases what is bought besides coffee
 * @param filling how carafes are filled and loaded
 * @param zone whose clocks may be put forward or back in a night, when given
 */
public record BrewRoom(
    Print print,
    Serving serving,
    List<Coffee> coffees,
    Equipment equipment,
    Kitchen kitchen,
    Purchases purchases,
    Filling filling,
    Optional<ZoneId> zone) {
  /** Copies the list. */
  public BrewRoom {
    coffees = List.copyOf(coffees);
  }
}
