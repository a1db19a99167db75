package dev.urnwright.dispatch;

import static java.util.Objects.requireNonNull;

import dev.urnwright.round.DayOfRound;
import dev.urnwright.round.DayOfRound.Delivery;
import dev.urnwright.round.Filling;
import dev.urnwright.round.Leg;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * When the carafes of each leg are filled: as late as can be, one leg after another in the order in
 * which they leave. Counted back from the last leg, each ends when its loading begins or the next
 * leg's filling does, whichever is earlier.
 */
final class FillingTimes {
  private FillingTimes() {}

  /**
   * When one leg's carafes are filled, on the even day.
   *
   * @param leg which
   * @param carafes how many
   * @param from when the first is filled; its coffee is brewed by then
   * @param to when the last one is closed
   * @param leave when the van leaves
   */
  record Slot(Leg leg, int carafes, LocalDateTime from, LocalDateTime to, LocalDateTime leave) {}

  /** The slots of all legs that deliver something, in the order in which they leave. */
  static Map<String, Slot> of(List<Leg> legs, DayOfRound day, Filling filling, NightClock clock) {
    Map<String, Integer> carafes = new LinkedHashMap<>();
    for (Delivery delivery : day.deliveries()) {
      carafes.merge(delivery.drop().stop().leg(), delivery.carafes(), Integer::sum);
    }
    List<Leg> lastFirst =
        legs.stream()
            .filter(leg -> carafes.containsKey(leg.name()))
            .sorted(Comparator.comparing(Leg::leave).reversed())
            .toList();
    List<Slot> slots = new ArrayList<>();
    LocalDateTime next = LocalDateTime.MAX;
    for (Leg leg : lastFirst) {
      LocalDateTime leave = clock.even(day.date().atTime(leg.leave()));
      LocalDateTime loading = leave.minus(filling.loading());
      LocalDateTime to = loading.isBefore(next) ? loading : next;
      int count = requireNonNull(carafes.get(leg.name()));
      LocalDateTime from = to.minus(filling.of(count));
      slots.add(new Slot(leg, count, from, to, leave));
      next = from;
    }
    Map<String, Slot> byLeg = new LinkedHashMap<>();
    for (int i = slots.size() - 1; i >= 0; i--) {
      byLeg.put(slots.get(i).leg().name(), slots.get(i));
    }
    return byLeg;
  }
}
