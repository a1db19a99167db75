package dev.urnwright.input;

import dev.urnwright.event.Equipment;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.wording.Saying;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What an event asks of the kitchen. Without a run on the clock, or without what a default is for,
 * the default changes nothing and isn't noted.
 *
 * @param defaults collects what was left out
 * @param groups who is served
 * @param equipment with what
 * @param timed whether the work is put on a clock
 */
record KitchenUse(Defaults defaults, List<GuestGroup> groups, Equipment equipment, boolean timed) {
  static KitchenUse of(
      Defaults defaults, List<GuestGroup> groups, Equipment equipment, Optional<LocalTime> time) {
    boolean due =
        time.isPresent() || groups.stream().allMatch(group -> group.service().window().isPresent());
    return new KitchenUse(defaults, groups, equipment, due && !equipment.brewers().isEmpty());
  }

  /** Whether a group is served over ice at a time. */
  boolean iced() {
    return timed && groups.stream().anyMatch(group -> group.ice().isPresent());
  }

  /** Whether a group is served hot at a time. */
  boolean hot() {
    return timed && groups.stream().anyMatch(group -> group.ice().isEmpty());
  }

  /** Whether dispensers are filled at a time. */
  boolean dispensers() {
    return timed && !equipment.dispensers().isEmpty();
  }

  /** Whether a group is served at a time where no carrying time is listed. */
  boolean elsewhere(List<StationBinder.Listed> stations) {
    List<String> listed =
        stations.stream()
            .filter(station -> station.carry().isPresent())
            .map(StationBinder.Listed::name)
            .toList();
    return timed
        && groups.stream()
            .anyMatch(group -> group.service().station().filter(listed::contains).isEmpty());
  }

  /** What was given, else the default, noted if it matters. */
  <T> T fill(
      boolean matters, Optional<T> given, T otherwise, String code, Supplier<Saying> sentence) {
    return matters ? defaults.fill(given, otherwise, code, sentence) : given.orElse(otherwise);
  }

  /** The same for one of several. */
  <T> T fill(
      boolean matters,
      String name,
      Optional<T> given,
      T otherwise,
      String code,
      Supplier<Saying> sentence) {
    return matters
        ? defaults.fill(name, given, otherwise, code, sentence)
        : given.orElse(otherwise);
  }
}
