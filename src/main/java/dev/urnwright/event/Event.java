package dev.urnwright.event;

import dev.urnwright.problem.Location;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything that the user asked for.
 *
 * @param name the event's name
 * @param date the day of the event, when given
 * @param time when groups without a window of their own are due, when given
 * @param print how the sheets print
 * @param serving how cups are counted and how warm things are
 * @param coffees one or more, of distinct {@link Coffee#key() keys}
 * @param groups one or more, of distinct names; every coffee named in one is in {@code coffees}
 * @param equipment brewers, circuits, dispensers, scale and jug
 * @param kitchen how the work is done on the day
 * @param purchases what is bought besides coffee, what it costs, what is brought along
 * @param defaults what was assumed because the user left it out, in words
 * @param kind what kind of event it is, such as conference, if guests' thirst is to be learned by
 *     it
 * @param taught what a journal taught; it is in the coffees and groups already
 * @param location where the event's name stands
 */
public record Event(
    String name,
    Optional<LocalDate> date,
    Optional<LocalTime> time,
    Print print,
    Serving serving,
    List<Coffee> coffees,
    List<GuestGroup> groups,
    Equipment equipment,
    Kitchen kitchen,
    Purchases purchases,
    List<Note> defaults,
    Optional<String> kind,
    Taught taught,
    Location location) {
  /** Copies the lists. */
  public Event {
    coffees = List.copyOf(coffees);
    groups = List.copyOf(groups);
    defaults = List.copyOf(defaults);
    if (coffees.isEmpty() || groups.isEmpty()) {
      throw new IllegalArgumentException("an event has at least one coffee and one group");
    }
  }

  /** An event of no kind in particular, planned by what it says alone. */
  public Event(
      String name,
      Optional<LocalDate> date,
      Optional<LocalTime> time,
      Print print,
      Serving serving,
      List<Coffee> coffees,
      List<GuestGroup> groups,
      Equipment equipment,
      Kitchen kitchen,
      Purchases purchases,
      List<Note> defaults,
      Location location) {
    this(
        name,
        date,
        time,
        print,
        serving,
        coffees,
        groups,
        equipment,
        kitchen,
        purchases,
        defaults,
        Optional.empty(),
        Taught.NOTHING,
        location);
  }

  /**
   * The same event, with what a journal taught.
   *
   * @param known its coffees
   * @param guests its groups
   * @param besides notes of what was used
   * @param lessons what that was
   */
  public Event taught(
      List<Coffee> known, List<GuestGroup> guests, List<Note> besides, Taught lessons) {
    return new Event(
        name,
        date,
        time,
        print,
        serving,
        known,
        guests,
        equipment,
        kitchen,
        purchases,
        Stream.concat(defaults.stream(), besides.stream()).toList(),
        kind,
        lessons,
        location);
  }

  /** The same event with other equipment, in a kitchen that works otherwise. */
  public Event with(Equipment other, Kitchen otherwise) {
    return new Event(
        name, date, time, print, serving, coffees, groups, other, otherwise, purchases, defaults,
        kind, taught, location);
  }

  /** The same event with a note. */
  public Event noting(Note note) {
    return taught(coffees, groups, List.of(note), taught);
  }

  /** Where it is said that a journal should be used; empty when that isn't said. */
  public Optional<Location> journalNamedAt() {
    return coffees.stream()
        .flatMap(coffee -> coffee.journal().stream())
        .map(JournalName::location)
        .findFirst()
        .or(() -> kind.map(given -> location));
  }

  /** Whether it is known when every group is served, so that the work can be put on a clock. */
  public boolean isTimed() {
    return time.isPresent()
        || groups.stream().allMatch(group -> group.service().window().isPresent());
  }

  /**
   * The coffee of that key.
   *
   * @throws IllegalArgumentException if the event has none such
   */
  public Coffee coffee(String key) {
    return coffees.stream()
        .filter(coffee -> coffee.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no coffee has the key " + key));
  }
}
