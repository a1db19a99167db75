package dev.urnwright.plan;

import static java.util.Objects.requireNonNull;

import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.plan.Timetable.FillWindow;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where more of a kind of dispenser would be out at once than there are: gives a group another kind
 * that has enough free at its time; where there is none, sets fewer side by side.
 */
final class DispenserSwaps {
  /** A run of more groups is a logistics project, and isn't improved upon. */
  private static final int MOST_NEEDS = 200;

  private static final int MOST_SWAPS = 60;

  private final DispenserPlan plan;
  private final Event event;
  private final Timetable timetable;
  private final int early;

  /**
   * Swaps.
   *
   * @param early minutes that dispensers are filled before they must be
   */
  DispenserSwaps(DispenserPlan plan, Event event, int early) {
    this.plan = plan;
    this.event = event;
    this.timetable = new Timetable(event);
    this.early = early;
  }

  /** What another choice for a group leaves missing, in dispenser minutes of the kind it had. */
  private record Swap(GroupNeed need, Chosen chosen, long missing) {}

  /** Changes what was chosen as long as that helps; what stays missing is for the clock to say. */
  void settle(List<GroupNeed> needs, Map<GroupNeed, Chosen> chosen) {
    if (needs.size() > MOST_NEEDS) {
      return;
    }
    for (int swaps = 0; swaps < MOST_SWAPS; swaps++) {
      Optional<Swap> best =
          event.equipment().dispensers().stream()
              .filter(kind -> missing(kind, needs, chosen) > 0)
              .flatMap(kind -> relief(kind, needs, chosen).stream())
              .findFirst();
      if (best.isEmpty()) {
        return;
      }
      chosen.put(best.get().need(), best.get().chosen());
    }
  }

  private Optional<Swap> relief(
      Dispenser kind, List<GroupNeed> needs, Map<GroupNeed, Chosen> chosen) {
    long now = missing(kind, needs, chosen);
    List<GroupNeed> users =
        needs.stream()
            .filter(need -> requireNonNull(chosen.get(need)).dispenser().equals(kind))
            .toList();
    return users.stream()
        .flatMap(need -> elsewhere(need, kind, needs, chosen))
        .filter(swap -> swap.missing() < now)
        .min(
            Comparator.comparingLong(Swap::missing).thenComparingInt(swap -> swap.chosen().fills()))
        .or(
            () ->
                users.stream()
                    .flatMap(need -> fewer(need, kind, needs, chosen))
                    .filter(swap -> swap.missing() < now)
                    .min(
                        Comparator.comparingInt((Swap swap) -> lacking(swap.need(), swap.chosen()))
                            .thenComparingLong(Swap::missing)));
  }

  /** Kinds that have enough free for a group, with no more of its guests in a queue. */
  private Stream<Swap> elsewhere(
      GroupNeed need, Dispenser kind, List<GroupNeed> needs, Map<GroupNeed, Chosen> chosen) {
    return event.equipment().dispensers().stream()
        .filter(other -> need.group().service().dispenser().map(other.name()::equals).orElse(true))
        .flatMap(other -> plan.with(need, other, Integer.MAX_VALUE).stream())
        .filter(other -> lacking(need, other) <= lacking(need, requireNonNull(chosen.get(need))))
        .filter(other -> missing(other.dispenser(), needs, swapped(chosen, need, other)) == 0)
        .map(other -> swap(need, other, kind, needs, chosen));
  }

  private Stream<Swap> fewer(
      GroupNeed need, Dispenser kind, List<GroupNeed> needs, Map<GroupNeed, Chosen> chosen) {
    return IntStream.rangeClosed(2, requireNonNull(chosen.get(need)).taps())
        .boxed()
        .flatMap(taps -> plan.with(need, kind, taps).stream())
        .map(with -> swap(need, with, kind, needs, chosen));
  }

  /** How many more a group's guests would need side by side, so that none stand in a queue. */
  private int lacking(GroupNeed need, Chosen chosen) {
    int taps = timetable.tapsFor(need.group(), need.demand().cups(), chosen.dispenser());
    return Math.max(0, taps - chosen.taps());
  }

  private Swap swap(
      GroupNeed need,
      Chosen with,
      Dispenser kind,
      List<GroupNeed> needs,
      Map<GroupNeed, Chosen> chosen) {
    return new Swap(need, with, missing(kind, needs, swapped(chosen, need, with)));
  }

  private static Map<GroupNeed, Chosen> swapped(
      Map<GroupNeed, Chosen> chosen, GroupNeed need, Chosen with) {
    Map<GroupNeed, Chosen> other = new java.util.IdentityHashMap<>(chosen);
    other.put(need, with);
    return other;
  }

  /** Minutes of a kind's dispensers that are wanted beyond those that there are. */
  private long missing(Dispenser kind, List<GroupNeed> needs, Map<GroupNeed, Chosen> chosen) {
    TreeMap<Integer, Integer> changes = new TreeMap<>();
    for (GroupNeed need : needs) {
      Chosen with = requireNonNull(chosen.get(need));
      if (with.dispenser().equals(kind)) {
        for (FillWindow window :
            timetable.windows(need.group(), Optional.of(kind), with.fills(), with.taps())) {
          int from = Math.max(window.latestReady() - early, window.earliestReady());
          int until = window.lastPour() + window.carry() + timetable.cleaning();
          changes.merge(from, 1, Integer::sum);
          changes.merge(until, -1, Integer::sum);
        }
      }
    }
    long missing = 0;
    int out = 0;
    int since = 0;
    for (Map.Entry<Integer, Integer> change : changes.entrySet()) {
      missing += (long) Math.max(0, out - kind.count()) * (change.getKey() - since);
      since = change.getKey();
      out += change.getValue();
    }
    return missing;
  }
}
