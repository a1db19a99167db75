package dev.urnwright.plan;

import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.DispenserChoice;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Which dispensers serve each coffee of each group, and how many times one is filled. */
final class DispenserPlan {
  /** Rounding adds at most a step of concentrate and one of water to a dispenser. */
  private static final int ROUNDING_STEPS = 2;

  /** Nobody fills more dispensers for one group. */
  private static final int MOST_FILLS = 10_000;

  private final Event event;
  private final Findings findings;
  private final boolean onClock; // asked once: an event may have fifty thousand groups

  DispenserPlan(Event event, Findings findings) {
    this.event = event;
    this.findings = findings;
    this.onClock = event.isTimed() && !event.equipment().brewers().isEmpty();
  }

  /** Dispensers for each need; none at all when the event lists none. */
  Map<GroupNeed, Chosen> choose(List<GroupNeed> needs) {
    IdentityHashMap<GroupNeed, Chosen> chosen = new IdentityHashMap<>();
    if (event.equipment().dispensers().isEmpty()) {
      findings.note(
          "no-dispensers",
          "No dispensers are listed: each coffee of a group is mixed in one vessel of your own.");
      return chosen;
    }
    DispenserChoice choice = new DispenserChoice(event.equipment().dispensers());
    List<GroupNeed> largestFirst =
        needs.stream().sorted(Comparator.comparing(GroupNeed::drawn).reversed()).toList();
    for (GroupNeed need : largestFirst) {
      Volume slack =
          Volume.ofWater(event.equipment().scaleStep().times(ROUNDING_STEPS), need.filledAt());
      Optional<Chosen> taken =
          choice.take(
              need.drawn(),
              slack,
              need.group().service().dispenser(),
              dispenser -> fillsForHold(need, dispenser));
      if (taken.isEmpty()) {
        findings.refuse(undispensed(need, slack));
      } else if (taken.get().fills() > MOST_FILLS) {
        findings.refuse(tooManyFills(need, taken.get(), slack));
      } else {
        chosen.put(need, taken.get());
      }
    }
    new AtOnce(event, needs).problem().ifPresent(findings::refuse);
    if (!onClock) {
      choice.refilled().forEach(this::refill);
    }
    return chosen;
  }

  private void refill(Dispenser dispenser, int fills) {
    findings.caution(
        "refill",
        dispenser.name()
            + ": "
            + fills
            + " fills for "
            + dispenser.count()
            + " of them. They must come back, be emptied and rinsed, and be filled again; never with"
            + " another coffee unrinsed.");
  }

  /** Only a clock can say that coffee is held too long. */
  private OptionalInt fillsForHold(GroupNeed need, Dispenser dispenser) {
    return onClock
        ? new Timetable(event).fillsForHold(need.group(), Optional.of(dispenser))
        : OptionalInt.of(1);
  }

  private Problem tooManyFills(GroupNeed need, Chosen chosen, Volume slack) {
    Volume each = need.drawn().times(1.0 / MOST_FILLS);
    return new Problem(
        need.group().location(),
        "group '"
            + need.group().name()
            + "' would take more than "
            + MOST_FILLS
            + " fills of "
            + chosen.dispenser().name(),
        "dispensers of more than "
            + findings.display().volumeUp(each.plus(chosen.dispenser().heel()).plus(slack)));
  }

  private Problem undispensed(GroupNeed need, Volume slack) {
    Volume least =
        event.equipment().dispensers().stream()
            .filter(d -> need.group().service().dispenser().map(d.name()::equals).orElse(true))
            .map(d -> d.heel().plus(slack))
            .max(Comparator.naturalOrder())
            .orElse(slack);
    boolean holdsTooShort =
        event.equipment().dispensers().stream()
            .allMatch(dispenser -> fillsForHold(need, dispenser).isEmpty());
    if (holdsTooShort) {
      return new Problem(
          need.group().location(),
          "no dispenser holds long enough for the way to group '" + need.group().name() + "'",
          "a longer hold, or a station nearer to the brewers");
    }
    return new Problem(
        need.group().location(),
        "no dispenser listed can serve group '" + need.group().name() + "'",
        "a dispenser of more than "
            + findings.display().volumeUp(least)
            + ", which its heel and the scale step take up");
  }
}
