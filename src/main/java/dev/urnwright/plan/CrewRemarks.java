package dev.urnwright.plan;

import dev.urnwright.event.Event;
import dev.urnwright.plan.Run.ActionKind;
import dev.urnwright.plan.Run.Crew;
import dev.urnwright.plan.Run.Stretch;
import dev.urnwright.wording.Saying;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How many people a run takes, and when there are too few. */
record CrewRemarks(Event event, Findings findings) {
  /** More times than these are said in one sentence. */
  private static final int MOST_TOLD = 6;

  void on(Run run) {
    findings.note("hand-times", new HandTimes(event).saying());
    Crew crew = run.crew();
    if (crew.busiest().isEmpty()) {
      return;
    }
    if (crew.people().isEmpty()) {
      findings.note("crew", unsaid(crew, crew.busiest().get()));
      return;
    }
    int there = crew.people().getAsInt();
    Handwork work =
        new Handwork(event, run.batches(), run.fills(), run.actions(), Handwork.Water.NONE);
    List<TooMany> over = tooMany(crew, there);
    over.stream().limit(MOST_TOLD).forEach(stretch -> tell(stretch, there, work));
    if (over.size() > MOST_TOLD) {
      findings.caution(
          "crew",
          Saying.of("caution.crew.more")
              .with("there", there)
              .with("times", over.size() - MOST_TOLD));
    }
  }

  private static Saying unsaid(Crew crew, Stretch most) {
    return Saying.of("note.crew")
        .with("people", most.people())
        .with("from", most.from().toLocalTime())
        .with("until", most.until().toLocalTime())
        .with("fewer", crew.enough() < most.people())
        .with("enough", crew.enough());
  }

  /**
   * A time in which more people are needed than there are.
   *
   * @param from its start
   * @param until its end
   * @param peak when the most are needed
   */
  private record TooMany(LocalDateTime from, LocalDateTime until, Stretch peak) {}

  private static List<TooMany> tooMany(Crew crew, int there) {
    List<TooMany> over = new ArrayList<>();
    for (Stretch stretch : crew.stretches()) {
      if (stretch.people() > there) {
        int last = over.size() - 1;
        if (last >= 0 && over.get(last).until().equals(stretch.from())) {
          TooMany before = over.remove(last);
          boolean more = stretch.people() > before.peak().people();
          over.add(new TooMany(before.from(), stretch.until(), more ? stretch : before.peak()));
        } else {
          over.add(new TooMany(stretch.from(), stretch.until(), stretch));
        }
      }
    }
    return over;
  }

  private void tell(TooMany over, int there, Handwork work) {
    Map<ActionKind, Integer> busy = work.busyIn(over.peak());
    List<Saying> doing = new ArrayList<>();
    busy.forEach((kind, count) -> doing.add(Saying.of("crew." + word(kind)).with("count", count)));
    int walks =
        Math.max(busy.getOrDefault(ActionKind.CARRY, 0), busy.getOrDefault(ActionKind.COLLECT, 0));
    findings.caution(
        "crew",
        Saying.of("caution.crew")
            .with("from", over.from().toLocalTime())
            .with("until", over.until().toLocalTime())
            .with("people", over.peak().people())
            .with("there", there)
            .with("doing", doing)
            .with("at", over.peak().from().toLocalTime())
            .with("grind", busy.containsKey(ActionKind.GRIND))
            .with("walks", walks > 1));
  }

  private static String word(ActionKind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
