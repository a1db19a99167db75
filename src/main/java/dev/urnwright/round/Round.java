package dev.urnwright.round;

import dev.urnwright.event.Note;
import dev.urnwright.problem.Location;
import java.util.List;

/**
 * Everything that a coffee service asked for.
 *
 * @param name what the sheets call it
 * @param room where the coffee is brewed, and with what
 * @param carafes kinds of carafe, of distinct names
 * @param legs of the drivers, of distinct names
 * @param drops what is delivered on ordinary days, in the order of the table
 * @param changes days that aren't ordinary, in the order of the file
 * @param rules what the round goes by
 * @param defaults what was assumed because the user left it out, in words
 * @param location where the round's name stands
 */
public record Round(
    String name,
    BrewRoom room,
    List<Carafe> carafes,
    List<Leg> legs,
    List<Drop> drops,
    List<Change> changes,
    Rules rules,
    List<Note> defaults,
    Location location) {
  /** Copies the lists. */
  public Round {
    carafes = List.copyOf(carafes);
    legs = List.copyOf(legs);
    drops = List.copyOf(drops);
    changes = List.copyOf(changes);
    defaults = List.copyOf(defaults);
  }

  /**
   * The kind of carafe of that name.
   *
   * @throws IllegalArgumentException if the round has none such
   */
  public Carafe carafe(String called) {
    return carafes.stream()
        .filter(carafe -> carafe.name().equals(called))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no carafe is called " + called));
  }

  /**
   * The leg of that name.
   *
   * @throws IllegalArgumentException if the round has none such
   */
  public Leg leg(String called) {
    return legs.stream()
        .filter(leg -> leg.name().equals(called))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no leg is called " + called));
  }
}
