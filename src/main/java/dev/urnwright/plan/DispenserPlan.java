package dev.urnwright.plan;

import static java.util.Objects.requireNonNull;

import dev.urnwright.event.Dispenser;
import dev.urnwright.event.Event;
import dev.urnwright.problem.Problem;
import dev.urnwright.quantity.Volume;
import dev.urnwright.schedule.DispenserChoice;
import dev.urnwright.schedule.DispenserChoice.Chosen;
import dev.urnwright.schedule.DispenserChoice.Pace;
import dev.urnwright.wording.Saying;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which dispensers serve each coffee of each group, how many times one is filled, and how many
 * stand open side by side.
 */
final class DispenserPlan {
  /** Rounding adds at most a step of concentrate and one of water to a dispenser. */
  private static final int ROUNDING_STEPS = 2;

  /** Nobody fills more dispensers for one group. */
  private static final int MOST_FILLS = 10_000;

  private final Event event;
  private final Findings findings;
  private final Limits limits;
  private final Timetable timetable;
  private final boolean onClock; // asked once: an event may have fifty thousand groups

  /**
   * What is tried.
   *
   * @param taps side by side at the most
   * @param early minutes that dispensers are filled before they must be, at the most
   * @param cures what each alone would spare this limit, as far as it is known
   */
  record Limits(int taps, int early, List<Saying> cures) {
    static final Limits NONE = new Limits(Integer.MAX_VALUE, 0);

    Limits {
      cures = List.copyOf(cures);
    }

    Limits(int taps, int early) {
      this(taps, early, List.of());
    }
  }

  DispenserPlan(Event event, Findings findings, Limits limits) {
    this.event = event;
    this.findings = findings;
    this.limits = limits;
    this.timetable = new Timetable(event);
    this.onClock = event.isTimed() && !event.equipment().brewers().isEmpty();
  }

  /** Dispensers for each need; none at all when the event lists none. */
  Map<GroupNeed, Chosen> choose(List<GroupNeed> needs) {
    if (event.equipment().dispensers().isEmpty()) {
      findings.note("no-dispensers", Saying.of("note.no-dispensers"));
      return Map.of();
    }
    Map<GroupNeed, Chosen> chosen = new IdentityHashMap<>();
    DispenserChoice choice = new DispenserChoice(event.equipment().dispensers());
    List<GroupNeed> largestFirst =
        needs.stream().sorted(Comparator.comparing(GroupNeed::drawn).reversed()).toList();
    for (GroupNeed need : largestFirst) {
      Volume slack = slack(need);
      Optional<Chosen> taken =
          choice.take(
              need.drawn(),
              slack,
              need.group().service().dispenser(),
              dispenser -> pace(need, dispenser));
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
    } else if (findings.problems().isEmpty()) {
      new DispenserSwaps(this, event, limits.early()).settle(needs, chosen);
      needs.forEach(need -> queue(need, requireNonNull(chosen.get(need))));
    }
    return chosen;
  }

  /** How one kind would serve, with fewer side by side than a number; empty when it can't. */
  Optional<Chosen> with(GroupNeed need, Dispenser dispenser, int fewerThan) {
    return pace(need, dispenser)
        .map(p -> new Pace(p.rounds(), p.taps(), Math.min(p.mostTaps(), fewerThan - 1)))
        .flatMap(p -> DispenserChoice.of(dispenser, need.drawn(), slack(need), p))
        .filter(chosen -> chosen.fills() <= MOST_FILLS);
  }

  private Volume slack(GroupNeed need) {
    return Volume.ofWater(event.equipment().scaleStep().times(ROUNDING_STEPS), need.filledAt());
  }

  /** Only a clock can say that coffee is held too long, or that many come at once. */
  private Optional<Pace> pace(GroupNeed need, Dispenser dispenser) {
    if (!onClock) {
      return Optional.of(Pace.SINGLE);
    }
    return roundsForHold(need, dispenser).stream()
        .mapToObj(
            rounds ->
                new Pace(
                    rounds,
                    timetable.tapsFor(need.group(), need.demand().cups(), dispenser),
                    Math.min(dispenser.count(), limits.taps())))
        .findFirst();
  }

  private OptionalInt roundsForHold(GroupNeed need, Dispenser dispenser) {
    return onClock
        ? timetable.roundsForHold(need.group(), Optional.of(dispenser))
        : OptionalInt.of(1);
  }

  private void queue(GroupNeed need, Chosen chosen) {
    int cups = need.demand().cups();
    int needed = timetable.tapsFor(need.group(), cups, chosen.dispenser());
    int minutes =
        needed <= chosen.taps()
            ? 0
            : timetable.queueMinutes(need.group(), cups, chosen.dispenser(), chosen.taps());
    if (minutes > 0) {
      boolean isLimited = limits.taps() < Math.min(needed, chosen.dispenser().count());
      findings.caution(
          "queue",
          Saying.of(isLimited ? "caution.queue.late" : "caution.queue")
              .with("group", need.group().name())
              .with("coffee", need.coffee().name())
              .with("taps", chosen.taps())
              .with("pace", timetable.busiest(need.group(), cups))
              .with("minutes", minutes)
              .with("needed", needed)
              .with("dispenser", chosen.dispenser().name())
              .with("curable", !limits.cures().isEmpty())
              .with("cures", limits.cures()));
    }
  }

  private void refill(Dispenser dispenser, int fills) {
    findings.caution(
        "refill",
        Saying.of("caution.refill")
            .with("dispenser", dispenser.name())
            .with("fills", fills)
            .with("count", dispenser.count()));
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
            .allMatch(dispenser -> roundsForHold(need, dispenser).isEmpty());
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
